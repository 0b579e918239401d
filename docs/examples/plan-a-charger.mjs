// Plans the charge point of a survey: prints the plan, writes it as JSON, Markdown and HTML, and a page for each reader.
// npx ohmwright plan survey.json [folder] [prices.json]
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { inGreatBritain } from 'ohmwright/great-britain';
import { parseSurvey, readPriceBook } from 'ohmwright/io';
import {
  customerPage,
  designFile,
  installerPage,
  operatorPage,
  planBlocks,
  renderHtml,
  renderMarkdown,
  renderText,
  testerPage,
} from 'ohmwright/report';
import { planOf } from 'ohmwright/site';
import { verifySheet } from 'ohmwright/verify';

const file = process.argv[2] ?? fileURLToPath(new URL('surveys/easy-home.json', import.meta.url));
const folder = process.argv[3] ?? 'reports';
const priced = process.argv[4];

try {
  const survey = parseSurvey(readFileSync(file, 'utf8'));
  const plan = planOf(survey, inGreatBritain(survey.code.edition));
  console.log(renderText(planBlocks(plan)));
  mkdirSync(folder, { recursive: true });
  const name = basename(file, '.json');
  const full = planBlocks(plan, { sheet: true });
  writeFileSync(join(folder, `${name}.plan.json`), `${JSON.stringify(plan, null, 2)}\n`);
  writeFileSync(join(folder, `${name}.plan.md`), renderMarkdown(full));
  writeFileSync(join(folder, `${name}.plan.html`), renderHtml(full, plan.about.title));
  const prices = priced && { prices: readPriceBook(JSON.parse(readFileSync(priced, 'utf8'))) };
  const pages = {
    customer: customerPage(plan, { ...prices }),
    installer: installerPage(plan),
    tester: testerPage(plan),
    operator: operatorPage(plan),
    design: designFile(plan),
  };
  for (const [reader, blocks] of Object.entries(pages))
    writeFileSync(join(folder, `${name}.${reader}.html`), renderHtml(blocks, plan.about.title, plan.about.reference));
  const sheet = plan.options[0]?.sheet;
  const check = sheet && verifySheet(sheet);
  console.log(
    check?.ok
      ? 'The calculation sheet was worked out a second time, with units, by a general library: it agrees.'
      : `The sheet does not verify: ${JSON.stringify(check?.problems)}`,
  );
  console.log(`Survey read from ${file}.`);
  console.log(`The plan with its calculation sheet: ${join(folder, name)}.plan.json, .md and .html`);
  console.log(
    `To print: ${Object.keys(pages)
      .map((reader) => `${name}.${reader}.html`)
      .join(', ')}`,
  );
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}

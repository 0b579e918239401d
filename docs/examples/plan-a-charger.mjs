// Plans the charge point of a survey: prints the plan, and writes it as JSON, Markdown and HTML beside it.
// node docs/examples/plan-a-charger.mjs [survey.json] [folder]
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { inGreatBritain } from 'ohmwright/great-britain';
import { parseSurvey } from 'ohmwright/io';
import { planBlocks, renderHtml, renderMarkdown, renderText } from 'ohmwright/report';
import { planOf } from 'ohmwright/site';
import { verifySheet } from 'ohmwright/verify';

const file = process.argv[2] ?? fileURLToPath(new URL('surveys/easy-home.json', import.meta.url));
const folder = process.argv[3] ?? 'reports';

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
  const sheet = plan.options[0]?.sheet;
  const check = sheet && verifySheet(sheet);
  console.log(
    check?.ok
      ? 'The calculation sheet was worked out a second time, with units, by a general library: it agrees.'
      : `The sheet does not verify: ${JSON.stringify(check?.problems)}`,
  );
  console.log(`Survey read from ${file}.`);
  console.log(`The plan with its calculation sheet: ${join(folder, name)}.plan.json, .md and .html`);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}

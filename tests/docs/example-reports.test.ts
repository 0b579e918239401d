/** The reports of the invented surveys in docs/examples/reports are what the library writes. After a change: `npm run generated`. */
import { expect, test } from 'vitest';
import { readSurvey } from '../../src/io/index.js';
import {
  type Block,
  customerPage,
  designFile,
  installerPage,
  operatorPage,
  planBlocks,
  renderHtml,
  renderMarkdown,
  renderText,
  sheetBlocks,
  testerPage,
} from '../../src/report/index.js';
import { wholePlanInBritain } from '../support/plan.js';
import { surveyDocument, surveyDocuments } from '../support/surveys.js';

/** The pictures that the README shows, under the names that it uses. */
const pictures = ['demand', 'one-line', 'night', 'voltage', 'time-current'];

const keep = (svg: string | undefined, name: string | undefined) =>
  expect(svg).toMatchFileSnapshot(`../../docs/pictures/${name}.svg`);
const drawnIn = (blocks: readonly Block[]): readonly string[] =>
  blocks.flatMap((b) => (b.kind === 'figure' ? [b.svg] : []));

async function keepPictures(blocks: readonly Block[]): Promise<void> {
  const drawn = drawnIn(blocks);
  expect(drawn).toHaveLength(pictures.length);
  // the night of one vehicle shows little: that of the flats stands for it
  for (const [i, svg] of drawn.entries()) if (pictures[i] !== 'night') await keep(svg, pictures[i]);
}

test.each(Object.keys(surveyDocuments))('the reports of %s', async (name) => {
  const plan = wholePlanInBritain(readSurvey(surveyDocument(name)));
  const file = (kind: string) => `../../docs/examples/reports/${name}.${kind}`;
  const blocks = planBlocks(plan);
  if (name === 'easy-home') await expect(renderText(blocks)).toMatchFileSnapshot(file('plan.txt'));
  await expect(renderMarkdown(blocks)).toMatchFileSnapshot(file('plan.md'));
  await expect(renderHtml(blocks, plan.about.title)).toMatchFileSnapshot(file('plan.html'));
  if (name === 'easy-home') {
    await keepPictures(blocks);
    await keep(drawnIn(installerPage(plan))[0], 'route');
    const pages = {
      customer: customerPage(plan),
      installer: installerPage(plan),
      tester: testerPage(plan),
      operator: operatorPage(plan),
      design: designFile(plan),
    };
    for (const [reader, page] of Object.entries(pages))
      await expect(renderHtml(page, plan.about.title, plan.about.reference)).toMatchFileSnapshot(
        file(`${reader}.html`),
      );
  }
  if (name === 'flats') await keep(drawnIn(blocks)[pictures.indexOf('night')], 'night');
  const sheet = plan.options[0]?.sheet;
  expect(sheet).toBeDefined();
  // the sheet of the flats runs to two megabytes
  if (sheet && name !== 'flats') await expect(renderMarkdown(sheetBlocks(sheet))).toMatchFileSnapshot(file('sheet.md'));
});

/** The reports of the invented surveys in docs/examples/reports are what the library writes. After a change: `npm run generated`. */
import { expect, test } from 'vitest';
import { readSurvey } from '../../src/io/index.js';
import { type Block, planBlocks, renderHtml, renderMarkdown, renderText, sheetBlocks } from '../../src/report/index.js';
import { wholePlanInBritain } from '../support/plan.js';
import { surveyDocument, surveyDocuments } from '../support/surveys.js';

/** The pictures that the README shows, under the names that it uses. */
const pictures = ['demand', 'one-line', 'night', 'voltage', 'time-current'];

async function keepPictures(blocks: readonly Block[]): Promise<void> {
  const drawn = blocks.flatMap((b) => (b.kind === 'figure' ? [b.svg] : []));
  expect(drawn).toHaveLength(pictures.length);
  for (const [i, svg] of drawn.entries())
    await expect(svg).toMatchFileSnapshot(`../../docs/pictures/${pictures[i]}.svg`);
}

test.each(Object.keys(surveyDocuments))('the reports of %s', async (name) => {
  const plan = wholePlanInBritain(readSurvey(surveyDocument(name)));
  const file = (kind: string) => `../../docs/examples/reports/${name}.${kind}`;
  const blocks = planBlocks(plan);
  if (name === 'easy-home') await expect(renderText(blocks)).toMatchFileSnapshot(file('plan.txt'));
  await expect(renderMarkdown(blocks)).toMatchFileSnapshot(file('plan.md'));
  await expect(renderHtml(blocks, plan.about.title)).toMatchFileSnapshot(file('plan.html'));
  if (name === 'easy-home') await keepPictures(blocks);
  const sheet = plan.options[0]?.sheet;
  expect(sheet).toBeDefined();
  // the sheet of the flats runs to two megabytes
  if (sheet && name !== 'flats') await expect(renderMarkdown(sheetBlocks(sheet))).toMatchFileSnapshot(file('sheet.md'));
});

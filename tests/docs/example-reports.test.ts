/** The reports of the invented surveys in docs/examples/reports are what the library writes. After a change: `npm run generated`. */
import { expect, test } from 'vitest';
import { readSurvey } from '../../src/io/index.js';
import { planBlocks, renderHtml, renderMarkdown, renderText, sheetBlocks } from '../../src/report/index.js';
import { planOf } from '../../src/site/index.js';
import { surveyDocument, surveyDocuments } from '../support/surveys.js';

test.each(Object.keys(surveyDocuments))('the reports of %s', async (name) => {
  const plan = planOf(readSurvey(surveyDocument(name)));
  const file = (kind: string) => `../../docs/examples/reports/${name}.${kind}`;
  const blocks = planBlocks(plan);
  await expect(renderText(blocks)).toMatchFileSnapshot(file('plan.txt'));
  await expect(renderMarkdown(blocks)).toMatchFileSnapshot(file('plan.md'));
  await expect(renderHtml(blocks, plan.about.title)).toMatchFileSnapshot(file('plan.html'));
  const sheet = plan.options[0]?.sheet;
  expect(sheet).toBeDefined();
  if (sheet) await expect(renderMarkdown(sheetBlocks(sheet))).toMatchFileSnapshot(file('sheet.md'));
});

import { readFileSync } from 'node:fs';
import { parseSurvey } from '../../src/io/index.js';
import { planBlocks, renderHtml, renderText } from '../../src/report/index.js';
import { verifySheet } from '../../src/verify/index.js';
import { planInBritain } from '../../tests/support/plan.js';
import { compare } from '../compare.js';

const textOf = (name: string) => readFileSync(`docs/examples/surveys/${name}.json`, 'utf8');
const text = textOf('easy-home');
const surveys = Object.fromEntries(
  ['easy-home', 'garage-submain', 'flats'].map((name) => [name, parseSurvey(textOf(name))] as const),
);
const planned = (name: string) => () => planInBritain(surveys[name] as (typeof surveys)[string]);
const plan = planInBritain(parseSurvey(text));
const sheet = plan.options[0]?.sheet;
if (!sheet) throw new Error('the example has no sheet');

export default [
  compare('the plan of one survey', {
    anchor: 'easy home: one point, four options',
    ways: {
      'easy home: one point, four options': planned('easy-home'),
      'garage behind a sub-main: one point, two facts with ranges': planned('garage-submain'),
      'flats: 24 points': planned('flats'),
    },
  }),
  compare('the whole job for one house', {
    anchor: 'plan: four options, sheets recorded',
    ways: {
      'plan: four options, sheets recorded': () => planInBritain(parseSurvey(text)),
      'survey read and checked': () => parseSurvey(text),
      'report as text': () => renderText(planBlocks(plan)),
      'report as HTML with pictures and sheet': () => renderHtml(planBlocks(plan, { sheet: true }), plan.about.title),
      'sheet verified with mathjs': () => verifySheet(sheet),
    },
  }),
];

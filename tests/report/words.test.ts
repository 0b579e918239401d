/** What a plan says, in words that the trade uses; no figure that will be misread. */
import { describe, expect, it } from 'vitest';
import { amperes, comparison, judge } from '../../src/index.js';
import { readSurvey } from '../../src/io/index.js';
import { type Block, englishWords, planBlocks, recordBlocks, renderText } from '../../src/report/index.js';
import { comparisonWords } from '../../src/report/sheet.js';
import { recordsOf } from '../../src/site/index.js';
import { examplePlan, planInBritain } from '../support/plan.js';
import { surveyDocument, surveyDocuments } from '../support/surveys.js';

const nobodySays: readonly RegExp[] = [
  /behind open|open (copper|aluminium)\b/i,
  /touch[- ]voltage device|equal[- ]device|line[- ]neutral window device|TT[- ]island|\bisland\b/i,
  /lost PEN|PEN conductor (is )?lost/i,
  /\b(Install|about|for) drive\b/,
  /Change against the survey|Candidates before|takes for granted/,
  /\bto be driven\b|\bphysics 216/,
  // a fact called by one bare word
  /^ *programme\b/m,
  // a curve that will be bought as a residual current device
  /(EN 6\d{4}|overcurrent device) type [BCD]\b/i,
  /margin -?\d{4,}|margin -?[1-9]\d{2}\d* %(?<!100 %)/,
];

describe.each(Object.keys(surveyDocuments))('%s', (name) => {
  const plan = examplePlan(name);
  const records = recordsOf(plan);
  const report = plan.options.map((_, option) => planBlocks(plan, { option }));
  const said = [...report, records ? recordBlocks(records) : []].map(renderText).join('\n');

  it('says nothing that nobody in the trade says', () => {
    for (const words of nobodySays) expect(words.exec(said)?.[0]).toBeUndefined();
  });

  it('gives every figure of hours as a range with its likely value', () => {
    const columns = report.flat().flatMap((b) => (b.kind === 'table' ? b.head.map((h, i) => ({ b, h, i })) : []));
    const hours = columns.flatMap(({ b, h, i }) => (/^hours/.test(h) ? b.rows.map((r) => String(r[i])) : []));
    expect(hours.length).toBeGreaterThan(10);
    for (const h of hours) expect(h).toMatch(/^(open|[\d.]+ (h|min)( \([\d.]+ to [\d.]+\))?)$/);
  });
});

it('a margin beyond twice the limit is not told in percent, beyond ten times not in figures', () => {
  const carries = comparison({
    id: 'device-carries-load',
    title: 'The device carries the load',
    kind: 'at-least',
    value: 'deviceRating',
    limit: 'designCurrent',
    weight: 'rule',
    source: { document: 'an invented rule', provenance: 'definition' },
  });
  const told = (deviceRating: number, designCurrent: number) =>
    comparisonWords(
      judge(carries, { deviceRating: amperes(deviceRating), designCurrent: amperes(designCurrent) }),
      englishWords,
    );
  expect(told(40, 32)).toBe('40 A against 32 A, margin 25 %');
  expect(told(80, 32)).toBe('80 A against 32 A, 2.5 times the limit');
  expect(told(100, 10)).toBe('100 A against 10 A, 10 times the limit');
  expect(told(101, 10)).toBe('101 A against 10 A, more than ten times the limit');
  expect(told(20, 32)).toBe('20 A against 32 A, margin -38 %');
});

it('one limit of Z_s stands for the meter; the figure of the table and the rule of thumb stand beside it by name', () => {
  const plan = planInBritain(readSurvey(surveyDocument('easy-home')), { sheets: 'none', lengths: false });
  const option = plan.options.findIndex((o) => o.id === 'with-limiter');
  const rows = planBlocks(plan, { option }).flatMap((b: Block) => (b.kind === 'table' ? b.rows : []));
  const [row] = rows.filter((r) => /^Z_s: at the farthest point/.test(String(r[2])));
  expect(row).toBeDefined();
  const [, , what, , limit] = (row ?? []).map(String);
  expect(limit?.match(/at most/g)).toHaveLength(1);
  expect(what).toMatch(
    /The largest Z_s of the tables is 1\.37 Ω, for warm conductors: not for the meter\. By the 0\.8 rule.*: 1\.09 Ω/,
  );
});

it('offers subject to a fact what only that fact stands in the way of', () => {
  const document = structuredClone(surveyDocument('easy-home')) as {
    supply: { cutOut: { rating: unknown } };
  };
  document.supply.cutOut.rating = { unknown: 'letter of the distributor' };
  const plan = planInBritain(readSurvey(document), { sheets: 'none', lengths: false });
  expect(plan.discarded.find((d) => d.id === 'larger-supply-fuse')).toMatchObject({
    subjectTo: true,
    because: 'the rating of the present fuse is not known',
  });
  expect(renderText(planBlocks(plan))).toContain('Subject to what is not known yet');
});

import { describe, expect, test } from 'vitest';
import { basisOf } from '../../src/core/rests-on.js';
import {
  alternatives,
  amperes,
  comparison,
  formula,
  metres,
  missing,
  ohms,
  procedure,
  type Recorder,
  ratio,
  recorder,
  restsOn,
  type Source,
  statement,
  table,
  volts,
  voltsPerAmpereMetre,
  writeSheet,
} from '../../src/index.js';
import { readSurvey } from '../../src/io/index.js';
import { verifySheet } from '../../src/verify/index.js';
import { planInBritain } from '../support/plan.js';
import { surveyDocument, surveyDocuments } from '../support/surveys.js';

const source = (provenance: Source['provenance']): Source => ({ document: 'Rules of our own', provenance });
const rates = table({
  id: 'own/rates',
  title: 'drop rates',
  axes: [{ name: 'method', labels: ['B', 'C'] }],
  columns: [[]],
  rows: [
    ['B', 0.007],
    ['C', 0.008],
  ],
  cell: 'dropRate',
  unit: 'V/(A·m)',
  source: source('two-sources'),
  provenanceOf: { C: 'memory' },
});
const drop = formula({
  id: 'own-drop',
  title: 'drop',
  inputs: ['dropRate', 'designCurrent', 'length'],
  output: 'voltageDrop',
  expression: 'dropRate * designCurrent * length',
  compute: (v) => v.dropRate * v.designCurrent * v.length,
  source: source('definition'),
});
const share = formula({
  id: 'own-share',
  title: 'share',
  inputs: ['totalDrop', 'nominalVoltage'],
  output: 'dropRatio',
  expression: 'totalDrop / nominalVoltage',
  compute: (v) => v.totalDrop / v.nominalVoltage,
  source: source('derived'),
});
const about = { weight: 'rule', source: source('one-source') } as const;
const limit = comparison({
  id: 'own-limit',
  title: 'the drop is small',
  kind: 'at-most',
  value: 'dropRatio',
  limit: 'dropLimit',
  ...about,
});
const longest = procedure({
  id: 'own-longest',
  title: 'longest',
  output: 'length',
  method: 'the longest of a list',
  source: source('common-practice'),
  run: (all: readonly number[]) => Math.max(...all),
});
const said = statement({ id: 'own-said', title: 'said', ...about });
const either = alternatives({ id: 'own-either', title: 'either', ...about });

/** A run in a part of its own. */
function run(sheet: Recorder, method: 'B' | 'C', length = 20) {
  const part = sheet.part(`run by ${method}`);
  const keys = { method: part.label('method', method, 'seen') };
  const dropRate = part.look(rates, keys);
  const designCurrent = part.given('designCurrent', amperes(10), 'label');
  part.step(drop, { dropRate, designCurrent, length: part.given('length', metres(length), 'measured') });
  return part;
}

/** What the drop of some runs comes to. */
function judged(...methods: readonly ('B' | 'C')[]) {
  const sheet = recorder('Drop');
  const parts = methods.map((m) => run(sheet, m));
  const totalDrop = sheet.gather('sum', 'voltageDrop', 'totalDrop', parts);
  const nominalVoltage = sheet.given('nominalVoltage', volts(230));
  const dropRatio = sheet.step(share, { totalDrop, nominalVoltage });
  sheet.check(limit, { dropRatio, dropLimit: sheet.given('dropLimit', ratio(0.05), 'the code') });
  return writeSheet(sheet);
}
const ids = (sheet: ReturnType<typeof writeSheet>, at = 0) => restsOn(sheet)[at]?.basis.map((b) => `${b.kind} ${b.id}`);

describe('what a result rests on', () => {
  test('is followed back through steps, parts, look-ups and labels', () => {
    const [found, ...rest] = restsOn(judged('B'));
    expect(rest).toEqual([]);
    expect(found).toMatchObject({ place: '', line: 6, result: { check: 'own-limit', verdict: 'pass' } });
    expect(found?.basis.map((b) => [b.id, b.provenance])).toEqual([
      ['own/rates', 'two-sources'],
      ['own-drop', 'definition'],
      ['own-share', 'derived'],
      ['own-limit', 'one-source'],
    ]);
    expect(found?.facts).toEqual([
      { name: 'method', value: 'B', by: 'seen' },
      { name: 'designCurrent', value: 10, by: 'label' },
      { name: 'length', value: 20, by: 'measured' },
      { name: 'nominalVoltage', value: 230 },
      { name: 'dropLimit', value: 0.05, by: 'the code' },
    ]);
    expect(found?.weakest).toBe('derived');
  });

  test('a table counts with the weakest of the cells that were read', () => {
    expect(restsOn(judged('C'))[0]?.weakest).toBe('memory');
    expect(restsOn(judged('B', 'C'))[0]?.basis.filter((b) => b.id === 'own/rates')).toMatchObject([
      { provenance: 'memory' },
    ]);
    expect(basisOf(judged('B', 'C'), 'memory').map((b) => b.id)).toEqual(['own/rates']);
    expect(basisOf(judged('B'), 'memory')).toEqual([]);
  });

  test('what a result does not use is not among it', () => {
    const sheet = recorder('Two');
    run(sheet, 'C');
    const part = run(sheet, 'B');
    const totalDrop = sheet.gather('sum', 'voltageDrop', 'totalDrop', [part]);
    const dropRatio = sheet.step(share, { totalDrop, nominalVoltage: sheet.given('nominalVoltage', volts(230)) });
    sheet.check(limit, { dropRatio, dropLimit: sheet.given('dropLimit', ratio(0.05)) });
    expect(restsOn(writeSheet(sheet))[0]?.weakest).toBe('derived');
  });

  test('the latest value of a role counts, and what a part was given from above', () => {
    const sheet = recorder('Latest');
    sheet.given('dropLimit', ratio(0.03));
    const dropLimit = sheet.given('dropLimit', ratio(0.05), 'second look');
    const part = sheet.part('below');
    part.check(limit, { dropRatio: part.given('dropRatio', ratio(0.02), 'seen'), dropLimit });
    sheet.given('dropLimit', ratio(0.03));
    expect(restsOn(writeSheet(sheet))[0]?.facts).toEqual([
      { name: 'dropLimit', value: 0.05, by: 'second look' },
      { name: 'dropRatio', value: 0.02, by: 'seen' },
    ]);
  });

  test('a procedure rests on the lines whose values are in its input', () => {
    const sheet = recorder('Procedure');
    sheet.given('loopImpedance', ohms(0.5), 'not in it');
    const part = sheet.part('leg');
    const leg = part.given('length', metres(12.5), 'measured') as number;
    const length = sheet.run(longest, [leg, 3]);
    const dropRate = sheet.given('dropRate', voltsPerAmpereMetre(0.007));
    const designCurrent = sheet.given('designCurrent', amperes(10));
    const down = sheet.part('sum');
    down.step(drop, { dropRate, designCurrent, length });
    const totalDrop = sheet.gather('sum', 'voltageDrop', 'totalDrop', [down]);
    const dropRatio = sheet.step(share, { totalDrop, nominalVoltage: sheet.given('nominalVoltage', volts(230)) });
    sheet.check(limit, { dropRatio, dropLimit: sheet.given('dropLimit', ratio(0.05)) });
    const [found] = restsOn(writeSheet(sheet));
    expect(found?.weakest).toBe('common-practice');
    expect(found?.facts.map((f) => f.name)).toEqual([
      'length',
      'dropRate',
      'designCurrent',
      'nominalVoltage',
      'dropLimit',
    ]);
  });

  test('alternatives rest on what their results rest on; a statement on its check alone', () => {
    const sheet = recorder('Either');
    const part = run(sheet, 'C');
    const totalDrop = sheet.gather('sum', 'voltageDrop', 'totalDrop', [part]);
    const dropRatio = sheet.step(share, { totalDrop, nominalVoltage: sheet.given('nominalVoltage', volts(230)) });
    const one = sheet.check(limit, { dropRatio, dropLimit: sheet.given('dropLimit', ratio(0.05)) });
    const other = sheet.check(said, { holds: true, because: 'decided elsewhere' });
    const below = sheet.part('below');
    below.check(either, { results: [one, other] });
    const document = writeSheet(sheet);
    expect(ids(document, 1)).toEqual(['check own-said']);
    expect(ids(document, 2)).toEqual([...(ids(document, 0) as string[]), 'check own-said', 'check own-either']);
    expect(restsOn(document)[2]?.place).toBe('2');
  });

  test('a missing value leads no further, and nothing judged, nothing said', () => {
    const sheet = recorder('Missing');
    const dropRatio = sheet.step(share, {
      totalDrop: missing({ kind: 'fact', fact: 'length' }),
      nominalVoltage: sheet.given('nominalVoltage', volts(230)),
    });
    sheet.check(limit, { dropRatio, dropLimit: sheet.given('dropLimit', ratio(0.05)) });
    sheet.note('a remark');
    const document = writeSheet(sheet);
    expect(ids(document)).toEqual(['check own-limit']);
    expect(basisOf(document, 'one-source')).toEqual([]);
  });
});

test('a sheet that claims more for its cells than is known is refused', () => {
  const sheet = judged('C');
  expect(verifySheet(sheet, [rates, drop, share, limit]).problems).toEqual([]);
  const text = JSON.stringify(sheet);
  expect(text.match(/"provenance":"memory"/g)).toHaveLength(1);
  const better = JSON.parse(text.replace('"provenance":"memory"', '"provenance":"two-sources"'));
  expect(verifySheet(better, [rates, drop, share, limit]).problems).toMatchObject([
    { place: '1', message: 'its cells are known as memory, not as two-sources' },
  ]);
});

describe.each(Object.keys(surveyDocuments))('the plan of %s', (name) => {
  const plan = planInBritain(readSurvey(surveyDocument(name)), { sheets: 'all' });

  test('says what it rests on that was recalled', () => {
    for (const option of plan.options) {
      const recalled = option.sheet ? basisOf(option.sheet, 'memory') : [];
      const told = option.cautions.filter((c) => c.startsWith('Rests on figures and rules from memory'));
      expect(told).toHaveLength(recalled.length > 0 ? 1 : 0);
      for (const b of recalled) expect(told[0]).toContain(b.source.clause ?? b.title);
    }
  });

  test('every result is judged from lines of the sheet', () => {
    for (const option of plan.options)
      for (const r of option.sheet ? restsOn(option.sheet) : []) {
        expect(r.basis.at(-1)).toMatchObject({ kind: 'check', id: r.result.check });
        if (r.result.value && r.result.verdict !== 'not-determined') expect(r.facts.length).toBeGreaterThan(0);
      }
  });
});

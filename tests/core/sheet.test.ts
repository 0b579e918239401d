import { expect, test } from 'vitest';
import {
  amperes,
  between,
  CalculationError,
  evaluate,
  formula,
  known,
  metres,
  missing,
  ohms,
  procedure,
  recorder,
  type Sheet,
  type Source,
  silent,
  statement,
  unknown,
  volts,
  voltsPerAmpereMetre,
  writeSheet,
} from '../../src/index.js';

const source: Source = { document: 'Test rules of our own', provenance: 'definition' };
const drop = formula({
  id: 'test-drop',
  title: 'drop',
  inputs: ['dropRate', 'designCurrent', 'length'],
  output: 'voltageDrop',
  expression: 'dropRate * designCurrent * length',
  valid: { length: { most: 100 } },
  compute: ({ dropRate, designCurrent, length }) => dropRate * designCurrent * length,
  source,
});
const rate = voltsPerAmpereMetre(0.0073);
const raw = <T>(value: number) => value as T;

test('a step guards its inputs by their roles and by the formula, and its result', () => {
  const step = (designCurrent: number, length: number, dropRate: number = rate) =>
    silent().step(drop, { dropRate: raw(dropRate), designCurrent: raw(designCurrent), length: raw(length) });
  expect(step(32, 25)).toBeCloseTo(5.84, 12);
  expect(step(32, 101)).toMatchObject({ missing: [{ kind: 'range', formula: 'test-drop' }] });
  expect(step(32, -1)).toMatchObject({ missing: [{ kind: 'range' }] });
  expect(step(Number.NaN, 1)).toMatchObject({ missing: [{ kind: 'range' }] });
  expect(JSON.stringify(step(Number.POSITIVE_INFINITY, 1))).toContain('is not a finite number');
  expect(step(Number.POSITIVE_INFINITY, 1, 0)).toMatchObject({ missing: [{ kind: 'range' }] });
  expect(() => evaluate(drop, { dropRate: rate, designCurrent: amperes(1), length: metres(101) })).toThrow(
    'length is 101 m; test-drop (Test rules of our own) holds from 0 m up to 100 m',
  );
  expect(Object.keys(drop).filter((k) => k.startsWith('~'))).toEqual([]);
});

test('an unknown fact flows through and is named once', () => {
  const sheet = silent();
  const length = sheet.given('length', unknown('measure it'));
  const designCurrent = sheet.given('designCurrent', between(amperes(1), amperes(2)));
  const result = sheet.step(drop, {
    dropRate: missing({ kind: 'fact', fact: 'length', obtain: 'measure it' }),
    designCurrent,
    length,
  });
  expect(result).toEqual({
    missing: [
      { kind: 'fact', fact: 'length', obtain: 'measure it' },
      { kind: 'fact', fact: 'designCurrent', obtain: 'known only within a range, 1 to 2' },
    ],
  });
  expect(sheet.given('length', between(metres(3), metres(3)))).toBe(3);
});

test('a value that its role forbids is an error', () => {
  for (const value of [-1, Number.NaN, Number.POSITIVE_INFINITY])
    expect(() => silent().given('length', raw(value))).toThrow(CalculationError);
});

test('a part sees what was taken down before it was opened, and no more', () => {
  for (const sheet of [silent(), recorder('whole')]) {
    sheet.given('length', metres(1));
    const part = sheet.part('part');
    sheet.given('length', metres(2));
    sheet.given('designCurrent', amperes(3));
    const inner = part.part('inner');
    part.given('externalImpedance', ohms(0.1));
    expect(part.latest('length')).toBe(1);
    expect(inner.latest('length')).toBe(1);
    expect(part.latest('designCurrent')).toBeUndefined();
    expect(inner.latest('externalImpedance')).toBeUndefined();
    expect(part.latest('externalImpedance')).toBe(0.1);
    expect(sheet.latest('length')).toBe(2);
    expect(sheet.part('later').latest('length')).toBe(2);
  }
});

test('gathering', () => {
  const sheet = silent();
  const parts = [1, 2, 4].map((v) => {
    const part = sheet.part(`${v}`);
    part.given('voltageDrop', volts(v));
    return part;
  });
  expect(sheet.gather('sum', 'voltageDrop', 'voltageDrop', parts)).toBe(7);
  expect(sheet.gather('largest', 'voltageDrop', 'voltageDrop', parts)).toBe(4);
  expect(sheet.gather('smallest', 'voltageDrop', 'voltageDrop', parts)).toBe(1);
  expect(sheet.gather('sum', 'voltageDrop', 'voltageDrop', [])).toBe(0);
  expect(sheet.gather('largest', 'voltageDrop', 'voltageDrop', [])).toHaveProperty('missing');
  expect(sheet.gather('sum', 'voltageDrop', 'voltageDrop', [sheet.part('empty')])).toHaveProperty('missing');
  // a part hands up its own values, not those that it sees above it
  sheet.given('length', metres(9));
  expect(sheet.gather('sum', 'length', 'length', [sheet.part('empty')])).toHaveProperty('missing');
});

const half = procedure<{ of: number }, 'voltageDrop'>({
  id: 'test-half',
  title: 'half',
  output: 'voltageDrop',
  method: 'by halving',
  source,
  run: ({ of }) => of / 2,
});

/** Some of everything. */
function work(sheet: Sheet): unknown[] {
  const seen: unknown[] = [];
  seen.push(sheet.given('length', known(metres(25), 'tape')), sheet.label('method', known('C', 'photograph')));
  const part = sheet.part('one');
  seen.push(part.given('dropRate', rate), part.given('designCurrent', unknown()));
  seen.push(part.step(drop, { dropRate: rate, designCurrent: missing(), length: metres(25) }));
  seen.push(part.run(half, { of: 3 }), sheet.run(half, { of: -3 }), sheet.run(half, missing()));
  seen.push(sheet.gather('sum', 'voltageDrop', 'voltageDrop', [part]));
  seen.push(sheet.check(statement({ id: 's', title: 's', weight: 'rule', source }), { holds: true, because: 'seen' }));
  sheet.note('done');
  return seen;
}

test('the silent sheet and the recorder give the same', () => {
  const sheet = recorder('whole');
  expect(work(silent())).toEqual(work(sheet));
  const document = writeSheet(sheet);
  expect(JSON.parse(JSON.stringify(document))).toEqual(document);
  expect(document.lines.map((l) => l.kind)).toEqual([
    'given',
    'label',
    'part',
    'run',
    'run',
    'gather',
    'check',
    'note',
  ]);
  expect(document.lines[6]).toMatchObject({ kind: 'check', holds: true });
  expect(document.lines[5]).toMatchObject({ parts: ['1'], gives: { name: 'voltageDrop', value: 1.5, unit: 'V' } });
});

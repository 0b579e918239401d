/** Edges of what design plans, judges and looks for. */
import { expect, test } from 'vitest';
import { bs7671 } from '../../src/codes/bs7671/code.js';
import { judgeReadings } from '../../src/design/judge-readings.js';
import { atLeast } from '../../src/design/planned-reading.js';
import { rangesOf } from '../../src/design/ranges.js';
import { regions } from '../../src/design/regions.js';
import {
  amperes,
  assess,
  between,
  celsius,
  known,
  missing,
  ohms,
  permitted,
  type Stretch,
  type Supply,
  unknown,
} from '../../src/index.js';
import { circuit, house, load, stretch } from '../support/house.js';
import { sheetOf } from '../support/test-sheet.js';

const code = bs7671('2018+A2:2022');

test('the prospective current is held against the larger of own and declared breaking capacity, BS 7671 434.5.1', () => {
  const limit = (conditional: number | undefined) =>
    sheetOf({
      device: {
        ...circuit().device,
        breakingCapacity: known(amperes(6000)),
        ...(conditional === undefined ? {} : { conditionalRating: known(amperes(conditional)) }),
      },
    })
      .tests.flatMap((t) => t.readings)
      .find((r) => r.id === 'prospective')?.limits[0]?.amount?.value;
  expect([limit(undefined), limit(16_000), limit(3000)]).toEqual([6000, 16_000, 6000]);
});

test('a prospective current contradicts the loop only where it is well below U_0 over Z_e', () => {
  const said = (prospective: number, externalLoop: number) =>
    judgeReadings(sheetOf({}), { prospective, externalLoop }).contradictions.map((c) => c.id);
  // 230 V over 0.23 Ω is 1000 A
  expect(said(1000, 0.23)).not.toContain('prospective-and-loop');
  expect(said(100, 0.23)).toContain('prospective-and-loop');
});

test('the temperature around a cable is that of the air, or of the ground by method D', () => {
  const role = (method: Stretch['method']) =>
    rangesOf(house([circuit({ stretches: [stretch({ method, ambient: between(celsius(15), celsius(25)) })] })])).map(
      (r) => r.role,
    );
  expect(role(known('C'))).toEqual(['ambientTemperature']);
  expect(role(known('D2'))).toEqual(['groundTemperature']);
});

test('two facts of one name are told apart', () => {
  const ambient = between(celsius(15), celsius(25));
  const names = rangesOf(
    house([circuit({ stretches: [stretch({ ambient }), stretch({ ambient }), stretch({ ambient })] })]),
  ).map((r) => r.name);
  expect(new Set(names).size).toBe(3);
  expect(names[1]).toBe(`${names[0]} (2)`);
  expect(names[2]).toBe(`${names[0]} (3)`);
});

test('lengths that pass end where the drop does: 5 % of 230 V at 7.3 mV/A/m and 32 A', () => {
  const { intervals } = permitted(code, house([circuit()]), 'ev', { vary: 'length' });
  const passing = (i: (typeof intervals)[number]) => i.verdict === 'pass' || i.verdict === 'not-determined';
  const last = intervals.filter(passing).at(-1);
  // (0.05 × 230 V) over (7.3 mV/A/m × 32 A) is 49.2 m
  expect(last?.to.value).toBeCloseTo(11.5 / (0.0073 * 32), 0);
});

test('what is examined is said, with the first value that does and the last that does not', () => {
  const of = (question: Parameters<typeof permitted>[3]) =>
    permitted(code, house([circuit({ feeds: [load(20)] })]), 'ev', question);
  const ends = (question: Parameters<typeof permitted>[3]) =>
    of(question).intervals.map((i) => [i.verdict, i.from.value, i.to.value]);
  expect(of({ vary: 'length' }).examined).toEqual({ least: 0.5, most: 5000 });
  expect(of({ vary: 'area' }).examined).toEqual({ least: 1, most: 16 });
  // 20 A ask for 20 A at least; 6 mm² clipped direct carry 47 A, so 40 A at most; 27 A of 2.5 mm² are not 32 A
  expect(ends({ vary: 'rating' })).toEqual([['not-determined', 20, 40]]);
  expect(ends({ vary: 'area' })).toEqual([['not-determined', 4, 16]]);
  // 11.5 V over 7.3 mV/A/m and 20 A
  expect(ends({ vary: 'length' })).toHaveLength(1);
  expect(ends({ vary: 'length' })[0]?.[2]).toBeCloseTo(11.5 / (0.0073 * 20), 2);
});

test('a question about a section that is not there is open', () => {
  const of = (name: string) =>
    permitted(code, house([circuit({ feeds: [load(20)] })]), 'ev', { vary: 'length', stretch: name });
  expect(of('route').gaps).toEqual([]);
  expect(of('nowhere')).toMatchObject({
    intervals: [],
    gaps: [{ kind: 'fact', fact: 'stretch nowhere of ev' }],
  });
});

test('an aspect of which no rule asks anything is not required, rather than passed', () => {
  const { aspects } = assess(code, house([circuit({ feeds: [load(20)] })]), 'ev');
  expect(aspects.find((a) => a.aspect === 'charge-point-earthing')?.verdict).toBe('not-required');
  expect(aspects.find((a) => a.aspect === 'minimum-size')?.verdict).toBe('pass');
});

test('a condition names what is assumed, its value, and the checks that pass by it', () => {
  const ambient = { ...known(celsius(30)), assumed: 'invented: warmth' } as const;
  const found = assess(code, house([circuit({ feeds: [load(20)], stretches: [stretch({ ambient })] })]), 'ev');
  expect(found.conditions).toMatchObject([{ assumption: 'invented: warmth', value: 30 }]);
  expect(found.conditions?.[0]?.checks).toContain('load-within-capacity');
  expect(found.results.find((r) => r.check === 'load-within-capacity')?.verdict).toBe('conditional');
});

test('a loop of nothing contradicts no prospective current: nothing is divided by it', () => {
  const { contradictions } = judgeReadings(sheetOf({}), { prospective: 1000, externalLoop: 0 });
  expect(contradictions.map((c) => c.id)).not.toContain('prospective-and-loop');
});

test('the tabulated limit of the loop stands beside the exact one, but not where a residual current device decides', () => {
  const loop = (supply: Partial<Supply>) =>
    sheetOf({}, supply)
      .tests.flatMap((t) => t.readings)
      .find((r) => r.id === 'loop');
  // 230 V × 0.95 over 5 × 32 A
  expect(loop({})?.tabulated?.value).toBeCloseTo(1.365625, 10);
  const tt = loop({ system: known('TT'), electrode: { resistance: known(ohms(100)) } });
  expect(tt?.tabulated).toBeUndefined();
  // 50 V over 30 mA
  expect(tt?.limits[0]?.amount?.value).toBeCloseTo(50 / 0.03, 6);
});

test('a device of which nobody knows the kind has no ratings to try, and says so', () => {
  const run = circuit({ device: { ...circuit().device, kind: unknown('look') }, feeds: [load(20)] });
  expect(permitted(code, house([run]), 'ev', { vary: 'rating' })).toMatchObject({
    intervals: [],
    gaps: [{ kind: 'fact', fact: 'ratings of the device of ev' }],
  });
});

test('a limit that is not known is none', () => {
  expect(atLeast(missing({ kind: 'fact', fact: 'x' }), 'measuredLimit', 'Ω', 'x')).toEqual([]);
  expect(atLeast(2, 'measuredLimit', 'Ω', 'x')).toHaveLength(1);
});

test('a bound is found by the margin of the check that fails, in a few judgements, and the middle by ratio', () => {
  const check = (margin: number) => ({ check: 'x', margin }) as never;
  const asked: number[] = [];
  const turnsAt = (bound: number) => ({
    at(value: number) {
      asked.push(value);
      const margin = (bound - value) / bound;
      return { verdict: margin >= 0 ? ('pass' as const) : ('fail' as const), check: check(margin) };
    },
    marginAt: (_: string, value: number) => (bound - value) / bound,
    over: () => undefined,
  });
  const found = regions(turnsAt(340), 1, 1000, 1e-6);
  const turn = found.findIndex((s) => s.verdict === 'fail');
  expect(found[turn - 1]?.value).toBeLessThanOrEqual(340);
  expect((found[turn]?.value as number) - 340).toBeLessThan(1e-5);
  // halving alone would take thirty to come that near
  expect(asked.filter((v) => Math.abs(v - 340) < 1).length).toBeLessThan(10);
  asked.length = 0;
  regions(turnsAt(1e9), 1, 10_000, 1);
  expect(asked.some((v) => Math.abs(v - 100) < 1e-9)).toBe(true);
});

/** Edges of what design plans, judges and looks for. */
import { expect, test } from 'vitest';
import { bs7671 } from '../../src/codes/bs7671/code.js';
import { judgeReadings } from '../../src/design/judge-readings.js';
import { rangesOf } from '../../src/design/ranges.js';
import { testSheet } from '../../src/design/test-sheet.js';
import {
  amperes,
  between,
  celsius,
  known,
  milliamperes,
  permitted,
  type Run,
  type Stretch,
  type Supply,
} from '../../src/index.js';
import { caseOf, chargePoint, circuit, house, load, stretch } from '../support/house.js';

const code = bs7671('2018+A2:2022');
const sheetOf = (change: Partial<Run>, supply: Partial<Supply> = {}) =>
  testSheet({
    code,
    circuit: caseOf(
      house(
        [
          circuit({
            residual: [{ position: 'origin-of-circuit', type: known('A'), rating: known(milliamperes(30)) }],
            feeds: [{ ...chargePoint, directCurrentDetection: known(true) }],
            ...change,
          }),
        ],
        supply,
      ),
      'ev',
    ),
    testTemperature: celsius(10),
    electronics: 'disconnected',
  });

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

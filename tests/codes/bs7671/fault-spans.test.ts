import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Calculator } from '../../../src/calculation/index.js';
import { bs7671 } from '../../../src/codes/bs7671/index.js';
import type { AssessmentOptions } from '../../../src/codes/wiring-code.js';
import {
  amperes,
  between,
  type Cable,
  type Fact,
  known,
  milliamperes,
  type OvercurrentDevice,
  type ResidualDevice,
  squareMillimetres,
} from '../../../src/index.js';
import type { OvercurrentKind } from '../../../src/installation/index.js';
import type { Amperes, Metres, Ohms } from '../../../src/units/index.js';
import { caseOf, circuit, house } from '../../support/house.js';
import { seedOf } from '../../support/seed.js';

const calculator = bs7671('2018+A2:2022').calculator as Calculator;
const groups = ['line-withstand', 'protective-conductor', 'breaking-capacity'] as const;

/** What is known of a circuit within a range, or at a share of the way through each range. */
interface Drawn {
  readonly device: OvercurrentDevice;
  readonly cable: Cable;
  readonly residual: readonly ResidualDevice[];
  readonly length: readonly [number, number];
  readonly impedance: readonly [number, number];
  readonly prospective: readonly [number, number];
  readonly options: AssessmentOptions;
}
function placeOf(d: Drawn, shares?: readonly [number, number, number]) {
  const fact = <T extends number>([a, b]: readonly [number, number], i: 0 | 1 | 2): Fact<T> =>
    shares ? known((a + (b - a) * shares[i]) as T) : (between<number>(a, b) as Fact<T>);
  const run = circuit({
    device: d.device,
    cable: d.cable,
    residual: d.residual,
    stretches: [{ ...circuit().stretches[0]!, length: fact<Metres>(d.length, 0) }],
  });
  const supply = { externalImpedance: fact<Ohms>(d.impedance, 1), prospectiveCurrent: fact<Amperes>(d.prospective, 2) };
  return caseOf(house([run], supply), 'ev', d.options);
}

/** Verdicts of the rules on faults, alternatives included. */
function verdicts(d: Drawn, shares?: readonly [number, number, number]) {
  const calculation = calculator.of(placeOf(d, shares));
  return groups
    .flatMap((g) => calculation.results(g))
    .flatMap((r) => [r, ...(r.alternatives ?? [])])
    .map((r) => [r.check, r.verdict] as const);
}

const kinds: readonly OvercurrentKind[] = [
  { standard: 'EN 61009', type: 'B' },
  { standard: 'EN 60898', type: 'C' },
  { standard: 'EN 60898', type: 'D' },
  { standard: 'BS 3871', type: '2' },
  { standard: 'BS 88-3' },
  { standard: 'BS 88-2' },
  { standard: 'BS 3036' },
];
const ratings = [6, 16, 20, 30, 32, 63];
const span = (min: number, max: number): fc.Arbitrary<readonly [number, number]> =>
  fc
    .tuple(fc.double({ min, max, noNaN: true }), fc.double({ min: 1, max: 1.6, noNaN: true }))
    .map(([a, share]) => [a, a * share] as const);
const drawn: fc.Arbitrary<Drawn> = fc.record({
  device: fc.record({
    kind: fc.constantFrom(...kinds).map((k) => known(k)),
    rating: fc.constantFrom(...ratings).map((r) => known(amperes(r))),
    breakingCapacity: fc.constantFrom(3000, 6000, 10000).map((i) => known(amperes(i))),
    energyClass: fc.constantFrom(1 as const, 2 as const, 3 as const).map((c) => known(c)),
  }),
  cable: fc
    .record({
      area: fc.constantFrom(1.5, 2.5, 4, 6, 10, 16),
      armoured: fc.boolean(),
      small: fc.boolean(),
    })
    .map(({ area, armoured, small }): Cable => {
      const { cable } = circuit();
      const line = known(squareMillimetres(area));
      if (armoured)
        return { ...cable, construction: 'armoured', insulation: 'thermosetting-90', area: line, protective: 'armour' };
      return { ...cable, area: line, ...(small ? { protectiveArea: known(squareMillimetres(1)) } : {}) };
    }),
  residual: fc.constantFrom([], [
    { position: 'origin-of-circuit', type: known('A'), rating: known(milliamperes(100)), delay: known('selective') },
  ] satisfies ResidualDevice[]),
  length: span(2, 200),
  impedance: span(0.05, 1.5),
  prospective: span(300, 9000),
  options: fc.constantFrom({}, { acceptMemoryFigures: true }),
});
const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('faults of which the current is known within a range', () => {
  test('nothing is said of the range that a value inside contradicts', () => {
    fc.assert(
      fc.property(drawn, fc.array(fc.tuple(share, share, share), { minLength: 4, maxLength: 4 }), (d, points) => {
        const whole = verdicts(d);
        for (const shares of [...points, [0, 0, 0], [1, 1, 1], [1, 1, 0], [0, 0, 1]] as const) {
          const one = verdicts(d, shares);
          whole.forEach(([check, verdict], i) => {
            if (verdict === 'pass' || verdict === 'fail') expect([shares, one[i]]).toEqual([shares, [check, verdict]]);
          });
        }
      }),
      { seed: seedOf(11), numRuns: 300 },
    );
  });

  test('what comes to the same all over the range is seen to, but for a few', () => {
    const steps = [0, 0.25, 0.5, 0.75, 1];
    let same = 0;
    let seen = 0;
    for (const d of fc.sample(drawn, { seed: seedOf(12), numRuns: 40 })) {
      const all = steps.flatMap((a) => steps.flatMap((b) => steps.map((c) => verdicts(d, [a, b, c]))));
      verdicts(d).forEach(([, verdict], i) => {
        const found = new Set(all.map((v) => v[i]?.[1]));
        const [only] = found;
        if (found.size !== 1 || (only !== 'pass' && only !== 'fail')) return;
        same++;
        if (verdict === only) seen++;
      });
    }
    expect(same).toBeGreaterThan(200);
    expect(seen / same).toBeGreaterThan(0.99);
  });
});

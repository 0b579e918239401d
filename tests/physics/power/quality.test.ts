import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hasCode } from '../../../src/index.js';
import {
  distortionOf,
  dropAtLastTap,
  harmonicDeratingOf,
  harmonicLoadFactorOf,
  kRatingOf,
  neutralOfLoads,
  unbalanceByMean,
  unbalanceOfLineVoltages,
  unbalanceOfPhasors,
} from '../../../src/physics/power/definitions.js';
import { alongTaps, symmetricalComponents } from '../../../src/physics/power/index.js';

const paths = (run: () => unknown): unknown => {
  try {
    return run();
  } catch (error) {
    return hasCode(error, 'invalid-input') ? error.detail.problems.map((p) => p.path.join('.')) : error;
  }
};
const size = (max: number) => fc.double({ min: 0, max, noNaN: true });
const angle = fc.double({ min: -180, max: 180, noNaN: true });

test('currents of the neutral come to the course of the currents in time', () => {
  const load = fc.record({
    line: fc.constantFrom(0 as const, 1 as const, 2 as const),
    angle: fc.double({ min: -1, max: 1, noNaN: true }),
    harmonics: fc
      .uniqueArray(fc.integer({ min: 2, max: 15 }), { maxLength: 5 })
      .chain((orders) =>
        fc.tuple(
          ...[1, ...orders].map((order) =>
            size(20).map((current) => ({ order, current: order === 1 ? current + 1 : current })),
          ),
        ),
      ),
  });
  fc.assert(
    fc.property(fc.array(load, { minLength: 1, maxLength: 6 }), (loads) => {
      const samples = 96;
      let squares = 0;
      for (let i = 0; i < samples; i++) {
        const t = (2 * Math.PI * i) / samples;
        const now = loads.reduce(
          (sum, { line, angle: lag, harmonics }) =>
            sum +
            harmonics.reduce(
              (s, { order, current }) =>
                s + Math.SQRT2 * current * Math.cos(order * (t - (2 * Math.PI * line) / 3) - (order === 1 ? lag : 0)),
              0,
            ),
          0,
        );
        squares += now * now;
      }
      expect(neutralOfLoads(loads)).toBeCloseTo(Math.sqrt(squares / samples), 6);
    }),
    { numRuns: 60 },
  );
});

test('balanced loads leave the neutral their third harmonics three times; one load leaves it all of its own', () => {
  const harmonics = [
    { order: 1, current: 30 },
    { order: 3, current: 6 },
    { order: 5, current: 4 },
  ];
  const three = ([0, 1, 2] as const).map((line) => ({ line, harmonics }));
  expect(neutralOfLoads(three)).toBeCloseTo(18, 9);
  expect(neutralOfLoads([{ line: 1, harmonics }])).toBeCloseTo(Math.hypot(30, 6, 4), 9);
  expect(distortionOf(harmonics)).toBeCloseTo(Math.hypot(6, 4) / 30, 12);
});

test('a pure sine has a factor of 1 and needs no derating; harmonics only make it worse', () => {
  const sine = [{ order: 1, current: 100 }];
  expect(kRatingOf(sine)).toBe(1);
  expect(harmonicDeratingOf({ harmonics: sine, eddyShare: 0.1, exponent: 1.7 })).toBe(1);
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 40 }), fc.double({ min: 0.1, max: 50, noNaN: true }), (order, current) => {
      const harmonics = [...sine, { order, current }];
      expect(kRatingOf(harmonics)).toBeGreaterThan(1);
      expect(harmonicLoadFactorOf({ harmonics, eddyShare: 0.1, exponent: 1.7 })).toBeGreaterThan(1);
    }),
  );
});

test('unbalance from the sizes of the voltages between lines is that of their phasors', () => {
  fc.assert(
    fc.property(fc.tuple(size(30), angle, size(30), angle, size(30), angle), ([a, x, b, y, c, z]) => {
      // line to neutral near 230 V each
      const star = [
        { size: 230 - a, angle: x / 60 },
        { size: 230 - b, angle: -120 + y / 60 },
        { size: 230 - c, angle: 120 + z / 60 },
      ] as const;
      const at = (i: number): readonly [number, number] => {
        const { size: s, angle: w } = star[i % 3] as (typeof star)[number];
        return [s * Math.cos((w * Math.PI) / 180), s * Math.sin((w * Math.PI) / 180)];
      };
      const between = [0, 1, 2].map((i) => Math.hypot(at(i)[0] - at(i + 1)[0], at(i)[1] - at(i + 1)[1]));
      // the zero sequence is not in the voltages between lines
      expect(unbalanceOfLineVoltages(between as never)).toBeCloseTo(unbalanceOfPhasors(star as never), 6);
    }),
    { numRuns: 60 },
  );
  expect(unbalanceOfLineVoltages([400, 400, 400])).toBeCloseTo(0, 6);
  expect(unbalanceByMean([400, 400, 400])).toBe(0);
});

test('symmetrical components of one line, of three, and of three the other way round', () => {
  const turn = (way: 1 | -1) => [0, -120 * way, 120 * way].map((w) => ({ size: 10, angle: w })) as never;
  expect(symmetricalComponents(turn(1)).positive).toBeCloseTo(10, 9);
  expect(symmetricalComponents(turn(-1)).negative).toBeCloseTo(10, 9);
  expect(symmetricalComponents(turn(1)).zero).toBeCloseTo(0, 9);
});

test('the drop along a busbar adds up tap by tap, in any order', () => {
  const taps = [
    { at: 30, current: 50, powerFactor: 0.9 },
    { at: 10, current: 100, powerFactor: 1 },
  ];
  const run = { resistancePerMetre: 1e-4, reactancePerMetre: 5e-5, taps };
  const [first, second] = alongTaps(run);
  expect(first?.at).toBe(10);
  const far = Math.sqrt(3) * 50 * (1e-4 * 0.9 + 5e-5 * Math.sqrt(1 - 0.81));
  expect(first?.drop).toBeCloseTo(10 * far + Math.sqrt(3) * 10 * 1e-4 * 100, 12);
  expect((second?.drop as number) - (first?.drop as number)).toBeCloseTo(20 * far, 12);
  expect(dropAtLastTap(run)).toBe(second?.drop);
});

test.each([
  [
    'an order twice',
    () =>
      kRatingOf([
        { order: 1, current: 1 },
        { order: 1, current: 1 },
      ]),
    ['0.order', '1.order'].slice(1),
  ],
  ['no fundamental', () => kRatingOf([{ order: 3, current: 1 }]), ['']],
  ['a negative current', () => distortionOf([{ order: 1, current: -1 }]), ['0.current']],
  [
    'a line that is none',
    () => neutralOfLoads([{ line: 3 as never, harmonics: [{ order: 1, current: 1 }] }]),
    ['0.line'],
  ],
  [
    'an eddy share below 0',
    () => harmonicLoadFactorOf({ harmonics: [{ order: 1, current: 1 }], eddyShare: -1, exponent: 1.7 }),
    ['eddyShare'],
  ],
  ['voltages that close to no triangle', () => unbalanceOfLineVoltages([100, 100, 400]), ['']],
  ['three noughts', () => unbalanceByMean([0, 0, 0]), ['']],
  ['two phasors', () => symmetricalComponents([{ size: 1, angle: 0 }] as never), ['']],
  ['a busbar without taps', () => alongTaps({ resistancePerMetre: 1, reactancePerMetre: 0, taps: [] }), ['taps']],
  [
    'a tap behind the start',
    () => alongTaps({ resistancePerMetre: 1, reactancePerMetre: 0, taps: [{ at: -1, current: 1, powerFactor: 2 }] }),
    ['taps.0.at', 'taps.0.powerFactor'],
  ],
])('%s is refused by name', (_, run, expected) => {
  expect(paths(run)).toEqual(expected);
});

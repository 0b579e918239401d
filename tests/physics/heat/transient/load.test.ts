import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  amperes,
  celsius,
  hasCode,
  hertz,
  kelvinMetresPerWatt,
  metres,
  millimetres,
  seconds,
  squareMetresPerSecond,
  squareMillimetres,
} from '../../../../src/index.js';
import {
  cyclicFactorOf,
  superposedCyclicFactor,
  temperatureAfterLoad,
} from '../../../../src/physics/heat/definitions.js';
import {
  type BuriedCable,
  type BuriedCase,
  buriedCable,
  cyclicRating,
  heatBalance,
  overloadCurrent,
} from '../../../../src/physics/heat/index.js';
import { armouredBuild } from '../../../../src/products/bs5467/build.js';
import { unarmouredBuild } from '../../../../src/products/iec60502/build.js';

const soil = {
  groundTemperature: celsius(15),
  soilResistivity: kelvinMetresPerWatt(1.2),
  burialDepth: metres(0.6),
} as const;
const feeder: BuriedCase = {
  cable: armouredBuild({ metal: 'copper', cores: 4, conductorArea: squareMillimetres(35) }),
  loadedConductors: 3,
  surroundings: { where: 'ground', ...soil },
  operatingTemperature: celsius(90),
  frequency: hertz(50),
};
const duct = {
  kind: 'plastic',
  wall: 'PVC duct',
  innerDiameter: millimetres(94),
  outerDiameter: millimetres(110),
} as const;
const ducted: BuriedCase = { ...feeder, surroundings: { where: 'duct', ...soil, duct } };
const hours = (h: number) => seconds(h * 3600);
const night = Array.from({ length: 24 }, (_, hour) => (hour < 7 ? 1 : 0.15));
const of = (cable: BuriedCable, share: number) => amperes(share * cable.steadyCapacity);

describe.each([
  ['in the ground', feeder],
  ['in a duct', ducted],
])('a feeder %s', (_, heat) => {
  const cable = buriedCable(heat);

  test('carries its steady capacity for ever, at its temperature', () => {
    expect(cable.steadyCapacity).toBe(heatBalance(heat).computedCapacity);
    const always = { cable, before: of(cable, 1), periods: [{ current: of(cable, 1), duration: hours(1000) }] };
    expect(temperatureAfterLoad(always)).toBeCloseTo(90, 9);
    expect(
      cyclicRating(
        cable,
        night.map(() => 3),
      ).cyclicFactor,
    ).toBeCloseTo(1, 9);
  });

  test('a hundred nights at the peak that it is given stay below the limit; at 5 % more they do not', () => {
    const nights = (peak: number) => {
      const periods = Array.from({ length: 100 }).flatMap(() => [
        { current: amperes(0.15 * peak), duration: hours(17) },
        { current: amperes(peak), duration: hours(7) },
      ]);
      const mean = Math.sqrt(night.reduce((sum, v) => sum + v * v, 0) / 24);
      return temperatureAfterLoad({ cable, before: amperes(mean * peak), periods });
    };
    const { cyclicCapacity } = cyclicRating(cable, night);
    expect(nights(cyclicCapacity)).toBeLessThanOrEqual(90);
    expect(nights(cyclicCapacity)).toBeGreaterThan(86);
    expect(nights(1.05 * cyclicCapacity)).toBeGreaterThan(90);
  });

  test('an overload just reaches the limit when its time is over', () => {
    for (const [share, time] of [
      [0, 1],
      [0.6, 4],
      [0.9, 0.5],
    ] as const) {
      const current = overloadCurrent(cable, { before: of(cable, share), duration: hours(time) });
      const after = (factor: number) =>
        temperatureAfterLoad({
          cable,
          before: of(cable, share),
          periods: [{ current: amperes(current * factor), duration: hours(time) }],
        });
      // the standard counts the lower resistance before the overload, which the temperature leaves out: the safe side
      expect(after(1)).toBeGreaterThan(90 - 1e-6);
      expect(after(1)).toBeLessThan(94);
      expect(after(0.96)).toBeLessThan(90);
    }
  });

  test('a hotter end permits more, a longer time less', () => {
    const base = { before: of(cable, 0.6), duration: hours(4) };
    const current = overloadCurrent(cable, base);
    expect(overloadCurrent(cable, { ...base, finalTemperature: celsius(105) })).toBeGreaterThan(current);
    expect(overloadCurrent(cable, { ...base, duration: hours(8) })).toBeLessThan(current);
  });

  test('says that the code goes before it', () => {
    expect(cyclicRating(cable, night).cautions.join(' ')).toMatch(/tabulated capacity of the wiring code stands/);
  });
});

test('the temperature grows with the resistance beyond the limit, and has no bound at last', () => {
  const cable = buriedCable(feeder);
  const after = (share: number) =>
    temperatureAfterLoad({
      cable,
      before: of(cable, 1),
      periods: [{ current: of(cable, share), duration: hours(2000) }],
    });
  expect(after(1.1) - 90).toBeGreaterThan(75 * (1.1 ** 2 - 1));
  expect(() => after(2.5)).toThrow(/no bound/);
});

test('peaks make the factor larger, neighbours, wet soil and long blocks smaller', () => {
  const body = buriedCable(feeder).body;
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 24, maxLength: 24 }),
      fc.nat(23),
      fc.double({ min: 0.05, max: 0.5, noNaN: true }),
      (some, hour, more) => {
        const load = some.map((v, i) => (i === hour ? 1 : v));
        const factor = cyclicFactorOf({ body, load });
        expect(factor).toBeGreaterThanOrEqual(1 - 1e-12);
        const longer = load.map((v, i) => (i === (hour + 23) % 24 ? Math.min(1, v + more) : v));
        expect(cyclicFactorOf({ body, load: longer })).toBeLessThanOrEqual(factor + 1e-12);
        // shifting the clock changes nothing
        expect(cyclicFactorOf({ body, load: [...load.slice(5), ...load.slice(0, 5)] })).toBeCloseTo(factor, 12);
      },
    ),
    { numRuns: 30 },
  );
  const faster = { ...body, diffusivity: squareMetresPerSecond(1e-6) };
  expect(cyclicFactorOf({ body: faster, load: night })).toBeLessThan(cyclicFactorOf({ body, load: night }));
});

test('a group has less to gain than its peak suggests, but never less than its steady capacity', () => {
  const beside = [{ offset: metres(0.15), depth: metres(0.6) }];
  const pair = buriedCable({ ...feeder, surroundings: { where: 'ground', ...soil, neighbours: beside } });
  const alone = buriedCable(feeder);
  expect(pair.steadyCapacity).toBeLessThan(alone.steadyCapacity);
  const grouped = cyclicRating(pair, night).cyclicCapacity;
  expect(grouped).toBeLessThan(cyclicRating(alone, night).cyclicCapacity);
  expect(grouped).toBeGreaterThan(pair.steadyCapacity);
  // more of the rise lies in the slow soil: the factor itself is larger
  expect(superposedCyclicFactor({ body: pair.body, load: night })).toBeGreaterThan(
    superposedCyclicFactor({ body: alone.body, load: night }),
  );
});

describe('single-core cables in the ground', () => {
  const single = unarmouredBuild({
    metal: 'copper',
    insulation: 'XLPE',
    cores: 1,
    conductorArea: squareMillimetres(95),
  });
  const trefoil: BuriedCase = { ...feeder, cable: single };
  const u = (2000 * 0.6) / single.overallDiameter;

  test('touching: the resistance of IEC 60287-2-1 for cables without metal sheath, ρ/2π (ln 2u + 2 ln u)', () => {
    const { externalThermalResistance } = heatBalance(trefoil);
    const printed = (1.2 / (2 * Math.PI)) * (Math.log(2 * u) + 2 * Math.log(u));
    expect(externalThermalResistance / printed).toBeCloseTo(1, 3);
  });

  test('two, three and four loaded, touching and spaced, each carry what they should beside each other', () => {
    const capacity = (loadedConductors: 2 | 3 | 4, spacing?: number) =>
      heatBalance({
        ...trefoil,
        loadedConductors,
        surroundings: { where: 'ground', ...soil, ...(spacing === undefined ? {} : { spacing: metres(spacing) }) },
      }).computedCapacity;
    expect(capacity(2)).toBeGreaterThan(capacity(3));
    expect(capacity(3)).toBeGreaterThan(capacity(4));
    expect(capacity(3, 0.1)).toBeGreaterThan(capacity(3));
    // as good as alone when far apart
    expect(capacity(3, 20) / capacity(2, 20)).toBeCloseTo(1, 2);
  });

  test('their feeder gains by a cycle as others do', () => {
    const { cyclicFactor, superposedFactor } = cyclicRating(buriedCable(trefoil), night);
    expect(cyclicFactor).toBeGreaterThan(1.05);
    expect(superposedFactor).toBeGreaterThan(cyclicFactor);
  });

  test('a spacing is refused where it cannot be', () => {
    const refused = (heat: BuriedCase) => {
      try {
        heatBalance(heat);
      } catch (error) {
        return hasCode(error, 'invalid-input') ? error.detail.problems.map((p) => p.path.join('.')) : error;
      }
      return 'taken';
    };
    const surroundings = { where: 'ground', ...soil, spacing: metres(0.01) } as const;
    expect(refused({ ...trefoil, surroundings })).toEqual(['surroundings.spacing']);
    expect(refused({ ...feeder, surroundings: { ...surroundings, spacing: metres(0.1) } })).toEqual([
      'surroundings.spacing',
    ]);
  });
});

test.each([
  ['a load of 23 hours', () => cyclicFactorOf({ body: buriedCable(feeder).body, load: night.slice(1) }), 'load'],
  ['no load', () => cyclicFactorOf({ body: buriedCable(feeder).body, load: night.map(() => 0) }), 'load'],
  ['a diffusivity of 0', () => buriedCable(feeder, squareMetresPerSecond(0)), 'diffusivity'],
  [
    'a cable nearer to the surface than its own size',
    () => cyclicFactorOf({ body: { ...buriedCable(feeder).body, depth: metres(0.01) }, load: night }),
    'body.depth',
  ],
  [
    'more before than the steady capacity',
    () => overloadCurrent(buriedCable(feeder), { before: amperes(1000), duration: hours(1) }),
    'before',
  ],
])('%s is refused by name', (_, run, path) => {
  let found: unknown;
  try {
    run();
  } catch (error) {
    if (hasCode(error, 'invalid-input')) found = error.detail.problems.map((p) => p.path.join('.'));
  }
  expect(found).toEqual([path]);
});

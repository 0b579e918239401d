/** Properties of every method without count bands, and counter-examples for those with. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bs7671Demand } from '../../src/codes/bs7671/demand.js';
import { type DemandOptions, demandOf, demandOfDwellings, generalMethods } from '../../src/demand/index.js';
import { amperes, kilovoltAmperes, kilowatts, known, type Line, ratio, wattHours } from '../../src/index.js';
import { purposes as allPurposes } from '../../src/installation/load.js';
import { by, groupMethods, type LoadSpec, point, premises } from './premises.js';

// neither charge points, which no method diversifies, nor generation, which no demand counts
const purposes = allPurposes.filter((p) => p !== 'charge-point' && p !== 'generation');
const line = fc.constantFrom<Line>('L1', 'L2', 'L3');
const spec: fc.Arbitrary<LoadSpec> = fc.record({
  purpose: fc.constantFrom(...purposes),
  current: fc.double({ min: 0, max: 63, noNaN: true }),
  lines: line.map((l) => [l]),
  withSocket: fc.boolean(),
  standardCircuit: fc.boolean(),
});
const loads = fc.array(spec, { minLength: 1, maxLength: 8 });
const kinds = ['dwelling', 'small-shop', 'small-hotel'] as const;

const factors: NonNullable<DemandOptions['factors']> = {
  utilisation: Object.fromEntries(purposes.map((p, i) => [p, ratio(0.4 + i / 25)])),
  simultaneity: { db: ratio(0.8) },
};
const one = (s: LoadSpec): LoadSpec => ({ ...s, lines: ['L1'] });

/** Largest demand on a line by each applicable method. */
function worst(specs: readonly LoadSpec[], options: DemandOptions, phases: 1 | 3): ReadonlyMap<string, number> {
  const house = premises(specs, [], {
    phases: known(phases),
    meteredDemand: { current: known(amperes(20)), about: 'logger' },
  });
  const { methods } = demandOf(bs7671Demand, house, { factors, meteredMargin: ratio(0.1), ...options });
  return new Map(
    methods
      .filter((m) => m.verdict === 'applicable')
      .map((m) => [m.method, Math.max(...m.lines.map((l) => l.demand as number))]),
  );
}
const methods = [...bs7671Demand.methods, ...generalMethods];
const smooth = methods.filter((m) => !m.countBands).map((m) => m.id);
const slack = 1e-9;

describe('methods without count bands', () => {
  it('an added load never lowers the demand', () => {
    fc.assert(
      fc.property(loads, spec, fc.constantFrom(...kinds), (specs, added, kind) => {
        const before = worst(specs.map(one), { premises: kind }, 1);
        const after = worst([...specs, added].map(one), { premises: kind }, 1);
        for (const id of smooth)
          if (before.has(id) && after.has(id))
            expect(after.get(id)).toBeGreaterThanOrEqual((before.get(id) ?? 0) - slack);
      }),
    );
  });

  it('a larger load never lowers the demand', () => {
    fc.assert(
      fc.property(
        loads,
        fc.nat(),
        fc.double({ min: 0, max: 50, noNaN: true }),
        fc.constantFrom(...kinds),
        (specs, at, more, kind) => {
          const i = at % specs.length;
          const grown = specs.map((s, k) => (k === i ? { ...s, current: (s.current as number) + more } : s));
          const before = worst(specs.map(one), { premises: kind }, 1);
          const after = worst(grown.map(one), { premises: kind }, 1);
          // a metered peak that the grown load is beyond is open, which is not less
          for (const id of smooth)
            if (before.has(id) && after.has(id))
              expect(after.get(id)).toBeGreaterThanOrEqual((before.get(id) ?? 0) - slack);
        },
      ),
    );
  });

  it('split over lines, the worst line is never above the single-phase total', () => {
    fc.assert(
      fc.property(loads, fc.constantFrom(...kinds), (specs, kind) => {
        const total = worst(specs.map(one), { premises: kind }, 1);
        const split = worst(specs, { premises: kind }, 3);
        for (const id of smooth)
          if (split.has(id) && total.has(id)) expect(split.get(id)).toBeLessThanOrEqual((total.get(id) ?? 0) + slack);
      }),
    );
  });

  it('the order of the loads does not matter', () => {
    fc.assert(
      fc.property(loads, fc.constantFrom(...kinds), (specs, kind) => {
        const turned = worst([...specs].reverse().map(one), { premises: kind }, 1);
        for (const [id, demand] of worst(specs.map(one), { premises: kind }, 1))
          expect(turned.get(id)).toBeCloseTo(demand, 9);
      }),
    );
  });

  it('factors of 100 % give the plain sum', () => {
    const full = {
      utilisation: Object.fromEntries(purposes.map((p) => [p, ratio(1)])),
      simultaneity: { db: ratio(1) },
    };
    fc.assert(
      fc.property(loads, (specs) => {
        const found = worst(specs.map(one), { premises: 'other', factors: full }, 1);
        const sum = specs.reduce((s, l) => s + (l.current as number), 0);
        expect(found.get('utilisation-and-simultaneity')).toBeCloseTo(sum, 9);
        expect(found.get('connected-load')).toBeCloseTo(sum, 9);
      }),
    );
  });

  it('no method of diversity is above the connected load, but for sockets in cooker units', () => {
    fc.assert(
      fc.property(loads, fc.constantFrom(...kinds), (specs, kind) => {
        const found = worst(
          specs.map((s) => ({ ...one(s), withSocket: false })),
          { premises: kind },
          1,
        );
        for (const [id, demand] of found)
          if (id !== 'metered-peak') expect(demand).toBeLessThanOrEqual((found.get('connected-load') ?? 0) + slack);
      }),
    );
  });

  it('half-hour readings: a higher peak never lowers the demand', () => {
    const of = (energy: number) =>
      by('half-hour-readings', premises([]), {
        readings: {
          readings: [{ start: '2026-01-05T17:30:00Z', energy: wattHours(energy) }],
          season: 'winter',
          margin: ratio(0.2),
        },
      });
    fc.assert(
      fc.property(fc.nat(20000), fc.nat(20000), (a, b) => {
        expect(of(a + b)).toBeGreaterThanOrEqual(of(a));
      }),
    );
  });
});

describe('methods with count bands', () => {
  it('are named', () => {
    expect(methods.filter((m) => m.countBands).map((m) => m.id)).toEqual(['board-factor']);
    expect(groupMethods.filter((m) => m.countBands).map((m) => m.id)).toEqual(['nfc14100-riser']);
  });

  it('board factor: a fourth circuit of 1 A lowers 3 × 20 A', () => {
    const three: LoadSpec[] = [1, 2, 3].map(() => ({ purpose: 'socket-outlets', current: 20 }));
    const options = { assembly: 'IEC 61439-2' } as const;
    expect(by('board-factor', premises(three), options)).toBeCloseTo(54, 9);
    expect(by('board-factor', premises([...three, { purpose: 'socket-outlets', current: 1 }]), options)).toBeCloseTo(
      48.8,
      9,
    );
  });

  it('riser: a fifth flat lowers the demand of four', () => {
    const of = (dwellings: number) =>
      demandOfDwellings(groupMethods, { dwellings, each: kilovoltAmperes(10), storageHeating: false }).find(
        (r) => r.method === 'nfc14100-riser',
      )?.demand;
    expect(of(4)).toBeCloseTo(40000, 6);
    expect(of(5)).toBeCloseTo(39000, 6);
  });

  it('other group methods never fall with the number of dwellings', () => {
    const all = (dwellings: number) =>
      demandOfDwellings(groupMethods, {
        dwellings,
        each: kilovoltAmperes(10),
        storageHeating: false,
        electricWaterHeating: false,
        coincidence: { largest: kilowatts(7), limit: ratio(0.2) },
        afterDiversity: { demand: kilowatts(2), constant: kilowatts(8), unbalance: ratio(1.1) },
      }).filter((r) => r.verdict === 'applicable' && r.method !== 'nfc14100-riser');
    for (let n = 1; n < 120; n++)
      for (const result of all(n)) {
        const next = all(n + 1).find((r) => r.method === result.method);
        if (next) expect(next.demand as number).toBeGreaterThanOrEqual(result.demand as number);
      }
  });
});

describe('charge points', () => {
  it('count at 100 % in every method', () => {
    fc.assert(
      fc.property(loads, fc.integer({ min: 6, max: 32 }), fc.constantFrom(...kinds), (specs, setting, kind) => {
        const options = { premises: kind, factors, assembly: 'IEC 61439-3' } as const;
        const without = demandOf(bs7671Demand, premises(specs.map(one)), options);
        const withPoints = demandOf(
          bs7671Demand,
          premises(specs.map(one), [point('a', setting), point('b', setting)]),
          options,
        );
        withPoints.methods.forEach((m, i) => {
          if (m.verdict === 'applicable')
            expect(m.lines[0]?.demand).toBeCloseTo((without.methods[i]?.lines[0]?.demand as number) + 2 * setting, 9);
        });
      }),
    );
  });
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  celsius,
  hertz,
  kelvinMetresPerWatt,
  metres,
  millimetres,
  recorder,
  squareMillimetres,
  writeSheet,
} from '../../../src/index.js';
import { type HeatCase, heatBalance } from '../../../src/physics/heat/index.js';
import { armouredBuild } from '../../../src/products/bs5467/build.js';
import { unarmouredBuild } from '../../../src/products/iec60502/build.js';
import { verifySheet } from '../../../src/verify/index.js';

const sizes = [1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185, 240, 300, 400] as const;
const metal = fc.constantFrom('copper', 'aluminium');
const area = (from = 1.5, to = 400) => fc.constantFrom(...sizes.filter((s) => s >= from && s <= to));

/** Multicore cables with and without armour; aluminium from 16 mm². */
const cable = fc
  .record({
    metal,
    cores: fc.constantFrom(2, 3, 4),
    size: area(16, 150),
    small: area(1.5, 10),
    insulation: fc.constantFrom('PVC', 'XLPE'),
    armour: fc.boolean(),
  })
  .map(({ metal, cores, size, small, insulation, armour }) => {
    const conductorArea = squareMillimetres(metal === 'copper' && small < 5 ? small : size);
    return armour
      ? armouredBuild({ metal, cores, conductorArea })
      : unarmouredBuild({ metal, insulation, cores, conductorArea });
  });

const soil = fc.record({
  groundTemperature: fc.integer({ min: 5, max: 40 }).map(celsius),
  soilResistivity: fc.double({ min: 0.5, max: 3, noNaN: true }).map(kelvinMetresPerWatt),
  burialDepth: fc.double({ min: 0.4, max: 1.5, noNaN: true }).map(metres),
  neighbours: fc.array(
    fc.record({ offset: fc.double({ min: 0.1, max: 2, noNaN: true }).map(metres), depth: fc.constant(metres(0.7)) }),
    { maxLength: 5 },
  ),
});
const air = fc.record({
  where: fc.constant('air' as const),
  ambientTemperature: fc.integer({ min: 0, max: 55 }).map(celsius),
  formation: fc.constantFrom('one-spaced', 'one-on-wall'),
});
const surroundings = fc.oneof(
  air,
  soil.map((s) => ({ where: 'ground' as const, ...s })),
  soil.map((s) => ({
    where: 'duct' as const,
    ...s,
    duct: {
      kind: 'plastic' as const,
      wall: 'PVC duct' as const,
      innerDiameter: millimetres(90),
      outerDiameter: millimetres(97),
    },
  })),
);

const heatCase: fc.Arbitrary<HeatCase> = fc
  .record({ cable, surroundings, hot: fc.constantFrom(70, 90), two: fc.boolean() })
  .map(({ cable, surroundings, hot, two }) => ({
    cable,
    loadedConductors: two || cable.cores === 2 ? 2 : 3,
    surroundings:
      surroundings.where === 'duct' && cable.overallDiameter >= 90
        ? { ...surroundings, where: 'ground' }
        : surroundings,
    operatingTemperature: celsius(hot),
    frequency: hertz(50),
  }));
const capacity = (heat: HeatCase) => heatBalance(heat).computedCapacity;
/** A case with its surroundings changed. */
const amid = (heat: HeatCase, change: object): HeatCase =>
  ({ ...heat, surroundings: { ...heat.surroundings, ...change } }) as HeatCase;

test('every accepted case has a finite capacity and temperatures between surroundings and conductor', () => {
  fc.assert(
    fc.property(heatCase, (heat) => {
      const r = heatBalance(heat);
      for (const [name, value] of Object.entries(r))
        if (name !== 'cautions') expect([name, Number.isFinite(value) && (value as number) >= 0]).toEqual([name, true]);
      expect(r.computedCapacity).toBeGreaterThan(0);
      const s = heat.surroundings;
      const outside = s.where === 'air' ? s.ambientTemperature : s.groundTemperature;
      const inOrder = [
        outside,
        r.surfaceTemperature,
        r.armourTemperature ?? r.surfaceTemperature,
        heat.operatingTemperature,
      ];
      expect([...inOrder].sort((a, b) => a - b)).toEqual(inOrder);
    }),
    { numRuns: 300 },
  );
});

test('the heat that flows at the capacity gives the temperatures again', () => {
  fc.assert(
    fc.property(heatCase, (heat) => {
      const r = heatBalance(heat);
      const [n, w] = [heat.loadedConductors, r.computedCapacity ** 2 * r.acResistancePerMetre];
      const all = n * w * (1 + r.armourLossFactor);
      const armour = heat.operatingTemperature - w * (r.coreThermalResistance + n * r.beddingThermalResistance);
      const surface = armour - all * r.sheathThermalResistance;
      const outside = surface - all * r.externalThermalResistance;
      const s = heat.surroundings;
      expect(outside).toBeCloseTo(s.where === 'air' ? s.ambientTemperature : s.groundTemperature, 7);
      expect(surface).toBeCloseTo(r.surfaceTemperature, 7);
      if (r.armourTemperature !== undefined) expect(armour).toBeCloseTo(r.armourTemperature, 7);
    }),
    { numRuns: 200 },
  );
});

test('hotter surroundings carry less, a hotter conductor more', () => {
  fc.assert(
    fc.property(heatCase, fc.integer({ min: 1, max: 12 }), (heat, more) => {
      const s = heat.surroundings;
      const hotter =
        s.where === 'air'
          ? amid(heat, { ambientTemperature: celsius(s.ambientTemperature + more) })
          : amid(heat, { groundTemperature: celsius(s.groundTemperature + more) });
      expect(capacity(hotter)).toBeLessThan(capacity(heat));
      const conductor = { ...heat, operatingTemperature: celsius(heat.operatingTemperature + more) };
      expect(capacity(conductor)).toBeGreaterThan(capacity(heat));
    }),
    { numRuns: 200 },
  );
});

const buried = heatCase.filter((h) => h.surroundings.where !== 'air');

test('drier soil, greater depth, a further neighbour or a nearer one carry less', () => {
  fc.assert(
    fc.property(buried, fc.double({ min: 1.01, max: 2, noNaN: true }), (heat, k) => {
      const s = heat.surroundings;
      if (s.where === 'air') return;
      const now = capacity(heat);
      expect(capacity(amid(heat, { soilResistivity: kelvinMetresPerWatt(s.soilResistivity * k) }))).toBeLessThan(now);
      const alone = amid(heat, { neighbours: [] });
      expect(capacity(amid(alone, { burialDepth: metres(s.burialDepth * k) }))).toBeLessThan(capacity(alone));
      const beside = (offset: number) =>
        capacity(
          amid(heat, { neighbours: [...(s.neighbours ?? []), { offset: metres(offset), depth: s.burialDepth }] }),
        );
      expect(beside(0.3)).toBeLessThan(now);
      expect(beside(0.3 * k)).toBeGreaterThan(beside(0.3));
    }),
    { numRuns: 150 },
  );
});

test('a larger conductor carries more; three loaded conductors carry less than two', () => {
  fc.assert(
    fc.property(heatCase, metal, fc.constantFrom('PVC', 'XLPE'), (heat, metal, insulation) => {
      const of = (size: number) =>
        capacity({
          ...heat,
          cable: unarmouredBuild({ metal, insulation, cores: 3, conductorArea: squareMillimetres(size) }),
          surroundings:
            heat.surroundings.where === 'duct' ? { ...heat.surroundings, where: 'ground' } : heat.surroundings,
        });
      const all = sizes.filter((s) => s >= 16).map(of);
      expect(all).toEqual([...all].sort((a, b) => a - b));
      if (heat.cable.cores === 2) return;
      expect(capacity({ ...heat, loadedConductors: 3 })).toBeLessThan(capacity({ ...heat, loadedConductors: 2 }));
    }),
    { numRuns: 60 },
  );
});

test('single-core cables: spaced ones carry more than touching ones', () => {
  const of = (formation: 'one-spaced' | 'three-trefoil' | 'three-touching-horizontal', size: number) =>
    capacity({
      cable: unarmouredBuild({ metal: 'copper', insulation: 'XLPE', cores: 1, conductorArea: squareMillimetres(size) }),
      loadedConductors: 3,
      surroundings: { where: 'air', ambientTemperature: celsius(30), formation },
      operatingTemperature: celsius(90),
      frequency: hertz(50),
    });
  for (const size of sizes) {
    expect(of('one-spaced', size)).toBeGreaterThan(of('three-touching-horizontal', size));
    expect(of('three-touching-horizontal', size)).toBeGreaterThan(of('three-trefoil', size) * 0.99);
  }
});

test('its lines on a sheet are proven by an independent calculation and give the same capacity', () => {
  fc.assert(
    fc.property(heatCase, (heat) => {
      const sheet = recorder('rating');
      const { computedCapacity } = heatBalance(heat, sheet);
      expect(sheet.latest('computedCapacity')).toBe(computedCapacity);
      const { ok, problems } = verifySheet(writeSheet(sheet));
      expect(problems).toEqual([]);
      expect(ok).toBe(true);
    }),
    { numRuns: 25 },
  );
});

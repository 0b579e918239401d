import { expect, test } from 'vitest';
import type { Soil } from '../../../src/guidance/bs7430/electrode-in-soil.js';
import { soilResistivities } from '../../../src/guidance/definitions.js';
import { electrodeInSoil } from '../../../src/guidance/index.js';
import { metres } from '../../../src/index.js';
import { rodResistance } from '../../../src/physics/index.js';

const rod = { electrodeLength: metres(1.2), electrodeDiameter: metres(0.0142) };
const soils = soilResistivities.rows.map((r) => r[0] as Soil);

test('a 1.2 m rod in clay lies anywhere between the ends of the band: by hand from the rod formula of BS 7430', () => {
  const found = electrodeInSoil('clay', (earthResistivity) => rodResistance({ ...rod, earthResistivity }));
  // ρ/(2πL)·(ln(8L/d) − 1) at 2 and at 100 Ω·m
  expect(found.least).toBeCloseTo(1.46324, 5);
  expect(found.most).toBeCloseTo(73.16189, 5);
  expect(found.by).toContain('to be measured');
});

test.each(soils)('%s: the range is in order, and as wide as the band', (soil) => {
  const found = electrodeInSoil(soil, (earthResistivity) => rodResistance({ ...rod, earthResistivity }));
  const [, least, most] = soilResistivities.rows.find((r) => r[0] === soil) ?? [];
  expect(found.least).toBeLessThan(found.most);
  expect(found.most / found.least).toBeCloseTo(Number(most) / Number(least), 9);
});

test('soil that is not listed is refused, with what is', () => {
  expect(() =>
    electrodeInSoil('peat' as Soil, (earthResistivity) => rodResistance({ ...rod, earthResistivity })),
  ).toThrow(/clay/);
});

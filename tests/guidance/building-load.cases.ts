import { demandOfDwellings } from '../../src/demand/index.js';
import { buildingCurve } from '../../src/guidance/index.js';
import type { PublishedCase } from '../support/published.js';

const building = (dwellings: number, electricWaterHeating: boolean, published: number): PublishedCase => ({
  id: `building-of-${dwellings}-dwellings-${electricWaterHeating ? 'electric' : 'other'}-water`,
  about: `load of a building of ${dwellings} dwellings, water heated ${electricWaterHeating ? 'electrically' : 'otherwise'}`,
  source: { document: 'Encyclopaedia of mechatronics', where: 'main supply, extract after DIN 18015-1' },
  provenance: 'one-source',
  exercises: ['din18015/a1'],
  ours: () =>
    (demandOfDwellings([buildingCurve], { dwellings, electricWaterHeating }).find((r) => r.method === 'din18015-curve')
      ?.demand as number) / 1000,
  published,
  unit: 'kVA',
  tolerance: 1e-9,
});

/** Loads of whole buildings, as an encyclopaedia prints them. */
export const cases: readonly PublishedCase[] = [
  building(2, false, 24),
  building(6, false, 44),
  building(10, false, 55),
  building(2, true, 52),
  building(6, true, 87),
  building(10, true, 107),
];

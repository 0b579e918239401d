import { demandOfDwellings } from '../../src/demand/index.js';
import { kilovoltAmperes } from '../../src/index.js';
import { riserMethod } from '../../src/networks/index.js';
import type { PublishedCase } from '../support/published.js';

const demand = (): number =>
  demandOfDwellings([riserMethod], { dwellings: 20, each: kilovoltAmperes(9), storageHeating: false }).find(
    (r) => r.method === 'nfc14100-riser',
  )?.demand as number;
const one = (what: string, ours: () => number, published: number, unit: string): PublishedCase => ({
  id: `riser-20-flats-9-kva-${unit.toLowerCase()}`,
  about: `${what} of 20 flats of 9 kVA on a riser`,
  source: { document: 'Worked examples for larger sites', where: 'riser by the French table' },
  provenance: 'derived',
  exercises: ['riser-demand', 'nfc14100/riser'],
  ours,
  published,
  unit,
  tolerance: 0.05,
});

/** A riser of a block of flats. */
export const cases: readonly PublishedCase[] = [
  one('demand', () => demand() / 1e3, 88.2, 'kVA'),
  one('current at 400 V', () => demand() / (Math.sqrt(3) * 400), 127.3, 'A'),
];

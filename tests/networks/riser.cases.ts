import { demandOfDwellings } from '../../src/demand/index.js';
import { kilovoltAmperes } from '../../src/index.js';
import { riserMethod } from '../../src/networks/index.js';
import type { PublishedCase } from '../support/published.js';

const demandOf = (dwellings: number, each: number): number =>
  demandOfDwellings([riserMethod], { dwellings, each: kilovoltAmperes(each), storageHeating: false }).find(
    (r) => r.method === 'nfc14100-riser',
  )?.demand as number;
const demand = (): number => demandOf(20, 9);
const handbook = (where: string, dwellings: number, published: number): PublishedCase => ({
  id: `riser-${dwellings}-flats-6-kva-current`,
  about: `current of ${dwellings} flats of 6 kVA on a riser, 400 V`,
  source: { document: 'Installation handbook', where: `five storeys with 25 consumers, ${where}` },
  // the copy seen is garbled at these two figures
  provenance: 'memory',
  exercises: ['riser-demand', 'nfc14100/riser'],
  ours: () => demandOf(dwellings, 6) / (Math.sqrt(3) * 400),
  published,
  unit: 'A',
  tolerance: 0.5,
});
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
  handbook('at the foot of the riser', 25, 100),
  handbook('where it enters the third floor', 10, 55),
];

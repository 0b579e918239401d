/** What tables of BS 7671 have in common that differ in the cable only. */
import { entered } from '../source.js';

const document = { document: 'BS 7671', edition: entered } as const;

const loaded = { name: 'loaded', labels: ['2', '3'] } as const;
const conductorArea = { name: 'conductorArea', unit: 'mm²', between: 'exact' } as const;
const system = { name: 'system', labels: ['dc', 'single-phase', 'three-phase'] } as const;
const component = { name: 'component', labels: ['r', 'x', 'z'] } as const;

/** Capacities of single-core cable, not armoured. */
export const singleCoreCapacities = {
  axes: [
    { name: 'method', labels: ['A', 'B', 'C', 'F', 'G'] },
    loaded,
    {
      name: 'formation',
      labels: ['enclosed', 'flat-touching', 'flat-or-trefoil', 'trefoil', 'spaced-horizontal', 'spaced-vertical'],
    },
    conductorArea,
  ],
  columns: [
    ['A', '2', 'enclosed'],
    ['A', '3', 'enclosed'],
    ['B', '2', 'enclosed'],
    ['B', '3', 'enclosed'],
    ['C', '2', 'flat-touching'],
    ['C', '3', 'flat-or-trefoil'],
    ['F', '2', 'flat-touching'],
    ['F', '3', 'flat-touching'],
    ['F', '3', 'trefoil'],
    ['G', '3', 'spaced-horizontal'],
    ['G', '3', 'spaced-vertical'],
  ],
  cell: 'tabulatedCapacity',
  unit: 'A',
  source: document,
  notes: ['30 °C ambient.', 'Method G: two cables single-phase or three cables three-phase, one column for both.'],
} as const;

const multicoreNotes = [
  '30 °C air, 20 °C ground for method D.',
  'Two loaded: two-core cable, with or without protective conductor. Three loaded: three-, four- or five-core cable.',
] as const;

/** Capacities of multicore cable, not armoured. */
export const multicoreCapacities = {
  axes: [{ name: 'method', labels: ['A', 'B', 'C', 'E'] }, loaded, conductorArea],
  cell: 'tabulatedCapacity',
  unit: 'A',
  source: document,
  notes: multicoreNotes,
} as const;

/** Capacities of multicore armoured cable. */
export const armouredCapacities = {
  axes: [{ name: 'method', labels: ['C', 'D', 'E'] }, loaded, conductorArea],
  cell: 'tabulatedCapacity',
  unit: 'A',
  source: document,
  notes: multicoreNotes,
} as const;

/** Capacities of flexible cable. */
export const flexibleCapacities = {
  axes: [{ name: 'build', labels: ['multicore', 'single-core'] }, loaded, conductorArea],
  cell: 'tabulatedCapacity',
  unit: 'A',
  source: document,
} as const;

/** Voltage drops of single-core cable. */
export const singleCoreDrops = {
  axes: [
    system,
    { name: 'formation', labels: ['enclosed', 'flat-touching', 'trefoil', 'spaced'] },
    component,
    conductorArea,
  ],
  // biome-ignore format: r, x and z side by side, as they are printed
  columns: [
    ['dc', 'enclosed', 'z'],
    ['single-phase', 'enclosed', 'r'], ['single-phase', 'enclosed', 'x'], ['single-phase', 'enclosed', 'z'],
    ['single-phase', 'flat-touching', 'r'], ['single-phase', 'flat-touching', 'x'], ['single-phase', 'flat-touching', 'z'],
    ['single-phase', 'spaced', 'r'], ['single-phase', 'spaced', 'x'], ['single-phase', 'spaced', 'z'],
    ['three-phase', 'enclosed', 'r'], ['three-phase', 'enclosed', 'x'], ['three-phase', 'enclosed', 'z'],
    ['three-phase', 'trefoil', 'r'], ['three-phase', 'trefoil', 'x'], ['three-phase', 'trefoil', 'z'],
    ['three-phase', 'flat-touching', 'r'], ['three-phase', 'flat-touching', 'x'], ['three-phase', 'flat-touching', 'z'],
    ['three-phase', 'spaced', 'r'], ['three-phase', 'spaced', 'x'], ['three-phase', 'spaced', 'z'],
  ],
  cell: 'dropRate',
  unit: 'V/(A·m)',
  per: 1000,
  printed: 'mV/A/m',
  source: document,
  notes: ['Enclosed: methods A and B.', 'Three-phase figures give the drop between lines.'],
} as const;

/** Voltage drops of multicore cable, armoured or not. */
export const multicoreDrops = {
  axes: [system, component, conductorArea],
  cell: 'dropRate',
  unit: 'V/(A·m)',
  per: 1000,
  printed: 'mV/A/m',
  source: document,
  notes: ['Three-phase figures give the drop between lines.'],
} as const;

/** Largest earth fault loop impedances for fuses, as printed before there was a voltage factor. */
export const fuseImpedances = {
  axes: [
    { name: 'printed', labels: ['2008', '2011'] },
    { name: 'device', labels: ['BS 88-2.2', 'BS 88-2', 'BS 88-3', 'BS 1361', 'BS 1362', 'BS 3036'] },
    { name: 'deviceRating', unit: 'A', between: 'exact' },
  ],
  columns: [
    ['2008', 'BS 88-2.2'],
    ['2008', 'BS 1361'],
    ['2008', 'BS 3036'],
    ['2008', 'BS 1362'],
    ['2011', 'BS 88-2'],
    ['2011', 'BS 88-3'],
    ['2011', 'BS 3036'],
    ['2011', 'BS 1362'],
  ],
  cell: 'loopImpedanceLimit',
  unit: 'Ω',
  source: { document: 'BS 7671', edition: '2008 and 2008+A1:2011' },
  notes: [
    'Without voltage factor. Printed figures with C_min 0.95 (from Amendment 3:2015 on) were not available: they are computed from the operating current.',
    'BS 1361 and BS 88-2.2 were withdrawn in 2010; they are in service. The figures of 2011 were seen multiplied by 0.8 and divided back.',
  ],
} as const;

/** What tables of IEC 60364-5-52 Annex B have in common that differ in insulation, metal or number of conductors only. */

const document = { document: 'IEC 60364-5-52', edition: '2009' } as const;
const conductorArea = { name: 'conductorArea', unit: 'mm²', between: 'exact' } as const;

/** Capacities for methods A to D, with a number of loaded conductors. */
export const enclosedCapacities = {
  axes: [
    { name: 'material', labels: ['copper', 'aluminium'] },
    { name: 'method', labels: ['A1', 'A2', 'B1', 'B2', 'C', 'D1', 'D2'] },
    conductorArea,
  ],
  cell: 'tabulatedCapacity',
  unit: 'A',
  source: document,
} as const;

/** Capacities for methods E, F and G, of one metal. */
export const freeAirCapacities = {
  axes: [
    { name: 'method', labels: ['E', 'F', 'G'] },
    { name: 'loaded', labels: ['2', '3'] },
    { name: 'formation', labels: ['multicore', 'flat-touching', 'trefoil', 'spaced-horizontal', 'spaced-vertical'] },
    conductorArea,
  ],
  columns: [
    ['E', '2', 'multicore'],
    ['E', '3', 'multicore'],
    ['F', '2', 'flat-touching'],
    ['F', '3', 'trefoil'],
    ['F', '3', 'flat-touching'],
    ['G', '3', 'spaced-horizontal'],
    ['G', '3', 'spaced-vertical'],
  ],
  cell: 'tabulatedCapacity',
  unit: 'A',
  source: document,
} as const;

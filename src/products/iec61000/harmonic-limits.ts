import { table } from '../../core/index.js';

/** Largest harmonic currents of equipment of up to 16 A a line, class A: chargers among it. IEC 61000-3-2. */
export const classALimits = /* @__PURE__ */ table({
  id: 'iec61000-3-2/class-a',
  title: 'Largest harmonic currents of equipment of up to 16 A a line, class A',
  axes: [
    { name: 'class', labels: ['A'] },
    { name: 'harmonicOrder', unit: '1', between: 'exact' },
  ],
  rows: [
    [2, 1.08],
    [3, 2.3],
    [4, 0.43],
    [5, 1.14],
    [6, 0.3],
    [7, 0.77],
    [8, 0.23],
    [9, 0.4],
    [11, 0.33],
    [13, 0.21],
    [15, 0.15],
  ],
  cell: 'harmonicLimit',
  unit: 'A',
  source: { document: 'IEC 61000-3-2', clause: 'Table 1', provenance: 'one-source' },
  notes: ['Orders 17 to 39: 0.15 A times 15 over the order; even ones from 10: 0.23 A times 8 over the order.'],
});

/**
 * Largest harmonic currents of equipment above 16 A up to 75 A a line, other than balanced three-phase, over its reference
 * current, by the ratio of the fault level to its power. IEC 61000-3-12.
 */
export const largerEquipmentLimits = /* @__PURE__ */ table({
  id: 'iec61000-3-12/unbalanced',
  title: 'Largest harmonic currents of equipment above 16 A up to 75 A a line',
  axes: [
    { name: 'harmonicOrder', unit: '1', between: 'exact' },
    { name: 'shortCircuitRatio', unit: '1', between: 'exact' },
  ],
  rows: `
    harmonicOrder    3    5   7   9  11  13
    33            21.6 10.7 7.2 3.8 3.1   2
    66              24   13   8   5   4   3
    120             27   15  10   6   5   4
    250             35   20  13   9   8   6
    350             41   24  15  12  10   8`,
  cell: 'relativeHarmonicLimit',
  unit: '1',
  per: 100,
  printed: '%',
  source: { document: 'IEC 61000-3-12', edition: '2011', clause: 'Table 2', provenance: 'memory' },
  notes: ['The row of the largest ratio that the supply reaches.'],
});

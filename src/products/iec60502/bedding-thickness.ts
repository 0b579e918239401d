import { table } from '../../core/index.js';

/** Thickness of the extruded covering over laid-up cores, under the armour. IEC 60502-1. */
export const beddingThicknesses = /* @__PURE__ */ table({
  id: 'iec60502/bedding-thickness',
  title: 'Thickness of the extruded covering over laid-up cores',
  axes: [
    {
      name: 'laidUpDiameter',
      unit: 'mm',
      between: 'next-up',
      allowedBy: 'each row holds up to its diameter',
      below: 'first',
    },
  ],
  rows: `
    25   1
    35 1.2
    45 1.4
    60 1.6
    80 1.8`,
  cell: 'beddingThickness',
  unit: 'mm',
  source: { document: 'IEC 60502-1', clause: 'extruded inner coverings', provenance: 'memory' },
});

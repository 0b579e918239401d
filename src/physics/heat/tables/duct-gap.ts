import { table } from '../../../core/index.js';

/** Constants of the gap between a cable and its duct. IEC 60287-2-1. */
export const ductGap = /* @__PURE__ */ table({
  id: 'iec60287/duct-gap',
  title: 'Constants of the gap between a cable and its duct',
  axes: [
    { name: 'constant', labels: ['U', 'V', 'Y'] },
    { name: 'duct', labels: ['plastic', 'earthenware', 'metal'] },
  ],
  rows: [
    ['plastic', 1.87, 0.312, 0.0037],
    ['earthenware', 1.87, 0.28, 0.0036],
    ['metal', 5.2, 1.4, 0.011],
  ],
  cell: 'heatConstant',
  unit: '1',
  source: {
    document: 'IEC 60287-2-1',
    clause: 'cables in ducts, constants U, V and Y',
    provenance: 'memory',
    note: 'the row of plastic ducts stands in an open library of IEC 60287 that cites its clauses',
  },
  provenanceOf: { plastic: 'one-source' },
});

import { table } from '../../../core/index.js';

/** Factor k of bare conductors where nothing is damaged by their temperature. BS 7671 Table 54.6. */
export const table546 = /* @__PURE__ */ table({
  id: 'bs7671/54.6',
  title: 'Factor k of bare conductors where nothing is damaged by their temperature',
  axes: [
    { name: 'metal', labels: ['copper', 'aluminium', 'steel'] },
    { name: 'condition', labels: ['visible, restricted area', 'normal conditions', 'fire risk'] },
  ],
  columns: [['copper'], ['aluminium'], ['steel']],
  rows: [
    ['visible, restricted area', 228, 125, 82],
    ['normal conditions', 159, 105, 58],
    ['fire risk', 138, 91, 50],
  ],
  cell: 'adiabaticFactor',
  unit: 'A·√s/mm²',
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: 'Table 54.6',
    provenance: 'one-source',
    note: 'stood in a page of an older Dutch issue of IEC 60364-5-54',
  },
});

/** Initial temperature of bare conductors where nothing is damaged by their temperature. BS 7671 Table 54.6. */
export const table546Initial = /* @__PURE__ */ table({
  id: 'bs7671/54.6-initial',
  title: 'Initial temperature of bare conductors where nothing is damaged by their temperature',
  axes: [
    { name: 'metal', labels: ['copper', 'aluminium', 'steel'] },
    { name: 'condition', labels: ['visible, restricted area', 'normal conditions', 'fire risk'] },
  ],
  columns: [['copper'], ['aluminium'], ['steel']],
  rows: [
    ['visible, restricted area', 30, 30, 30],
    ['normal conditions', 30, 30, 30],
    ['fire risk', 30, 30, 30],
  ],
  cell: 'initialTemperature',
  unit: '°C',
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: 'Table 54.6',
    provenance: 'one-source',
    note: 'stood in a page of an older Dutch issue of IEC 60364-5-54',
  },
});

/** Final temperature of bare conductors where nothing is damaged by their temperature. BS 7671 Table 54.6. */
export const table546Final = /* @__PURE__ */ table({
  id: 'bs7671/54.6-final',
  title: 'Final temperature of bare conductors where nothing is damaged by their temperature',
  axes: [
    { name: 'metal', labels: ['copper', 'aluminium', 'steel'] },
    { name: 'condition', labels: ['visible, restricted area', 'normal conditions', 'fire risk'] },
  ],
  columns: [['copper'], ['aluminium'], ['steel']],
  rows: [
    ['visible, restricted area', 500, 300, 500],
    ['normal conditions', 200, 200, 200],
    ['fire risk', 150, 150, 150],
  ],
  cell: 'finalTemperature',
  unit: '°C',
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: 'Table 54.6',
    provenance: 'one-source',
    note: 'stood in a page of an older Dutch issue of IEC 60364-5-54',
  },
});

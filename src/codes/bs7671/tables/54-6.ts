import { kTable } from './k-table.js';

const print = {
  id: 'bs7671/54.6',
  clause: 'Table 54.6',
  of: 'bare conductors where nothing is damaged by their temperature',
  metals: ['copper', 'aluminium', 'steel'],
  by: 'condition',
  rows: [
    ['visible, restricted area', 30, [500, 300, 500], 228, 125, 82],
    ['normal conditions', 30, 200, 159, 105, 58],
    ['fire risk', 30, 150, 138, 91, 50],
  ],
} as const;

const seen = { provenance: 'one-source', note: 'stood in a page of an older Dutch issue of IEC 60364-5-54' } as const;

/** Factor k of bare conductors where nothing is damaged by their temperature. BS 7671 Table 54.6. */
export const table546 = /* @__PURE__ */ kTable(print, 'adiabaticFactor', seen);

/** Initial temperature of bare conductors where nothing is damaged by their temperature. BS 7671 Table 54.6. */
export const table546Initial = /* @__PURE__ */ kTable(print, 'initialTemperature', seen);

/** Final temperature of bare conductors where nothing is damaged by their temperature. BS 7671 Table 54.6. */
export const table546Final = /* @__PURE__ */ kTable(print, 'finalTemperature', seen);

import { kTable } from './k-table.js';

const print = {
  id: 'bs7671/54.2',
  clause: 'Table 54.2',
  of: 'protective conductors not in a cable and not bunched',
  metals: ['copper', 'aluminium', 'steel'],
  by: 'insulation',
  rows: [
    ['70 °C thermoplastic, up to 300 mm²', 30, 160, 143, 95, 52],
    ['70 °C thermoplastic, above 300 mm²', 30, 140, 133, 88, null],
    ['90 °C thermoplastic, up to 300 mm²', 30, 160, 143, 95, 52],
    ['90 °C thermoplastic, above 300 mm²', 30, 140, 133, 88, null],
    ['90 °C thermosetting', 30, 250, 176, 116, 64],
    ['85 °C thermosetting (rubber)', 30, 220, 166, 110, 60],
  ],
} as const;

const temperatures = {
  provenance: 'memory',
  note: 'up to 300 mm² 70 °C thermoplastic, thermosetting and rubber stood in a page of an older Dutch issue of IEC 60364-5-54; each pair of temperatures reproduces the printed k',
  provenanceOf: {
    '70 °C thermoplastic, up to 300 mm²': 'one-source',
    '90 °C thermosetting': 'one-source',
    '85 °C thermosetting (rubber)': 'one-source',
  },
} as const;

/** Factor k of protective conductors not in a cable and not bunched. BS 7671 Table 54.2. */
export const table542 = /* @__PURE__ */ kTable(print, 'adiabaticFactor', {
  provenance: 'memory',
  note: 'rubber stood in a page of an older Dutch issue of IEC 60364-5-54',
  provenanceOf: { copper: 'one-source', aluminium: 'one-source', steel: 'one-source' },
});

/** Initial temperature of protective conductors not in a cable and not bunched. BS 7671 Table 54.2. */
export const table542Initial = /* @__PURE__ */ kTable(print, 'initialTemperature', temperatures);

/** Final temperature of protective conductors not in a cable and not bunched. BS 7671 Table 54.2. */
export const table542Final = /* @__PURE__ */ kTable(print, 'finalTemperature', temperatures);

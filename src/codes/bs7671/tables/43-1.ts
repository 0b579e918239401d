import { kTable } from './k-table.js';

const print = {
  id: 'bs7671/43.1',
  clause: 'Table 43.1',
  of: 'live conductors',
  metals: ['copper', 'aluminium'],
  by: 'insulation',
  rows: [
    ['70 °C thermoplastic, up to 300 mm²', 70, 160, 115, 76],
    ['70 °C thermoplastic, above 300 mm²', 70, 140, 103, 68],
    ['90 °C thermoplastic, up to 300 mm²', 90, 160, 100, 66],
    ['90 °C thermoplastic, above 300 mm²', 90, 140, 86, 57],
    ['60 °C thermosetting (rubber)', 60, 200, 141, 93],
    ['85 °C thermosetting (rubber)', 85, 220, 134, 89],
    ['90 °C thermosetting (XLPE)', 90, 250, 143, 94],
    ['mineral, thermoplastic covered or exposed to touch', 70, 160, 115, null],
    ['mineral, bare and not exposed to touch', 105, 250, 135, null],
  ],
} as const;

const temperatures = { provenance: 'memory', note: 'each pair of temperatures reproduces the printed k' } as const;

/** Factor k of live conductors. BS 7671 Table 43.1. */
export const table431 = /* @__PURE__ */ kTable(print, 'adiabaticFactor', {
  provenance: 'memory',
  provenanceOf: {
    copper: 'one-source',
    'copper, 70 °C thermoplastic, up to 300 mm²': 'two-sources',
    'copper, 85 °C thermosetting (rubber)': 'memory',
    'copper, 90 °C thermosetting (XLPE)': 'two-sources',
    'aluminium, 70 °C thermoplastic, up to 300 mm²': 'one-source',
    'aluminium, 90 °C thermosetting (XLPE)': 'one-source',
  },
});

/** Initial temperature of live conductors. BS 7671 Table 43.1. */
export const table431Initial = /* @__PURE__ */ kTable(print, 'initialTemperature', temperatures);

/** Final temperature of live conductors. BS 7671 Table 43.1. */
export const table431Final = /* @__PURE__ */ kTable(print, 'finalTemperature', temperatures);

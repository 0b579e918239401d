import { kTable } from './k-table.js';

const print = {
  id: 'bs7671/54.3',
  clause: 'Table 54.3',
  of: 'protective conductors that are a core of a cable or bunched with cables',
  metals: ['copper', 'aluminium'],
  by: 'insulation',
  rows: [
    ['70 °C thermoplastic, up to 300 mm²', 70, 160, 115, 76],
    ['70 °C thermoplastic, above 300 mm²', 70, 140, 103, 68],
    ['90 °C thermoplastic, up to 300 mm²', 90, 160, 100, 66],
    ['90 °C thermoplastic, above 300 mm²', 90, 140, 86, 57],
    ['90 °C thermosetting', 90, 250, 143, 94],
    ['85 °C thermosetting (rubber)', 85, 220, 134, 89],
  ],
} as const;

const seen = {
  provenance: 'one-source',
  note: 'the figures are those of IEC 60364-5-54, Table A.54.4, in its Russian issue of 2011; for all but 90 °C thermoplastic and above 300 mm² also those of an older Dutch issue',
  provenanceOf: {
    '70 °C thermoplastic, up to 300 mm²': 'two-sources',
    '90 °C thermosetting': 'two-sources',
    '85 °C thermosetting (rubber)': 'two-sources',
  },
} as const;

/** Factor k of protective conductors that are a core of a cable or bunched with cables. BS 7671 Table 54.3. */
export const table543 = /* @__PURE__ */ kTable(print, 'adiabaticFactor', seen);

/** Initial temperature of protective conductors that are a core of a cable or bunched with cables. BS 7671 Table 54.3. */
export const table543Initial = /* @__PURE__ */ kTable(print, 'initialTemperature', seen);

/** Final temperature of protective conductors that are a core of a cable or bunched with cables. BS 7671 Table 54.3. */
export const table543Final = /* @__PURE__ */ kTable(print, 'finalTemperature', seen);

import { kTable } from './k-table.js';

const print = {
  id: 'bs7671/54.4',
  clause: 'Table 54.4',
  of: 'the sheath or armour of a cable',
  metals: ['aluminium', 'steel', 'lead'],
  by: 'insulation',
  rows: [
    ['70 °C thermoplastic', 60, 200, 93, 51, 26],
    ['90 °C thermoplastic', 80, 200, 85, 46, 23],
    ['90 °C thermosetting', 80, 200, 85, 46, 23],
    ['85 °C thermosetting (rubber)', 75, 200, 87, 48, null],
  ],
} as const;

const note =
  'aluminium and steel stood in IEC 60364-5-54, Table A.54.5, in its Russian issue of 2011; for 85 °C rubber that prints a final temperature of 220 °C; each pair of temperatures reproduces the printed k';

/** Factor k of the sheath or armour of a cable. BS 7671 Table 54.4. */
export const table544 = /* @__PURE__ */ kTable(print, 'adiabaticFactor', {
  provenance: 'memory',
  note: 'aluminium and steel are also in IEC 60364-5-54, Table A.54.5, in its Russian issue of 2011; for 85 °C rubber that prints 93 and 51 with a final temperature of 220 °C, where 87, 48 and 200 °C are recalled',
  provenanceOf: {
    '70 °C thermoplastic': 'one-source',
    '90 °C thermoplastic': 'one-source',
    '90 °C thermosetting': 'one-source',
  },
});

/** Initial temperature of the sheath or armour of a cable. BS 7671 Table 54.4. */
export const table544Initial = /* @__PURE__ */ kTable(print, 'initialTemperature', {
  provenance: 'memory',
  note,
  provenanceOf: { aluminium: 'one-source', steel: 'one-source' },
});

/** Final temperature of the sheath or armour of a cable. BS 7671 Table 54.4. */
export const table544Final = /* @__PURE__ */ kTable(print, 'finalTemperature', {
  provenance: 'memory',
  note,
  provenanceOf: { aluminium: 'one-source', steel: 'one-source', '85 °C thermosetting (rubber)': 'memory' },
});

import { kTable } from './k-table.js';

const print = {
  id: 'bs7671/54.5',
  clause: 'Table 54.5',
  of: 'steel conduit, ducting and trunking',
  metals: ['steel'],
  by: 'insulation',
  rows: [
    ['70 °C thermoplastic', 50, 160, 47],
    ['90 °C thermoplastic', 60, 160, 44],
    ['90 °C thermosetting', 60, 250, 58],
    ['85 °C thermosetting (rubber)', 58, 220, 54],
  ],
} as const;

const temperatures = { provenance: 'memory', note: 'each pair of temperatures reproduces the printed k' } as const;

/** Factor k of steel conduit, ducting and trunking. BS 7671 Table 54.5. */
export const table545 = /* @__PURE__ */ kTable(print, 'adiabaticFactor', {
  provenance: 'memory',
  provenanceOf: { steel: 'one-source', '85 °C thermosetting (rubber)': 'memory' },
});

/** Initial temperature of steel conduit, ducting and trunking. BS 7671 Table 54.5. */
export const table545Initial = /* @__PURE__ */ kTable(print, 'initialTemperature', temperatures);

/** Final temperature of steel conduit, ducting and trunking. BS 7671 Table 54.5. */
export const table545Final = /* @__PURE__ */ kTable(print, 'finalTemperature', temperatures);

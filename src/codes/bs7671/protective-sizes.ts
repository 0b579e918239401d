import { moving, multiplied } from '../../core/index.js';
import { bs } from './source.js';

/** Area of a protective conductor by the table, of the material of the line conductor. BS 7671, Table 54.7. */
export const tabulatedProtective = /* @__PURE__ */ moving({
  id: 'protective-conductor-by-table',
  title: 'Smallest protective conductor by the table, same material',
  moves: { conductorArea: 1 },
  output: 'tabulatedProtectiveArea',
  expression: 'conductorArea <= first ? conductorArea : conductorArea <= second ? first : conductorArea / 2',
  constants: { first: [16, 'mm²'], second: [35, 'mm²'] },
  compute: ({ conductorArea: s }) => (s <= 16 ? s : s <= 35 ? 16 : s / 2),
  source: /* @__PURE__ */ bs('Table 54.7'),
});

/** Area of a protective conductor by the table, for another material or insulation. BS 7671, Table 54.7. */
export const tabulatedProtectiveOther = /* @__PURE__ */ multiplied({
  id: 'protective-conductor-by-table-other-material',
  title: 'Smallest protective conductor by the table, k_1/k_2 times',
  times: ['tabulatedProtectiveArea', 'lineFactor'],
  over: ['protectiveFactor'],
  output: 'minimumProtectiveArea',
  source: /* @__PURE__ */ bs('Table 54.7', 'one-source'),
});

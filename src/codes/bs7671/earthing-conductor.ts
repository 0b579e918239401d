import { moving } from '../../core/index.js';
import { bs } from './source.js';

/**
 * Smallest earthing conductor by the table, of the material of the line conductors at the origin. BS 7671, 542.3.1,
 * Table 54.7.
 */
export const tabulatedEarthing = /* @__PURE__ */ moving({
  id: 'earthing-conductor-by-table',
  title: 'Smallest earthing conductor by the table, same material',
  moves: { conductorArea: 1 },
  output: 'minimumEarthingArea',
  expression: 'conductorArea <= first ? conductorArea : conductorArea <= second ? first : conductorArea / 2',
  constants: { first: [16, 'mm²'], second: [35, 'mm²'] },
  compute: ({ conductorArea: s }) => (s <= 16 ? s : s <= 35 ? 16 : s / 2),
  source: /* @__PURE__ */ bs('542.3.1, Table 54.7'),
});

/**
 * Smallest earthing conductor by the table or by calculation, the smaller of the two, where an earth fault at the origin
 * melts the fuse of the cut-out within 5 s: at a larger current it lets through no more. Copper outside a cable, k of
 * Table 54.2. BS 7671, 542.3.1, 543.1.1.
 */
export const calculatedEarthing = /* @__PURE__ */ moving({
  id: 'earthing-conductor-by-calculation',
  title: 'Smallest earthing conductor by the table or by calculation, copper behind a fuse',
  moves: { conductorArea: 1, slowOperatingCurrent: 1 },
  output: 'minimumEarthingArea',
  expression:
    'min(conductorArea <= first ? conductorArea : conductorArea <= second ? first : conductorArea / 2, sqrt(time) * slowOperatingCurrent / factor)',
  constants: { first: [16, 'mm²'], second: [35, 'mm²'], time: [5, 's'], factor: [143, 'A·√s/mm²'] },
  compute: ({ conductorArea: s, slowOperatingCurrent }) =>
    Math.min(s <= 16 ? s : s <= 35 ? 16 : s / 2, (Math.sqrt(5) * slowOperatingCurrent) / 143),
  source: /* @__PURE__ */ bs('542.3.1, 543.1.1, 543.1.3, Tables 54.2, 54.7'),
});

/**
 * Smallest main bonding conductor without PME: half the earthing conductor that is required, from 6 to 25 mm². BS
 * 7671, 544.1.1.
 */
export const halfOfEarthingConductor = /* @__PURE__ */ moving({
  id: 'bonding-half-of-earthing-conductor',
  title: 'Smallest main bonding conductor without PME',
  moves: { minimumEarthingArea: 1 },
  output: 'minimumBondingArea',
  expression: 'min(max(minimumEarthingArea / 2, least), most)',
  constants: { least: [6, 'mm²'], most: [25, 'mm²'] },
  compute: ({ minimumEarthingArea }) => Math.min(Math.max(minimumEarthingArea / 2, 6), 25),
  source: /* @__PURE__ */ bs('544.1.1'),
});

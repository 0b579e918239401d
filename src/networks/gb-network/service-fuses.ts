import { table } from '../../core/index.js';
import { type Amperes, amperes } from '../../units/index.js';

/**
 * Service fuses that dwellings in Great Britain are met with, and what they carry at 230 V. Pages of distributors,
 * service sizes.
 */
export const serviceFuses = /* @__PURE__ */ table({
  id: 'gb-network/service-fuses',
  title: 'Service fuses of dwellings',
  axes: [
    { name: 'connection', labels: ['single-phase', 'three-phase'] },
    { name: 'cutOutRating', unit: 'A', between: 'exact' },
  ],
  rows: `
    connection single-phase three-phase
    60                 13.8           -
    80                 18.4           -
    100                  23          69`,
  cell: 'demandPower',
  unit: 'VA',
  per: 0.001,
  printed: 'kVA',
  source: {
    document: 'pages of distributors',
    clause: 'service sizes',
    provenance: 'two-sources',
    note: 'three-phase seen in one text; kVA derived at 230 V; one operator calls its 60 A service 15 kVA (60 A at 250 V)',
  },
});

/**
 * Ratings of the service fuses that dwellings in Great Britain are met with.
 * @param phases line conductors of the service, 1 or 3
 * @returns ratings in ascending order, A
 * @example
 * ```ts
 * import { servicesOf } from 'ohmwright/networks';
 *
 * servicesOf(1); // => [60, 80, 100]
 * ```
 */
export function servicesOf(phases: 1 | 3): readonly Amperes[] {
  const connection = phases === 1 ? 'single-phase' : 'three-phase';
  return serviceFuses
    .offers('cutOutRating')
    .map((rating) => amperes(rating as number))
    .filter((cutOutRating) => serviceFuses.find({ connection, cutOutRating }) !== undefined);
}

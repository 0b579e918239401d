import { table } from '../../core/index.js';

/**
 * Largest prospective current that distributors in Great Britain declare at low-voltage intakes. Guidance of
 * distributors, enquiry values.
 */
export const declaredProspectiveCurrents = /* @__PURE__ */ table({
  id: 'gb-network/prospective-currents',
  title: 'Declared largest prospective current at the intake',
  axes: [
    {
      name: 'distributor',
      labels: ['northern Scotland, central southern England', 'Midlands, South West, South Wales'],
    },
    { name: 'connection', labels: ['single-phase', 'three-phase'] },
  ],
  rows: [
    ['single-phase', 16000, 19600],
    ['three-phase', 25000, 25900],
  ],
  cell: 'prospectiveCurrent',
  unit: 'A',
  source: { document: 'guidance of distributors', clause: 'enquiry values', provenance: 'one-source' },
  notes: ['For breaking capacity. Never as a fault current for disconnection.', 'Single-phase: up to 100 A.'],
});

import { table } from '../../core/index.js';

/** Customary largest external loop impedance of supplies up to 100 A in Great Britain. ENA ER P23/1. */
export const customaryImpedances = /* @__PURE__ */ table({
  id: 'gb-network/external-impedance',
  title: 'Customary largest external loop impedance of supplies up to 100 A',
  axes: [
    { name: 'supply', labels: ['up to 100 A'] },
    { name: 'system', labels: ['TN-C-S', 'TN-S', 'TT'] },
  ],
  rows: [
    ['TN-C-S', 0.35],
    ['TN-S', 0.8],
    ['TT', 21],
  ],
  cell: 'externalImpedance',
  unit: 'Ω',
  source: {
    document: 'ENA ER P23/1',
    edition: '1991',
    clause: 'Table 1',
    provenance: 'two-sources',
    note: 'superseded by P23/2:2018',
  },
  provenanceOf: { TT: 'one-source' },
  notes: [
    'For a first design only: confirm by measurement or enquiry. Long or small overhead supplies can be higher.',
    'TT: without the electrode of the installation; Z_e = 21 Ω + R_A.',
  ],
});

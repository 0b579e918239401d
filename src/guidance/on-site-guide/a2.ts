import { table } from '../../core/index.js';

/** Allowances for diversity by purpose and premises, as shares of the current. On-Site Guide Table A2. */
export const tableA2 = /* @__PURE__ */ table({
  id: 'on-site-guide/a2',
  title: 'Allowances for diversity by purpose and premises',
  axes: [
    { name: 'premises', labels: ['dwelling', 'small-shop', 'small-hotel'] },
    { name: 'part', labels: ['all', 'largest', 'second', 'others', 'excess'] },
    {
      name: 'purposeRow',
      labels: [
        'lighting',
        'heating-and-power',
        'cooking',
        'motors',
        'instantaneous-water-heating',
        'thermostatic-water-heating',
        'floor-heating',
        'storage-heating',
        'standard-circuits',
        'other-socket-outlets',
        'charge-point',
      ],
    },
  ],
  rows: [
    ['lighting', 0.66, null, null, null, null, 0.9, null, null, null, null, 0.75, null, null, null, null],
    ['heating-and-power', null, null, null, null, 0.5, null, 1, 0.75, 0.75, null, null, 1, 0.8, 0.6, null],
    ['cooking', null, null, null, null, 0.3, null, 1, 0.8, 0.6, null, null, 1, 0.8, 0.6, null],
    ['motors', null, null, null, null, null, null, 1, 0.8, 0.6, null, null, 1, 0.5, 0.5, null],
    ['instantaneous-water-heating', null, 1, 1, 0.25, null, null, 1, 1, 0.25, null, null, 1, 1, 0.25, null],
    ['thermostatic-water-heating', 1, null, null, null, null, 1, null, null, null, null, 1, null, null, null, null],
    ['floor-heating', 1, null, null, null, null, 1, null, null, null, null, 1, null, null, null, null],
    ['storage-heating', 1, null, null, null, null, 1, null, null, null, null, 1, null, null, null, null],
    ['standard-circuits', null, 1, 0.4, 0.4, null, null, 1, 0.5, 0.5, null, null, 1, 0.5, 0.5, null],
    ['other-socket-outlets', null, 1, 0.4, 0.4, null, null, 1, 0.75, 0.75, null, null, 1, 0.75, 0.75, null],
    ['charge-point', 1, null, null, null, null, 1, null, null, null, null, 1, null, null, null, null],
  ],
  cell: 'demandFactor',
  unit: '1',
  source: {
    document: 'On-Site Guide',
    clause: 'Table A2 (Guidance Note 1, Table H2)',
    provenance: 'one-source',
    note: 'dwellings seen in two texts, but for motors and other socket-outlets; shops and hotels in one, the row of motors in a guide to the 16th edition; charge points: BS 7671 722.311',
  },
  provenanceOf: { 'charge-point': 'two-sources' },
  notes: [
    'all: of the whole current; largest, second, others: of circuits or appliances in order; excess: of what exceeds the first amperes of Table A2 (first).',
    'Other socket-outlets in hotels: the print allows a lower share for other than main rooms (tableA2Conflicts).',
    'Dwellings have no row for motors.',
  ],
});

/** The part of a group's current that is taken in full, and what a socket-outlet in a cooker unit adds. On-Site Guide Table A2. */
export const tableA2First = /* @__PURE__ */ table({
  id: 'on-site-guide/a2-first',
  title: 'Currents taken in full: first amperes of a group, socket-outlet in a cooker unit',
  axes: [
    { name: 'allowance', labels: ['first', 'socket'] },
    { name: 'purposeRow', labels: ['heating-and-power', 'cooking'] },
  ],
  rows: [
    ['heating-and-power', 10, null],
    ['cooking', 10, 5],
  ],
  cell: 'allowanceCurrent',
  unit: 'A',
  source: { document: 'On-Site Guide', clause: 'Table A2 (Guidance Note 1, Table H2)', provenance: 'two-sources' },
  notes: ['Dwellings only. The first amperes are those of the whole group, not of each appliance.'],
});

/**
 * Shares that contradict Table A2 or refine it, each with how well it is known. On-Site Guide, Table A2, other socket-
 * outlets.
 */
export const tableA2Conflicts = /* @__PURE__ */ table({
  id: 'on-site-guide/a2-conflicts',
  title: 'Shares of other socket-outlets that differ from Table A2 as seen',
  axes: [
    { name: 'premises', labels: ['small-shop', 'small-hotel'] },
    { name: 'variant', labels: ['recalled', 'minor-rooms'] },
  ],
  rows: [
    ['recalled', 0.7, null],
    ['minor-rooms', null, 0.4],
  ],
  cell: 'demandFactor',
  unit: '1',
  source: { document: 'On-Site Guide', clause: 'Table A2, other socket-outlets', provenance: 'memory' },
  provenanceOf: { 'minor-rooms': 'one-source' },
});

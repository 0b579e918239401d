import { table } from '../../core/index.js';

/** Labour by task for a charge point job, one electrician. Trade knowledge; no published time study was found. */
export const labourTable = /* @__PURE__ */ table({
  id: 'site/labour',
  title: 'Labour by task, one electrician, hours',
  axes: [
    { name: 'estimate', labels: ['low', 'typical', 'high'] },
    {
      name: 'task',
      labels: [
        'survey and quotation',
        'notification paperwork',
        'travel and setting up',
        'isolation, tails and protective device',
        'cable, each 10 m clipped',
        'wall hole and sealing, each',
        'earth electrode with test',
        'fix and connect the point',
        'dead and live tests',
        'settings, handover and certificate',
      ],
    },
  ],
  rows: [
    ['survey and quotation', 0.5, 0.75, 1.5],
    ['notification paperwork', 0.25, 0.4, 1],
    ['travel and setting up', 0.25, 0.5, 1.5],
    ['isolation, tails and protective device', 0.5, 1, 2],
    ['cable, each 10 m clipped', 0.4, 0.7, 1.2],
    ['wall hole and sealing, each', 0.1, 0.2, 0.4],
    ['earth electrode with test', 0.3, 0.75, 2],
    ['fix and connect the point', 0.5, 1, 1.5],
    ['dead and live tests', 0.4, 0.75, 1],
    ['settings, handover and certificate', 0.4, 0.75, 1.25],
  ],
  cell: 'labour',
  unit: 's',
  per: /* @__PURE__ */ (() => 1 / 3600)(),
  printed: 'h',
  source: {
    document: 'Trade knowledge',
    clause: 'labour for a straightforward single-phase 7 kW job',
    provenance: 'memory',
    note: 'common practice, no source; a firm replaces it with its own',
  },
});

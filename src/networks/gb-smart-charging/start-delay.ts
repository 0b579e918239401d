import { table } from '../../core/index.js';

/**
 * Largest random delay of the start of a charge. SI 2021/1467. Electric Vehicles (Smart Charge Points) Regulations
 * 2021 (SI 2021/1467), randomised delay.
 */
export const startDelays = /* @__PURE__ */ table({
  id: 'gb-smart-charging/start-delay',
  title: 'Largest random delay',
  axes: [
    { name: 'unit', labels: ['delay'] },
    { name: 'maximum', labels: ['default', 'settable'] },
  ],
  rows: [
    ['default', 600],
    ['settable', 1800],
  ],
  cell: 'startDelay',
  unit: 's',
  source: {
    document: 'Electric Vehicles (Smart Charge Points) Regulations 2021 (SI 2021/1467)',
    edition: '2021',
    clause: 'randomised delay',
    provenance: 'two-sources',
    note: 'to the nearest second: one text',
  },
  notes: [
    'The regulation delays each start and each change of rate, up or down. Here a delay acts on the schedule only: a reduction that protects a fuse is never delayed. That is a rule of this library, not of the regulation.',
    'Not applied when the user overrides it, when an equivalent delay has been applied, or in a demand-side response.',
  ],
});

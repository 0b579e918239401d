import { table } from '../../../core/index.js';

/** Rating factor for cables with more than four loaded cores of up to 10 mm². DIN VDE 0298-4. */
export const manyCoresFactors = /* @__PURE__ */ table({
  id: 'vde0298/many-cores',
  title: 'Rating factor for cables with more than four loaded cores',
  axes: [{ name: 'loadedCores', unit: '1', between: 'next-up', allowedBy: 'the safe side' }],
  rows: `
    5  0.75
    7  0.65
    10 0.55
    14  0.5
    19 0.45
    24  0.4
    40 0.35
    61  0.3`,
  cell: 'coresFactor',
  unit: '1',
  source: { document: 'DIN VDE 0298-4', provenance: 'memory', note: 'not compared with BS 7671; in air only' },
});

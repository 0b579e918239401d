import { formula } from '../../core/index.js';

/** Current that a charge point offers: the smallest of setting, cable and allocation, and nothing below 6 A. IEC 61851-1. */
export const offeredCurrentOf = /* @__PURE__ */ formula({
  id: 'offered-current',
  title: 'Current that a charge point offers',
  inputs: ['setCurrent', 'cableCurrent', 'allocatedCurrent'],
  output: 'offeredCurrent',
  constants: { smallest: [6, 'A'], nothing: [0, 'A'] },
  expression:
    'min(setCurrent, cableCurrent, allocatedCurrent) < smallest ? nothing : min(setCurrent, cableCurrent, allocatedCurrent)',
  compute: ({ setCurrent, cableCurrent, allocatedCurrent }) => {
    const least = Math.min(setCurrent, cableCurrent, allocatedCurrent);
    return least < 6 ? 0 : least;
  },
  source: { document: 'IEC 61851-1', edition: '2017', clause: 'Annex A, Annex B', provenance: 'two-sources' },
});

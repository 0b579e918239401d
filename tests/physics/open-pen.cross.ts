import fc from 'fast-check';
import { openPen } from '../../src/physics/index.js';
import { type CrossCheck, counted } from '../support/cross-check.js';
import { openPenByNodes, openPenCases } from './star.js';

export const crossChecks: readonly CrossCheck[] = [
  {
    id: 'open-pen-nodal',
    about: 'touch voltage and voltage of the source neutral with the PEN conductor open, loads as resistances',
    against: 'nodal analysis of the star, solved by a general library (mathjs)',
    topic: 'open-pen',
    demanded: '1e-8 of the voltage, or 1e-11 V',
    leastShare: 1,
    run: () =>
      counted(fc.sample(openPenCases, { numRuns: 500, seed: 722 }), (network) => {
        const [ours, theirs] = [openPen(network), openPenByNodes(network)];
        return (['touchVoltage', 'sourceNeutral'] as const).every(
          (v) => Math.abs(ours[v] - theirs[v]) <= 1e-8 * Math.max(theirs[v], 1e-3),
        );
      }),
  },
];

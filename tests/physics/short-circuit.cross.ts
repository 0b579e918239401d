import fc from 'fast-check';
import { lineEarthFault, lineLineFault, lineNeutralFault, threePhaseFault } from '../../src/physics/index.js';
import { agree, type CrossCheck, counted } from '../support/cross-check.js';
import { faultsByKirchhoff, radialNetworks } from './kirchhoff.js';

export const crossChecks: readonly CrossCheck[] = [
  {
    id: 'faults-kirchhoff',
    about: 'three-phase, line-neutral, line-earth and line-line fault currents of radial networks, in closed form',
    against: 'Kirchhoff’s laws for every node and branch, solved by a general library (mathjs)',
    topic: 'fault-currents',
    demanded: '1e-7 of the current, for all four faults',
    leastShare: 1,
    run: () =>
      counted(fc.sample(radialNetworks, { numRuns: 200, seed: 60909 }), (network) => {
        const theirs = faultsByKirchhoff(network);
        return (
          agree(lineNeutralFault(network), theirs.lineNeutral, 1e-7) &&
          agree(lineEarthFault(network), theirs.lineEarth, 1e-7) &&
          agree(lineLineFault(network), theirs.lineLine, 1e-7) &&
          agree(threePhaseFault(network), theirs.threePhase, 1e-7)
        );
      }),
  },
];

import fc from 'fast-check';
import { meshedThreePhaseFault, voltageAtNode } from '../../../src/physics/power/definitions.js';
import { faultContributions, solveNetwork } from '../../../src/physics/power/index.js';
import { agree, type CrossCheck, counted } from '../../support/cross-check.js';
import { faultByKirchhoff, faultNetworks, loadNetworks, solvedByKirchhoff } from './branch-equations.js';

const against = 'Kirchhoff’s laws, a row for each node and each wire, solved by a general library (mathjs)';
const topic = 'site-supply';

export const crossChecks: readonly CrossCheck[] = [
  {
    id: 'load-network-kirchhoff',
    about:
      'voltages and branch currents of four-wire networks with rings, unlike cables in parallel and transformers on unlike taps',
    against,
    topic,
    demanded: '1e-6 of each voltage; 1e-6 of each current, or 1 µA of small ones',
    leastShare: 1,
    run: () =>
      counted(fc.sample(loadNetworks, { numRuns: 60, seed: 4 }), (network) => {
        const theirs = solvedByKirchhoff(network);
        const { branches } = solveNetwork(network);
        return (
          network.loads.every(({ node, line }, i) =>
            agree(voltageAtNode({ network, node, line }), theirs.loads[i] as number, 1e-6),
          ) &&
          branches.every((b, i) =>
            b.currents.every((c, k) => {
              const other = theirs.branches[i]?.[k] as number;
              return Math.abs(c - other) <= Math.max(1e-6, 1e-6 * other);
            }),
          )
        );
      }),
  },
  {
    id: 'fault-network-kirchhoff',
    about:
      'three-phase fault currents of networks with rings, transformers in parallel and motors, and what each branch carries',
    against,
    topic,
    demanded: '1e-9 of the fault current, for it and for each branch',
    leastShare: 1,
    run: () =>
      counted(fc.sample(faultNetworks, { numRuns: 100, seed: 60909 }), (place) => {
        const theirs = faultByKirchhoff(place.network, place.node);
        const ours = faultContributions(place);
        return (
          agree(meshedThreePhaseFault(place), theirs.fault, 1e-9) &&
          ours.every((c, i) => Math.abs(c.current - (theirs.branches[i] as number)) <= 1e-9 * theirs.fault)
        );
      }),
  },
];

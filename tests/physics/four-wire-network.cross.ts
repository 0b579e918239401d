import fc from 'fast-check';
import { solveRadial } from '../../src/physics/index.js';
import { agree, type CrossCheck, counted } from '../support/cross-check.js';
import { fourWireNetworks, nodal } from './nodal.js';

export const crossChecks: readonly CrossCheck[] = [
  {
    id: 'four-wire-network-nodal',
    about: 'voltages and neutral voltages of radial four-wire networks with loads of held current, power and impedance',
    against: 'nodal analysis: one matrix of all potentials, solved by a general library (mathjs)',
    topic: 'voltage-drop',
    demanded: '1e-9 of the voltage, at every node and line',
    leastShare: 1,
    run: () =>
      counted(fc.sample(fourWireNetworks, { numRuns: 200, seed: 1 }), (network) => {
        const ours = solveRadial(network);
        const theirs = nodal(network);
        return network.sections.every(
          (_, i) =>
            [0, 1, 2].every((k) => agree(ours.voltages[i]?.[k] as number, theirs.voltages[i]?.[k] as number, 1e-9)) &&
            Math.abs((ours.neutralVoltages[i] as number) - (theirs.neutrals[i] as number)) <=
              1e-9 * network.sourceVoltage,
        );
      }),
  },
];

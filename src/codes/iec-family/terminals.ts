import { compare } from '../../calculation/index.js';
import { unknown } from '../../core/index.js';
import { byCable } from '../../installation/index.js';
import type { terminalsCoolEnough } from './checks.js';
import { operatingTemperatureOf } from './conductor-constants.js';
import { isBuried } from './facts.js';
import { ofCircuit } from './places.js';

/**
 * Terminals are not heated beyond what they are made for: the hottest section counts, whether or not it reaches them.
 * @param check the check, as the code cites it
 * @param customary what the trade takes terminals for, of which nothing is known
 */
export const terminals = (check: ReturnType<typeof terminalsCoolEnough>, customary: string) => ({
  circuit: {
    terminalTemperature: ofCircuit(
      ({ run }) =>
        run.terminalTemperature ?? unknown(`the makers' instructions for the terminals at both ends; ${customary}`),
    ),
  },
  checks: [
    compare(check, {
      as: { conductorTemperature: 'hottestConductor' },
      because: ofCircuit(({ run }) => {
        const buried = run.stretches.some(isBuried) ? ', partly in the ground' : '';
        const most = [...new Set(byCable(run).map(({ cable }) => operatingTemperatureOf(cable.insulation)))];
        return `Insulation for ${most.join(' °C and ')} °C${buried}; computed from the share of the capacity that the load takes.`;
      }),
    }),
  ],
});

import { compare } from '../../calculation/index.js';
import { comparison, unknown } from '../../core/index.js';
import { operatingTemperatureOf } from './conductor-constants.js';
import { isBuried } from './facts.js';
import { ofCircuit } from './places.js';

/** S >= S_min. BS 7671, 524.1, Table 52.3. */
export const areaNotBelowMinimum = /* @__PURE__ */ comparison({
  id: 'minimum-size',
  title: 'The conductor is not smaller than the smallest size for its use',
  kind: 'at-least',
  value: 'conductorArea',
  limit: 'minimumArea',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '524.1, Table 52.3', provenance: 'memory' },
});

/** The conductor is not hotter than the terminals bear, θ <= θ_term. BS 7671, 512.1.5. */
export const terminalsCoolEnough = /* @__PURE__ */ comparison({
  id: 'terminal-temperature',
  title: 'The conductor is not hotter at its load than its terminals allow',
  kind: 'at-most',
  value: 'conductorTemperature',
  limit: 'terminalTemperature',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '512.1.5', provenance: 'memory' },
  caution: 'A terminal that runs hotter than it was made for loosens, and can start a fire.',
});

/**
 * Terminals are not heated beyond what they are made for: the hottest section counts, whether or not it reaches them.
 * @param check the check, as the code cites it
 * @param customary what the trade takes terminals for, of which nothing is known
 */
export const terminals = (check: typeof terminalsCoolEnough, customary: string) => ({
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
        return `Insulation for ${operatingTemperatureOf(run.cable.insulation)} °C${buried}; computed from the share of the capacity that the load takes.`;
      }),
    }),
  ],
});

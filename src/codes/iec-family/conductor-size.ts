import { comparison, missing } from '../../core/index.js';
import { type Celsius, celsius } from '../../units/index.js';
import type { Rule } from '../wiring-code.js';
import { operatingTemperatureOf } from './loop-impedance.js';
import { isBuried } from './rating-tables.js';

/** S >= S_min. BS 7671, 524.1, Table 52.3. */
export const areaNotBelowMinimum = /* @__PURE__ */ comparison({
  id: 'minimum-size',
  title: 'The conductor is not smaller than the smallest size for its use',
  kind: 'at-least',
  value: 'conductorArea',
  limit: 'minimumArea',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '524.1, Table 52.3', provenance: 'memory' },
  worse: { conductorArea: 'down' },
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
  worse: {
    designCurrent: 'up',
    ambientTemperature: 'up',
    groundTemperature: 'up',
    circuitsInGroup: 'up',
    soilResistivity: 'up',
    insulatedLength: 'up',
    terminalTemperature: 'down',
  },
});

/** Terminals whose maker says nothing else. */
const ordinaryTerminals: Celsius = /* @__PURE__ */ celsius(70);

/**
 * The rule that terminals are not heated beyond what they are made for: the hottest stretch counts, whether or not it
 * reaches the terminals.
 */
export function terminalTemperatureRule(by: string): Rule {
  return (circuit, findings, sheet) => {
    const hottest = findings.hottestConductor ?? missing({ kind: 'fact', fact: 'temperature of the conductor' });
    const conductorTemperature = sheet.given('conductorTemperature', hottest, 'hottest stretch at the design current');
    const stated = circuit.run.terminalTemperature;
    const terminalTemperature =
      stated === undefined || stated.state === 'unknown'
        ? sheet.given('terminalTemperature', ordinaryTerminals, by)
        : sheet.given('terminalTemperature', stated);
    const { insulation } = circuit.run.cable;
    const buried = circuit.run.stretches.some(isBuried);
    return [
      sheet.check(
        terminalsCoolEnough,
        { conductorTemperature, terminalTemperature },
        `Insulation for ${operatingTemperatureOf(insulation)} °C${buried ? ', partly in the ground' : ''}; computed from the share of the capacity that the load takes.`,
      ),
    ];
  };
}

import { terminalTemperatureRule } from '../../iec-family/conductor-size.js';
import type { Rule } from '../../wiring-code.js';

/** Terminals are not heated beyond what they are made for. BS 7671 512.1.5. */
export const terminalTemperature: Rule = (circuit, findings, sheet) =>
  terminalTemperatureRule(
    'terminals count as made for 70 °C unless their maker says otherwise, BS 7671:2018+A2:2022 512.1.5, from memory',
  )(circuit, findings, sheet);

import { volts } from '../../../units/index.js';
import { voltageDropRule } from '../../iec-family/drop-rule.js';
import type { Rule } from '../../wiring-code.js';
import { dropRateOf } from '../cable-tables.js';

/** Voltage drop from the origin. BS 7671 525, Appendix 4, 6. */
export const voltageDrop: Rule = (circuit, findings, sheet) =>
  voltageDropRule({
    rate: dropRateOf,
    wholeRateUpTo: 16,
    limit: { lighting: 0.03, other: 0.05, by: 'BS 7671:2018+A2:2022 Appendix 4, 6.4, public low-voltage supply' },
    supply: {
      least: volts(216.2),
      most: volts(253),
      by: 'Electricity Safety, Quality and Continuity Regulations 2002: 230 V -6 % +10 %',
    },
    window: {
      low: volts(207),
      high: volts(253),
      by: 'BS 7671:2018+A1:2020 722.411.4.1 (iv): 207 V to 253 V',
    },
  })(circuit, findings, sheet);

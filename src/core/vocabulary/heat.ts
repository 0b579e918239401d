import type { Amperes, Ratio } from '../../units/index.js';
import type { Terms } from './term.js';

/** Roles of heat. */
export interface HeatTerms {
  /** Current-carrying capacity by computation, not from a table I_c, A, 0 and up. */
  computedCapacity: Amperes;
  /** Exponent of a power law m, 1. */
  lawExponent: Ratio;
  /** Coefficient of the part that a power law deducts b, 1. */
  lawDeduction: Ratio;
  /** Exponent of the part that a power law deducts n, 1. */
  lawDeductionExponent: Ratio;
}

/** Symbols, units and ranges of the roles of heat. */
export const heatTerms: Terms<HeatTerms> = {
  computedCapacity: {
    symbol: 'I_c',
    unit: 'A',
    least: 0,
    words: 'current-carrying capacity by computation, not from a table',
  },
  lawExponent: { symbol: 'm', unit: '1', words: 'exponent of a power law' },
  lawDeduction: { symbol: 'b', unit: '1', words: 'coefficient of the part that a power law deducts' },
  lawDeductionExponent: { symbol: 'n', unit: '1', words: 'exponent of the part that a power law deducts' },
};

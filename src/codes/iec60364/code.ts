import { missing } from '../../core/index.js';
import { CalculationError } from '../../units/index.js';
import { ratingsFor } from '../iec-family/rated-currents.js';
import { circuitFigures, runFigures } from '../iec-family/test-figures.js';
import { timeCurrentLimits } from '../iec-family/time-current-limits.js';
import { notJudgedWords } from '../not-judged.js';
import type { WiringCode } from '../wiring-code.js';
import { calculator, gap } from './contents.js';
import { iecSizesFor } from './rating-tables.js';

const edition = '2009';

/** What has to be said wherever a verdict by this code is printed. */
const standing =
  'IEC 60364-5-52:2009, recalled in large part and not compared with the print; what its amendment of 2024 alters is not known. Rating and voltage drop only: the other parts of IEC 60364 are not entered, and 4-43:2008 has been replaced since. The edition in force, national codes and licensed practice decide.';

/**
 * IEC 60364 as a wiring code, as far as its rules were available: rating by Annex B and voltage drop by Annex G of part
 * 5-52. Every other aspect ends in `not-determined`.
 * @param wanted edition of part 5-52; there is `2009`
 * @returns the wiring code, for `assess`, `design` and `permitted`
 * @throws CalculationError `unknown-definition` for an edition that is not entered
 * @example
 * ```ts
 * import { iec60364 } from 'ohmwright/iec60364';
 *
 * iec60364('2009').name; // => 'IEC 60364'
 * iec60364('2024'); // throws unknown-definition
 * ```
 */
export function iec60364(wanted: string): WiringCode {
  if (wanted !== edition)
    throw new CalculationError('unknown-definition', `IEC 60364-5-52:${wanted} is not entered; there is ${edition}`, {
      kind: 'edition',
      id: wanted,
      known: [edition],
    });
  return {
    id: 'iec60364',
    name: 'IEC 60364',
    edition,
    standing,
    notJudged: notJudgedWords,
    // an amendment of 2024 is known of, its date of effect is not
    inForce: () => 'unknown',
    sizesFor: (run) => iecSizesFor(run).map((area) => ({ area })),
    ratingsFor,
    timeCurrentLimits,
    calculator: calculator(),
    figures: circuitFigures,
    runFigures,
    remedies: () => missing(gap),
    tests: { notEntered: gap },
    earthingOptions: () => [],
  };
}

import { type Fact, factValue, type Known, missing, type Sheet, silent, whenKnown } from '../../core/index.js';
import { type Ratio, ratio, type Seconds, type Watts, watts } from '../../units/index.js';
import { coincidentPowerOf } from './coincidence.js';
import { chargingProbability } from './formulas.js';

/** Like charge points of a car park. @inline */
export interface ChargingGroup {
  /** Number of charge points, whole. */
  readonly count: number;
  /** Power of one, W. */
  readonly power: Watts;
  /** Share that is used on the busiest evening. */
  readonly participation: Ratio;
  /** Duration of a session, s. */
  readonly sessionDuration: Seconds;
  /** Window in which vehicles arrive, s. */
  readonly arrivalWindow: Seconds;
}

/** What is asked of many charge points. */
export interface ChargingQuestion {
  /** Kinds of charge points. */
  readonly groups: readonly ChargingGroup[];
  /** Percentile that the figure is stated for, above 0 to 1. */
  readonly percentile: Ratio;
  /** Whether a tariff or a timer starts the charging of many at one instant. */
  readonly timed: Fact<boolean>;
}

/** An estimate of how many charge points charge together: never a design demand. */
export interface CoincidentCharging {
  /** Power that is not exceeded at the busiest instant with the stated probability, W. */
  readonly power: Known<Watts>;
  /** Power of all charge points at once, W: the figure for design unless a named load control holds them. */
  readonly all: Watts;
  readonly percentile: Ratio;
  /** What is taken for granted; to be printed beside the number. */
  readonly assumption: string;
  readonly cautions: readonly string[];
}

const cautions = [
  'For information. The demand for design is that of all charge points at once unless a load control with a name and a limit holds them.',
  'The largest demand of an evening exceeds the percentile at its busiest instant.',
  'Published factors differ several-fold between places; participation, duration and window are the user’s.',
];

/**
 * The power of many charge points that is not exceeded with a stated probability: exact binomial sums and convolution.
 * Whether charging is timed has to be known, because a common start makes sessions coincide.
 * @param question kinds of charge points, percentile, whether charging is timed
 * @param sheet where the calculation is written; nowhere when absent
 * @returns plain data
 * @throws CalculationError `out-of-range` for shares, percentiles and counts outside their ranges
 * @example
 * ```ts
 * import { hours, kilowatts, known, ratio, unknown } from 'ohmwright';
 * import { coincidentCharging } from 'ohmwright/demand';
 *
 * const groups = [
 *   { count: 10, power: kilowatts(7.36), participation: ratio(0.5), sessionDuration: hours(2), arrivalWindow: hours(4) },
 * ];
 * coincidentCharging({ groups, percentile: ratio(0.99), timed: known(false) }).power; // => 44160
 * coincidentCharging({ groups, percentile: ratio(0.99), timed: known(true) }).power; // => 66240
 * 'missing' in Object(coincidentCharging({ groups, percentile: ratio(0.99), timed: unknown() }).power); // => true
 * ```
 */
export function coincidentCharging(question: ChargingQuestion, sheet: Sheet = silent()): CoincidentCharging {
  const { percentile } = question;
  const timed =
    question.timed.state === 'unknown'
      ? missing({ kind: 'fact', fact: 'timed', obtain: 'ask for tariff and timer settings' })
      : factValue('timed', question.timed);
  const part = sheet.part('Charge points that charge together');
  const groups = question.groups.map((group, i) => {
    const own = part.part(`kind ${i + 1}`);
    const participation = own.given('participation', group.participation, 'stated by the user');
    const probability = whenKnown([timed], (yes): Known<number> => {
      if (yes) return participation; // all start at one instant
      const sessionDuration = own.given('sessionDuration', group.sessionDuration, 'stated by the user');
      const arrivalWindow = own.given('arrivalWindow', group.arrivalWindow, 'stated by the user');
      return own.step(chargingProbability, { participation, sessionDuration, arrivalWindow });
    });
    return whenKnown([probability as Known<number>], (p) => ({
      count: own.given('count', ratio(group.count), 'charge points of this kind') as number,
      power: own.given('chargePower', group.power, 'stated by the user') as number,
      probability: p,
    }));
  });
  const input = whenKnown(groups, (...all) => ({
    groups: all,
    percentile: part.given('percentile', percentile, 'stated by the user') as number,
  }));
  return {
    power: part.run(coincidentPowerOf, input),
    all: watts(question.groups.reduce((sum, g) => sum + g.count * g.power, 0)),
    percentile,
    assumption:
      'Charge points are independent; arrivals spread evenly over the window, sessions of equal length; with timed charging all that take part start at one instant.',
    cautions,
  };
}

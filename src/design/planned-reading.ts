import type { Calculation } from '../calculation/index.js';
import type { CircuitCase, CircuitFigures, RunFigures, TestPlan, WiringCode } from '../codes/wiring-code.js';
import { type Amount, type Gap, isMissing, type Known, whenKnown } from '../core/index.js';
import type { Run } from '../installation/index.js';
import type { Celsius, Ohms } from '../units/index.js';

/** A limit of a reading. @inline */
export interface ReadingLimit {
  readonly kind: 'at-most' | 'at-least' | 'must-not-trip';
  /** The limit; absent where only a statement is asked. */
  readonly amount?: Amount;
  readonly by: string;
  /** Whether it is a rule of thumb beside an exact limit: beyond it a reading only asks for a second look. */
  readonly thumb?: true;
}

/** One reading of a test: what it should be and how far it may go. @inline */
export interface PlannedReading {
  /** Name under which the reading is handed back. */
  readonly id: string;
  /** What is read, and between which points. */
  readonly what: string;
  readonly expected?: Amount;
  readonly limits: readonly ReadingLimit[];
  /** Figure of the table that the limit is made from, for conductors at their operating temperature: none for the meter. */
  readonly tabulated?: Amount;
  readonly gaps?: readonly Gap[];
  /** Why a limit that belongs to it is not there: a reading alone then decides nothing. */
  readonly limitGaps?: readonly Gap[];
  /** Name of the reading that may stand for it: where that was taken, this one leaves nothing open. */
  readonly alternative?: string;
  /** Name of a reading that is never less, and stands for this one where it was not taken. */
  readonly boundedBy?: string;
  readonly note?: string;
}

/** What a test sheet is made for. @inline */
export interface TestSheetInput {
  /** The wiring code, for its tests. */
  readonly code: WiringCode;
  readonly circuit: CircuitCase;
  /** Temperature of the conductors on the day, °C. */
  readonly testTemperature: Celsius;
  /** Whether electronics stay connected during the insulation test. */
  readonly electronics: 'disconnected' | 'connected';
}

/** What the readings of one test are worked out from. */
export interface TestCase extends TestSheetInput {
  /** The tests of the edition. */
  readonly plan: TestPlan;
  /** The circuit at the temperature of the test, and its figures by name. */
  readonly calculation: Calculation;
  readonly figures: CircuitFigures;
}

/** An amount with its name and unit. */
export const amount = (name: string, value: number, unit: string): Amount => ({ name, value, unit });
/** What a reading should be, or why there is no figure. */
export const maybe = (value: Known<number>, name: string, unit: string): Pick<PlannedReading, 'expected' | 'gaps'> =>
  isMissing(value) ? { gaps: value.missing } : { expected: amount(name, value, unit) };
/** An upper limit, where it is known. */
export const atMost = (value: Known<number>, name: string, unit: string, by: string): readonly ReadingLimit[] =>
  isMissing(value) ? [] : [{ kind: 'at-most', amount: amount(name, value, unit), by }];
/** A lower limit, where it is known. */
export const atLeast = (value: Known<number>, name: string, unit: string, by: string): readonly ReadingLimit[] =>
  isMissing(value) ? [] : [{ kind: 'at-least', amount: amount(name, value, unit), by }];

/**
 * A resistance near to what is expected: far from it the reading is of something else, an open conductor, a bridge or a
 * reading of nothing. Leads and the last digit of the instrument lose a few hundredths of an ohm.
 */
export function near(expected: Known<number>, { plan }: TestCase): Pick<PlannedReading, 'limits' | 'limitGaps'> {
  const { farFactor, ringDifference } = plan;
  const by = `${farFactor} times what is expected, more or less: common practice, no source`;
  const least = whenKnown([expected], (e) => Math.max(0, e / farFactor - ringDifference / 2));
  const most = whenKnown([expected], (e) => e * farFactor + ringDifference);
  return {
    limits: [...atMost(most, 'continuityMost', 'Ω', by), ...atLeast(least, 'continuityLeast', 'Ω', by)],
    ...lacking(expected),
  };
}

/** Why a reading of 0 is refused: it is of a lead that hung in the air, or on nothing. */
export const OF_NOTHING = 'a reading of nothing is no reading';
/** What flows or resists anywhere is above 0. */
export const aboveZero = (name: string, least: number, unit: string): readonly ReadingLimit[] =>
  atLeast(least, name, unit, OF_NOTHING);

/** What a limit lacks, where it is not known. */
export const lacking = (limit: Known<number>): Pick<PlannedReading, 'limitGaps'> =>
  isMissing(limit) ? { limitGaps: limit.missing } : {};

/** The figures of a run at a temperature, as the code works them out. */
export const runAt = ({ code, calculation }: TestCase, run: Run, at: 'operating' | 'test'): RunFigures =>
  code.runFigures(calculation, run, at);

/** A sum, where every part is known. */
export const sum = (values: readonly Known<Ohms>[]): Known<number> =>
  whenKnown(values, (...all) => all.reduce<number>((a, b) => a + b, 0));

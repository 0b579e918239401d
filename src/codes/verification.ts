import type { Known, Source } from '../core/index.js';
import type { Insulation } from '../installation/index.js';
import type { Amperes, Celsius, Ohms, Ratio, Seconds, Volts } from '../units/index.js';

/** A test of initial verification, by what it is. @inline */
export type TestKind =
  | 'continuity'
  | 'ring-continuity'
  | 'insulation'
  | 'polarity'
  | 'electrode'
  | 'loop-impedance'
  | 'prospective-current'
  | 'residual-current-device'
  | 'direct-current-detection'
  | 'phase-sequence'
  | 'functional'
  | 'voltage-under-load';

/** A test in the order of an edition. @inline */
export interface PlannedKind {
  readonly kind: TestKind;
  /** Before or after energising. */
  readonly state: 'dead' | 'live';
  /** Clause of the edition. */
  readonly clause: string;
}

/** What the conductors of a circuit or distribution circuit amount to at one temperature. @inline */
export interface RunFigures {
  /** Resistance of the line conductor, Ω. */
  readonly line: Known<Ohms>;
  /** Resistance of the protective conductor, Ω. */
  readonly protective: Known<Ohms>;
  /** R_1+R_2, Ω. */
  readonly both: Known<Ohms>;
  /** Impedance of line and protective conductor, Ω. */
  readonly impedance: Known<Ohms>;
}

/** A rule of thumb for readings of the loop impedance, made for conductors of one insulation. @inline */
export interface LoopRuleOfThumb {
  /** What the trade calls it. */
  readonly name: string;
  /** Insulation that it is made for. */
  readonly insulation: Insulation;
  /** Operating temperature of such conductors, °C. */
  readonly temperature: Celsius;
  /** Largest reading by it, Ω. */
  limitOf(figures: { readonly loopImpedanceLimit: Ohms }): Ohms;
}

/** What a wiring code says of initial verification in one of its editions. @inline */
export interface TestPlan {
  /** Edition, as cited. */
  readonly edition: string;
  /** Where the code speaks of verification, cited with every reading that is judged. */
  readonly source: Source;
  readonly order: readonly PlannedKind[];
  /** Insulation: test voltage and smallest resistance, by what is connected. */
  readonly insulation: {
    readonly disconnected: { readonly voltage: Volts; readonly least: Ohms };
    readonly connected: { readonly voltage: Volts; readonly least: Ohms };
    readonly clause: string;
  };
  /** Loop impedance: its clause, that for a residual current device on which disconnection rests, and its limits. */
  readonly loop: {
    readonly clause: string;
    readonly residualClause: string;
    /** Largest reading, exact in temperature: of the cold over the hot resistance of the path, Ω. */
    limitOf(figures: {
      readonly loopImpedanceLimit: Ohms;
      readonly externalImpedance: Ohms;
      readonly temperatureRatio: Ratio;
    }): Ohms;
    readonly ruleOfThumb?: LoopRuleOfThumb;
  };
  /** Earth electrode: clause of its limit, and the resistance above which it may not be stable, Ω. */
  readonly electrode: { readonly clause: string; readonly unstableAbove: Ohms };
  /** Touch voltage that the rated residual current may raise on loop or electrode, V. */
  readonly touchVoltage: Volts;
  /** Tests of residual current devices: multiple of the rated current, times, and the largest rating that is tested so. */
  readonly residual: readonly {
    readonly multiple: number;
    readonly delay: 'general' | 'selective';
    readonly least?: Seconds;
    readonly most?: Seconds;
    readonly upTo?: Amperes;
    readonly mustHold?: boolean;
  }[];
  /** Direct-current detector of a charge point: must not trip, must have tripped, in what time, and by which standard. */
  readonly directCurrent: {
    readonly least: Amperes;
    readonly most: Amperes;
    readonly time: Seconds;
    readonly by: string;
  };
  /** Voltage at the point, as a ratio of the nominal voltage, and whose range that is. */
  readonly voltage: { readonly least: Ratio; readonly most: Ratio; readonly by: string };
  /** How far a reading may lie from what is expected before it asks for a reason, as a ratio. */
  readonly deviation: Ratio;
  /** How many times more or less than expected a resistance may read before it fails, 1. */
  readonly farFactor: Ratio;
  /** Largest difference between the ends of a ring, Ω. */
  readonly ringDifference: Ohms;
}

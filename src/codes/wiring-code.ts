import type { Calculator } from '../calculation/index.js';
import type { Amount, CheckResult, Fact, Gap, Known, Sheet, Source, Verdict } from '../core/index.js';
import type {
  Board,
  ChargePoint,
  ChargePointEarthing,
  Installation,
  OvercurrentDevice,
  Path,
  Run,
} from '../installation/index.js';
import type { Envelope } from '../physics/index.js';
import type { Amperes, Celsius, Ohms, Ratio, SquareMillimetres, Volts } from '../units/index.js';
import type { Remedy } from './remedy.js';
import type { RunFigures, TestPlan } from './verification.js';

export type * from './remedy.js';
export type * from './verification.js';

/** Why a code has no rule for an aspect. @inline */
export interface NotRequired {
  /** Why, in words. */
  readonly notRequired: string;
  /** Where that is said, if anywhere. */
  readonly source?: Source;
}

/** What is not entered of a code, because its text was not available. @inline */
export interface NotEntered {
  /** What stands in the way. */
  readonly notEntered: Gap;
}

/** One circuit as a rule sees it: the installation, the way to the run, and what has been worked out before. */
export interface CircuitCase {
  /** The whole installation. */
  readonly installation: Installation;
  /** Boards and feeders from the origin, and the run itself. */
  readonly path: Path;
  /** The run, for short. */
  readonly run: Run;
  /** The board that the run leaves. */
  readonly board: Board;
  /** Whether the circuit has one or three loaded line conductors. */
  readonly phases: 1 | 3;
  /** Design current I_b, A. */
  readonly designCurrent: Known<Amperes>;
  /** Nominal voltage line to earth U_0, V. */
  readonly nominalVoltage: Volts;
  readonly feedsChargePoint: boolean;
  /** Options that change a figure and therefore have no default. */
  readonly options: AssessmentOptions;
}

/** Choices that change a figure; each is printed on the sheet. */
export interface AssessmentOptions {
  /**
   * Permitted voltage drop from the origin as a ratio, where the user sets it tighter than the code does. A looser one is
   * a departure: up to 0.085 a drop between the code's limit and it is not determined, and the designer answers for it.
   */
  readonly dropLimit?: number;
  /** Declared demand of feeders by name, A per line; else the load below them, at most the rating of their device. */
  readonly feederDemand?: Readonly<Record<string, Amperes>>;
  /** Correction of the tabulated drop for the real conductor temperature; none when absent. */
  readonly dropTemperature?: 'neighbours-at-full-load' | 'group-at-same-load';
  /** Temperature at which the dead tests will be made, °C. */
  readonly testTemperature?: Celsius;
  /** Figures graded from memory that the user accepts for let-through energy beyond the built-in ones. */
  readonly acceptMemoryFigures?: boolean;
  /** Temperature of the conductors before a fault, °C, where the real load may be counted instead of the table's. */
  readonly initialTemperature?: Celsius;
  /** Issue of the product standard that the fuses follow, where the code prints figures of two. */
  readonly fuseEdition?: '2008' | '2011';
  /** A maker's let-through energy for the device at the prospective current, A²s. */
  readonly makersLetThrough?: number;
  /** States of load in which the installation runs, every one that can occur. */
  readonly loadStates?: readonly LoadState[];
  /** Why a charge point never runs alone, where something prevents it. */
  readonly pointNeverAlone?: string;
  /** What is known of the premises and of the owner's wishes. */
  readonly premises?: Premises;
}

/** A state of load: current of each line conductor at nominal voltage, charge points at their full setting. @inline */
export interface LoadState {
  readonly name: string;
  /** Currents of L1, L2 and L3, A; the first alone on a single phase. */
  readonly currents: readonly [Amperes, Amperes, Amperes];
}

/** Facts about premises that decide on surge protection and arc detection. @inline */
export interface Premises {
  /** What they are. */
  readonly kind: Fact<
    'dwelling' | 'multiple-occupation' | 'student-accommodation' | 'care-home' | 'higher-risk-residential' | 'other'
  >;
  /** Whether overvoltage could lead to serious injury or loss of life, failure of a safety service, or heavy loss. */
  readonly overvoltageSerious?: Fact<boolean>;
  /** Whether the owner has declared that surge protection is not wanted because the loss can be borne. */
  readonly surgeProtectionDeclined?: Fact<boolean>;
  /** Whether an arc fault detection device stands at the origin of the circuit. */
  readonly arcDetection?: Fact<boolean>;
}

/** What the aspects find out for those that follow: figures shared between rules, so that nobody computes them twice. */
export interface Findings {
  /** Current-carrying capacity of the governing stretch, A. */
  capacity?: Known<Amperes>;
  /** Figures of the governing stretch from which the conductor's real temperature follows. */
  governingFigures?: {
    readonly tabulatedCapacity: Known<Amperes>;
    readonly ambientFactor: Known<Ratio>;
    readonly groupFactor: Known<Ratio>;
    readonly conductorTemperature: Known<Celsius>;
  };
  /** Temperature of the conductor at the design current in the stretch where it is hottest, °C. */
  hottestConductor?: Known<Celsius>;
  /** Name of the governing stretch. */
  governingStretch?: string;
  /** Voltage at the point at the smallest supply voltage, V: of its lines the lowest. */
  voltageAtLowestSupply?: Known<Volts>;
  /** Voltage at the point at the largest supply voltage, V: of its lines the highest. */
  voltageAtHighestSupply?: Known<Volts>;
  /** Voltage drop from the origin to the end of the run, V: of its lines the largest. */
  totalDrop?: Known<Volts>;
  /** Voltage drop to neutral of each run from the origin on, by its name, V: on the line where all of it is largest. */
  dropAlong?: Known<readonly { readonly run: string; readonly drop: Known<Volts> }[]>;
  /** Largest permitted drop from the origin, as a share of the nominal voltage. */
  dropLimit?: Known<Ratio>;
  /** Smallest supply voltage to be counted with, V. */
  lowestSupply?: Volts;
  /** R_1+R_2 of the run at 20 °C, Ω. */
  lineAndProtectiveCold?: Known<Ohms>;
  /** Loop impedance at the origin of the run, hot, Ω. */
  loopAtOrigin?: Known<Ohms>;
  /** Loop impedance at the end of the run, hot, Ω. */
  loopImpedance?: Known<Ohms>;
  /** Largest loop impedance for the disconnection time, Ω. */
  loopImpedanceLimit?: Known<Ohms>;
  /** Largest prospective current at the origin of the run, A. */
  prospectiveAtOrigin?: Known<Amperes>;
  /** Area of the protective conductor, mm². */
  protectiveArea?: Known<SquareMillimetres>;
}

/** A group of checks that stands in the contents list of the code. @inline */
export interface Listed {
  /** Figures of the contents list that rules of other groups ask for, until those stand in it too. */
  readonly finds: readonly (keyof Findings)[];
}
/** What a contents list calculates: a circuit, with what rules outside the list have found. */
export interface CircuitPlace extends CircuitCase {
  /** What rules outside the list have found so far. */
  readonly findings: Findings;
}

/** A rule: judges one aspect of a circuit, writes its sheet, and adds to the findings. */
export type Rule = (circuit: CircuitCase, findings: Findings, sheet: Sheet) => readonly CheckResult[];

/** Everything that the design of a circuit asks of any wiring code, in the order in which it is asked. */
export const aspects = [
  'coordination', // I_b <= I_n <= I_z, overload, every stretch
  'voltage-drop',
  'disconnection',
  'residual-current',
  'line-withstand',
  'protective-conductor',
  'breaking-capacity',
  'terminal-temperature',
  'minimum-size',
  'earthing-and-bonding',
  'charge-point-earthing',
  'surge-protection',
  'arc-detection',
] as const;

/** An aspect of a circuit. */
export type Aspect = (typeof aspects)[number];

/** An arrangement that a code has on offer to earth a charge point, and whether it remains for one. */
export interface EarthingOption {
  readonly arrangement: Exclude<ChargePointEarthing, 'supply-earth'>;
  /** What it is, with its place in the clause. */
  readonly title: string;
  /** `pass` when it remains, `fail` when it does not, `not-determined` when a fact decides that is not known. */
  readonly possible: Verdict;
  readonly because: string;
  readonly figures: readonly Amount[];
  readonly results: readonly CheckResult[];
}

/** A size of conductor. @inline */
export interface ConductorSize {
  /** Cross-section, mm². */
  readonly area: SquareMillimetres;
  /** What it is called, where it is not called by its area in mm². */
  readonly name?: string;
}

/** A wiring code as a value. A code that forgets an aspect does not compile; "no such rule" has to be said. */
export interface WiringCode {
  /** Short identifier. */
  readonly id: string;
  /** Name as cited. */
  readonly name: string;
  /** Edition, always stated. */
  readonly edition: string;
  /** What has to be said of the edition wherever a verdict is printed. */
  readonly standing: string;
  /** Whether the edition is in force on a date (ISO, yyyy-mm-dd), or unknown. */
  inForce(date: string): 'in-force' | 'withdrawn' | 'not-yet' | 'unknown';
  /** Preferred conductor sizes for the cable of a run, in ascending order. */
  sizesFor(run: Run): readonly ConductorSize[];
  /** Rated currents of the device kind of a run, in ascending order, A. */
  ratingsFor(run: Run): readonly Amperes[];
  /** Time-current limits of an overcurrent device by its product standard, A and s; undefined where none are entered. */
  timeCurrentLimits(device: OvercurrentDevice): Envelope | undefined;
  /** What the conductors of a run amount to at a temperature, °C, or in normal operation. */
  runFigures(run: Run, at: Celsius | 'operating', options: AssessmentOptions): RunFigures;
  /** External earth fault loop impedance, Ω. */
  externalImpedance(circuit: CircuitCase): Known<Ohms>;
  /** What could be changed where an earth fault is not disconnected in time, or what is missing to say so. */
  remedies(circuit: CircuitCase, findings: Findings): Known<readonly Remedy[]>;
  /** The tests of initial verification in this edition. */
  readonly tests: TestPlan | NotEntered;
  /** Every arrangement on offer to earth a charge point, judged; none where nothing has to be decided, or none is entered. */
  earthingOptions(circuit: CircuitCase, point: ChargePoint): readonly EarthingOption[];
  /** A rule for every aspect, or why there is none. */
  readonly rules: { readonly [A in Aspect]: Rule | NotRequired | Listed };
  /** Its contents list, for the groups that stand in it. */
  readonly calculator?: Calculator;
}

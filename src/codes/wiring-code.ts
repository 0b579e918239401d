import type { Calculation, Calculator, Group } from '../calculation/index.js';
import type { Amount, AttestedTables, CheckResult, Fact, Gap, Known, Statement, Verdict } from '../core/index.js';
import type {
  Board,
  ChargePoint,
  ChargePointEarthing,
  Installation,
  OvercurrentDevice,
  Path,
  ReferenceMethod,
  Run,
} from '../installation/index.js';
import type { Envelope } from '../physics/index.js';
import type { Amperes, Celsius, Metres, Ohms, Ratio, SquareMillimetres, Volts } from '../units/index.js';
import type { Remedy } from './remedy.js';
import type { RunFigures, TestPlan } from './verification.js';

export type * from './remedy.js';
export type * from './verification.js';

/** What is not entered of a code, because its text was not available. @inline */
export interface NotEntered {
  /** What stands in the way. */
  readonly notEntered: Gap;
}

/** One circuit: the installation, the way to the run, and what follows from them alone. */
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
  /** Design current I_b, A; the ends that it lies between where a load is known only within a range. */
  readonly designCurrent: Known<Amperes> | Fact<Amperes>;
  /** Nominal voltage line to earth U_0, V. */
  readonly nominalVoltage: Volts;
  readonly feedsChargePoint: boolean;
  /** Options that change a figure and therefore have no default. */
  readonly options: AssessmentOptions;
}

/** What is tapped along a feeder at a place and beyond, and its demand together. @inline */
export interface DemandBeyond {
  /** Distance from the start of the feeder, m; its end when absent. */
  readonly at?: Metres;
  /** Demand, A per line. */
  readonly demand: Amperes;
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
  /**
   * Declared demand of what is tapped along a feeder, by its name: at a distance from its start, m, or at its end where none is
   * named, and beyond, A per line. The pieces of the feeder carry it; what is connected beyond, where nothing is declared.
   */
  readonly demandBeyond?: Readonly<Record<string, readonly DemandBeyond[]>>;
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

/** Figures of a circuit that are asked for by name: each a value, or the reasons why there is none. */
export interface CircuitFigures {
  /** Current-carrying capacity of the governing stretch, A. */
  readonly capacity?: Known<Amperes>;
  /** Temperature of the conductor at the design current in the stretch where it is hottest, °C. */
  readonly hottestConductor?: Known<Celsius>;
  /** Name of the governing stretch. */
  readonly governingStretch?: Known<string>;
  /** Voltage at the point at the smallest supply voltage, V: of its lines the lowest. */
  readonly voltageAtLowestSupply?: Known<Volts>;
  /** Voltage at the point at the largest supply voltage, V: of its lines the highest. */
  readonly voltageAtHighestSupply?: Known<Volts>;
  /** Voltage drop from the origin to the end of the run, V: of its lines the largest. */
  readonly totalDrop?: Known<Volts>;
  /** Voltage drop to neutral of each run from the origin on, by its name, V: on the line where all of it is largest. */
  readonly dropAlong?: Known<readonly { readonly run: string; readonly drop: Known<Volts> }[]>;
  /** Largest permitted drop from the origin, as a share of the nominal voltage. */
  readonly dropLimit?: Known<Ratio>;
  /** Smallest supply voltage to be counted with, V. */
  readonly lowestSupply?: Known<Volts>;
  /** External earth fault loop impedance, Ω. */
  readonly externalImpedance?: Known<Ohms>;
  /** R_1+R_2 of the run at 20 °C, Ω. */
  readonly lineAndProtectiveCold?: Known<Ohms>;
  /** Loop impedance at the origin of the run, hot, Ω. */
  readonly loopAtOrigin?: Known<Ohms>;
  /** Loop impedance at the end of the run, hot, Ω. */
  readonly loopImpedance?: Known<Ohms>;
  /** Largest loop impedance for the disconnection time, Ω. */
  readonly loopImpedanceLimit?: Known<Ohms>;
  /** Largest prospective current at the origin of the run, A. */
  readonly prospectiveAtOrigin?: Known<Amperes>;
  /** Area of the protective conductor, mm². */
  readonly protectiveArea?: Known<SquareMillimetres>;
}

/** What a contents list calculates. */
export type CircuitPlace = CircuitCase;

/** Everything that the design of a circuit asks of any wiring code, in the order in which it is asked. */
export const aspects = [
  'origin-facts', // whether what is said of the origin agrees
  'coordination', // I_b <= I_n <= I_z, overload, every stretch
  'voltage-drop',
  'disconnection',
  'residual-current',
  'line-withstand',
  'protective-conductor',
  'breaking-capacity',
  'terminal-temperature',
  'minimum-size',
  'placement', // in the ground, in the sun
  'earthing-and-bonding',
  'charge-point-earthing',
  'surge-protection',
  'arc-detection',
] as const;

/** An aspect of a circuit. */
export type Aspect = (typeof aspects)[number];

/** An arrangement that a code has on offer to earth a charge point, and whether it remains for one. @inline */
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

/** A wiring code as a value. */
export interface WiringCode {
  /** Short identifier. */
  readonly id: string;
  /** Name as cited. */
  readonly name: string;
  /** Edition, always stated. */
  readonly edition: string;
  /** What has to be said of the edition wherever a verdict is printed. */
  readonly standing: string;
  /** What none of its checks looks at, in words; said beside every plan. */
  readonly notJudged: string;
  /** Whether the edition is in force on a date (ISO, yyyy-mm-dd), or unknown. */
  inForce(date: string): 'in-force' | 'withdrawn' | 'not-yet' | 'unknown';
  /** Preferred conductor sizes for the cable of a run, in ascending order. */
  sizesFor(run: Run): readonly ConductorSize[];
  /** Reference methods for which the cable of a run is rated; not known when absent, or where no table is entered for it. */
  methodsFor?(run: Run): readonly ReferenceMethod[] | undefined;
  /** That a cable is rated for the ways in which it is laid; said where none of those that may be used is. */
  readonly cableForRoute?: Statement;
  /** Rated currents of the device kind of a run, in ascending order, A. */
  ratingsFor(run: Run): readonly Amperes[];
  /** Time-current limits of an overcurrent device by its product standard, A and s; undefined where none are entered. */
  timeCurrentLimits(device: OvercurrentDevice): Envelope | undefined;
  /** Its contents list. A code that forgets an aspect does not compile: that it has no check, or none entered, has to be said. */
  readonly calculator: Calculator<{ readonly [A in Aspect]: Group }>;
  /** Figures of a calculation by name. */
  figures(calculation: Calculation): CircuitFigures;
  /** What the conductors of a run amount to in normal operation, or at the temperature of the test. */
  runFigures(calculation: Calculation, run: Run, at: 'operating' | 'test'): RunFigures;
  /** What could be changed where an earth fault is not disconnected in time, or what is missing to say so. */
  remedies(circuit: CircuitCase, figures: CircuitFigures): Known<readonly Remedy[]>;
  /** That each new circuit has a way of its own in a board; nothing is asked when absent. */
  readonly ownWay?: Statement;
  /** The tests of initial verification in this edition. */
  readonly tests: TestPlan | NotEntered;
  /** Tables as somebody compared them with the print, read in the place of those that are entered; none when absent. */
  readonly attested?: AttestedTables;
  /** Every arrangement on offer to earth a charge point, judged; none where nothing has to be decided, or none is entered. */
  earthingOptions(circuit: CircuitCase, point: ChargePoint): readonly EarthingOption[];
}

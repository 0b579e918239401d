import type { Alternatives, Comparison, Formula, Known, Sheet, Statement } from '../core/index.js';
import type { Supply } from '../installation/index.js';
import type { Amperes } from '../units/index.js';
import type { DemandMethod } from './method.js';

/**
 * What protects against overload what carries several circuits, without counting on diversity: the device ahead, or the
 * devices below together, or what is declared besides.
 * @inline
 */
export interface OverloadRules<
  L extends 'mainSwitchRating' | 'boardRating' | 'residualRatedCurrent' | 'tailsCapacity',
> {
  /** One of the three holds. */
  readonly protected: Alternatives;
  /** The rated current against the overcurrent device ahead. */
  readonly ahead: Comparison<L, 'aheadRating'>;
  /** The rated current against the overcurrent devices of the outgoing circuits, together. */
  readonly below: Comparison<L, 'servedRating'>;
  /** Of a switch or a board: its maker declares it protected. Of tails: behind the devices below, the fuse ahead protects them against fault. */
  readonly declared: Statement;
}

/** What a supply is judged by, and which services network operators offer. */
export interface SupplyRules {
  /** The demand against the rating of the cut-out. */
  readonly cutOut: Comparison<'demand', 'cutOutRating'>;
  /** The demand against the rating of a main switch. */
  readonly mainSwitch: Comparison<'demand', 'mainSwitchRating'>;
  /** What protects a main switch against overload. */
  readonly mainSwitchOverload: OverloadRules<'mainSwitchRating'>;
  /** The same of a board whose rating is stated; not judged when absent. */
  readonly boardOverload?: OverloadRules<'boardRating'>;
  /** The same of a residual current device at the origin of the installation. */
  readonly residualOverload: OverloadRules<'residualRatedCurrent'>;
  /** What protects the tails against overload. */
  readonly tails: OverloadRules<'tailsCapacity'>;
  /** That the service feeds this installation alone. */
  readonly ownService: Statement;
  /** Takes down what the tails carry, A, on a sheet. */
  tailsCapacity(supply: Supply, phases: 1 | 3, sheet: Sheet): Known<Amperes>;
  /** Ratings of the cut-out fuses of services with one or three line conductors, A, in ascending order. */
  services(phases: 1 | 3): readonly Amperes[];
}

/**
 * What a demand is found and judged by: methods, formulas and checks that a wiring code, a guide or network operators
 * give, each with its source.
 */
export interface DemandRules {
  /** Methods of guides, asked in this order, before those that belong to no guide (`generalMethods`). */
  readonly methods: readonly DemandMethod[];
  /** Methods for many dwellings, asked after those of guides where dwellings are listed. */
  readonly ofDwellings?: readonly DemandMethod[];
  /**
   * Those that govern where the user names none and no readings cover a year: the first that is for these premises, and
   * the connected load where none is.
   */
  readonly governing?: {
    /** In words, such as `the guide for the stated premises`. */
    readonly title: string;
    /** In order of precedence; each is one of `methods` or `ofDwellings`. */
    readonly methods: readonly DemandMethod[];
  };
  /** Demand with the charge points in full. */
  readonly withPoints: Formula<'existingDemand' | 'chargeCurrent', 'demand'>;
  /** Demand where a load control holds charge points back. */
  readonly withControl: Formula<'existingDemand' | 'chargeCurrent' | 'controlLimit' | 'restDemand', 'demand'>;
  /** What the supply is judged by. */
  readonly supply: SupplyRules;
  /** What a person has to be told with every demand. */
  readonly cautions: readonly string[];
}

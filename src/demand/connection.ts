import type { CheckResult, Known, Source } from '../core/index.js';
import type { Amperes, Volts } from '../units/index.js';

/** A device that a network operator wants to know of. @inline */
export interface ConnectedDevice {
  readonly id: string;
  readonly kind: 'charge-point' | 'heat-pump' | 'generation' | 'storage';
  readonly lines: readonly string[];
  /** Rated current, A per line. */
  readonly current: Known<Amperes>;
  /** Whether it is a charge point that can feed back. */
  readonly bidirectional: Known<boolean>;
  /** Whether it is yet to be connected. */
  readonly isNew: boolean;
}

/** Charge points that one control holds to a common limit. @inline */
export interface JointLimit {
  /** Name of the control. */
  readonly name: string;
  /** Limit, A per line. */
  readonly limit: Known<Amperes>;
  readonly devices: readonly string[];
}

/** What a network operator's rules decide on. */
export interface ConnectionFacts {
  /** Maximum demand on each line, A. */
  readonly lines: readonly { readonly line: string; readonly demand: Known<Amperes> }[];
  /** Nominal voltage line to earth, V. */
  readonly nominalVoltage: Volts;
  /** Number of line conductors of the supply. */
  readonly phases: Known<1 | 3>;
  /** Rating of the cut-out fuse, A. */
  readonly cutOutRating: Known<Amperes>;
  /** Whether the cut-out and its service are sound. */
  readonly cutOutSound: Known<boolean>;
  /** Whether the service is looped with a neighbour's. */
  readonly looped: Known<boolean>;
  /** Whether the supply is metered. */
  readonly metered: Known<boolean>;
  /** Whether it is one of several planned close together. */
  readonly programme: Known<boolean>;
  /** What the operator has to change of the supply itself, in words; nothing when absent. */
  readonly supplyChange?: string;
  /** Devices on the premises, old and new. */
  readonly devices: readonly ConnectedDevice[];
  /** Common limits of charge points. */
  readonly jointLimits: readonly JointLimit[];
  /** Day on which the work is completed, `yyyy-mm-dd`. */
  readonly completed?: string;
}

/** What has to be done, and by when. @inline */
export interface Duty {
  readonly id: string;
  readonly what: string;
  /** Last day, `yyyy-mm-dd`; absent where it comes before the work or the day of completion is not known. */
  readonly due?: string;
  readonly when: string;
  readonly source: Source;
}

/** The way to the network operator. */
export type Route = 'no-duty' | 'notify-after' | 'notify-before' | 'apply-first' | 'not-determined';

/** What a network operator's rules ask. */
export interface ConnectionDecision {
  readonly country: string;
  readonly route: Route;
  /** The way once facts that are assumed have been confirmed; absent where none is assumed, or it is the same. */
  readonly onceConfirmed?: Route;
  /** What to do while facts are missing. */
  readonly meanwhile?: string;
  /** The conditions that decided; for duties, a condition that fails is a duty that arises. */
  readonly results: readonly CheckResult[];
  readonly duties: readonly Duty[];
  readonly cautions: readonly string[];
}

/** The way to the network operator with everything confirmed that is assumed. */
export const routeOnceConfirmed = ({ route, onceConfirmed }: ConnectionDecision): Route => onceConfirmed ?? route;

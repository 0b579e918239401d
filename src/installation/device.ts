import type { Fact } from '../core/index.js';
import type { Amperes, Seconds } from '../units/index.js';

/** Product standard and type of an overcurrent device. Old ones are here because old boards are. @inline */
export type OvercurrentKind =
  | { readonly standard: 'EN 60898'; readonly type: 'B' | 'C' | 'D' }
  | { readonly standard: 'EN 61009'; readonly type: 'B' | 'C' | 'D' }
  | { readonly standard: 'BS 3871'; readonly type: '1' | '2' | '3' }
  | { readonly standard: 'BS 88-2' | 'BS 88-3' | 'BS 1361' | 'BS 1362' | 'BS 3036' };

/** What an RCBO for a final circuit is called by its standard, curve B. */
export const RCBO_B = { standard: 'EN 61009', type: 'B' } as const satisfies OvercurrentKind;
/** A device with a residual current part in the place of another: of the curve that it has, B where it has none. */
export const withResidualPart = (kind: OvercurrentKind): OvercurrentKind =>
  kind.standard === 'EN 60898' || kind.standard === 'EN 61009' ? { ...kind, standard: 'EN 61009' } : RCBO_B;
/** Standards of overcurrent devices, those that a fuse of the older of two prints is told by among them. */
export type FuseTableStandard = OvercurrentKind['standard'] | 'BS 88-2.2';

/** Where a device stands: an RCD at the origin, at the board and inside the point are different facts. @inline */
export type DevicePosition = 'origin-of-installation' | 'origin-of-circuit' | 'along-circuit' | 'inside-equipment';

/** An overcurrent device: fuse, circuit-breaker, or the overcurrent part of an RCBO. */
export interface OvercurrentDevice {
  /** Product standard and type. */
  readonly kind: Fact<OvercurrentKind>;
  /** Rated current or setting I_n, A. */
  readonly rating: Fact<Amperes>;
  /** Rated breaking capacity I_cn, A. */
  readonly breakingCapacity?: Fact<Amperes>;
  /** Conditional rating of the assembly, or back-up by the device ahead, as its maker declares it, A. */
  readonly conditionalRating?: Fact<Amperes>;
  /** Energy limiting class as marked on a circuit-breaker; not known when absent. */
  readonly energyClass?: Fact<1 | 2 | 3>;
  /**
   * A maker's factor for continuously loaded devices side by side, 1 where it stands apart or none is asked for; not known
   * when absent.
   */
  readonly groupingFactor?: Fact<number>;
}

/** A residual current device, alone or as part of an RCBO or of a charge point. */
export interface ResidualDevice {
  readonly position: DevicePosition;
  /** What residual waveforms it detects. */
  readonly type: Fact<'AC' | 'A' | 'F' | 'B'>;
  /** Rated residual operating current I_Δn, A. */
  readonly rating: Fact<Amperes>;
  /** Rated current I_n, A, where it limits what may flow; of a device on a board not known when absent. */
  readonly ratedCurrent?: Fact<Amperes>;
  /** Whether its maker declares it protected against overload by the devices around it; nobody says so when absent. */
  readonly overloadDeclared?: Fact<boolean>;
  /** General (instantaneous) or selective (S); above 30 mA not known when absent. */
  readonly delay?: Fact<'general' | 'selective'>;
  /** Set delay of an adjustable device, s: 0 s where none is set. Not known when absent, where the device is not said to be general. */
  readonly delayTime?: Fact<Seconds>;
  readonly opensAllLive?: Fact<boolean>;
  /** Whether it may be fed from both sides. */
  readonly bidirectional?: Fact<boolean>;
  /** How many charge points it serves; those that the installation has behind it when absent, and not known of one inside a point. */
  readonly pointsServed?: number;
}

/** A switch-disconnector or main switch. @inline */
export interface Switch {
  /** Rated current, A. */
  readonly rating: Fact<Amperes>;
  /** Whether its maker declares it protected against overload by the devices around it; nobody says so when absent. */
  readonly overloadDeclared?: Fact<boolean>;
  /** Fuse of a switch-fuse that stands in the tails ahead of it, A. */
  readonly fuseAhead?: Fact<Amperes>;
  /** Whether somebody looked and found no such switch-fuse; not known when absent and none is described. */
  readonly noFuseAhead?: Fact<boolean>;
}

/** Whether somebody looked and found no switch-fuse ahead of a main switch. */
export const foundNoFuseAhead = (mainSwitch: Switch | undefined): boolean =>
  mainSwitch?.noFuseAhead?.state === 'known' && mainSwitch.noFuseAhead.value;

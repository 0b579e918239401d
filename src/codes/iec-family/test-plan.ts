import type { Amperes, Ohms, Ratio, Seconds, Volts } from '../../units/index.js';

/** A test of initial verification, by what it is. */
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

/** A test in the order of an edition. */
export interface PlannedKind {
  /** What it is. */
  readonly kind: TestKind;
  /** Before or after energising. */
  readonly state: 'dead' | 'live';
  /** Clause of the edition. */
  readonly clause: string;
}

/** What a wiring code says of verification in one of its editions. */
export interface TestPlan {
  /** Edition, as cited. */
  readonly edition: string;
  /** The tests in their order. */
  readonly order: readonly PlannedKind[];
  /** Insulation: test voltage and smallest resistance, by what is connected. */
  readonly insulation: {
    readonly disconnected: { readonly voltage: Volts; readonly least: Ohms };
    readonly connected: { readonly voltage: Volts; readonly least: Ohms };
  };
  /** Tests of residual current devices: multiple of the rated current and times. */
  readonly residual: readonly {
    readonly multiple: number;
    readonly delay: 'general' | 'selective';
    readonly least?: Seconds;
    readonly most?: Seconds;
    readonly only30mA?: boolean;
    readonly mustHold?: boolean;
  }[];
  /** Direct-current detector of a charge point: must not trip, must have tripped, and in what time. */
  readonly directCurrent: { readonly least: Amperes; readonly most: Amperes; readonly time: Seconds };
  /** Voltage at the point. */
  readonly voltage: { readonly least: Ratio; readonly most: Ratio };
  /** How far a reading may lie from what is expected before it asks for a reason, as a ratio. */
  readonly deviation: Ratio;
  /** Largest difference between the ends of a ring, Ω. */
  readonly ringDifference: Ohms;
}

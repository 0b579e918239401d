import type { Fact } from '../core/index.js';
import type {
  Amperes,
  Hertz,
  Metres,
  OhmMetres,
  Ohms,
  Ratio,
  SquareMillimetres,
  VoltAmperes,
  Volts,
  Watts,
} from '../units/index.js';
import type { OvercurrentDevice } from './device.js';

/** Earthing system of the supply. TN-C-S with a combined conductor in the street is what the trade calls PME. @inline */
export type EarthingSystem = 'TN-S' | 'TN-C-S' | 'TT' | 'IT';

/**
 * How an earthing conductor is laid: above ground or buried, and what it is protected against; `buried-protected` is
 * against corrosion and mechanical damage.
 * @inline
 */
export type EarthingConductorLaid =
  | 'above-ground'
  | 'above-ground-protected'
  | 'buried'
  | 'buried-against-damage'
  | 'buried-against-corrosion'
  | 'buried-protected';

/** Earth electrode of the installation. */
export interface Electrode {
  /** Measured resistance to earth, Ω. */
  readonly resistance: Fact<Ohms>;
  /** Soil resistivity, Ω·m, where the resistance is to be estimated. */
  readonly soilResistivity?: Fact<OhmMetres>;
  /** Distance to the nearest metal that is earthed to another system, m. */
  readonly separation?: Fact<Metres>;
}

/** A transformer that works in parallel with an unlike one, by its plate. @inline */
export interface BesideTransformer {
  /** Rated power, VA. */
  readonly rating: Fact<VoltAmperes>;
  /** Impedance voltage u_k, as a ratio. */
  readonly impedanceVoltage: Fact<Ratio>;
  /** Loss at rated current, W. */
  readonly loss: Fact<Watts>;
}

/** A transformer that supplies the installation alone or with its like beside it, by its plate. */
export interface SupplyTransformer {
  /** Rated power, VA. */
  readonly rating: Fact<VoltAmperes>;
  /** Rated voltage between lines of its low side, without load, V. */
  readonly voltage: Fact<Volts>;
  /** Impedance voltage u_k, as a ratio; a plate is right within a tenth. */
  readonly impedanceVoltage: Fact<Ratio>;
  /** Loss at rated current, W. */
  readonly loss: Fact<Watts>;
  /** Three-phase fault level of the grid at its high side, VA. */
  readonly gridFaultPower: Fact<VoltAmperes>;
  readonly owner: 'operator' | 'customer';
  /** How many of the same kind work in parallel; one when absent. */
  readonly parallel?: number;
  /** Others, unlike it, that work in parallel with it, of the same voltages and vector group and on taps of the same ratio. */
  readonly beside?: readonly BesideTransformer[];
  /** Factor K of EN 50464-3 by which harmonics of the load raise what it feels, 1 and up; a sinusoidal load when absent. */
  readonly harmonicLossFactor?: Fact<Ratio>;
  /** Whether the origin stands at its terminals; not known when absent. */
  readonly atOrigin?: Fact<boolean>;
  /** Cable from its terminals to the origin. */
  readonly cable?: TransformerCable;
}

/** The cable between a transformer and the origin. @inline */
export interface TransformerCable {
  readonly material: 'copper' | 'aluminium';
  /** Length of the way, m. */
  readonly length: Fact<Metres>;
  /** One line conductor, mm². */
  readonly area: Fact<SquareMillimetres>;
  /** The protective or PEN conductor of the same metal, mm². */
  readonly protectiveArea: Fact<SquareMillimetres>;
  /** Conductors in parallel for each line; one when absent. */
  readonly parallel?: number;
}

/** The supply at the origin of the installation. */
export interface Supply {
  readonly system: Fact<EarthingSystem>;
  /** Number of line conductors. */
  readonly phases: Fact<1 | 3>;
  /** Nominal voltage line to earth U_0, V. */
  readonly nominalVoltage: Volts;
  /** Nominal frequency, Hz. */
  readonly frequency: Hertz;
  /** External earth fault loop impedance Z_e, Ω. */
  readonly externalImpedance: Fact<Ohms>;
  /** Whether the distributor confirms an external impedance above what is customary; nobody does when absent. */
  readonly externalImpedanceConfirmed?: Fact<boolean>;
  /** Whether the distributor confirms that neutral and earth of a TN-S supply are separate as far as its transformer; nobody does when absent. */
  readonly separateEarthConfirmed?: Fact<boolean>;
  /** Prospective fault current at the origin, A; the larger of line-to-neutral and line-to-earth, or of three phases. */
  readonly prospectiveCurrent: Fact<Amperes>;
  /** Service cut-out fuse of the network operator. */
  readonly cutOut: OvercurrentDevice;
  /** Whether the cut-out and its service are sound. */
  readonly cutOutSound?: Fact<boolean>;
  /** Whether the service is looped with a neighbour's. */
  readonly looped: Fact<boolean>;
  /** Whether the supply is metered. */
  readonly metered?: Fact<boolean>;
  /** Meter tails, mm². */
  readonly tails?: Fact<SquareMillimetres>;
  /** Whether the fuse ahead protects the tails against fault current, and the distributor lets it be relied on for that. */
  readonly tailsFaultProtected?: Fact<boolean>;
  /** Earthing conductor, mm². */
  readonly earthingConductor?: Fact<SquareMillimetres>;
  /** How the earthing conductor is laid; it decides its smallest size where it is buried, and on TT. Not known when absent. */
  readonly earthingConductorLaid?: Fact<EarthingConductorLaid>;
  /** Neutral conductor of the supply, mm², from which main bonding under PME is sized. */
  readonly supplyNeutral?: Fact<SquareMillimetres>;
  /** Whether somebody looked for extraneous-conductive-parts and found none; an empty list of bonding conductors says nothing without it. */
  readonly noExtraneousParts?: Fact<boolean>;
  /** Main protective bonding conductors, by what they bond. */
  readonly bonding?: readonly { readonly what: string; readonly area: Fact<SquareMillimetres> }[];
  /** Earth electrode, on a TT supply or beside another earth. */
  readonly electrode?: Electrode;
  /** The transformer that supplies it, where that is known; readings at the origin go before what follows from it. */
  readonly transformer?: SupplyTransformer;
  /** Meter-point administration number. */
  readonly meterPoint?: Fact<string>;
  /** Places where a combined neutral and earth is barred, or that have rules of their own; not known when absent. */
  readonly specialLocation?:
    | 'caravan-park'
    | 'marina'
    | 'construction-site'
    | 'filling-station'
    | 'farm'
    | 'swimming-pool'
    | 'other'
    | 'none';
  /** Highest demand metered, A per line, with what it rests on. */
  readonly meteredDemand?: { readonly current: Fact<Amperes>; readonly about: string };
}

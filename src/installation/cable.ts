import type { Fact } from '../core/index.js';
import type { Celsius, KelvinMetresPerWatt, Metres, OhmsPerMetre, SquareMillimetres } from '../units/index.js';

/** How a cable is built, in the trade's words. @inline */
export type CableConstruction =
  | 'flat-twin-and-earth' // BS 6004, thermoplastic, bare protective conductor smaller than the lines
  | 'single-core' // non-armoured, in conduit, trunking, on tray or clipped
  | 'multicore' // non-armoured, sheathed
  | 'armoured' // multicore, steel-wire armour
  | 'flexible';

/** What a conductor is made of. @inline */
export type ConductorMaterial = 'copper' | 'aluminium';

/** Insulation, by the largest conductor temperature it allows: thermoplastic 70 °C, thermosetting 90 °C. */
export type Insulation = 'thermoplastic-70' | 'thermosetting-90' | 'thermosetting-60';

/** What serves as protective conductor. @inline */
export type ProtectiveConductorKind =
  | 'core'
  | 'bare-core'
  | 'separate'
  | 'armour'
  | 'armour-and-separate'
  | 'conduit'
  | 'none';

/** A cable of a run. */
export interface Cable {
  readonly construction: CableConstruction;
  /** What the live conductors are made of. */
  readonly material: ConductorMaterial;
  readonly insulation: Insulation;
  /** Cores of a multicore cable, 5 for more as well; or loaded conductors of single-core cable. */
  readonly cores: 2 | 3 | 4 | 5;
  /** Cross-section of a line conductor, mm². */
  readonly area: Fact<SquareMillimetres>;
  /** Name of the size, where it is not called by its area in mm². */
  readonly sizeName?: string;
  /** Cores of one multicore cable that carry load together, those of other circuits too; of five-core cable not known when absent. */
  readonly loadedCores?: Fact<number>;
  /** Conductors in parallel per line; 1 when absent. */
  readonly parallel?: number;
  readonly protective: ProtectiveConductorKind;
  /** Cross-section of the protective conductor, mm², where it is not given by the construction. */
  readonly protectiveArea?: Fact<SquareMillimetres>;
  /** Impedance per metre at 20 °C of armour or conduit as its maker states it, Ω/m. */
  readonly protectiveImpedance?: Fact<OhmsPerMetre>;
  /** Material of the protective conductor where it differs from the lines. */
  readonly protectiveMaterial?: ConductorMaterial | 'steel';
}

/** Reference method of installation, as the tables name it. @inline */
export type ReferenceMethod =
  | 'A'
  | 'A1'
  | 'A2'
  | 'B'
  | 'B1'
  | 'B2'
  | 'C'
  | 'D'
  | 'D1'
  | 'D2'
  | 'E'
  | 'F'
  | 'G'
  | '100'
  | '101'
  | '102'
  | '103';

/** How grouped circuits lie. @inline */
export type GroupArrangement =
  | 'bunched' // in air, on a surface, embedded or enclosed
  | 'single-layer-wall'
  | 'single-layer-tray'
  | 'single-layer-ladder'
  | 'single-layer-ceiling'
  | 'direct-in-ground'
  | 'ducts-in-ground';

/** Other circuits that run beside a stretch. */
export interface Group {
  readonly arrangement: GroupArrangement;
  /** Circuits or multicore cables in the group, this one included; of conductors in parallel, each set counts. */
  readonly circuits: Fact<number>;
  /** Clear spacing between them where the table asks for it, m. */
  readonly spacing?: Metres;
  /** Of these, circuits that never carry more than 30 % of their grouped rating. */
  readonly lightlyLoaded?: number;
  /** Whether the circuits are of very unequal size; of more than one circuit not known when absent. */
  readonly unequal?: Fact<boolean>;
  /** Trays one above the other, and how they are built, where the table asks for it. */
  readonly tray?: {
    readonly support: 'perforated tray' | 'vertical perforated tray' | 'unperforated tray' | 'ladder, cleats';
    readonly trays: 1 | 2 | 3 | 6;
    readonly spaced: boolean;
  };
  /** Whether all of them are overloaded together, or not more than one at a time. */
  readonly overloads?: 'simultaneous' | 'not-simultaneous';
}

/** How flexible cable lies on a drum, as the tables name it. @inline */
export type Drum =
  | 'none'
  | 'radial, ventilated'
  | 'radial, unventilated'
  | 'ventilated cylindrical, 1 layer'
  | 'ventilated cylindrical, 2 layers'
  | 'ventilated cylindrical, 3 layers'
  | 'ventilated cylindrical, 4 layers';

/** A stretch of a route over which nothing changes. */
export interface Stretch {
  /** What the surveyor calls it. */
  readonly name: string;
  /** Length one way, m. */
  readonly length: Fact<Metres>;
  readonly method: Fact<ReferenceMethod>;
  /** Ambient temperature of air, °C; in the ground, of the ground. */
  readonly ambient: Fact<Celsius>;
  /** Its cable, where it is another than that of the run: what is there already, or what goes on from a joint. */
  readonly cable?: Cable;
  /** Whether its cable lies there already, so that none is bought or laid; not so when absent. */
  readonly existing?: boolean;
  /**
   * Whether the joint at its beginning stays accessible, or is of a kind that need not: made for the ground, encapsulated,
   * compressed, or maintenance-free. Not known when absent where the cable changes; where it does not, a joint is there when stated.
   */
  readonly jointAccessible?: Fact<boolean>;
  /** Circuits beside it, 1 circuit where it runs alone; not known when absent. */
  readonly group?: Group;
  /** Length over which thermal insulation surrounds the cable, m: 0 m where there is none. Above ground not known when absent. */
  readonly insulated?: Fact<Metres>;
  /** Drum on which flexible cable is wound while it is in use; of flexible cable not known when absent. */
  readonly drum?: Drum;
  /** How single-core cables lie where the table asks for it. */
  readonly formation?: 'flat-touching' | 'trefoil' | 'spaced-horizontal' | 'spaced-vertical';
  /** Soil thermal resistivity, K·m/W, for buried stretches. */
  readonly soilResistivity?: Fact<KelvinMetresPerWatt>;
  /** Depth below the surface, m: of the ground, or of the wall that conceals it; not known when absent. */
  readonly depth?: Fact<Metres>;
  /**
   * Whether it is concealed in a wall or partition less than 50 mm deep without earthed metal or other protection that
   * nails cannot pass; when absent, read from depth, method and containment, and not known where they do not say it.
   */
  readonly concealedShallow?: Fact<boolean>;
  /** Whether the wall that conceals it has metal parts inside, such as metal studs; fixings are none. Not known when absent. */
  readonly metalParts?: Fact<boolean>;
  /** Containment for quantities: clipped, in conduit, trunking, tray, duct, buried. */
  readonly containment?: 'clipped' | 'conduit' | 'trunking' | 'tray' | 'duct' | 'buried' | 'catenary' | 'free';
  /** Whether it is outdoors. */
  readonly outdoors?: boolean;
}

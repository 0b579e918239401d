import type {
  Cable,
  CableConstruction,
  ConductorMaterial,
  EarthingSystem,
  GroupArrangement,
  OvercurrentKind,
  ReferenceMethod,
} from '../installation/index.js';

/**
 * Facts of a circuit that are words or small data, by name, as the roles of the vocabulary are quantities by name. Lines
 * of a contents list read both in the same way.
 */
export interface Labels {
  /** Earthing system of the supply. */
  system: EarthingSystem;
  /** Kind of the overcurrent device. */
  deviceKind: OvercurrentKind;
  /** How the cable is built, with its material and insulation. */
  cable: Cable;
  /** Reference method as surveyed. */
  method: ReferenceMethod;
  /** Loaded conductors, as the tables count them. */
  loaded: '2' | '3';
  /** What a conductor is for, as the table of smallest sizes has it. */
  conductorUse: 'aluminium' | 'flexible' | 'lighting' | 'power';
  /** Whether a circuit feeds lighting and nothing else. */
  lightingOnly: boolean;
  /** Name of a section of the route. */
  sectionName: string;
  /** Name of a run. */
  runName: string;
  /** Whether a section lies in the ground. */
  buried: boolean;
  /** How grouped circuits lie. */
  arrangement: GroupArrangement;
  /** What a conductor is made of. */
  metal: ConductorMaterial;
  /** Class of a conductor: stranded, or flexible. */
  conductorClass: '2' | '5';
  /** Temperature at which a run is considered. */
  consideredAt: 'cold' | 'operating';
  /** Which conductor of a run it is. */
  conductor: 'line' | 'protective' | 'armour' | 'conduit' | 'earthed armour';
  /** Whether a conductor is of steel. */
  steel: boolean;
  /** Whose figure there is of the resistance of armour or conduit. */
  steelFigure: 'maker' | 'table' | 'to accept';
  /** How the resistance of what serves as protective conductor is found. */
  protectivePath: 'conductor' | 'steel' | 'armour-and-separate' | 'conduit' | 'none';
  /** How the area of the protective conductor is known. */
  protectiveAreaFrom: 'survey' | 'line' | 'flat cable';
  /** Whether the reactance of a run counts. */
  reactanceCounts: boolean;
  /** Whether a fault returns by the armour. */
  viaArmour: boolean;
  /** Metal by which a fault can return to earth, armour counted wherever there is one. */
  earthReturn: 'protective conductor' | 'armour' | 'armour and conductor';
  /** Way by which the current of a fault returns to the source. */
  wayBack: 'neutral' | 'earth';
  /** How a cable is built, as the table of protective conductors in flat cable has it. */
  construction: CableConstruction;
  /** Whether the circuit has one line conductor. */
  singlePhase: boolean;
  /** Whether it is a final circuit with socket-outlets. */
  finalSockets: boolean;
  /** What the premises are. */
  premises:
    | 'dwelling'
    | 'multiple-occupation'
    | 'student-accommodation'
    | 'care-home'
    | 'higher-risk-residential'
    | 'other';
  /** Whether an arc fault detection device stands at the origin of the circuit. */
  arcDetection: boolean;
  /** Whether the overcurrent device is rated at 32 A or less. */
  upTo32: boolean;
  /** Whether the rule on arc detection applies, or why it does not. */
  arcRuleApplies: true | string;
  /** What the rule on arc detection asks in the premises. */
  arcRule: 'required' | 'recommended';
  /** Whether surge protection stands at a board on the way. */
  surgeProtection: boolean;
  /** Whether overvoltage could lead to injury, failure of a safety service, or heavy loss. */
  overvoltageSerious: boolean;
  /** Whether the owner has declared that the loss can be borne. */
  surgeProtectionDeclined: boolean;
}

import type {
  Cable,
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
}

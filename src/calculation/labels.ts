import type { CheckResult, Fact, Gap } from '../core/index.js';
import type {
  Cable,
  CableConstruction,
  ChargePoint,
  ChargePointEarthing,
  ConductorMaterial,
  Drum,
  EarthingConductorLaid,
  EarthingSystem,
  FuseTableStandard,
  GroupArrangement,
  Insulation,
  OvercurrentKind,
  ProtectiveConductorKind,
  ReferenceMethod,
  Stretch,
  Supply,
} from '../installation/index.js';
import type { FourWireSection } from '../physics/four-wire-network.js';
import type { Amperes, Metres, Ohms, Volts } from '../units/index.js';

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
  /** Standard of the fuse in the cut-out, as the table of fuses has it. */
  cutOutStandard: FuseTableStandard;
  /** Whether the cut-out clears an earth fault at the origin within 5 s. */
  cutOutClears: boolean;
  /** Charging mode of a charge point. */
  chargingMode: 2 | 3 | 4;
  /** Whether a charge point is plugged into a socket-outlet. */
  plugged: boolean;
  /** Whether the socket-outlet that a vehicle is charged from carries its current for hours, and what is said of it. */
  socketCarries: boolean;
  /** Whether it is an industrial one, and whether the device of its circuit is no larger than it. */
  industrialSocket: boolean;
  deviceProtectsSocket: boolean;
  socketWords: string;
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
  /** What the length of a cable is called; false where one cable lies all the way. */
  cableName: string | false;
  /** Name of a run. */
  runName: string;
  /** Whether a section lies in the ground. */
  buried: boolean;
  /** Whether the circuit feeds a charge point. */
  feedsChargePoint: boolean;
  /** Whether the circuit feeds a charge point, one that is listed among the loads included. */
  feedsCharging: boolean;
  /** Whether the charge point of a circuit is all that it feeds. */
  pointAlone: boolean;
  /** Names of all that the circuit feeds. */
  sharers: string;
  /** Whether a source stands on the circuit together with something else. */
  sourceAmongLoads: boolean;
  /** Whether the sources of the circuit are wired in. */
  sourceFixed: boolean;
  /** Phases of the supply. */
  supplyPhases: 1 | 3;
  /** Phases that the states of load are counted by: the single phase, the harder case, where they are not known. */
  loadPhases: 1 | 3;
  /** Special place in which the installation is. */
  specialLocation: NonNullable<Supply['specialLocation']>;
  /** Whether the rules that are entered cover such a place. */
  placeCovered: boolean;
  /** Whether the place permits the earth of a supply whose neutral is earth as well. */
  combinedEarthAllowed: boolean;
  /** Why it does not. */
  combinedEarthBarred: string;
  /** Whether a vehicle outdoors can be charged from a point. */
  outdoors: boolean;
  /** `true` where a charge point has to have one of the earthing arrangements, or why not. */
  arrangementNeeded: true | string;
  /** Line conductors that a charge point is on. */
  pointLines: ChargePoint['lines'];
  /** Device against an open PEN conductor that is built into a charge point. */
  openPenDevice: 'none' | 'open-pen-detection-touch-voltage' | 'open-pen-detection-window' | 'open-pen-detection-other';
  /** Earthing arrangement that is stated for a charge point. */
  statedEarthing: ChargePointEarthing | 'none';
  /** Earthing arrangement of a charge point, as stated or by the device that it has. */
  earthingChosen: ChargePointEarthing | 'none';
  /** Results of every earthing arrangement on offer to a charge point. */
  earthingOffers: Readonly<Record<string, readonly CheckResult[]>>;
  /** Arrangements that remain for it. */
  earthingRemaining: readonly string[];
  /** Why the earth of a charge point does not do. */
  notEarthed: string;
  /** The arrangement that it is judged by. */
  earthingJudged: ChargePointEarthing | 'none';
  /** Whether the maker of open-PEN detection of another kind shows safety equal to the others. */
  openPenEqualSafety: boolean;
  /** Whether armour and protective conductor of the feed are separated from the earth of the point. */
  feedSeparated: boolean;
  /** Vehicles that the isolating transformer of a point supplies. */
  vehiclesSeparated: number;
  /** Currents of L1, L2 and L3 in a state of load as it is declared, A. */
  stateCurrents: readonly [Amperes, Amperes, Amperes];
  /** Whether the installation feeds other loads than charge points. */
  otherLoads: boolean;
  /** Currents of L1, L2 and L3 in each declared state of load, A. */
  declaredCurrents: readonly (readonly [Amperes, Amperes, Amperes])[];
  /** Whether in one of them the charge point runs at its full setting. */
  pointDeclared: boolean;
  /** What the states of load lack. */
  loadStatesLack: 'nothing' | 'states' | 'point';
  /** `true` where a state of load raises exposed metal above the limit without an electrode, or why not. */
  electrodeNeeded: true | string;
  /** Whether a state of load does. */
  stateNeedsElectrode: boolean;
  /** How grouped circuits lie. */
  arrangement: GroupArrangement;
  /** Insulation of the cable. */
  insulation: Insulation;
  /** Whether the circuit is a ring. */
  ring: boolean;
  /** Whether a ring feeds nothing but the accessories for which there is a rule of rings. */
  ringLoads: boolean;
  /** Whether the rule for ring final circuits holds. */
  ringRule: boolean;
  /** Whether the third-harmonic content of the load is stated. */
  harmonicsKnown: boolean;
  /** Whether the cable is chosen with third harmonics. */
  harmonicsCount: boolean;
  /** Conductor by which a cable is chosen with third harmonics. */
  chosenBy: 'line' | 'neutral';
  /** Reference method as the tables of the code list it. */
  listedMethod: ReferenceMethod;
  /** Whether a flexible cable is in the tables of cords. */
  cord: boolean;
  /** Table of capacities for the cable as it is laid. */
  capacityTable: string;
  /** Table of capacities for the cable were it clipped. */
  clippedTable: string;
  /** How single-core cables lie, as surveyed. */
  laid: NonNullable<Stretch['formation']> | 'not stated';
  /** How cables lie, as the tables of capacity have it. */
  formation: string;
  /** Table of factors for the temperature around the cable. */
  ambientTable: 'air' | 'ground' | 'flexible, 90 °C' | 'flexible, 60 °C' | 'cord' | 'none';
  /** What is said of the circuits beside a section. */
  grouping: 'not stated' | 'sets in parallel' | 'tray or ceiling' | 'side by side';
  /** Whether the circuits beside a section are of very unequal size. */
  unequal: boolean;
  /** Whether flexible cable is wound on a drum. */
  wound: boolean;
  /** How the circuits beside a section lie, as the tables of group factors have it. */
  lay:
    | 'touching'
    | 'ceiling'
    | 'direct'
    | 'ducts, multicore'
    | 'ducts, single-core'
    | 'trays, multicore'
    | 'trays, single-core'
    | 'trays not described'
    | 'single-core, one phase';
  /** Drum on which flexible cable is wound. */
  drum: Drum;
  /** How thermal insulation around the cable counts. */
  insulationCounts: 'in the method' | 'beside the method' | 'by a factor';
  /** Column of the soil factors for a section, or that nothing says which. */
  soilColumn: 'ducts' | 'direct' | 'not stated';
  /** How a cable lies in the ground. */
  laying: 'ducts' | 'direct';
  /** Whether the circuits of a group are overloaded together. */
  overloads: 'simultaneous' | 'not-simultaneous';
  /** Name of the section that uses its capacity most. */
  governingStretch: string;
  /** Its figures. */
  governingFigures: object;
  /** What a conductor is made of. */
  metal: ConductorMaterial;
  /** Class of a conductor: stranded, or flexible. */
  conductorClass: '2' | '5';
  /** Temperature at which a run is considered. */
  consideredAt: 'cold' | 'operating' | 'test';
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
  /** Whether a circuit is wired as single- or three-phase, as the tables of drop have it. */
  phaseSystem: 'single-phase' | 'three-phase';
  /** How single-core cables lie, as the tables of drop have it. */
  dropFormation: 'enclosed' | 'flat-touching' | 'trefoil' | 'spaced';
  /** How the drop per ampere and metre is put together: as tabulated, at a power factor, or at any. */
  rateKind: 'as tabulated' | 'at a power factor' | 'at the worst angle';
  /** Whether the tabulated drop has its resistive and reactive parts for the size. */
  rateInParts: boolean;
  /** How the drop is corrected for the temperature of the conductor. */
  dropCorrection: 'none' | 'neighbours-at-full-load' | 'group-at-same-load';
  /** Whether several conductors in parallel make each conductor of a run. */
  inParallel: boolean;
  /** Whether a cable is laid twice, in parallel. */
  pairInParallel: boolean;
  /** Whether it is laid more often than that. */
  manyInParallel: boolean;
  /** Whether that is so of any of the cables of a circuit. */
  anyInParallel: boolean;
  /** Whether what a fault in one of several protective conductors does is not worked out. */
  protectiveNotWorkedOut: boolean;
  /** Whether the current of the line alone gives the drop of a run: one line, or all loaded alike. */
  lineAlone: boolean;
  /** Whether loads are tapped along a run. */
  tapped: boolean;
  /** Name of a line that is followed, with those that are loaded as it is. */
  lineName: string;
  /** Names of the runs of the way, from the origin. */
  wayNames: readonly string[];
  /** Drop of each run on the line that is followed. */
  dropSteps: readonly Volts[];
  /** What each run adds to the drop. */
  dropAlong: readonly { readonly run: string; readonly drop: Volts }[];
  /** Resistance and reactance of a conductor of each run, and its length, from the origin. */
  wayResistances: readonly Ohms[];
  /** The same of reactances. */
  wayReactances: readonly Ohms[];
  /** The same of lengths. */
  wayLengths: readonly Metres[];
  /** The way as a network with what each run and each tap draws. */
  dropNetwork: { readonly sections: readonly FourWireSection[]; readonly section: number };
  /** What the runs of the way draw when a line is followed. */
  lineDraws: readonly unknown[];
  /** Place of the line that is followed: 0 for L1. */
  followedPlace: 0 | 1 | 2;
  /** Whether a network is considered in the other phase sequence. */
  reversedSequence: boolean;
  /** Several lines have a drop, and the worst is named. */
  severalLines: boolean;
  /** The line with the largest drop, and those with the smallest and the largest voltage. */
  worstLine: string;
  /** The same. */
  lowestLine: string;
  /** The same. */
  highestLine: string;
  /** Whether the circuit feeds a point with a device that watches the voltage between line and neutral. */
  windowed: boolean;
  /** Whether the circuit feeds lighting among others. */
  feedsLighting: boolean;
  /** Limit of the drop that a designer states looser than the code's, as a ratio; 0 where none is. */
  dropDeparture: number;
  /** What is not known of the loads behind the distribution circuits ahead. */
  unknownBehind: readonly Gap[];
  /** Who sets the limit of the drop. */
  dropLimitBy: 'the code' | 'the user';
  /** The code's limit of the drop, and that of the user; 0 where none is set. */
  dropLimitOfCode: number;
  dropLimitStated: number;
  /** How a cable is built, as the table of protective conductors in flat cable has it. */
  construction: CableConstruction;
  /** Whether the circuit has one line conductor. */
  singlePhase: boolean;
  /** Whether it feeds socket-outlets of up to 32 A itself. */
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
  /** Between which conductors the largest fault current flows. */
  largestFault: 'between lines' | 'line and neutral' | 'line and neutral or earth';
  /** That every distribution circuit ahead is counted in the prospective current. */
  feedersCounted: true;
  /** What has to be said of a prospective current behind a distribution circuit. */
  saidOfProspective: string | false;
  /** That a conditional rating is declared. */
  ratingDeclared: true;
  /** Whether a device breaks the prospective current by itself. */
  ownBreaks: boolean;
  /** Whether the prospective current is broken with the assembly or the device ahead. */
  conditionalBreaks: boolean;
  /** Kind of the overcurrent device, by the way in which its operating current is found. */
  deviceFamily: DeviceFamily;
  /** Kind of the device ahead, in the same way. */
  aheadFamily: DeviceFamily;
  /** Whether the standard of the fuse of the circuit, if it is one, has gates. */
  gated: boolean;
  /** Whether the standard of the fuse ahead, if it is one, has gates. */
  aheadGated: boolean;
  /** Kind of the device ahead. */
  aheadKind: OvercurrentKind;
  /** Type of a circuit-breaker. */
  tripType: TripType;
  /** Type of the circuit-breaker ahead. */
  aheadType: TripType;
  /** Whether figures from memory are accepted. */
  acceptsMemory: boolean;
  /** That there are figures by which to judge discrimination with a device ahead. */
  discriminationKnown: true;
  /** Whether the device of the circuit opens at once at the largest fault current. */
  opensAtOnce: boolean;
  /** What a verdict on discrimination rests on. */
  discriminationRests: string;
  /** Whether what is said of the origin agrees. */
  originAgrees: boolean;
  /** `true` where the external impedance has to be customary or confirmed, or why it has not. */
  impedanceCustomary: true | string;
  /** Whether the supply is earthed on its combined conductor. */
  pme: boolean;
  /** Main protective bonding conductors. */
  bonding: readonly unknown[];
  /** Whether a board stands in another building than the origin. */
  detached: boolean;
  /** Whether there are extraneous-conductive-parts in that building. */
  extraneousParts: boolean;
  /** `true` where the bonding of another building is judged, or why not. */
  outbuildingAsked: true | string;
  /** Whether it is judged. */
  outbuildingJudged: boolean;
  /** Whether the cable of a circuit is armoured. */
  armoured: boolean;
  /** Whether the joint at the beginning of a cable is accessible, or need not be. */
  jointAccess: boolean;
  /** Whether it is flat twin and earth. */
  flatCable: boolean;
  /** Whether a section lies in the ground, by its method or its containment. */
  inGround: boolean;
  /** Whether the sun can reach it. */
  inSun: boolean;
  /** What holds a cable in the ground. */
  groundContainment: NonNullable<Stretch['containment']> | 'not stated';
  /** Whether it lies as deep as custom has it. */
  deepEnough: boolean;
  /** Whether a spade does not reach its conductors. */
  protectedInGround: boolean;
  /** Whether there are main protective bonding conductors. */
  bondsFound: 'some' | 'none' | 'not known';
  /** What a main protective bonding conductor bonds. */
  bondName: string | undefined;
  /** How the earthing conductor is laid. */
  earthingConductorLaid: EarthingConductorLaid;
  /** Earthing arrangement, as the tables of disconnection have it. */
  earthing: 'TN' | 'TT';
  /** Where the external impedance comes from. */
  externalImpedanceFrom: 'survey' | 'electrode';
  /** What a circuit serves. */
  circuitServes: 'boards' | 'socket-outlets' | 'a cooker unit' | 'fixed equipment';
  /** Whether the circuit is a final circuit in the scope of the shorter disconnection times. */
  inTable411: boolean;
  /** Whether the required time is one for which the standard binds a circuit-breaker. */
  breakerBound: boolean;
  /** Edition of its standard that a fuse is taken for. */
  bs88: string;
  /** Standard of a fuse, as the table of operating currents has it. */
  fuseStandard: string;
  /** Whether a time is printed for which fuses are tabulated, or lies between. */
  requiredTimeIs: 'printed' | 'between';
  /** Whether a limit of the loop impedance is printed for the circuit. */
  inTable413: boolean;
  /** Whether an armour on the way counts with a recalled figure. */
  recalledArmour: boolean;
  /** Whether the delay of a residual current device is stated. */
  delayStated: boolean;
  /** Delay of a residual current device. */
  delay: 'general' | 'selective';
  /** Whether a delay is set on a residual current device. */
  delaySet: 'set' | 'none' | 'not known';
  /** Whether a maker's figure is given for the let-through energy. */
  makersGiven: boolean;
  /** Whether it serves for a fault: at the device, or where a circuit-breaker meets less than there. */
  makersServes: boolean;
  /** Whether a fault is at the device itself. */
  atDevice: boolean;
  /** Energy limiting class by which a circuit-breaker is judged. */
  energyClass: '1' | '2' | '3';
  /** Which fault it is: conductor and end. */
  fault: 'line, near' | 'line, at a change' | 'line, far' | 'protective, near' | 'protective, far';
  /** Whether the residual current device that sees the fault is of the general kind. */
  residualGeneral: boolean;
  /** How a circuit-breaker clears a fault. */
  breakerClears: 'at once' | 'by the residual current device' | 'late';
  /** Whether the prospective current guards the current of a fault. */
  guarded: boolean;
  /** Fault level for which the limits of class 3 are read. */
  classLevel: '3 kA' | '6 kA' | 'as marked';
  /** Whether the fault is one through the protective conductor. */
  ofProtective: boolean;
  /** Whether the limit of its class holds for a circuit-breaker at the fault current. */
  classApplies: boolean;
  /** Whether that limit has a figure. */
  classKnown: boolean;
  /** How a fuse clears a fault, by its published points. */
  fuseClears: 'after 5 s' | 'on the curve' | 'within 0.4 s' | 'within 5 s';
  /** Whether the let-through energy is known as an upper bound only. */
  energyIsBound: boolean;
  /** What a let-through energy rests on. */
  energyRests: string | false;
  /** Whether the real load counts for the temperature before a fault. */
  realLoad: boolean;
  /** Whether the line conductors have 300 mm² at most. */
  upTo300: boolean;
  /** Insulation of the line conductors, as the table of k has it. */
  lineInsulation: string;
  /** Insulation of a protective conductor, as the table of k has it. */
  protectiveInsulation: string;
  /** Insulation on an armour, as the table of k has it. */
  armourInsulation: string;
  /** Whether the rule on line conductors behind an overload device applies, or why it does not. */
  overloadSuffices: true | string;
  /** What serves as protective conductor of the circuit. */
  protectiveKind: ProtectiveConductorKind;
  /** Where the area of an armour comes from. */
  armourAreaFrom: 'survey' | 'table' | 'to accept';
  /** Whether the area of an armour is a recalled figure. */
  armourRecalled: boolean;
  /** What a verdict on an armour rests on. */
  armourRests: string | false;
  /** Whether the circuit feeds a charge point. */
  feedsPoint: boolean;
  /** Whether a cable, or a section of it, is concealed where nails reach it and no earthed metal is around it. */
  concealed: boolean;
  /** Whether the circuit serves a room with a bath or shower, or passes through zone 1 or 2 of one. */
  bathOrShower: boolean;
  /** Whether it feeds luminaires itself. */
  finalLighting: boolean;
  /** Whether those are in a household. */
  lightingOfHousehold: boolean;
  /** Least types of residual current device that the outlets of a circuit ask for. */
  typesAsked: readonly Fact<'AC' | 'A' | 'F' | 'B'>[];
  /** Whether those of which it is not stated are heaters of water alone. */
  onlyHeaters: boolean;
  /** Whether the type of a residual current device suits them. */
  typeSuits: boolean;
  /** Where the first residual current device stands. */
  residualPlace: 'upstream' | 'along' | 'inside' | 'none';
  /** Whether the cable itself depends on a residual current device. */
  cableDepends: boolean;
  /** Whether what stands behind a residual current device can feed back. */
  feedsBack: 'yes' | 'no' | 'not known';
  /** Whether any circuit of the board can feed back. */
  boardFedBack: 'yes' | 'no' | 'not known';
  /** Whether there is a residual current device that may give additional protection. */
  deviceThere: boolean;
  /** Whether it is said that there is none. */
  noneFitted: boolean;
  /** Whether there are several such devices. */
  severalDevices: boolean;
  /** Whether rating or delay of a residual current device are not known. */
  markingOpen: boolean;
  /** That it is known which of the devices protects. */
  protectingKnown: true;
  /** Whether a residual current device is delayed. */
  delayed: boolean;
  /** Whether a residual current device is of at most 30 mA and without delay. */
  prompt: boolean;
  /** Whether that is known of it. */
  surelyPrompt: boolean;
  /** Whether a device inside the charge point is described. */
  insideDescribed: boolean;
  /** Whether a residual current device surely suits a charge point: rating, delay, type and poles. */
  suits: boolean;
  suitableThere: boolean;
  /** Whether nobody says if one is inside the charge point. */
  insideOpen: boolean;
  /** That nothing stands ahead of which nobody says whether it is there. */
  unlistedAhead: true;
  /** That this is so, or no matter. */
  listedAhead: true;
  /** Whether it is said that no residual current device stands ahead of an existing circuit. */
  noneUpstream: boolean;
  /** Whether one of the devices is. */
  promptThere: boolean;
  /** Whether a residual current device is of at most 30 mA, but delayed. */
  smallButDelayed: boolean;
  /** Whether the device that protects is such a one. */
  protectsOnlyLate: boolean;
  /** Type of a residual current device: what residual waveforms it detects. */
  residualType: 'AC' | 'A' | 'F' | 'B';
  /** Whether a residual current device opens all live conductors. */
  opensAllLive: boolean;
  /** Whether a residual current device may be fed from both sides. */
  bidirectional: boolean;
  /** Whether a charge point detects 6 mA of direct current. */
  directCurrentDetection: boolean;
  /** Whether smooth direct current through a charge point is detected, by its device or beside it. */
  smoothDetected: boolean;
  /** Number of charge points, and of what else can pass smooth direct current, behind a residual current device. */
  pointsBehind: number;
  /** Whether a residual current device serves one outlet alone. */
  alone: boolean;
  /** Whether a residual current device is of at most 30 mA without delay and serves one charge point alone. */
  ownOfPoint: boolean;
  /** Whether a charge point has a residual current device of its own. */
  ownDevice: boolean;
  /** Whether smooth direct current through a residual current device is to be judged. */
  smoothAsked: 'asked' | 'not asked' | 'type not known';
  /** Delay of the residual current device ahead. */
  aheadDelay: 'general' | 'selective';
  /** Whether two residual current devices that follow one another are selective. */
  residualSelective: boolean;
  /** Whether the overcurrent device of its own run alone limits the current through a residual current device. */
  limitedAheadAlone: boolean;
  /** Whether all the circuits behind it are listed. */
  allBehindListed: boolean;
  /** What limits the current through a residual current device. */
  loadLimitedBy: 'both' | 'the device ahead' | 'the devices below';
}

type DeviceFamily = 'circuit-breaker' | 'old circuit-breaker' | 'fuse';
type TripType = 'B' | 'C' | 'D' | '1' | '2' | '3' | 'none';

import { fact, factOf, type Line } from '../../calculation/index.js';
import type { Fact, Known } from '../../core/index.js';
import type {
  ChargePoint,
  Line as LineConductor,
  OvercurrentDevice,
  ResidualDevice,
  Run,
  Stretch,
  Unlisted,
} from '../../installation/index.js';
import type { Amperes, SquareMillimetres } from '../../units/index.js';
import type { CircuitPlace, LoadState } from '../wiring-code.js';
import type { DropSection, FollowedLine, RunLoad } from './drop-loads.js';

/** The circuit itself, with its line conductors that are followed: each of its runs asks for them. */
export interface WholeCircuit extends CircuitPlace {
  followed(): readonly FollowedLine[];
}
/** The circuit over the length of one of its cables: its run is that length. */
export interface CablePlace extends CircuitPlace {
  /** Its place among them, from 0. */
  readonly cableNumber: number;
  /** Whether one cable lies all the way. */
  readonly oneCable: boolean;
}
/** A section of the route of the circuit. */
export interface SectionPlace {
  readonly circuit: CablePlace;
  readonly section: Stretch;
}
/** A run of the way from the origin: the distribution circuits ahead, the circuit itself last; each as often as it changes its cable. */
export interface RunPlace {
  readonly circuit: WholeCircuit;
  /** The run, over the length of one of its cables. */
  readonly run: Run;
  /** The run with all of its cables. */
  readonly wholeRun: Run;
  /** Place of the length among those of its run, from 0. */
  readonly cableNumber: number;
  /** Whether it is the circuit itself. */
  readonly own: boolean;
}
/** A section of the route of a run. */
export interface RunSectionPlace extends RunPlace {
  readonly section: Stretch;
}
/** A line conductor that is followed from the origin to the end of the circuit. */
export interface LinePlace {
  readonly circuit: CircuitPlace;
  readonly of: FollowedLine;
}
/** The network of a followed line in one of the phase sequences that there can be. */
export interface SequencePlace extends LinePlace {
  readonly reversed: boolean;
}
/** A run on a followed line. */
export interface RunLinePlace extends RunPlace {
  readonly of: FollowedLine;
  readonly load: RunLoad;
}
/** A piece of a run between two taps, on a followed line. */
export interface PiecePlace extends RunLinePlace {
  readonly piece: Known<DropSection>;
}
/** A section of a run over which the tabulated drop is the same. */
export interface RatePlace extends RunPlace {
  readonly section: Stretch | undefined;
}
/** A run at one of the temperatures at which its conductors are considered. */
export interface TemperaturePlace extends RunPlace {
  /** Cold at 20 °C, as warm as in normal operation, or as at the test. */
  readonly at: 'cold' | 'operating' | 'test';
}
/** A conductor of a run that carries a fault current to earth, at a temperature. */
export interface ConductorPlace extends TemperaturePlace {
  /** Which; an armour is earthed whether or not it serves as protective conductor. */
  readonly conductor: 'line' | 'protective' | 'armour' | 'conduit' | 'earthed armour';
}
/** A way by which the current of a fault in a run returns to the source. */
export interface ReturnPlace extends TemperaturePlace {
  readonly wayBack: 'neutral' | 'earth';
}
/** A main protective bonding conductor. */
export interface BondPlace {
  /** What it bonds. */
  readonly what: string;
  readonly area: Fact<SquareMillimetres>;
}
/** A residual current device on the way to what the circuit feeds. */
export interface ResidualUpstreamPlace {
  readonly circuit: CircuitPlace;
  readonly device: ResidualDevice;
  /** Its place from the origin of the installation on, from 1. */
  readonly number: number;
  /** Set where nobody says whether there is one. */
  readonly unlisted?: Unlisted;
  /** Set where it stands along the circuit, and is upstream of a part of the cable alone. */
  readonly along?: true;
}

/** A rating that is declared for the device together with others; without a rating where nothing is declared. */
export interface ConditionalRatingPlace {
  readonly circuit: CircuitPlace;
  readonly of: 'device' | 'assembly' | 'nobody';
  readonly rating?: Fact<Amperes>;
}
/** An overcurrent device ahead of the circuit's own: the cut-out, or that of a distribution circuit. */
export interface AheadPlace {
  readonly circuit: CircuitPlace;
  readonly name: string;
  readonly device: OvercurrentDevice;
  readonly cutOut: boolean;
}

/** A fault that a conductor of the circuit has to withstand. */
export interface FaultPlace {
  readonly circuit: CablePlace;
  /** Between live conductors, or to earth. */
  readonly conductor: 'line' | 'protective';
  /** Where the cable begins, where most flows in it, or at the far end of the circuit. */
  readonly end: 'near' | 'far';
}

/** A charge point that the circuit feeds. */
export interface PointPlace {
  readonly circuit: CircuitPlace;
  readonly point: ChargePoint;
}
/** A state of load that a charge point can meet: one that is declared, or the point running alone. */
export interface LoadStatePlace extends PointPlace {
  readonly declared?: LoadState;
  /** Lines on which the vehicle charges, where they are not all lines of the point. */
  readonly vehicle?: readonly LineConductor[];
}

/** The states of load that are declared and in which anything runs. */
export const declaredStates = ({ circuit }: PointPlace): readonly LoadState[] =>
  (circuit.options.loadStates ?? []).filter(({ currents }) => currents.some((i) => i > 0));

/** Residual current devices along a circuit, such as in an enclosure beside what it feeds. */
export const residualAlong = (run: Run): readonly ResidualDevice[] =>
  (run.residual ?? []).filter(({ position }) => position === 'along-circuit');

/** What the length of a cable is called: by the section in which it begins. */
export const nameOfLength = ({ run: { stretches } }: Pick<RunPlace, 'run'>): string => stretches[0]?.name ?? '';

/** Whether a run of the way lies ahead of the place where a cable of the circuit begins. */
export const aheadOfCable = ({ own, cableNumber }: RunPlace, here: CablePlace): boolean =>
  !own || cableNumber < here.cableNumber;

/** A fact of the circuit. */
export const ofCircuit = /* @__PURE__ */ factOf<CircuitPlace>();
/** A fact of the circuit with its line conductors. */
export const ofWholeCircuit = /* @__PURE__ */ factOf<WholeCircuit>();
/** A fact of the length of one of its cables. */
export const ofCable = /* @__PURE__ */ factOf<CablePlace>();
/** A fact of a section of its route. */
export const ofSection = /* @__PURE__ */ factOf<SectionPlace>();
/** A fact of a run of the way from the origin. */
export const ofRun = /* @__PURE__ */ factOf<RunPlace>();
/** A fact of a section of a run. */
export const ofRunSection = /* @__PURE__ */ factOf<RunSectionPlace>();
/** A fact of a run at a temperature. */
export const ofTemperature = /* @__PURE__ */ factOf<TemperaturePlace>();
/** A fact of a conductor of a run. */
export const ofConductor = /* @__PURE__ */ factOf<ConductorPlace>();
/** A fact of a way back to the source. */
export const ofReturn = /* @__PURE__ */ factOf<ReturnPlace>();
/** A fact of a rating that is declared for the device together with others. */
export const ofConditionalRating = /* @__PURE__ */ factOf<ConditionalRatingPlace>();
/** A fact of an overcurrent device ahead. */
export const ofAhead = /* @__PURE__ */ factOf<AheadPlace>();
/** A fact of a charge point of the circuit. */
export const ofPoint = /* @__PURE__ */ factOf<PointPlace>();
/** A fact of a state of load. */
export const ofLoadState = /* @__PURE__ */ factOf<LoadStatePlace>();
/** A fact of a main protective bonding conductor. */
export const ofBond = /* @__PURE__ */ factOf<BondPlace>();
/** What is asked for where nobody says whether there is a residual current device. */
export const unlistedWords = ({ at }: Unlisted): string => `residual current devices of ${at}`;
/** How that is found. */
export const unlistedObtain = ({ device: { type } }: Unlisted): string =>
  (type.state === 'unknown' && type.obtain) || 'look at it';
/** A fact of a residual current device upstream. */
export const ofResidualUpstream = <V>(
  read: (place: ResidualUpstreamPlace) => Fact<V> | Known<V>,
  { called, ...words }: { readonly called?: string; readonly by?: string } = {},
): Line<never, V> =>
  fact(read, {
    ...words,
    ...(called === undefined ? {} : { called: ({ unlisted }) => (unlisted ? unlistedWords(unlisted) : called) }),
  });
/** A fact of a fault. */
export const ofFault = /* @__PURE__ */ factOf<FaultPlace>();
/** A fact of a section of a run over which the tabulated drop is the same. */
export const ofRate = /* @__PURE__ */ factOf<RatePlace>();
/** A fact of a run on a followed line. */
export const ofRunLine = /* @__PURE__ */ factOf<RunLinePlace>();
/** A fact of a piece of a run. */
export const ofPiece = /* @__PURE__ */ factOf<PiecePlace>();
/** A fact of a followed line. */
export const ofLineFollowed = /* @__PURE__ */ factOf<LinePlace>();
/** A fact of the network of a followed line. */
export const ofSequence = /* @__PURE__ */ factOf<SequencePlace>();

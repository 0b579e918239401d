import { fact, factOf, type Line } from '../../calculation/index.js';
import { type Fact, isMissing, type Known } from '../../core/index.js';
import {
  byCable,
  type Cable,
  type ChargePoint,
  type Line as LineConductor,
  type OvercurrentDevice,
  type ResidualDevice,
  type Run,
  residualUnlisted,
  residualUpstream,
  type Stretch,
  type Unlisted,
} from '../../installation/index.js';
import type { Amperes, SquareMillimetres } from '../../units/index.js';
import type { CircuitPlace, LoadState } from '../wiring-code.js';
import { type DropSection, type FollowedLine, linesFollowed, type RunLoad } from './drop-loads.js';
import { mostLengthOf } from './loop-impedance.js';

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
  readonly circuit: CircuitPlace;
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

function conditionalRatingsOf(circuit: CircuitPlace): readonly ConditionalRatingPlace[] {
  const { conditionalRating: device } = circuit.run.device;
  const { conditionalRating: assembly } = circuit.board;
  if (!device && !assembly) return [{ circuit, of: 'nobody' }];
  return [
    ...(device ? [{ circuit, of: 'device', rating: device } as const] : []),
    ...(assembly ? [{ circuit, of: 'assembly', rating: assembly } as const] : []),
  ];
}

/** The conductors of a cable that lead a fault to earth, and its armour once more as far as it is earthed. */
function conductorsOf({ construction, protective }: Cable): readonly ConductorPlace['conductor'][] {
  const own: ConductorPlace['conductor'][] = ['line'];
  if (protective === 'armour' || protective === 'armour-and-separate') own.push('armour');
  if (protective === 'conduit') own.push('conduit');
  else if (protective !== 'none' && protective !== 'armour') own.push('protective');
  return own.includes('armour') || construction === 'armoured' ? [...own, 'earthed armour'] : own;
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

/** Lines of a vehicle that uses some of the lines of a point only: a single-phase vehicle, or one on two lines. */
const partVehicles = ({ lines }: ChargePoint): readonly (readonly LineConductor[])[] =>
  lines.length === 1
    ? []
    : [...lines.map((line) => [line]), ...(lines.length === 3 ? lines.map((l) => lines.filter((x) => x !== l)) : [])];

/** The states of load that are declared and in which anything runs. */
export const declaredStates = ({ circuit }: PointPlace): readonly LoadState[] =>
  (circuit.options.loadStates ?? []).filter(({ currents }) => currents.some((i) => i > 0));

/** The lines of a circuit that are followed: each of its runs asks for them in turn, so that those of the last are kept. */
let last: { readonly of: CircuitPlace; readonly lines: readonly FollowedLine[] } | undefined;
export function followedLines(circuit: CircuitPlace): readonly FollowedLine[] {
  if (last?.of !== circuit) last = { of: circuit, lines: linesFollowed(circuit) };
  return last.lines;
}
/** The pieces of a run between its taps that lie in the length of one of its cables. */
function piecesOfLength(
  { run, wholeRun, cableNumber }: RunPlace,
  pieces: readonly DropSection[],
): readonly DropSection[] {
  if (run === wholeRun) return pieces;
  const lengthsOf = (parts: readonly Run[]) => parts.reduce((sum, part) => sum + mostLengthOf(part), 0);
  const parts = byCable(wholeRun);
  const [from, to] = [lengthsOf(parts.slice(0, cableNumber)), lengthsOf(parts.slice(0, cableNumber + 1))];
  let at = 0;
  const found = pieces.map((piece) => {
    const begin = Math.max(at, from);
    at += piece.length;
    return { ...piece, length: Math.min(at, to) - begin };
  });
  return found.filter(({ length }) => length > 0);
}
/** The one piece of a run that is not in pieces: its current and length are those of the run, or what is missing of its taps. */
const missingPiece = (sections: RunLoad['sections']): Known<DropSection> =>
  isMissing(sections) ? sections : (sections[0] as DropSection);

/** Residual current devices along a circuit, such as in an enclosure beside what it feeds. */
export const residualAlong = (run: Run): readonly ResidualDevice[] =>
  (run.residual ?? []).filter(({ position }) => position === 'along-circuit');

/** What the length of a cable is called: by the section in which it begins. */
export const nameOfLength = ({ run: { stretches } }: Pick<RunPlace, 'run'>): string => stretches[0]?.name ?? '';

/** Whether a run of the way lies ahead of the place where a cable of the circuit begins. */
export const aheadOfCable = ({ own, cableNumber }: RunPlace, here: CablePlace): boolean =>
  !own || cableNumber < here.cableNumber;

/** What a circuit has several of. */
export const circuitScopes = {
  circuit: { things: (): readonly unknown[] => [] },
  cables: {
    within: 'circuit',
    things: (circuit: CircuitPlace): readonly CablePlace[] =>
      byCable(circuit.run).map((run, cableNumber, { length }) => ({
        ...circuit,
        run,
        cableNumber,
        oneCable: length === 1,
      })),
    title: (cable: CablePlace) => `cable from ${nameOfLength(cable)}`,
    whole: ({ oneCable }: CablePlace) => oneCable,
  },
  sections: {
    within: 'cables',
    things: (circuit: CablePlace): readonly SectionPlace[] =>
      circuit.run.stretches.map((section) => ({ circuit, section })),
    title: ({ section }: SectionPlace) => section.name,
  },
  runs: {
    within: 'circuit',
    things: (circuit: CircuitPlace): readonly RunPlace[] =>
      [...circuit.path.feeders, circuit.run].flatMap((wholeRun) =>
        byCable(wholeRun).map((run, cableNumber) => ({
          circuit,
          run,
          wholeRun,
          cableNumber,
          own: wholeRun === circuit.run,
        })),
      ),
    title: (place: RunPlace) =>
      place.run === place.wholeRun ? place.run.id : `${place.run.id}, cable from ${nameOfLength(place)}`,
  },
  runSections: {
    within: 'runs',
    alongRoute: true,
    things: (place: RunPlace): readonly RunSectionPlace[] =>
      place.run.stretches.map((section) => ({ ...place, section })),
    title: ({ section }: RunSectionPlace) => section.name,
  },
  rates: {
    within: 'runs',
    // only single-core cables drop more or less by how they lie
    things: (place: RunPlace): readonly RatePlace[] => {
      const { cable, stretches } = place.run;
      const differ = cable.construction === 'single-core' && stretches.length > 1;
      return (differ ? stretches : [stretches[0]]).map((section) => ({ ...place, section }));
    },
    title: ({ section, run }: RatePlace) => section?.name ?? run.id,
  },
  runLines: {
    within: 'runs',
    alongRoute: true,
    things: (place: RunPlace): readonly RunLinePlace[] =>
      followedLines(place.circuit).flatMap((of) => {
        const load = of.loads.find((l) => l.run === place.wholeRun);
        return load ? [{ ...place, of, load }] : [];
      }),
    title: ({ of }: RunLinePlace) => of.name,
  },
  pieces: {
    within: 'runLines',
    alongRoute: true,
    things: (place: RunLinePlace): readonly PiecePlace[] => {
      const { sections, tapped } = place.load;
      return (tapped && !isMissing(sections) ? piecesOfLength(place, sections) : [missingPiece(sections)]).map(
        (piece) => ({
          ...place,
          piece,
        }),
      );
    },
  },
  lines: {
    within: 'circuit',
    alongRoute: true,
    things: (circuit: CircuitPlace): readonly LinePlace[] => followedLines(circuit).map((of) => ({ circuit, of })),
    title: ({ of }: LinePlace) => of.name,
  },
  sequences: {
    within: 'lines',
    alongRoute: true,
    things: (place: LinePlace): readonly SequencePlace[] =>
      (place.of.othersAlike ? [false] : [false, true]).map((reversed) => ({ ...place, reversed })),
    title: ({ reversed }: SequencePlace) => (reversed ? 'the other phase sequence' : 'one phase sequence'),
  },
  temperatures: {
    within: 'runs',
    things: (place: RunPlace): readonly TemperaturePlace[] => [
      { ...place, at: 'operating' },
      { ...place, at: 'cold' },
      ...(place.circuit.options.testTemperature === undefined ? [] : [{ ...place, at: 'test' } as const]),
    ],
    title: ({ at }: TemperaturePlace) =>
      ({ cold: 'at 20 °C', operating: 'in normal operation', test: 'at the temperature of the test' })[at],
  },
  conductors: {
    within: 'temperatures',
    things: (place: TemperaturePlace): readonly ConductorPlace[] =>
      conductorsOf(place.run.cable).map((conductor) => ({ ...place, conductor })),
    title: ({ conductor }: ConductorPlace) =>
      conductor === 'line' || conductor === 'protective' ? `${conductor} conductor` : conductor,
  },
  returns: {
    within: 'temperatures',
    things: (place: TemperaturePlace): readonly ReturnPlace[] => {
      const { protective, construction } = place.run.cable;
      const earthed = protective !== 'none' || construction === 'armoured';
      return (earthed ? (['neutral', 'earth'] as const) : (['neutral'] as const)).map((wayBack) => ({
        ...place,
        wayBack,
      }));
    },
    title: ({ wayBack }: ReturnPlace) => `back by ${wayBack}`,
  },
  conditionalRatings: {
    within: 'circuit',
    things: conditionalRatingsOf,
    title: ({ of }: ConditionalRatingPlace) => `Declared for the ${of}`,
  },
  ahead: {
    within: 'circuit',
    things: (circuit: CircuitPlace): readonly AheadPlace[] => [
      { circuit, name: 'cut-out', device: circuit.installation.supply.cutOut, cutOut: true },
      ...circuit.path.feeders.map(({ id, device }) => ({ circuit, name: `device of ${id}`, device, cutOut: false })),
    ],
    title: ({ name }: AheadPlace) => `Discrimination with the ${name}`,
  },
  points: {
    within: 'circuit',
    things: (circuit: CircuitPlace): readonly PointPlace[] =>
      circuit.run.feeds.flatMap((point) => (point.kind === 'charge-point' ? [{ circuit, point }] : [])),
    title: ({ point }: PointPlace) => point.id,
  },
  loadStates: {
    within: 'points',
    things: (place: PointPlace): readonly LoadStatePlace[] => {
      const declared = declaredStates(place).map((state) => ({ ...place, declared: state }));
      const never = place.circuit.options.pointNeverAlone !== undefined && declared.length > 0;
      const whole: readonly LoadStatePlace[] = never ? declared : [place, ...declared];
      // whoever drives in decides how many lines are loaded
      const vehicles = partVehicles(place.point);
      return whole.flatMap((state) => [state, ...vehicles.map((vehicle) => ({ ...state, vehicle }))]);
    },
    title: ({ declared, vehicle }: LoadStatePlace) =>
      `State of load: ${declared?.name ?? 'the point alone'}${vehicle ? `, the vehicle on ${vehicle.join(' and ')} alone` : ''}`,
  },
  bonds: {
    within: 'circuit',
    things: ({ installation }: CircuitPlace): readonly BondPlace[] => installation.supply.bonding ?? [],
    title: ({ what }: BondPlace) => `Main bonding of ${what || 'a part without a name'}`,
  },
  residualUpstream: {
    within: 'circuit',
    things: (circuit: CircuitPlace): readonly ResidualUpstreamPlace[] =>
      [
        ...residualUpstream(circuit.path).map((device) => ({ device })),
        ...residualAlong(circuit.run).map((device) => ({ device, along: true as const })),
        ...residualUnlisted(circuit.path).map((unlisted) => ({ device: unlisted.device, unlisted })),
      ].map((found, i) => ({ circuit, ...found, number: i + 1 })),
    title: ({ number, unlisted }: ResidualUpstreamPlace) =>
      unlisted ? `residual current device that ${unlisted.at} may have` : `residual current device ${number}`,
  },
  faults: {
    within: 'cables',
    things: (circuit: CablePlace): readonly FaultPlace[] =>
      (['line', 'protective'] as const).flatMap((conductor) =>
        (['near', 'far'] as const).map((end) => ({ circuit, conductor, end })),
      ),
    title: ({ conductor, end }: FaultPlace) => `${conductor} conductor, fault at the ${end} end`,
  },
} as const;

/** A fact of the circuit. */
export const ofCircuit = /* @__PURE__ */ factOf<CircuitPlace>();
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

import { isMissing, type Known } from '../../core/index.js';
import { once } from '../../core/once.js';
import {
  byCable,
  type Cable,
  type ChargePoint,
  type Line as LineConductor,
  leavesTails,
  mayLeaveTails,
  type Run,
  residualUnlisted,
  residualUpstream,
} from '../../installation/index.js';
import type { CircuitPlace } from '../wiring-code.js';
import { type DropSection, linesFollowed, type RunLoad } from './drop-loads.js';
import { mostLengthOf } from './loop-impedance.js';

import {
  type AheadPlace,
  type BondPlace,
  type CablePlace,
  type ConditionalRatingPlace,
  type ConductorPlace,
  declaredStates,
  type FaultPlace,
  type LinePlace,
  type LoadStatePlace,
  nameOfLength,
  type PiecePlace,
  type PointPlace,
  type RatePlace,
  type ResidualUpstreamPlace,
  type ReturnPlace,
  type RunLinePlace,
  type RunPlace,
  type RunSectionPlace,
  residualAlong,
  type SectionPlace,
  type SequencePlace,
  type TemperaturePlace,
  type WholeCircuit,
} from './places.js';

function conditionalRatingsOf(circuit: CircuitPlace): readonly ConditionalRatingPlace[] {
  const { conditionalRating: device } = circuit.run.device;
  // a switch-fuse in the tails stands in an enclosure of its own
  const elsewhere = leavesTails(circuit.run) || mayLeaveTails(circuit.run);
  const assembly = elsewhere ? undefined : circuit.board.conditionalRating;
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

/** Lines of a vehicle that uses some of the lines of a point only: a single-phase vehicle, or one on two lines. */
const partVehicles = ({ lines }: ChargePoint): readonly (readonly LineConductor[])[] =>
  lines.length === 1
    ? []
    : [...lines.map((line) => [line]), ...(lines.length === 3 ? lines.map((l) => lines.filter((x) => x !== l)) : [])];

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

/** What a circuit has several of. */
export const circuitScopes = {
  circuit: {
    things: (): readonly unknown[] => [],
    place: (circuit: CircuitPlace): WholeCircuit => ({ ...circuit, followed: once(() => linesFollowed(circuit)) }),
  },
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
    things: (circuit: WholeCircuit): readonly RunPlace[] =>
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
      place.circuit.followed().flatMap((of) => {
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
    things: (circuit: WholeCircuit): readonly LinePlace[] => circuit.followed().map((of) => ({ circuit, of })),
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

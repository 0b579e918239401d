import { type FactWords, fact, factOf, type Line } from '../../calculation/index.js';
import { type Fact, type Known, missing } from '../../core/index.js';
import {
  type Board,
  type ChargePoint,
  type Load,
  type OvercurrentDevice,
  outletsBelow,
  type ResidualDevice,
  type Run,
  residualUnlisted,
  residualUpstream,
  type Unlisted,
} from '../../installation/index.js';
import type { CircuitPlace } from '../wiring-code.js';
import type { PointPlace, ResidualUpstreamPlace } from './places.js';

/** What additional protection is given to: a charge point, or the circuit with its cable and what else it feeds. */
export interface AdditionalPlace {
  readonly circuit: CircuitPlace;
  readonly point?: ChargePoint;
}
/** A residual current device that may give it: upstream of the cable, or inside the charge point. */
export interface ProtectingPlace {
  readonly device: ResidualDevice;
  readonly number: number;
  /** Whether it serves one outlet alone. */
  readonly alone: Known<boolean>;
}
/** A residual current device inside a charge point. */
export interface ResidualInsidePlace {
  readonly point: ChargePoint;
  /** Absent where nobody says whether there is one. */
  readonly device?: ResidualDevice;
}
/** A residual current device, and the one that follows it on the way of the current. */
export interface ResidualPairPlace {
  readonly above: ResidualDevice;
  readonly below: ResidualDevice;
  readonly number: number;
}
/** A residual current device on the board that the circuit leaves, which limits what may flow. */
export interface ResidualOnBoardPlace {
  readonly circuit: CircuitPlace;
  readonly device: NonNullable<Board['residual']>[number];
  readonly number: number;
  /** Set where nobody says whether there is one. */
  readonly unlisted?: Unlisted;
}
/** Something that can feed the board: the device ahead, or a circuit that can feed back. */
export interface InfeedPlace {
  readonly name: string;
  readonly device: OvercurrentDevice;
}

/** Whether an outlet may feed back: it does, or of a charge point nobody says that it does not. */
export const mayFeedBack = (o: Load | ChargePoint): boolean =>
  feedsBack(o) || (o.kind === 'charge-point' && o.bidirectional === undefined);
/** Whether something among outlets feeds back, as far as it is stated. */
export const feedingBack = (outlets: readonly (Load | ChargePoint)[]): 'yes' | 'no' | 'not known' => {
  if (outlets.some(feedsBack)) return 'yes';
  return outlets.some(mayFeedBack) ? 'not known' : 'no';
};
/** Whether an outlet can feed back. */
export const feedsBack = (o: Load | ChargePoint): boolean =>
  o.kind === 'charge-point' ? o.bidirectional === true : o.purpose === 'generation' || o.purpose === 'storage';

/** The overcurrent device ahead of the board that the circuit leaves. */
export const deviceAhead = ({ path, installation }: CircuitPlace): OvercurrentDevice =>
  path.feeders.at(-1)?.device ?? installation.supply.cutOut;

/** Whether a device on a board serves a run that leaves it. */
const serves = ({ serves: named }: ResidualDevice & { readonly serves?: readonly string[] }, run: Run) =>
  named === undefined || named.includes(run.id);

/** A residual current device on the way to a circuit. */
type OnTheWay = Pick<ResidualUpstreamPlace, 'circuit' | 'device' | 'unlisted'>;

/** What draws its current through a device, wherever it stands on the way to the run. */
function outletsBehind({ circuit: { path, run }, device, unlisted }: OnTheWay): readonly (Load | ChargePoint)[] {
  if (unlisted) return unlisted.behind.flatMap(outletsBelow);
  const own = [...path.feeders, run].find((r) => r.residual?.includes(device));
  const board = path.boards.find((b) => b.residual?.includes(device));
  const behind = own ? [own] : (board?.runs.filter((r) => serves(device, r)) ?? []);
  return behind.flatMap(outletsBelow);
}
/** Charge points among it. */
export const pointsBehind = (place: OnTheWay): readonly ChargePoint[] =>
  outletsBehind(place).filter((o) => o.kind === 'charge-point');

/** Devices that may give additional protection, from the origin on. */
export const protectingDevices = ({ circuit, point }: AdditionalPlace): readonly ResidualDevice[] => [
  ...residualUpstream(circuit.path),
  ...(point?.residual ? [point.residual] : []),
];

/** Residual current devices in the order in which the current passes them. */
const inSeries = ({ path, run }: CircuitPlace): readonly ResidualDevice[] => [
  ...residualUpstream(path),
  ...run.feeds.flatMap((o) => (o.kind === 'charge-point' && o.residual ? [o.residual] : [])),
];

/** Whether a device serves one outlet alone: of one inside a point the survey says it, of others what stands behind them. */
function servesAlone({ circuit, point }: AdditionalPlace, device: ResidualDevice): Known<boolean> {
  const { pointsServed: said } = device;
  const fact = `charge points that the residual current device of ${point?.id ?? circuit.run.id} serves`;
  if (device === point?.residual)
    return said === undefined
      ? missing({ kind: 'fact', fact, obtain: 'its instructions: one device inside may serve two sockets' })
      : said <= 1;
  if (outletsBehind({ circuit, device }).length > 1) return false;
  return said === undefined || said <= 1
    ? true
    : missing({
        kind: 'fact',
        fact,
        obtain: `${said} are stated, and one is described: see which of the two is right`,
        disagree: true,
      });
}

/** Of what there are several where residual current devices are judged. */
export const residualScopes = {
  additional: {
    within: 'circuit',
    things: (circuit: CircuitPlace): readonly AdditionalPlace[] => [
      // a socket-outlet into which the cable of a vehicle is plugged is protected as one
      ...circuit.run.feeds.flatMap((point) =>
        point.kind === 'charge-point' && point.mode !== 2 ? [{ circuit, point }] : [],
      ),
      { circuit },
    ],
    title: ({ point }: AdditionalPlace) => (point ? `Residual current device of ${point.id}` : 'Additional protection'),
  },
  protecting: {
    within: 'additional',
    things: (place: AdditionalPlace): readonly ProtectingPlace[] =>
      protectingDevices(place).map((device, i) => ({
        device,
        number: i + 1,
        alone: servesAlone(place, device),
      })),
    title: ({ number }: ProtectingPlace) => `device ${number} from the origin`,
  },
  pointsBehind: {
    within: 'residualUpstream',
    things: pointsBehind,
    title: ({ id }: ChargePoint) => id,
  },
  residualInside: {
    within: 'points',
    things: ({ point }: PointPlace): readonly ResidualInsidePlace[] => {
      // the cable of a vehicle is no part of the installation
      if (point.mode === 2) return [];
      if (point.residual) return [{ point, device: point.residual }];
      return point.noResidual?.state === 'known' && point.noResidual.value ? [] : [{ point }];
    },
    title: () => 'residual current device inside it',
  },
  residualPairs: {
    within: 'circuit',
    things: (circuit: CircuitPlace): readonly ResidualPairPlace[] => {
      const series = inSeries(circuit);
      return series.slice(1).map((below, i) => ({ above: series[i] as ResidualDevice, below, number: i + 1 }));
    },
    title: ({ number }: ResidualPairPlace) => `Residual current devices ${number} and ${number + 1} from the origin`,
  },
  residualOnBoard: {
    within: 'circuit',
    things: (circuit: CircuitPlace): readonly ResidualOnBoardPlace[] =>
      [
        ...(circuit.board.residual ?? []).map((device) => ({ device })),
        ...residualUnlisted(circuit.path)
          .filter(({ at }) => at === circuit.board.id)
          .map((unlisted) => ({ device: unlisted.device, unlisted })),
      ]
        .map((found, i) => ({ circuit, ...found, number: i + 1 }))
        .filter(({ device }) => serves(device, circuit.run)),
    title: ({ number, unlisted }: ResidualOnBoardPlace) =>
      `Residual current device ${unlisted ? `that ${unlisted.at} may have` : `${number} on the board`}`,
  },
  servedRuns: {
    within: 'residualOnBoard',
    things: ({ circuit, device }: ResidualOnBoardPlace): readonly Run[] =>
      circuit.board.runs.filter((r) => serves(device, r)),
    title: ({ id }: Run) => id,
  },
  infeeds: {
    within: 'circuit',
    things: (circuit: CircuitPlace): readonly InfeedPlace[] => [
      { name: 'device ahead', device: deviceAhead(circuit) },
      ...circuit.board.runs
        .filter((r) => outletsBelow(r).some(mayFeedBack))
        .map(({ id, device }) => ({ name: id, device })),
    ],
    title: ({ name }: InfeedPlace) => `Infeed: ${name}`,
  },
} as const;

/** A fact of what additional protection is given to. */
export const ofAdditional = /* @__PURE__ */ factOf<AdditionalPlace>();
/** A fact of a device that may give additional protection. */
export const ofProtecting = <V>(
  read: (device: ResidualDevice, place: ProtectingPlace) => Fact<V> | Known<V>,
  words?: FactWords<ProtectingPlace>,
): Line<never, V> => fact((place: ProtectingPlace) => read(place.device, place), words);
/** A fact of a charge point behind a residual current device. */
export const ofPointBehind = /* @__PURE__ */ factOf<ChargePoint>();
/** A fact of a residual current device inside a charge point. */
export const ofResidualInside = /* @__PURE__ */ factOf<ResidualInsidePlace>();
/** A fact of two residual current devices that follow one another. */
export const ofResidualPair = /* @__PURE__ */ factOf<ResidualPairPlace>();
/** A fact of a residual current device on the board. */
export const ofResidualOnBoard = /* @__PURE__ */ factOf<ResidualOnBoardPlace>();
/** A fact of a run behind it. */
export const ofServedRun = /* @__PURE__ */ factOf<Run>();
/** A fact of what can feed the board. */
export const ofInfeed = /* @__PURE__ */ factOf<InfeedPlace>();

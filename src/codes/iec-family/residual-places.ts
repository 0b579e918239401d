import { type FactWords, fact, factOf, type Line } from '../../calculation/index.js';
import { type Fact, type Known, missing } from '../../core/index.js';
import { feedingInto, feedsBack, mayFeedBack } from '../../installation/feeds-back.js';
import {
  type Board,
  type ChargePoint,
  insideOpen,
  type Load,
  mayServe,
  type OvercurrentDevice,
  outletsBelow,
  type ResidualDevice,
  type Run,
  residualUpstream,
} from '../../installation/index.js';
import { hasResidual } from '../../installation/marking.js';
import type { CircuitPlace } from '../wiring-code.js';
import { type PointPlace, type ResidualUpstreamPlace, residualAlong } from './places.js';

/** What additional protection is given to: a charge point, or the circuit with its cable and what else it feeds. */
export interface AdditionalPlace {
  readonly circuit: CircuitPlace;
  readonly point?: ChargePoint;
  /** Set for the one accessory that the circuit feeds, apart from the cable to it: a device along the circuit protects it too. */
  readonly end?: true;
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
/** Something that can feed the board: the device ahead, or a circuit that can feed back. */
export interface InfeedPlace {
  readonly name: string;
  readonly device: OvercurrentDevice;
}

/** Whether something among outlets feeds back, as far as it is stated. */
export const feedingBack = (outlets: readonly (Load | ChargePoint)[]): 'yes' | 'no' | 'not known' => {
  if (outlets.some(feedsBack)) return 'yes';
  return outlets.some(mayFeedBack) ? 'not known' : 'no';
};
/** The overcurrent device ahead of the board that the circuit leaves. */
export const deviceAhead = ({ path, installation }: CircuitPlace): OvercurrentDevice =>
  path.feeders.at(-1)?.device ?? installation.supply.cutOut;

/** The overcurrent device ahead of the board, or the fuse of a switch-fuse between it and the board where that is rated lower. */
function fusedAhead(circuit: CircuitPlace): OvercurrentDevice {
  const device = deviceAhead(circuit);
  const fuse = circuit.board.mainSwitch?.fuseAhead;
  const lower = fuse?.state === 'known' && device.rating.state === 'known' && fuse.value < device.rating.value;
  return lower ? { ...device, rating: fuse } : device;
}

/** A residual current device on the way to a circuit. */
type OnTheWay = Pick<ResidualUpstreamPlace, 'circuit' | 'device' | 'unlisted'>;

/** The run at whose origin, or along which, a device stands; absent where it stands on a board. */
const runOf = ({ circuit: { path, run }, device, unlisted }: OnTheWay): Run | undefined =>
  [...path.feeders, run].find(
    (r) => r.residual?.includes(device) || (unlisted?.behind[0] === r && unlisted.at === r.id),
  );

/** What draws its current through a device, wherever it stands on the way to the run. */
export function outletsBehind(place: OnTheWay): readonly (Load | ChargePoint)[] {
  const { circuit, device, unlisted } = place;
  if (unlisted) return unlisted.behind.flatMap(outletsBelow);
  const own = runOf(place);
  const board = circuit.path.boards.find((b) => b.residual?.includes(device));
  const behind = own ? [own] : (board?.runs.filter((r) => mayServe(device, r)) ?? []);
  return behind.flatMap(outletsBelow);
}

/** What limits the current through a residual current device. */
interface Limits {
  readonly ahead: OvercurrentDevice;
  readonly aheadName: string;
  /** Boards whose circuits draw their current through it; none where it is drawn by outlets, which limit nothing. */
  readonly boards: readonly Board[];
}
export function limitsOf(place: OnTheWay): Limits {
  const { circuit, device, unlisted } = place;
  const { boards, feeders } = circuit.path;
  const own = runOf(place);
  if (own) {
    const fed = own.feeds.filter((o): o is Board => o.kind === 'board');
    const name = `rating of the device of ${own.id}`;
    return { ahead: own.device, aheadName: name, boards: fed.length === own.feeds.length ? fed : [] };
  }
  const at = boards.findIndex((b) => (unlisted ? b.id === unlisted.at : b.residual?.includes(device)));
  const feeder = feeders[at - 1];
  return {
    ahead: feeder?.device ?? circuit.installation.supply.cutOut,
    aheadName: feeder ? 'rating of the device ahead' : 'cutOutRating',
    boards: boards.slice(at, at + 1),
  };
}
/** Whether a device is the residual part of the overcurrent device at the origin of its run, which protects it. */
export function isPartOfBreaker(place: OnTheWay): boolean {
  const own = runOf(place);
  const kind = own?.device.kind;
  if (kind?.state !== 'known' || !hasResidual(kind.value)) return false;
  const first = own?.residual?.find(({ position }) => position === 'origin-of-circuit');
  return place.unlisted !== undefined || place.device === first;
}
/** Whether an outlet is a charge point, described as one or listed as a load. */
export const isChargePoint = (o: Load | ChargePoint): boolean =>
  o.kind === 'charge-point' || o.purpose === 'charge-point';
/** What among it can pass smooth direct current: charge points, and what its maker asks type B for. */
export const pointsBehind = (place: OnTheWay): readonly (Load | ChargePoint)[] =>
  outletsBehind(place).filter(
    (o) => isChargePoint(o) || (o.kind === 'load' && o.residualType?.state === 'known' && o.residualType.value === 'B'),
  );

/**
 * Devices along a circuit that stand ahead of all that it feeds, unless it is a ring: of one charge point or one cooker unit.
 * Where there are several socket-outlets or luminaires nobody says which of them stand behind.
 */
export function alongToEnd(run: Run): readonly ResidualDevice[] {
  const { feeds } = run;
  const [only] = feeds;
  const single =
    feeds.length === 1 && (only?.kind === 'charge-point' || (only?.kind === 'load' && only.purpose === 'cooking'));
  return single && run.ring !== true ? residualAlong(run) : [];
}
/** Whether it is open if they do: a circuit that is planned is no ring unless it is said to be one, of one that is there it has to be seen. */
export const mayBeInOneLeg = (run: Run): boolean =>
  run.ring === undefined && run.existing === true && alongToEnd(run).length > 0;
/** Those that surely do. */
export const aheadOfEnd = (run: Run): readonly ResidualDevice[] => (mayBeInOneLeg(run) ? [] : alongToEnd(run));
/** Whether a device may be inside a point of which nobody says so; the cable of a vehicle is no part of the installation. */
export const insideUnsaid = (point: ChargePoint): boolean => point.mode !== 2 && insideOpen(point);

/** Devices that may give additional protection, from the origin on. */
export const protectingDevices = ({ circuit, point, end }: AdditionalPlace): readonly ResidualDevice[] => [
  ...residualUpstream(circuit.path),
  ...(point || end ? aheadOfEnd(circuit.run) : []),
  ...insideOf(point),
];
const insideOf = (point: ChargePoint | undefined): readonly ResidualDevice[] =>
  point?.residual ? [point.residual] : [];

/** Residual current devices in the order in which the current passes them. */
const inSeries = ({ path, run }: CircuitPlace): readonly ResidualDevice[] => [
  ...residualUpstream(path),
  ...residualAlong(run),
  ...run.feeds.flatMap((o) => (o.kind === 'charge-point' ? insideOf(o) : [])),
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
      ...(alongToEnd(circuit.run).length > 0 ? [{ circuit, end: true as const }] : []),
    ],
    title: ({ point, end }: AdditionalPlace) =>
      point
        ? `Residual current device of ${point.id}`
        : `Additional protection${end ? ' at the end of the circuit' : ''}`,
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
    title: ({ id }: Load | ChargePoint) => id,
  },
  residualInside: {
    within: 'points',
    things: ({ point }: PointPlace): readonly ResidualInsidePlace[] => {
      if (insideUnsaid(point)) return [{ point }];
      return point.mode === 2 ? [] : insideOf(point).map((device) => ({ point, device }));
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
  servedRuns: {
    within: 'residualUpstream',
    things: (place: ResidualUpstreamPlace): readonly Run[] =>
      limitsOf(place).boards.flatMap(({ runs }) => runs.filter((r) => mayServe(place.device, r))),
    title: ({ id }: Run) => id,
  },
  infeeds: {
    within: 'circuit',
    things: (circuit: CircuitPlace): readonly InfeedPlace[] => [
      { name: 'device ahead', device: fusedAhead(circuit) },
      ...feedingInto(circuit.board).map(({ id, device }) => ({ name: id, device })),
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
/** A fact of a charge point, or of what else can pass smooth direct current, behind a residual current device. */
export const ofPointBehind = /* @__PURE__ */ factOf<Load | ChargePoint>();
/** A fact of a residual current device inside a charge point. */
export const ofResidualInside = /* @__PURE__ */ factOf<ResidualInsidePlace>();
/** A fact of two residual current devices that follow one another. */
export const ofResidualPair = /* @__PURE__ */ factOf<ResidualPairPlace>();
/** A fact of a run behind it. */
export const ofServedRun = /* @__PURE__ */ factOf<Run>();
/** A fact of what can feed the board. */
export const ofInfeed = /* @__PURE__ */ factOf<InfeedPlace>();

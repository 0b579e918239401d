import { type Simulation, simulate } from '../charging/index.js';
import { LEAST_CURRENT } from '../charging/network/network.js';
import { eachOnce } from '../core/each-once.js';
import { type Fact, type Gap, isMissing, type Known } from '../core/index.js';
import type { FeederDemand } from '../demand/feeder.js';
import type { Adequacy } from '../demand/index.js';
import { asOneWay } from '../installation/beside.js';
import { type Board, type Installation, type Line, lineConductors, pathsOf, type Run } from '../installation/index.js';
import { type Amperes, amperes, type Seconds, seconds, type WattHours, wattHours } from '../units/index.js';
import { type HalfHourProfile, halfHourProfile } from './half-hour-profile.js';
import { existingOf, heldNetwork, pointAt, ROOT } from './night-network.js';
import { type NightNeutral, neutralsOf } from './night-neutral.js';
import { free, least, limitOf, used, type Vehicle, vehiclesOf } from './night-vehicles.js';
import { arrivalIn, type NightSpan, nightSpan } from './stay.js';
import type { Survey } from './survey.js';

/** How charging a vehicle goes in a night. @inline */
export interface Charged {
  /** Time from plugging in until the battery has what it needs, s; absent where it never has. */
  readonly after?: Seconds;
  /** What the battery lacks when the vehicle leaves, Wh. */
  readonly missing: WattHours;
  /** Time in which the vehicle waits without current, s. */
  readonly waited: Seconds;
  /** How often its charging begins. */
  readonly starts: number;
}

/** The night of one vehicle. @inline */
export interface VehicleNight {
  readonly point: string;
  /** When it is plugged in, s since midnight. */
  readonly arrives: Seconds;
  /** Time between plugging in and leaving, s. */
  readonly window: Seconds;
  /** With everything but the vehicles at rest. */
  readonly quiet: Charged;
  /** While everything else draws its maximum demand throughout; absent where that is not known. */
  readonly busy?: Charged;
}

/** Load of a night at one place, stacked by vehicle: what a picture of it shows. @inline */
export interface NightLoad {
  /** Where, and on which line. */
  readonly place: string;
  /** Begin of each step, minutes since midnight of the first day. */
  readonly minutes: readonly number[];
  /** From the bottom up: everything else, then each vehicle by its point; A in each step. */
  readonly bands: readonly { readonly name: string; readonly current: readonly number[] }[];
  /** The limit there, A. */
  readonly limit: number;
  /** The load control that holds it, or a rating, which holds nothing back. */
  readonly limitBy: string;
}

/** A place that carries more than it may: nothing holds back what is in use there. @inline */
export interface NightOver {
  /** Name of the board. */
  readonly place: string;
  readonly line: Line;
  /** The smallest limit there, A. */
  readonly limit: Amperes;
  /** Whose limit it is. */
  readonly limitBy: string;
  /** Highest current, A. */
  readonly peak: Amperes;
  /** For how long it is above the limit, s. */
  readonly over: Seconds;
}

/** A night in which all vehicles charge: plain data. @inline */
export interface Night {
  /** The vehicles, in the order of their points. */
  readonly vehicles: readonly VehicleNight[];
  /** What it assumes. */
  readonly about: readonly string[];
  /** Load where it comes nearest to its limit, while everything else draws its maximum demand. */
  readonly load?: NightLoad;
  /** Where a limit is exceeded while everything else draws its maximum demand, in the order of the tree. */
  readonly over: readonly NightOver[];
  /** What the neutrals ahead of boards carry then, in the order of the tree; none where the rest draws is not known. */
  readonly neutrals: readonly NightNeutral[];
  /** What the site takes half hour by half hour then; absent where what everything else draws is not known. */
  readonly halfHours?: HalfHourProfile;
  /** Why vehicles are left out, the demand of everything else, or a limit. */
  readonly gaps: readonly Gap[];
}

/** Length of a step: vehicles arrive at whole minutes, s. */
const STEP = /* @__PURE__ */ seconds(60);
/** For how long a point that has begun goes on at least, s. Common practice, no source. */
const LEAST_ON = /* @__PURE__ */ seconds(900);
/** Load controls up to which each is named. */
const MOST_NAMED = 8;
/** Steps from one value of the picture to the next. */
const EVERY = 5;

const charges = (v: Vehicle): boolean => v.current >= (v.point.minimum ?? LEAST_CURRENT);

/** Courses of the currents of points through the night. */
type Courses = ReadonlyMap<string, Readonly<Partial<Record<Line, readonly number[]>>>>;

/** One night of all vehicles beside what everything else draws. */
function nightBeside(
  installation: Installation,
  vehicles: readonly Vehicle[],
  span: NightSpan,
  existing: (board: Board, line: Line) => number,
) {
  const days = span.endless ? 3 : 1;
  const day = span.endless ? 1 : 0;
  const steps = Math.round((span.length * days) / STEP);
  const sessionsOf = (v: Vehicle) =>
    Array.from({ length: days }, (_, d) => {
      const arrives = span.from + d * span.length + arrivalIn(span, v.arrives);
      return {
        id: `${v.point.id}, ${d}`,
        point: v.point.id,
        arrives: seconds(arrives),
        leaves: seconds(arrives + v.window),
        energy: v.energy,
        most: v.current,
        vehicleLines: v.lines,
        ...(v.battery ? { battery: v.battery } : {}),
      };
    });
  const run = (who: readonly Vehicle[], network: Parameters<typeof simulate>[0]['network'], load = noLoad) =>
    simulate({
      network,
      sessions: who.flatMap(sessionsOf),
      from: seconds(span.from),
      to: seconds(span.from + steps * STEP),
      step: STEP,
      voltage: installation.supply.nominalVoltage,
      control: { policy: { rule: 'max-min-amperes', stage: 'zero-or-least' }, leastOn: LEAST_ON },
      load,
      keepSeries: true,
    });
  const coursesOf = (runs: readonly Simulation[]): Courses =>
    new Map(runs.flatMap((r) => r.series?.points.map((p) => [p.id, p.current] as const) ?? []));

  const able = vehicles.filter(charges);
  const alone = able.filter(free);
  const held = able.filter((v) => !free(v));
  // what nothing holds does not ask what the others leave; the others get what it leaves
  const runs =
    alone.length > 0 ? [run(alone, { nodes: [{ id: ROOT }], points: alone.map((v) => pointAt(v, ROOT)) })] : [];
  if (held.length > 0) {
    const before = coursesOf(runs);
    const beside = (board: Board, line: Line, k: number) =>
      existing(board, line) +
      alone.reduce((sum, v) => sum + (behind(v, board) ? (before.get(v.point.id)?.[line]?.[k] ?? 0) : 0), 0);
    const { network, load } = heldNetwork(held, beside, alone.length > 0 ? steps : 1);
    runs.push(run(held, network, load));
  }
  const outcomes = new Map(runs.flatMap((r) => r.sessions.map((s) => [s.id, s] as const)));
  const charged = (v: Vehicle): Charged => {
    const found = outcomes.get(`${v.point.id}, ${day}`);
    if (!found) return { missing: wattHours(v.energy * v.efficiency), waited: v.window, starts: 0 };
    const arrived = sessionsOf(v)[day]?.arrives ?? 0;
    return {
      ...(found.fullAt === undefined ? {} : { after: seconds(found.fullAt - arrived) }),
      missing: wattHours(found.missing * v.efficiency),
      waited: found.waited,
      starts: found.starts,
    };
  };
  const first = Math.round((day * span.length) / STEP);
  const last = first + Math.round(span.length / STEP);
  const night = (values: readonly number[]) => values.slice(first, last);
  const courses: Courses = new Map(
    [...coursesOf(runs)].map(([id, current]) => [
      id,
      Object.fromEntries(lineConductors.flatMap((line) => (current[line] ? [[line, night(current[line])]] : []))),
    ]),
  );
  return { charged, courses, minutes: night(runs[0]?.series?.minutes ?? []) };
}

const noLoad: NonNullable<Parameters<typeof simulate>[0]['load']> = [];

const behind = (v: Vehicle, board: Board): boolean => v.boards.some((b) => b.id === board.id);

/** Every limit on the way to the vehicles: load controls first, then what holds nothing back, the cut-out before boards. */
function limitsOf(installation: Installation, vehicles: readonly Vehicle[]) {
  const boards = [...new Map(vehicles.flatMap((v) => v.boards.map((b) => [b.id, b] as const))).values()];
  const feeders = new Map<string, Run>(
    pathsOf(installation).flatMap(({ run }) =>
      run.feeds.flatMap((o) => (o.kind === 'board' ? [[o.id, run] as const] : [])),
    ),
  );
  const controlled = boards.filter((b) => vehicles.some((v) => v.held.some((h) => h.id === b.id)));
  const limits: [Board, Known<Amperes> | undefined, string][] = controlled.map((b) => [
    b,
    limitOf(b),
    b.control?.name ?? b.id,
  ]);
  limits.push([installation.board, least('cutOutRating', installation.supply.cutOut.rating), 'rating of the cut-out']);
  for (const b of boards) {
    const feeder = feeders.get(b.id);
    const ratings: [Fact<Amperes> | undefined, string][] = [
      [feeder && asOneWay(feeder).device.rating, `rating of the device of ${feeder?.id}`],
      [b.mainSwitch?.rating, `rating of the main switch of ${b.id}`],
      [b.rating, `rating of ${b.id}`],
    ];
    for (const [rating, by] of ratings) if (rating) limits.push([b, least(by, rating), by]);
  }
  return {
    limits: limits.flatMap(([board, limit, by]) =>
      limit === undefined || isMissing(limit) ? [] : [{ board, limit, by }],
    ),
    gaps: limits.flatMap(([, limit]) => (isMissing(limit) ? limit.missing : [])),
  };
}

/** The load where it comes nearest to its limit, and where it is beyond. */
function loadOf(
  installation: Installation,
  stated: readonly Vehicle[],
  standing: readonly Vehicle[],
  { courses, minutes }: Pick<ReturnType<typeof nightBeside>, 'courses' | 'minutes'>,
  existing: (board: Board, line: Line) => number,
): { readonly load?: NightLoad; readonly over: readonly NightOver[]; readonly gaps: readonly Gap[] } {
  const { limits, gaps } = limitsOf(installation, stated);
  const over = new Map<string, NightOver>();
  let [nearest, load]: [number, (() => NightLoad) | undefined] = [Number.NEGATIVE_INFINITY, undefined];
  for (const { board, limit, by } of limits)
    for (const line of lineConductors) {
      const here = [...stated, ...standing].flatMap((v) => {
        const current = behind(v, board) && used(v).includes(line) ? courses.get(v.point.id)?.[line] : undefined;
        return current ? [{ name: standing.includes(v) ? `${v.point.id}, nothing stated` : v.point.id, current }] : [];
      });
      if (here.length === 0) continue;
      const rest = existing(board, line);
      const sums = minutes.map((_, k) => here.reduce((sum, b) => sum + (b.current[k] ?? 0), rest));
      const peak = sums.reduce((a, b) => Math.max(a, b), rest);
      const time = sums.filter((sum) => sum > limit + 1e-6).length * STEP;
      const place = { place: board.id, line, limit, limitBy: by, peak: amperes(peak), over: seconds(time) };
      const key = `${board.id}, ${line}`;
      if (time > 0 && limit < (over.get(key)?.limit ?? Number.POSITIVE_INFINITY)) over.set(key, place);
      const share = limit > 0 ? peak / limit : Number.POSITIVE_INFINITY;
      // what holds at its limit to the last digit is as near as the next
      if (share <= nearest + 1e-9) continue;
      nearest = share;
      const thin = (values: readonly number[]) => values.filter((_, k) => k % EVERY === 0);
      load = () => ({
        place: key,
        limitBy: by,
        minutes: thin(minutes),
        bands: [
          { name: 'everything else', current: thin(minutes).map(() => rest) },
          ...here.map(({ name, current }) => ({ name, current: thin(current) })),
        ],
        limit,
      });
    }
  return { ...(load ? { load: load() } : {}), over: [...over.values()], gaps };
}

/** What flows on a line at a board in every step: everything else, and the vehicles behind it. */
const throughOf =
  (
    vehicles: readonly Vehicle[],
    { courses, minutes }: Pick<ReturnType<typeof nightBeside>, 'courses' | 'minutes'>,
    existing: (board: Board, line: Line) => number,
  ) =>
  (board: Board, line: Line): readonly number[] => {
    const own = vehicles.filter((v) => behind(v, board)).map((v) => courses.get(v.point.id)?.[line]);
    return minutes.map((_, k) => own.reduce((sum, c) => sum + (c?.[k] ?? 0), existing(board, line)));
  };

/**
 * A night in which all vehicles of a survey charge at once, on the limits that load controls hold: with everything else
 * at rest, and while everything else draws its maximum demand throughout.
 */
export function nightOf(
  survey: Survey,
  installation: Installation,
  supply: Adequacy,
  feeders: readonly FeederDemand[],
): Night | undefined {
  if (!survey.wanted.some((w) => w.vehicle)) return undefined;
  const { stated, standing, gaps } = vehiclesOf(survey, installation);
  const all = [...stated, ...standing];
  const controls = [...new Set(stated.flatMap((v) => v.held.map((b) => b.control?.name ?? b.id)))];
  const loose = stated.filter(free).map((v) => v.point.id);
  const about = [
    'all vehicles charge in the same night, at nominal voltage; charging slows near full',
    ...(stated.some((v) => v.battery)
      ? ['of vehicles whose state of charge is stated that is counted, above 95 % as common observation has it']
      : []),
    ...(controls.length > 0
      ? [
          `current is shared evenly, from ${LEAST_CURRENT} A up, on the limits of: ${controls.length > MOST_NAMED ? `${controls[0]}, and ${controls.length - 1} more load controls` : controls.join(', ')}`,
        ]
      : []),
    ...(loose.length > 0
      ? [
          `no load control holds ${loose.length === stated.length ? 'the points: each charges' : `${loose.join(', ')}: charged`} at the full current that point and vehicle share`,
        ]
      : []),
    ...(standing.length > 0
      ? [
          `of the vehicles at ${standing.map((v) => v.point.id).join(', ')} nothing is stated: at rest with everything else, and charging throughout where everything else draws its maximum demand`,
        ]
      : []),
  ];
  if (stated.length === 0) return { vehicles: [], about, over: [], neutrals: [], gaps };
  const existing = existingOf(installation, supply, feeders);
  const boards = new Map(all.flatMap((v) => v.boards.map((b) => [b.id, b] as const)));
  const open = [...boards.values()].flatMap((b) =>
    lineConductors.flatMap((line) => {
      const found = existing(b, line);
      return isMissing(found) ? found.missing : [];
    }),
  );
  const span = nightSpan(stated);
  const through = standing.map((v) => ({ ...v, arrives: seconds(span.from), window: seconds(span.length) }));
  const quiet = nightBeside(installation, stated, span, () => 0);
  const demand = (b: Board, line: Line) => existing(b, line) as number;
  const busy = open.length > 0 ? undefined : nightBeside(installation, [...stated, ...through], span, demand);
  const {
    load,
    over,
    gaps: unjudged,
  } = busy ? loadOf(installation, stated, standing, busy, demand) : { load: undefined, over: [], gaps: [] };
  const once = eachOnce([...gaps, ...open, ...unjudged]);
  const flows = busy && throughOf(all, busy, demand);
  return {
    vehicles: stated.map((v) => ({
      point: v.point.id,
      arrives: v.arrives,
      window: v.window,
      quiet: quiet.charged(v),
      ...(busy ? { busy: busy.charged(v) } : {}),
    })),
    about,
    ...(load ? { load } : {}),
    over,
    neutrals: flows ? neutralsOf(installation, [...boards.values()], flows, STEP) : [],
    ...(busy && flows
      ? {
          halfHours: halfHourProfile(
            installation.board,
            flows,
            demand,
            busy.minutes,
            installation.supply.nominalVoltage,
          ),
        }
      : {}),
    gaps: once,
  };
}

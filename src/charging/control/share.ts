import { stated } from '../../core/index.js';
import { own } from '../../core/own.js';
import { type Line, lineConductors } from '../../installation/index.js';
import type { Seconds } from '../../units/index.js';
import { decide, type Ruling } from '../allocation/decide.js';
import { lowerToBalance, neutralsAlone, unbalancedAlone } from '../allocation/unbalance.js';
import { LINE_BIT, type Moment, momentOf, type TreeOrder } from '../network/tree-order.js';
import { type Drawn, otherLoad } from './measurement.js';
import {
  type ControlState,
  type ControlStep,
  commandsOf,
  lingering,
  lingersAt,
  type PointMemory,
  without,
} from './memory.js';
import type { SafeCurrents } from './safe-currents.js';
import { type ControlMeasurement, type ControlSettings, reactionOf } from './settings.js';

/** What a controller works with. */
export interface Engine {
  readonly order: TreeOrder;
  readonly settings: ControlSettings;
  readonly ruling: Ruling;
  readonly safe: SafeCurrents;
}

const TOLERANCE = 1e-9;
/** Time after which the order by waiting or by energy is looked at anew where none is given, s. */
const TURN = 900;

/** From where on a vehicle draws more than it was told, not a little more by the error of its meter; common practice, no source. */
const ignoresFrom = (allowed: number): number => allowed + Math.max(1, 0.1 * allowed);

/** How the points stand at a moment. */
interface Standing {
  readonly before: readonly PointMemory[];
  readonly said: readonly (ControlMeasurement['points'][string] | undefined)[];
  /** Points whose vehicle draws more than it was told. */
  readonly ignoring: Uint8Array;
  /** Points that do not say what they draw where it cannot be told from other load. */
  readonly unread: Uint8Array;
  readonly drawn: Drawn;
}

function standingOf(engine: Engine, state: ControlState, measurement: ControlMeasurement): Standing {
  const { order, safe } = engine;
  const n = order.points.length;
  const now = state.running;
  const seenAt = now - Math.max(0, (state.clock ?? 0) - (measurement.at + state.stamps.shift));
  const before = order.points.map((p) => own(state.points, p.id) ?? { command: 0, received: 0 });
  const said = order.points.map((p) => own(measurement.points, p.id));
  const [drawn, taken, kept] = [new Float64Array(n), new Float64Array(n), new Float64Array(n)];
  const [ignoring, unread] = [new Uint8Array(n), new Uint8Array(n)];
  const mixed = mixedIn(engine);
  for (let i = 0; i < n; i++) {
    const memory = before[i]!;
    const word = said[i];
    const allowed = Math.max(memory.command, lingersAt(memory, seenAt));
    // without its link a point goes to its safe current, or still follows its last command
    if (!word) kept[i] = Math.max(memory.command, lingersAt(memory, now), own(safe, order.points[i]!.id) ?? 0);
    else if (word.current !== undefined) {
      drawn[i] = word.current;
      ignoring[i] = word.current > ignoresFrom(allowed) ? 1 : 0;
      taken[i] = ignoring[i] ? word.current : Math.max(0, word.current - allowed);
    } else if (mixed[order.node[i]!]) {
      unread[i] = 1;
      drawn[i] = allowed;
      taken[i] = allowed;
    }
  }
  return { before, said, ignoring, unread, drawn: { drawn, taken, kept } };
}

/** Nodes whose points a meter, there or further up, sees together with other load. */
function mixedIn({ order, settings }: Engine): Uint8Array {
  const mixing = new Set(settings.meters.filter((m) => m.measures === 'everything').map((m) => m.node));
  const mixed = new Uint8Array(order.nodes.length);
  order.nodes.forEach((node, v) => {
    mixed[v] = mixing.has(node.id) || (order.parent[v]! >= 0 && mixed[order.parent[v]!]) ? 1 : 0;
  });
  return mixed;
}

/** A good measurement: share what the other load leaves, drop at once, rise after the holds. */
export function share(
  engine: Engine,
  state: ControlState,
  measurement: ControlMeasurement,
  clock: Seconds,
): ControlStep {
  const { order, settings, ruling } = engine;
  const now = state.running;
  const reaction = reactionOf(settings);
  const turnPeriod = settings.turnPeriod ?? TURN;
  const turn = Math.floor(now / turnPeriod);
  const turned = state.turn !== undefined && turn !== state.turn;
  const standing = standingOf(engine, state, measurement);
  const { before, said, ignoring, unread } = standing;
  const moment = momentOf(order);
  const wanting = Uint8Array.from(said, (word) => (word?.connected ? 1 : 0));
  // who has had its turn goes behind those who waited
  const waits = before.map((m) => (m.wantsSince === undefined || (turned && m.command > 0) ? now : m.wantsSince));
  order.points.forEach((p, i) => {
    const word = said[i];
    moment.wants[i] = ignoring[i] || unread[i] ? 0 : wanting[i]!;
    moment.most[i] = Math.min(p.most, word?.most ?? p.most);
    moment.waitingSince[i] = waits[i]!;
    moment.received[i] = turn === state.turn ? before[i]!.received : (word?.received ?? before[i]!.received);
  });
  const full = otherLoad(order, moment, settings, measurement, standing.drawn);
  const waiting = typeof ruling.waiting === 'object' ? { ...ruling.waiting, now: clock } : ruling.waiting;
  const shares = decide(order, moment, { ...ruling, waiting });
  /** What a point may have: of those in the other load what is theirs without word, or what they were told. */
  const target = (i: number): number => {
    if (!ignoring[i] && !unread[i]) return shares[i]!;
    if (!wanting[i] || exceeded(order, full, i)) return 0;
    if (ignoring[i]) return before[i]!.command;
    const most = Math.min(moment.most[i]!, own(engine.safe, order.points[i]!.id) ?? 0);
    return most < moment.least[i]! ? 0 : most;
  };
  /** What a point is told that says nothing: after a while its safe current, to which it falls by itself where it hears nothing. */
  const unheard = (i: number): number => {
    const { command, heard = Number.NEGATIVE_INFINITY } = before[i]!;
    const most =
      now - heard > settings.staleAfter ? (own(engine.safe, order.points[i]!.id) ?? 0) : order.points[i]!.most;
    return Math.min(command, most);
  };
  const due = Float64Array.from(before, (_, i) => (said[i] ? target(i) : unheard(i)));
  const next = due.map((current, i) => Math.min(current, before[i]!.command));
  // who was told to make room counts with the old current until there was time for it; who is silent, does not say what it
  // draws or ignores what it is told is in the other load
  const counted = Float64Array.from(before, (m, i) =>
    said[i] && !ignoring[i] && !unread[i] ? Math.max(next[i]!, lingering(m, next[i]!, now, reaction)?.current ?? 0) : 0,
  );
  const memories = order.points.map((_, i): PointMemory => {
    const memory = before[i]!;
    if (!said[i]) return memory;
    return {
      ...without(memory, 'rises', 'wantsSince'),
      heard: now,
      received: moment.received[i]!,
      ...(wanting[i] ? { wantsSince: waits[i]! } : {}),
    };
  });
  for (let i = 0; i < next.length; i++) {
    const memory = before[i]!;
    const rises = said[i] ? riseOf(settings, memory, due[i]!, moment.most[i]!, now) : undefined;
    if (!rises) continue;
    memories[i] = { ...memories[i]!, rises };
    const hold = memory.command > 0 || memory.paused !== 'want' ? settings.riseAfter : settings.resumeAfter;
    if (now - rises.since < hold || !fits(order, moment, counted, i, rises.to)) continue;
    next[i] = rises.to;
    counted[i] = Math.max(counted[i]!, rises.to);
    memories[i] = without(memories[i]!, 'rises', 'paused');
  }
  if (order.allBalances.length > 0)
    lowerToBalance(order, moment, next, { weight: moment.weight, floor: moment.least, step: ruling.step });

  const byTurn = turned || rotated(engine, state.clock, clock);
  const points: Record<string, PointMemory> = {};
  for (const { id } of order.network.points) points[id] = state.points[id]!;
  order.points.forEach((p, i) => {
    const memory = before[i]!;
    const command = next[i]!;
    const lingers = said[i]
      ? (lingering(memory, command, now, reaction) ?? stillSeen(memory, now, settings))
      : { current: standing.drawn.kept[i]!, until: now + reaction };
    const pausedNow = memory.command > 0 && command === 0 && wanting[i] === 1;
    points[p.id] = {
      ...without(memories[i]!, 'lingers', ...(wanting[i] || !said[i] ? [] : (['paused'] as const))),
      command,
      ...(pausedNow ? { paused: byTurn ? ('turn' as const) : ('want' as const) } : {}),
      ...stated({ lingers }),
    };
  });
  const named = (which: (i: number) => unknown) => order.points.flatMap((p, i) => (which(i) ? [p.id] : []));
  return {
    state: { ...state, measuredAt: measurement.at + state.stamps.shift, missed: 0, turn, points },
    commands: commandsOf(points),
    mode: 'sharing',
    overloaded: overloadedIn(order, moment),
    unbalanced: unbalancedAlone(order, moment),
    neutrals: neutralsAlone(order, moment),
    ignoring: named((i) => ignoring[i]),
    unread: named((i) => unread[i]),
    unable: named((i) => wanting[i] && moment.most[i]! < moment.least[i]!),
  };
}

/** What lingered is remembered as long as a measurement of that time may still come. */
const stillSeen = ({ lingers }: PointMemory, now: number, { staleAfter }: ControlSettings) =>
  lingers && lingers.until + staleAfter > now ? lingers : undefined;

function overloadedIn(order: TreeOrder, { base }: Moment): { node: string; line: Line }[] {
  const overloaded: { node: string; line: Line }[] = [];
  order.nodes.forEach((node, v) => {
    for (let p = 0; p < 3; p++)
      if (base[3 * v + p]! > order.limit[3 * v + p]!) overloaded.push({ node: node.id, line: lineConductors[p]! });
  });
  return overloaded;
}

/** Whether what no command moves exceeds a limit on the way of a point. */
function exceeded(order: TreeOrder, full: Uint8Array, i: number): boolean {
  for (let v = order.gate[order.node[i]!]!; v >= 0; v = order.next[v]!)
    for (let p = 0; p < 3; p++) if (order.mask[i]! & LINE_BIT[p]! && full[3 * v + p]) return true;
  return false;
}

/** Whether a rotation has moved on since the last step. */
function rotated({ ruling }: Engine, last: number | undefined, clock: number): boolean {
  if (typeof ruling.waiting !== 'object' || last === undefined) return false;
  return Math.floor(clock / ruling.waiting.rotation) !== Math.floor(last / ruling.waiting.rotation);
}

/** The rise that a point waits for: since when, and the least that was on offer in that time. */
function riseOf(
  { riseBy }: ControlSettings,
  memory: PointMemory,
  target: number,
  most: number,
  now: number,
): PointMemory['rises'] {
  const by = memory.command === 0 ? 0 : Math.min(riseBy ?? 1, most - memory.command);
  if (target <= memory.command || target < memory.command + by - TOLERANCE) return undefined;
  return memory.rises
    ? { since: memory.rises.since, to: Math.min(memory.rises.to, target) }
    : { since: now, to: target };
}

/** Whether a point may rise while others have not yet made the room that they were told to make. */
function fits(order: TreeOrder, moment: Moment, counted: Float64Array, i: number, to: number): boolean {
  const rise = to - Math.min(to, counted[i]!);
  for (let v = order.gate[order.node[i]!]!; v >= 0; v = order.next[v]!)
    for (let p = 0; p < 3; p++) {
      if (!(order.mask[i]! & LINE_BIT[p]!)) continue;
      let sum = rise;
      for (let k = order.first[v]!; k < order.end[v]!; k++) if (order.mask[k]! & LINE_BIT[p]!) sum += counted[k]!;
      if (sum > moment.room[3 * v + p]! + TOLERANCE) return false;
    }
  return true;
}

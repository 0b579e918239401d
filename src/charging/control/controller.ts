import { stated } from '../../core/index.js';
import { own } from '../../core/own.js';
import { type Line, lineConductors } from '../../installation/index.js';
import { type Amperes, amperes, CalculationError, type Seconds } from '../../units/index.js';
import { rulingOf } from '../allocation/allocate.js';
import { decide, type Ruling } from '../allocation/decide.js';
import { lowerToBalance } from '../allocation/unbalance.js';
import type { ChargingNetwork } from '../network/network.js';
import { LINE_BIT, type Moment, momentOf, type TreeOrder, treeOrder } from '../network/tree-order.js';
import { faultIn, type MeasurementFault, otherLoad } from './measurement.js';
import { excessTimeOf } from './reaction.js';
import { type SafeCurrents, safeCurrents } from './safe-currents.js';
import { type ControlMeasurement, type ControlSettings, inspectSettings } from './settings.js';

/** What a controller remembers of a point: plain, JSON-ready. Times are clock values in s, currents in A. @inline */
export interface PointMemory {
  /** The command that stands: 0 or at least the smallest current. */
  readonly command: number;
  /** What the vehicle may still draw after a reduction, and until when. */
  readonly lingers?: { readonly current: number; readonly until: number };
  /** Since when more is available without a break, and the least that was available in that time. */
  readonly rises?: { readonly since: number; readonly to: number };
  /** Why it was paused, while it is. */
  readonly paused?: 'want' | 'turn';
  /** Since when a vehicle wants energy. */
  readonly wantsSince?: number;
  /** Energy received when the order was last looked at, Wh. */
  readonly received: number;
}

/** What a controller remembers from step to step: plain, JSON-ready. */
export interface ControlState {
  /** Clock value of the last step, s. */
  readonly clock?: number;
  /** Clock value of the last good measurement, s. */
  readonly measuredAt?: number;
  /** Period of the clock in which the order by energy was looked at. */
  readonly turn?: number;
  readonly points: Readonly<Record<string, PointMemory>>;
}

/** What a step of a controller decides. */
export interface ControlStep {
  /** What to remember. */
  readonly state: ControlState;
  /** Current for each point by name, A: 0 or at least its smallest current. */
  readonly commands: Readonly<Record<string, Amperes>>;
  /**
   * `sharing`: a new measurement was used. `holding`: there was none that could be used; nothing rises. `safe`: the last
   * good one is too old; every point is at its safe current or below.
   */
  readonly mode: 'sharing' | 'holding' | 'safe';
  /** Why the measurement was not used. */
  readonly fault?: MeasurementFault;
  /** Limits that other load alone exceeds. */
  readonly overloaded: readonly { readonly node: string; readonly line: Line }[];
}

/** A controller for one network: two pure functions and the figures that go with them. */
export interface Controller {
  /** State before the first step: every point is paused. */
  readonly start: ControlState;
  /** One step: what to remember and what to command. It never throws, whatever is measured. */
  step(state: ControlState, measurement: ControlMeasurement | undefined, clock: Seconds): ControlStep;
  /** Current of each point when the meter or the controller is silent, A. */
  readonly safe: SafeCurrents;
  /** Longest time from a rise of the other load until charging has made room, s. */
  readonly excessTime: Seconds;
  /** The same when the meter falls silent at that very moment, s. */
  readonly excessTimeSilent: Seconds;
}

/**
 * A controller that keeps the limits of a network over time. It drops at once; it rises after a hold, only by what was
 * available throughout the hold, and only when those who were told to make room have had time to do so; it resumes a
 * point that was paused for want of current after a longer hold. Without a good measurement nothing rises; when the last
 * one is too old every point falls to its safe current. A delay of the start of a charge is no matter of the controller:
 * a reduction is never delayed.
 *
 * Charging above what the limits leave beside the other load lasts no longer than `excessTime` after the other load rose,
 * as long as measurements come, vehicles follow, and points report the current that they draw.
 * @param network limits and points; other load that is not metered, and the worst of it where it is metered, A
 * @param settings periods and holds, s; meters; how current is shared
 * @returns a controller: give it measurements and it gives set points, A; its state is plain data
 * @throws CalculationError `invalid-input` with everything that is wrong with the network or the settings
 * @example
 * ```ts
 * import { amperes, seconds } from 'ohmwright';
 * import { controllerOf } from 'ohmwright/charging';
 *
 * const line = (a: number) => [amperes(a), amperes(0), amperes(0)] as const;
 * const { start, step } = controllerOf(
 *   {
 *     nodes: [{ id: 'intake', limit: line(60), load: line(50) }],
 *     points: [{ id: 'drive', node: 'intake', lines: ['L1'], most: amperes(32) }],
 *   },
 *   {
 *     policy: { rule: 'max-min-amperes' },
 *     meters: [{ node: 'intake', measures: 'everything', positive: 'import' }],
 *     meterPeriod: seconds(1), controllerPeriod: seconds(1), vehicleReaction: seconds(5), staleAfter: seconds(10),
 *     riseAfter: seconds(0), resumeAfter: seconds(600),
 *   },
 * );
 * const house = (at: number, a: number, drawn: number) => ({
 *   at: seconds(at), nodes: { intake: line(a + drawn) }, points: { drive: { connected: true, current: amperes(drawn) } },
 * });
 * const first = step(start, house(0, 20, 0), seconds(0));
 * first.commands; // => { drive: 32 }
 * step(first.state, house(1, 40, 32), seconds(1)).commands; // => { drive: 20 }
 * step(first.state, house(0, 10, 32), seconds(1)).mode; // => 'holding'
 * ```
 */
export function controllerOf(network: ChargingNetwork, settings: ControlSettings): Controller {
  const order = treeOrder(network);
  inspectSettings(network, settings);
  const ruling = rulingOf({ ...settings.policy, stage: 'whole-steps' });
  const safe = settings.safe ?? safeCurrents(network, settings.policy.resolution);
  const points: Record<string, PointMemory> = {};
  for (const p of network.points) points[p.id] = { command: 0, received: 0 };
  const engine: Engine = { order, settings, ruling, safe };
  return {
    start: { points },
    safe,
    excessTime: excessTimeOf(settings),
    excessTimeSilent: excessTimeOf({ ...settings, meterPeriod: settings.staleAfter }),
    step: (state, measurement, clock) => {
      const last = state.clock ?? Number.NEGATIVE_INFINITY;
      const sane = Number.isFinite(clock) && clock >= last;
      const fault = sane ? faultIn(measurement, settings, state.measuredAt, clock) : 'clock';
      if (!measurement || fault !== undefined) return hold(engine, state, sane ? clock : undefined, fault);
      try {
        return share(engine, state, measurement, clock);
      } catch (error) {
        if (!(error instanceof CalculationError)) throw error;
        return hold(engine, state, clock, 'no-solution');
      }
    },
  };
}

interface Engine {
  readonly order: TreeOrder;
  readonly settings: ControlSettings;
  readonly ruling: Ruling;
  readonly safe: SafeCurrents;
}

const commandsOf = (points: ControlState['points']): Record<string, Amperes> => {
  const commands: Record<string, Amperes> = {};
  for (const id of Object.keys(points)) commands[id] = amperes(points[id]!.command);
  return commands;
};

/** What lingers after a change of the command, for as long as the vehicle may take. */
function lingering(memory: PointMemory, command: number, clock: number, reaction: number): PointMemory['lingers'] {
  const before = memory.lingers && memory.lingers.until > clock ? memory.lingers : undefined;
  if (command >= memory.command) return before && before.current > command ? before : undefined;
  if (reaction === 0) return undefined;
  return { current: Math.max(memory.command, before?.current ?? 0), until: clock + reaction };
}

const without = <T extends object, K extends keyof T>(value: T, ...keys: K[]): Omit<T, K> => {
  const rest = { ...value };
  for (const key of keys) delete rest[key];
  return rest;
};

/** No measurement to act on: nothing rises, and when the last one is too old everything falls to its safe current. */
function hold(
  { settings, safe }: Engine,
  state: ControlState,
  clock: number | undefined,
  fault: MeasurementFault | undefined,
): ControlStep {
  // with a clock that cannot be trusted the age is unknown: as good as too old
  const stale = clock === undefined || !(clock - (state.measuredAt ?? Number.NEGATIVE_INFINITY) <= settings.staleAfter);
  const points: Record<string, PointMemory> = {};
  for (const [id, memory] of Object.entries(state.points)) {
    const command = stale ? Math.min(memory.command, safe[id] ?? 0) : memory.command;
    const lingers = lingering(memory, command, clock ?? state.clock ?? 0, settings.vehicleReaction);
    points[id] = {
      ...without(memory, 'lingers', ...(stale ? (['rises'] as const) : [])),
      command,
      ...stated({ lingers }),
    };
  }
  return {
    state: { ...state, ...stated({ clock }), points },
    commands: commandsOf(points),
    mode: stale ? 'safe' : 'holding',
    ...stated({ fault }),
    overloaded: [],
  };
}

/** A good measurement: share what the other load leaves, drop at once, rise after the holds. */
function share(engine: Engine, state: ControlState, measurement: ControlMeasurement, clock: Seconds): ControlStep {
  const { order, settings } = engine;
  const turn = Math.floor(clock / (settings.turnPeriod ?? 900));
  const moment = momentOf(order);
  const before = order.points.map((p) => own(state.points, p.id) ?? { command: 0, received: 0 });
  const said = order.points.map((p) => own(measurement.points, p.id));
  order.points.forEach((p, i) => {
    const word = said[i];
    moment.wants[i] = word?.connected ? 1 : 0;
    moment.most[i] = Math.min(p.most, word?.most ?? p.most);
    moment.waitingSince[i] = before[i]!.wantsSince ?? clock;
    moment.received[i] = turn === state.turn ? before[i]!.received : (word?.received ?? before[i]!.received);
  });
  otherLoad(
    order,
    moment,
    settings,
    measurement,
    before.map((m, i) => (said[i] ? 0 : m.command)),
  );
  const target = targets(engine, moment, clock);
  const turned = turnsOf(engine, state.clock, clock);

  const memories = order.points.map((_, i): PointMemory => {
    const memory = before[i]!;
    if (!said[i]) return memory;
    return {
      ...without(memory, 'rises', 'wantsSince'),
      received: moment.received[i]!,
      ...(moment.wants[i] ? { wantsSince: memory.wantsSince ?? clock } : {}),
    };
  });
  const next = Float64Array.from(before, (m, i) => (said[i] ? Math.min(m.command, target[i]!) : m.command));
  // who was told to make room counts with the old current until there was time for it; for who is silent room is kept
  const counted = Float64Array.from(before, (m, i) =>
    said[i] ? Math.max(next[i]!, lingering(m, next[i]!, clock, settings.vehicleReaction)?.current ?? 0) : 0,
  );
  for (let i = 0; i < next.length; i++) {
    const memory = before[i]!;
    const rises = said[i] ? riseOf(engine, memory, target[i]!, moment.most[i]!, clock) : undefined;
    if (!rises) continue;
    memories[i] = { ...memories[i]!, rises };
    const due = memory.command > 0 || memory.paused !== 'want' ? settings.riseAfter : settings.resumeAfter;
    if (clock - rises.since < due || !fits(order, moment, counted, i, rises.to)) continue;
    next[i] = rises.to;
    counted[i] = Math.max(counted[i]!, rises.to);
    memories[i] = without(memories[i]!, 'rises', 'paused');
  }
  const least = moment.least;
  if (order.unbalanced.length > 0)
    lowerToBalance(order, moment, next, { weight: moment.weight, floor: least, step: engine.ruling.step });

  const points: Record<string, PointMemory> = {};
  for (const { id } of engine.order.network.points) points[id] = state.points[id]!;
  order.points.forEach((p, i) => {
    const memory = before[i]!;
    const command = next[i]!;
    const lingers = lingering(memory, command, clock, settings.vehicleReaction);
    const pausedNow = memory.command > 0 && command === 0 && moment.wants[i] === 1;
    const rest = without(memories[i]!, 'lingers', ...(moment.wants[i] ? [] : (['paused'] as const)));
    points[p.id] = {
      ...rest,
      command,
      ...(pausedNow ? { paused: turned ? ('turn' as const) : ('want' as const) } : {}),
      ...(lingers ? { lingers } : {}),
    };
  });
  const overloaded: { node: string; line: Line }[] = [];
  order.nodes.forEach((node, v) => {
    for (let p = 0; p < 3; p++)
      if (moment.base[3 * v + p]! > order.limit[3 * v + p]!)
        overloaded.push({ node: node.id, line: lineConductors[p]! });
  });
  return {
    state: { clock, measuredAt: measurement.at, turn, points },
    commands: commandsOf(points),
    mode: 'sharing',
    overloaded,
  };
}

/** What each point would get if everything could change at once. */
function targets({ order, ruling }: Engine, moment: Moment, clock: Seconds): Float64Array {
  const waiting = typeof ruling.waiting === 'object' ? { ...ruling.waiting, now: clock } : ruling.waiting;
  return decide(order, moment, { ...ruling, waiting });
}

/** Whether the order of service has moved on since the last step. */
function turnsOf({ ruling, settings }: Engine, last: number | undefined, clock: number): boolean {
  const period =
    typeof ruling.waiting === 'object'
      ? ruling.waiting.rotation
      : ruling.waiting === 'least-energy'
        ? (settings.turnPeriod ?? 900)
        : Number.POSITIVE_INFINITY;
  return last !== undefined && Math.floor(clock / period) !== Math.floor(last / period);
}

/** The rise that a point waits for: since when, and the least that was on offer in that time. */
function riseOf(
  { settings }: Engine,
  memory: PointMemory,
  target: number,
  most: number,
  clock: number,
): PointMemory['rises'] {
  const by = memory.command === 0 ? 0 : Math.min(settings.riseBy ?? 1, most - memory.command);
  if (target <= memory.command || target < memory.command + by - 1e-9) return undefined;
  return memory.rises
    ? { since: memory.rises.since, to: Math.min(memory.rises.to, target) }
    : { since: clock, to: target };
}

/** Whether a point may rise while others have not yet made the room that they were told to make. */
function fits(order: TreeOrder, moment: Moment, counted: Float64Array, i: number, to: number): boolean {
  const rise = to - Math.min(to, counted[i]!);
  for (let v = order.gate[order.node[i]!]!; v >= 0; v = order.next[v]!)
    for (let p = 0; p < 3; p++) {
      if (!(order.mask[i]! & LINE_BIT[p]!)) continue;
      let sum = rise;
      for (let k = order.first[v]!; k < order.end[v]!; k++) if (order.mask[k]! & LINE_BIT[p]!) sum += counted[k]!;
      if (sum > moment.room[3 * v + p]! + 1e-9) return false;
    }
  return true;
}

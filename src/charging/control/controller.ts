import { stated } from '../../core/index.js';
import { own } from '../../core/own.js';
import { type Problem, type Seconds, seconds } from '../../units/index.js';
import { rulingOf } from '../allocation/allocate.js';
import { type ChargingNetwork, LEAST_CURRENT, type NetworkNode } from '../network/network.js';
import { neverServed } from '../network/never-served.js';
import { type Inspection, inspection, inspectNetwork } from '../network/refuse.js';
import { orderOf } from '../network/tree-order.js';
import { faultIn, stampOf } from './measurement.js';
import {
  type ControlState,
  type ControlStep,
  commandsOf,
  lingering,
  type MeasurementFault,
  type PointMemory,
  without,
} from './memory.js';
import { excessTimeOf } from './reaction.js';
import { misfits, type SafeCurrents, safeCurrents, worstCase } from './safe-currents.js';
import {
  type ControlMeasurement,
  type ControlSettings,
  inspectSettings,
  pointReactionOf,
  reactionOf,
} from './settings.js';
import { type Engine, share } from './share.js';
import { lookAt } from './stamps.js';
import { isState } from './state.js';

/** A controller for one network: two pure functions and the figures that go with them. */
export interface Controller {
  /** State before the first step: every point is paused. */
  readonly start: ControlState;
  /** One step, due once in each `controllerPeriod`: what to remember and what to command. It never throws, whatever is measured. */
  step(state: ControlState, measurement: ControlMeasurement | undefined, clock: Seconds): ControlStep;
  /**
   * Current of each point when the meter or the controller is silent, A: the points are to be set so that they fall to it,
   * and to no more, when they lose their link.
   */
  readonly safe: SafeCurrents;
  /**
   * What whoever sets it up should know: metered nodes whose worst load is not stated, behind which no point gets current
   * while the meter is silent, and points that a limit keeps from ever charging. Each with its path in the network.
   */
  readonly notes: readonly Problem[];
  /** Longest time from a rise of the other load until charging has made room, s. */
  readonly excessTime: Seconds;
  /** The same when the meter falls silent at that very moment, s. */
  readonly excessTimeSilent: Seconds;
}

/**
 * A controller that keeps the limits of a network over time. It drops at once; it rises after a hold, only by what was
 * available throughout the hold, and only when those who were told to make room have had time to do so; it resumes a
 * point that was paused for want of current after a longer hold. Without a good measurement nothing rises; when the last
 * one is too old every point falls to its safe current. For a point that says nothing its safe current is kept free, or
 * its last command where that is more. A delay of the start of a charge is no matter of the controller: a reduction is
 * never delayed. A point that is metered with the rest and does not say what it draws gets its safe current and no more.
 *
 * Charging above what the limits leave beside the other load lasts no longer than `excessTime` after the other load rose,
 * as long as measurements come and are true: a reading that stands still while its stamps go on is not told from a load that
 * does; with a load that goes on rising it is at no time more than the load has risen within that
 * time. Other load is also what a vehicle draws above its command, or that nobody reports, as far as a
 * meter or its point sees it, and the safe current of a point that has lost its link.
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
  const what = 'A load control';
  const found = inspection();
  const sound = inspectNetwork(network, found);
  inspectSettings(sound ? network : undefined, settings, found);
  if (found.problems.length === 0) inspectHeld(network, settings, found);
  found.refuse(what);
  const order = orderOf(network);
  const worst = worstCase(network, new Set(settings.meters.map((meter) => meter.node)));
  const safe = settings.safe ?? safeCurrents(worst, settings.policy.resolution);
  if (settings.safe) found.problems.push(...misfits(worst, safe));
  found.refuse(what);
  const points: Record<string, PointMemory> = {};
  for (const p of network.points) points[p.id] = { command: 0, received: 0 };
  const engine: Engine = { order, settings, ruling: rulingOf({ ...settings.policy, stage: 'whole-steps' }), safe };
  const delays = { ...settings, pointReaction: pointReactionOf(settings) };
  return {
    start: { running: 0, missed: 0, stamps: { shift: 0 }, points },
    safe,
    notes: [...worst.notes, ...neverServed(order)],
    excessTime: excessTimeOf(delays),
    excessTimeSilent: excessTimeOf({ ...delays, meterPeriod: settings.staleAfter }),
    step: (given, measurement, clock) => {
      // what is no state of a control is as if it had just begun, and nothing is known
      if (!isState(given)) return hold(engine, { running: 0, missed: 0, stamps: { shift: 0 }, points }, 'safe', 'none');
      const state = given;
      if (!Number.isFinite(clock)) return hold(engine, { ...state, missed: state.missed + 1 }, 'safe', 'clock');
      try {
        return stepOf(engine, state, measurement, clock);
      } catch {
        // whatever it was that could not be read or shared: points that nobody commands go on
        return hold(engine, { ...state, clock, missed: state.missed + 1 }, undefined, 'no-solution');
      }
    },
  };
}

/** A step by a state that is one, at a clock value that is one. */
function stepOf(
  engine: Engine,
  state: ControlState,
  measurement: ControlMeasurement | undefined,
  clock: number,
): ControlStep {
  const { settings } = engine;
  const { now, back } = moved(engine, state, measurement, clock);
  if (back) return hold(engine, now, 'safe', 'clock');
  const { seen } = state.stamps;
  const again = seen?.doubtful && seen.at === stampOf(measurement);
  const fault = again ? 'not-new' : faultIn(measurement, settings, now, clock);
  if (!measurement || fault !== undefined) return hold(engine, now, undefined, fault);
  return share(engine, now, measurement, seconds(clock));
}

/**
 * Whether something holds every point: a limit on its way, and, where no meter sees it, what else flows through the node that is
 * limited. What nobody states is not nought.
 */
function inspectHeld({ nodes, points }: ChargingNetwork, { meters }: ControlSettings, found: Inspection): void {
  const byId = new Map(nodes.map((n, i) => [n.id, { node: n, i }] as const));
  const metered = new Set(meters.map((m) => m.node));
  for (const [i, { id, node }] of points.entries()) {
    let limited = false;
    for (let at = byId.get(node); at; at = at.node.parent === undefined ? undefined : byId.get(at.node.parent))
      limited ||= at.node.limit !== undefined;
    found.when(!limited, ['points', i, 'node'], `no node on the way to '${id}' has a limit`);
  }
  const parents = new Set(nodes.map((n) => n.parent));
  const seen = ({ id, load }: NetworkNode) => load !== undefined || metered.has(id);
  /** Whether a node ahead that is seen has no higher limit: all that flows here flows there. */
  const heldAhead = ({ limit, parent }: NetworkNode): boolean => {
    for (let at = byId.get(parent ?? '')?.node; at; at = byId.get(at.parent ?? '')?.node)
      if (at.limit && seen(at) && at.limit.every((a, k) => a <= limit![k]! || limit![k]! === 0)) return true;
    return false;
  };
  for (const { node, i } of byId.values()) {
    // what feeds points alone has nothing else behind it
    const row = node.parent !== undefined && !parents.has(node.id);
    if (node.limit && !row && !seen(node) && !heldAhead(node))
      found.when(true, ['nodes', i, 'load'], `'${node.id}' has no meter: state what else flows through it, or 0 A`);
  }
}

/** The state when the clock has gone on, the stamp of the measurement looked at; whether the clock has gone back. */
function moved(
  { settings }: Engine,
  state: ControlState,
  measurement: ControlMeasurement | undefined,
  clock: number,
): { readonly now: ControlState; readonly back: boolean } {
  const passed = clock - (state.clock ?? clock);
  const back = passed < 0;
  const running = state.running + Math.min(Math.max(0, passed), settings.controllerPeriod);
  const looked = lookAt(state.stamps, stampOf(measurement), { clock, running }, settings);
  const stamps = back && looked.seen ? { ...looked, seen: { ...looked.seen, doubtful: true as const } } : looked;
  // after a clock has gone back nobody knows how old the last measurement is, nor one that comes from before
  const rest = back ? { ...without(state, 'measuredAt'), notBefore: clock } : state;
  return { now: { ...rest, clock, running, missed: state.missed + 1, stamps }, back };
}

/** No measurement to act on: nothing rises, and when the last one is too old everything falls to its safe current. */
function hold(
  { order: { network }, settings, safe }: Engine,
  state: ControlState,
  mode: 'safe' | undefined,
  fault: MeasurementFault | undefined,
): ControlStep {
  const { clock = 0, running, measuredAt = Number.NEGATIVE_INFINITY, missed } = state;
  // a clock that stands still does not keep a measurement fresh: steps count too
  const fresh = clock - measuredAt <= settings.staleAfter && missed * settings.controllerPeriod <= settings.staleAfter;
  const stale = mode === 'safe' || !fresh;
  const points: Record<string, PointMemory> = {};
  // the points of this network, whatever others a state from before knows
  for (const { id, most, least = LEAST_CURRENT } of network.points) {
    const memory = own(state.points, id) ?? { command: 0, received: 0 };
    const allowed = Math.min(most, stale ? (safe[id] ?? 0) : most);
    const command = memory.command > allowed ? (allowed < least ? 0 : allowed) : memory.command;
    const lingers = lingering(memory, command, running, reactionOf(settings)) ?? memory.lingers;
    points[id] = {
      ...without(memory, 'lingers', ...(stale ? (['rises'] as const) : [])),
      command,
      ...stated({ lingers }),
    };
  }
  return {
    state: { ...state, points },
    commands: commandsOf(points),
    mode: stale ? 'safe' : 'holding',
    ...stated({ fault }),
    overloaded: [],
    unbalanced: [],
    neutrals: [],
    ignoring: [],
    unread: [],
    unable: [],
  };
}

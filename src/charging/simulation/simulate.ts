import { wattHours } from '../../units/index.js';
import { rulingOf } from '../allocation/allocate.js';
import { chargingByNode, type Moment, momentOf, type TreeOrder, treeOrder } from '../network/tree-order.js';
import { clockworkOf } from '../time/clockwork.js';
import { type LongWork, telling } from '../time/long-work.js';
import { windowsOf } from '../time/windows.js';
import { dispatchOf } from './dispatch.js';
import { inspectSimulation, type SimulationInput } from './input.js';
import { type Manager, sharingAtOnce, sharingByControl } from './manager.js';
import { caveatsOf, type SessionOutcome, type Simulation } from './outcome.js';
import { charge, enter, follow, outcomeOf, type Stay, stayOf } from './stay.js';
import { seriesOf, tallyOf } from './tally.js';

/** Steps between two signs of life. */
const TOLD_EACH = 1000;

/**
 * Lets vehicles charge through a night or a year, step by step: what they get, how often they start and stop, how long
 * limits are reached, and the peak on each line. Other load, limits and commands are constant within a step; a vehicle
 * begins with the first step after its arrival and ends the moment it is full. A vehicle whose battery is stated takes what
 * its state of charge at the begin of the step lets it take; others are taken to draw all that they are offered, and real
 * ones draw less when cold or nearly full.
 * @param input network, vehicles, other load, how current is shared, time; A, V, Wh, s
 * @param work what it tells while it goes on, and what cuts it short
 * @returns what became of every vehicle and node; Wh, s, A
 * @throws CalculationError `invalid-input` with everything that is wrong
 * @example
 * ```ts
 * import { amperes, hours, kilowattHours, minutes, volts } from 'ohmwright';
 * import { simulate } from 'ohmwright/charging';
 *
 * const line = (a: number) => [amperes(a), amperes(0), amperes(0)] as const;
 * const night = simulate({
 *   network: {
 *     nodes: [{ id: 'intake', limit: line(60), load: line(40) }],
 *     points: [{ id: 'drive', node: 'intake', lines: ['L1'], most: amperes(32) }],
 *   },
 *   sessions: [{ id: 'car', point: 'drive', arrives: hours(18), leaves: hours(31), energy: kilowattHours(23) }],
 *   from: hours(17), to: hours(31), step: minutes(1), voltage: volts(230),
 *   control: { policy: { rule: 'max-min-amperes' } },
 * });
 * night.sessions[0]?.fullAt; // => 82800
 * night.nodes[0]?.peak; // => [60, 0, 0]
 * ```
 */
export function simulate(input: SimulationInput, work: LongWork = {}): Simulation {
  inspectSimulation(input);
  const { from, to, step, voltage, control } = input;
  const network = withFirstLimits(input);
  const order = treeOrder(network);
  const moment = momentOf(order);
  const clockwork = clockworkOf(order, moment, input, input.load ?? [], input.limits ?? []);
  const manager: Manager =
    'meters' in control
      ? sharingByControl(order, moment, network, control, step)
      : sharingAtOnce(order, moment, control);
  const dispatch = input.sources && dispatchOf(order, moment, input.sources, input);
  const place = new Map(order.points.map((p, i) => [p.id, i]));
  const stays = input.sessions.map((session) => {
    const stay = { from: session.arrives, to: session.leaves };
    const windows = windowsOf(input.hours ?? { kind: 'any' }, stay, session.id);
    return stayOf(order, session, place.get(session.point)!, windows, from);
  });
  const comings = comingsOf(order, moment, stays);
  const ruling = rulingOf(control.policy);
  const tally = tallyOf(order, ruling.step > 0 ? ruling.step : 1e-6);
  const recorder = input.keepSeries ? seriesOf(order) : undefined;

  let charging: Float64Array = new Float64Array(moment.base.length);
  let [counted, full] = [undefined as Float64Array | undefined, false];
  const filling = stays.some((s) => s.session.battery);
  const steps = Math.ceil((to - from) / step - 1e-9);
  const tell = telling(work, steps);
  for (let k = 0; k < steps; k++) {
    if (tell && k % TOLD_EACH === 0) tell(k);
    const now = from + k * step;
    const end = Math.min(now + step, to);
    const moved = clockwork.set(k);
    dispatch?.before(k, moved);
    const { wanting, changed } = comings(now, full);
    const filled = filling && follow(moment, wanting);
    const currents = manager.currents({
      step: k,
      now,
      wanting,
      changed: moved || changed || filled || dispatch !== undefined,
    });
    let takes = currents;
    if (wanting.length > 0 && (filling || manager.resumeAfter > 0)) takes = currents.slice();
    full = false;
    for (const stay of wanting) {
      const current = charge(stay, currents[stay.point]!, now, end, voltage, manager);
      if (takes !== currents) takes[stay.point] = current;
      if (stay.fullAt >= now) full = true;
    }
    if (takes !== counted || changed || !manager.lasting) charging = chargingByNode(order, takes);
    counted = takes;
    dispatch?.after(now, end - now, charging);
    tally.add(moment.base, charging, end - now);
    recorder?.add(now, moment.base, takes);
  }

  tell?.(steps);

  const sessions = stays.map((stay) => outcomeOf(stay, manager.leastOn));
  const sum = (of: (s: SessionOutcome) => number) => wattHours(sessions.reduce((a, s) => a + of(s), 0));
  return {
    sessions,
    nodes: tally.outcome(),
    ...(dispatch ? { sources: dispatch.outcome() } : {}),
    delivered: sum((s) => s.delivered),
    missing: sum((s) => s.missing),
    notPromised: caveatsOf(order, control, ruling, new Set(stays.map((s) => s.mask)).size < 2),
    ...(recorder ? { series: recorder.series() } : {}),
  };
}

/** The network with the first values of limits that change, so that every node that ever has a limit counts as one. */
function withFirstLimits({ network, limits = [] }: SimulationInput): SimulationInput['network'] {
  const first = new Map(limits.map((p) => [p.node, p.values[0]!]));
  return { ...network, nodes: network.nodes.map((n) => (first.has(n.id) ? { ...n, limit: first.get(n.id)! } : n)) };
}

/** Who wants current at a moment, in the order of arrival, and whether those are others than the moment before; `full`: whether anybody has become full since. */
function comingsOf(order: TreeOrder, moment: Moment, stays: readonly Stay[]) {
  const queue = stays.filter((s) => s.windows.length > 0 && s.session.energy > 0);
  queue.sort((a, b) => a.windows[0]!.from - b.windows[0]!.from);
  let arrived = 0;
  let here: Stay[] = [];
  let before: readonly Stay[] = [];
  let [until, same] = [Number.NEGATIVE_INFINITY, { wanting: before, changed: false }];
  moment.wants.fill(0);
  return (now: number, full: boolean): { readonly wanting: readonly Stay[]; readonly changed: boolean } => {
    if (now < until && !full) return same;
    while (arrived < queue.length && queue[arrived]!.windows[0]!.from <= now) here.push(queue[arrived++]!);
    for (const stay of before) moment.wants[stay.point] = 0;
    const gone = (s: Stay) => s.delivered >= s.session.energy || s.window >= s.windows.length;
    const wanting = here.filter((stay) => enter(order, moment, stay, now));
    for (const stay of before) if (!stay.wants) stay.running = false;
    if (here.some(gone)) here = here.filter((s) => !gone(s));
    const changed = wanting.length !== before.length || wanting.some((stay, k) => stay !== before[k]);
    before = wanting;
    // until somebody is full, nothing changes before the next begin or end of a window
    until = queue[arrived]?.windows[0]?.from ?? Number.POSITIVE_INFINITY;
    for (const { windows, window } of here) {
      const { from, to } = windows[window]!;
      until = Math.min(until, from > now ? from : to);
    }
    same = { wanting, changed: false };
    return { wanting, changed };
  };
}

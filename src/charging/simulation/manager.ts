import { type Amperes, amperes, seconds, type WattHours, wattHours } from '../../units/index.js';
import { rulingOf } from '../allocation/allocate.js';
import { decide } from '../allocation/decide.js';
import { controllerOf } from '../control/controller.js';
import type { ControlState } from '../control/memory.js';
import { type ControlMeasurement, type ControlSettings, reactionOf } from '../control/settings.js';
import type { ChargingNetwork, PerLine } from '../network/network.js';
import { chargingByNode, type Moment, type TreeOrder } from '../network/tree-order.js';
import type { SharingAtOnce } from './input.js';
import type { Stay } from './stay.js';

/** What a step brings to those who share the current. */
export interface StepNow {
  readonly step: number;
  /** Clock value at its begin, s. */
  readonly now: number;
  /** Vehicles that want current. */
  readonly wanting: readonly Stay[];
  /** Whether other load, limits, or those who want current are not what they were a step before. */
  readonly changed: boolean;
}

/** Who shares the current: what each point draws in a step, A. */
export interface Manager {
  /** Current of each point in a step, A; the array is the caller's to read until the next step. */
  currents(now: StepNow): Float64Array;
  /** Whether the same array means the same currents. */
  readonly lasting: boolean;
  /** For how long a paused vehicle waits once current is there again, s. */
  readonly resumeAfter: number;
  /** For how long one that has begun is not to be paused, s. */
  readonly leastOn: number;
}

/** Time after which the order by waiting or by energy received is looked at anew, s. */
const TURN = 900;

/** Shares anew at every step, without delay. */
export function sharingAtOnce(
  order: TreeOrder,
  moment: Moment,
  { policy, resumeAfter = seconds(0), leastOn = seconds(0), mostStarts }: SharingAtOnce,
): Manager {
  const ruling = rulingOf(policy);
  const { waiting } = ruling;
  const period = typeof waiting === 'object' ? waiting.rotation : TURN;
  let currents: Float64Array = new Float64Array(order.points.length);
  let turn = Number.NaN;
  // where everybody is served at once, no turn changes anything
  const hasTurns = ruling.floors || ruling.rule === 'strict-priority';
  const holds = leastOn > 0 || mostStarts !== undefined;
  const keeps = ({ running, runsSince, starts }: Stay, now: number) =>
    running && (now - runsSince < leastOn - 1e-9 || (mostStarts !== undefined && starts >= mostStarts));
  return {
    resumeAfter,
    leastOn,
    lasting: true,
    currents({ now, wanting, changed }) {
      const turned = turn !== Math.floor(now / period);
      turn = Math.floor(now / period);
      // the order is looked at anew now and then only, or vehicles would change places with every step; who has had a turn
      // goes behind those who waited
      if (turned)
        for (const { point, delivered } of wanting) {
          moment.received[point] = delivered;
          if (currents[point]! > 0) moment.waitingSince[point] = now;
        }
      if (holds) {
        moment.held.fill(0);
        for (const stay of wanting) moment.held[stay.point] = keeps(stay, now) ? 1 : 0;
      }
      if (changed || (turned && hasTurns))
        currents = decide(order, moment, {
          ...ruling,
          waiting: typeof waiting === 'object' ? { ...waiting, now: seconds(now) } : waiting,
        });
      return currents;
    },
  };
}

const at = (values: Float64Array, v: number): PerLine => [
  amperes(values[3 * v]!),
  amperes(values[3 * v + 1]!),
  amperes(values[3 * v + 2]!),
];

/** Shares by a load control: meters read, commands go out and vehicles follow each in their time. */
export function sharingByControl(
  order: TreeOrder,
  moment: Moment,
  network: ChargingNetwork,
  settings: ControlSettings,
  step: number,
): Manager {
  const [meterSteps, controlSteps, reaction] = [
    settings.meterPeriod / step,
    settings.controllerPeriod / step,
    reactionOf(settings) / step,
  ].map(Math.round) as [number, number, number];
  const n = order.points.length;
  const place = new Map(order.nodes.map((node, v) => [node.id, v]));
  // commands of the last steps, as long as points and vehicles take to follow
  const told = Array.from({ length: reaction + 1 }, () => new Float64Array(n));
  const drawn = new Float64Array(n);
  const known = { limit: new Float64Array(order.limit.length), lines: new Uint8Array(n) };
  let controller = controllerOf(network, settings);
  let state: ControlState = controller.start;
  let measured: ControlMeasurement | undefined;
  let quiet = false;

  /** The load control learns of new limits and of the lines of the vehicles. */
  const learn = () => {
    const { limit, lines } = known;
    if (limit.every((value, c) => value === order.limit[c]) && lines.every((count, i) => count === order.lines[i]))
      return;
    limit.set(order.limit);
    lines.set(order.lines);
    const used = new Map(order.points.map((p, i) => [p.id, lines[i] as 1 | 2 | 3]));
    controller = controllerOf(
      {
        nodes: network.nodes.map((node) => (node.limit ? { ...node, limit: at(limit, place.get(node.id)!) } : node)),
        points: network.points.map((p) => ({ ...p, vehicleLines: used.get(p.id)! })),
      },
      settings,
    );
  };

  const measure = (now: number, wanting: readonly Stay[]): ControlMeasurement => {
    const charging = chargingByNode(order, drawn);
    const nodes: Record<string, PerLine> = {};
    for (const meter of settings.meters) {
      const v = place.get(meter.node)!;
      const sign = meter.positive === 'import' ? 1 : -1;
      const seen = [0, 1, 2].map((p) => {
        const c = 3 * v + p;
        return amperes(sign * (moment.base[c]! + (meter.measures === 'everything' ? charging[c]! : 0)));
      });
      nodes[meter.node] = [seen[0]!, seen[1]!, seen[2]!];
    }
    const points: Record<string, { connected: boolean; current: Amperes; most?: Amperes; received?: WattHours }> = {};
    for (const { id } of order.points) points[id] = { connected: false, current: amperes(0) };
    for (const stay of wanting)
      points[order.points[stay.point]!.id] = {
        connected: true,
        current: amperes(drawn[stay.point]!),
        most: amperes(stay.most),
        received: wattHours(stay.delivered),
      };
    return { at: seconds(now), nodes, points };
  };

  const follow = (from: Float64Array, wanting: readonly Stay[]) => {
    for (let i = 0; i < n; i++) drawn[i] = moment.wants[i] ? Math.min(from[i]!, moment.most[i]!) : 0;
    for (const { point, accepts } of wanting) drawn[point] = Math.min(drawn[point]!, accepts);
  };

  return {
    resumeAfter: 0,
    leastOn: 0,
    lasting: false,
    currents({ step: k, now, wanting }) {
      // with nobody there and nothing commanded any more the load control has nothing to do, but its time goes on
      if (wanting.length === 0 && quiet) {
        if (k % controlSteps === 0)
          state = { ...state, clock: seconds(now), running: state.running + settings.controllerPeriod };
        return drawn;
      }
      const commands = told[k % (reaction + 1)]!;
      // the slot that comes next holds what was told a reaction time ago, the one before it what was told last
      follow(told[(k + 1) % (reaction + 1)]!, wanting);
      learn();
      if (k % meterSteps === 0) measured = measure(now, wanting);
      if (k % controlSteps === 0) {
        const next = controller.step(state, measured, seconds(now));
        state = next.state;
        order.points.forEach((p, i) => {
          commands[i] = next.commands[p.id]!;
        });
      } else commands.set(told[(k + reaction) % (reaction + 1)]!);
      if (reaction === 0) follow(commands, wanting);
      quiet = wanting.length === 0 && told.every((t) => t.every((command) => command === 0));
      return drawn;
    },
  };
}

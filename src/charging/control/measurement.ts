import { own } from '../../core/own.js';
import { isObject } from '../network/refuse.js';
import { LINE_BIT, type Moment, type TreeOrder } from '../network/tree-order.js';
import type { ControlState, MeasurementFault } from './memory.js';
import type { ControlMeasurement, ControlSettings } from './settings.js';

const good = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);

/** The stamp of a measurement, where it has one. */
export const stampOf = (measurement: ControlMeasurement | undefined): number | undefined =>
  isObject(measurement) && good(measurement.at) ? measurement.at : undefined;

/** What keeps a measurement from being used, or undefined; the state has looked at its stamp already. */
export function faultIn(
  measurement: ControlMeasurement | undefined,
  settings: ControlSettings,
  { stamps, measuredAt, notBefore }: ControlState,
  clock: number,
): MeasurementFault | undefined {
  if (!isObject(measurement)) return 'none';
  const stamp = stampOf(measurement);
  if (stamp === undefined) return 'not-a-number';
  const at = stamp + stamps.shift;
  if (at > clock) return 'from-the-future';
  if (at <= Math.max(measuredAt ?? Number.NEGATIVE_INFINITY, notBefore ?? Number.NEGATIVE_INFINITY)) return 'not-new';
  if (clock - at > settings.staleAfter) return 'stale';
  const { nodes, points } = measurement;
  for (const { node } of settings.meters) {
    const reading = isObject(nodes) ? own(nodes, node) : undefined;
    if (!Array.isArray(reading) || reading.length !== 3) return 'incomplete';
    // a hole in a list is passed over by what goes through its members
    if (![0, 1, 2].every((k) => good(reading[k]))) return 'not-a-number';
  }
  if (!isObject(points)) return 'incomplete';
  for (const word of Object.values(points)) {
    if (!isObject(word) || typeof word.connected !== 'boolean') return 'incomplete';
    for (const value of [word.current, word.most, word.received])
      if (value !== undefined && !(good(value) && value >= 0)) return 'not-a-number';
  }
  return undefined;
}

/** What is known of the currents of the points, A. */
export interface Drawn {
  /** What each draws: taken off where a meter sees everything. */
  readonly drawn: Float64Array;
  /** The part of it that no command moves: other load. */
  readonly taken: Float64Array;
  /** What is kept free for each although it may not draw it. */
  readonly kept: Float64Array;
}

/**
 * Other load and room of a moment from what is metered.
 * @returns by node and line, whether what no command moves exceeds the limit, generation not counted against it
 */
export function otherLoad(
  order: TreeOrder,
  { base, room }: Pick<Moment, 'base' | 'room'>,
  settings: ControlSettings,
  measurement: ControlMeasurement,
  { drawn, taken, kept }: Drawn,
): Uint8Array {
  const { parent, nodes, node, mask, wired, limit } = order;
  const m = nodes.length;
  const [draws, takes, keeps] = [new Float64Array(3 * m), new Float64Array(3 * m), new Float64Array(3 * m)];
  for (let i = 0; i < drawn.length; i++)
    for (let k = 0; k < 3; k++) {
      const c = 3 * node[i]! + k;
      if (mask[i]! & LINE_BIT[k]!) {
        draws[c] = draws[c]! + drawn[i]!;
        takes[c] = takes[c]! + taken[i]!;
      }
      // which vehicle a silent point will serve nobody knows
      if (wired[i]! & LINE_BIT[k]!) keeps[c] = keeps[c]! + kept[i]!;
    }
  const meters = new Map(settings.meters.map((meter) => [meter.node, meter]));
  const exceeded = new Uint8Array(3 * m);
  base.fill(0);
  for (let v = m - 1; v >= 0; v--) {
    const here = nodes[v]!;
    const meter = meters.get(here.id);
    const reading = meter && own(measurement.nodes, here.id);
    const up = parent[v]!;
    for (let k = 0; k < 3; k++) {
      const c = 3 * v + k;
      if (reading) {
        const seen = meter.positive === 'import' ? reading[k]! : -reading[k]!;
        base[c] = meter.measures === 'everything' ? seen - draws[c]! : seen;
      } else base[c] = base[c]! + (here.load?.[k] ?? 0);
      const counts = (settings.exportCounts ? base[c]! : Math.max(0, base[c]!)) + takes[c]!;
      exceeded[c] = counts > limit[c]! + 1e-9 ? 1 : 0;
      room[c] = Math.max(0, limit[c]! - counts - keeps[c]!);
      if (up < 0) continue;
      for (const sum of [base, draws, takes, keeps]) sum[3 * up + k] = sum[3 * up + k]! + sum[c]!;
    }
  }
  for (let c = 0; c < base.length; c++) base[c] = base[c]! + takes[c]!;
  return exceeded;
}

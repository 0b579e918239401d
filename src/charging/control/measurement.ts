import { own } from '../../core/own.js';
import { LINE_BIT, type Moment, type TreeOrder } from '../network/tree-order.js';
import type { ControlMeasurement, ControlSettings } from './settings.js';

/** Why a measurement is not used. @inline */
export type MeasurementFault =
  | 'none' // there is no measurement
  | 'not-a-number' // a current or a time is no finite number, or a current of a vehicle is negative
  | 'incomplete' // a metered node or one of its lines is missing
  | 'not-new' // it is as old as the last one, or older
  | 'from-the-future' // it was taken after the clock value
  | 'stale' // it is too old
  | 'clock' // the clock value is no number or runs backwards
  | 'no-solution'; // the sharing itself failed

const good = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);

/** What keeps a measurement from being used, or undefined. */
export function faultIn(
  measurement: ControlMeasurement | undefined,
  settings: ControlSettings,
  last: number | undefined,
  clock: number,
): MeasurementFault | undefined {
  if (!measurement) return 'none';
  const { at, nodes, points } = measurement;
  if (!good(at)) return 'not-a-number';
  if (at > clock) return 'from-the-future';
  if (last !== undefined && at <= last) return 'not-new';
  if (clock - at > settings.staleAfter) return 'stale';
  for (const { node } of settings.meters) {
    const reading = own(nodes, node);
    if (reading?.length !== 3) return 'incomplete';
    if (!reading.every(good)) return 'not-a-number';
  }
  if (typeof points !== 'object' || points === null) return 'incomplete';
  for (const word of Object.values(points)) {
    if (typeof word !== 'object' || word === null) return 'incomplete';
    for (const value of [word.current, word.most, word.received])
      if (value !== undefined && !(good(value) && value >= 0)) return 'not-a-number';
  }
  return undefined;
}

/**
 * Other load and room of a moment from what is metered. What points draw is taken off where the meter sees it; a point
 * that does not say what it draws stays in the other load. What is kept free for silent points is added.
 * @param kept current kept free for each point, A
 */
export function otherLoad(
  order: TreeOrder,
  moment: Moment,
  settings: ControlSettings,
  measurement: ControlMeasurement,
  kept: readonly number[],
): void {
  const { parent, nodes, points, node, mask, limit } = order;
  const m = nodes.length;
  const drawn = new Float64Array(3 * m);
  const free = new Float64Array(3 * m);
  points.forEach((p, i) => {
    const current = own(measurement.points, p.id)?.current ?? 0;
    for (let k = 0; k < 3; k++) {
      if (!(mask[i]! & LINE_BIT[k]!)) continue;
      drawn[3 * node[i]! + k] = drawn[3 * node[i]! + k]! + current;
      free[3 * node[i]! + k] = free[3 * node[i]! + k]! + kept[i]!;
    }
  });
  const meters = new Map(settings.meters.map((meter) => [meter.node, meter]));
  const { base, room } = moment;
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
        base[c] = meter.measures === 'everything' ? seen - drawn[c]! : seen;
      } else base[c] = base[c]! + (here.load?.[k] ?? 0);
      const counts = settings.exportCounts ? base[c]! : Math.max(0, base[c]!);
      room[c] = Math.max(0, limit[c]! - counts - free[c]!);
      if (up < 0) continue;
      for (const sum of [base, drawn, free]) sum[3 * up + k] = sum[3 * up + k]! + sum[c]!;
    }
  }
}

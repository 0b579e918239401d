import { procedure } from '../core/index.js';
import { CalculationError } from '../units/index.js';

/** A point of a time-current curve: a device operates at this current in this time. */
export interface CurvePoint {
  /** Current, A. */
  readonly current: number;
  /** Time, s. */
  readonly time: number;
}

/** The zone of a device: it does not operate before `fast`, and has operated by `slow`. Never one curve. */
export interface Envelope {
  /** Points that bound the zone below: no operation before. */
  readonly fast: readonly CurvePoint[];
  /** Points that bound the zone above: operation by then. */
  readonly slow: readonly CurvePoint[];
}

function logLog(
  points: readonly CurvePoint[],
  from: 'current' | 'time',
  at: number,
  quantity: string,
  unit: string,
): number {
  const to = from === 'current' ? 'time' : 'current';
  const sorted = [...points].sort((a, b) => a[from] - b[from]);
  const first = sorted[0];
  const last = sorted[sorted.length - 1];
  if (!first || !last || !(at >= first[from] && at <= last[from]))
    throw new CalculationError(
      'out-of-range',
      first && last
        ? `${quantity} is ${at} ${unit}; the published points of the curve reach from ${first[from]} to ${last[from]} ${unit}`
        : 'the curve has no point',
      {
        quantity,
        value: at,
        unit,
        bounds: first && last ? { least: first[from], most: last[from] } : {},
        source: 'time-current curve',
      },
    );
  const high = sorted.findIndex((p) => p[from] >= at);
  const b = sorted[high] as CurvePoint;
  if (b[from] === at) return b[to];
  const a = sorted[high - 1] as CurvePoint;
  const share = Math.log(at / a[from]) / Math.log(b[from] / a[from]);
  return a[to] * (b[to] / a[to]) ** share;
}

/**
 * Time of a curve at a current: a straight line in log-log between published points, never outside them.
 * @param points published points, in any order
 * @param current current, A
 * @returns time, s
 * @throws CalculationError `out-of-range` outside the published points
 * @example
 * ```ts
 * import { timeAt } from 'ohmwright';
 *
 * timeAt([{ current: 125, time: 5 }, { current: 221.2, time: 0.4 }], 125); // => 5
 * ```
 */
export const timeAt = (points: readonly CurvePoint[], current: number): number =>
  logLog(points, 'current', current, 'faultCurrent', 'A');

/**
 * Current of a curve at a time: a straight line in log-log between published points, never outside them.
 * @param points published points, in any order
 * @param time time, s
 * @returns current, A
 * @throws CalculationError `out-of-range` outside the published points
 * @example
 * ```ts
 * import { currentAt } from 'ohmwright';
 *
 * currentAt([{ current: 125, time: 5 }, { current: 221.2, time: 0.4 }], 1); // ≈ 179.83
 * ```
 */
export const currentAt = (points: readonly CurvePoint[], time: number): number =>
  logLog(points, 'time', time, 'operatingTime', 's');

/** Operating time at a current, by a straight line in log-log between published points of one curve. */
export const timeOnCurve = /* @__PURE__ */ procedure({
  id: 'time-on-curve',
  title: 'Operating time at the fault current',
  output: 'operatingTime',
  method: 'straight line in log-log between the two published points on either side',
  source: { document: 'physics', provenance: 'derived', note: 'interpolation between published points' },
  run: ({ points, current }: { readonly points: readonly CurvePoint[]; readonly current: number }) =>
    timeAt(points, current),
});

/** Operating current for a time, by a straight line in log-log between published points of one curve. */
export const currentOnCurve = /* @__PURE__ */ procedure({
  id: 'current-on-curve',
  title: 'Current that operates the device in the time',
  output: 'operatingCurrent',
  method: 'straight line in log-log between the two published points on either side',
  source: { document: 'physics', provenance: 'derived', note: 'interpolation between published points' },
  run: ({ points, time }: { readonly points: readonly CurvePoint[]; readonly time: number }) => currentAt(points, time),
});

import { formula, procedure } from '../core/index.js';
import { CalculationError, invalidInput, type Problem } from '../units/index.js';

/** A point of a time-current curve: a device operates at this current in this time. @inline */
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

/** What is no list of points of a curve, each with its path. */
function pointProblems(points: unknown, at: readonly string[]): readonly Problem[] {
  if (!Array.isArray(points)) return [{ path: at, message: 'is no list of points of a curve' }];
  return points.flatMap((p: Partial<CurvePoint> | null | undefined, i) =>
    (['current', 'time'] as const).flatMap((key) =>
      typeof p?.[key] === 'number' ? [] : [{ path: [...at, i, key], message: 'is no number' }],
    ),
  );
}

function refuseCurves(curves: Readonly<Record<string, unknown>>, values: Readonly<Record<string, unknown>>): void {
  const problems = [
    ...Object.entries(curves).flatMap(([name, points]) => pointProblems(points, [name])),
    ...Object.entries(values).flatMap(([name, value]) =>
      typeof value === 'number' && !Number.isNaN(value) ? [] : [{ path: [name], message: 'is no number' }],
    ),
  ];
  if (problems.length > 0) throw invalidInput('the curve', problems);
}

function logLog(
  points: readonly CurvePoint[],
  from: 'current' | 'time',
  at: number,
  quantity: string,
  unit: string,
): number {
  refuseCurves({ points }, { [from]: at });
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
 * @throws CalculationError `out-of-range` outside the published points, `invalid-input` where something is no point
 * @example
 * ```ts
 * import { timeAt } from 'ohmwright/physics';
 *
 * timeAt([{ current: 125, time: 5 }, { current: 221.2, time: 0.4 }], 125); // => 5
 * ```
 */
export const timeAt = (points: readonly CurvePoint[], current: number): number =>
  logLog(points, 'current', current, 'faultCurrent', 'A');

/**
 * Current of a curve at a time: a straight line in log-log between published points, never outside them.
 * @param points published points, in any order
 * @param time time, s, above 0
 * @returns current, A
 * @throws CalculationError `out-of-range` outside the published points, `invalid-input` where something is no point
 * @example
 * ```ts
 * import { currentAt } from 'ohmwright/physics';
 *
 * currentAt([{ current: 125, time: 5 }, { current: 221.2, time: 0.4 }], 1); // ≈ 179.83
 * ```
 */
export const currentAt = (points: readonly CurvePoint[], time: number): number =>
  logLog(points, 'time', time, 'operatingTime', 's');

/** What gates say for certain of the operating time at a current. @inline */
export interface TimeBounds {
  /** It has not operated before, s. */
  readonly least: number;
  /** It has operated by then, s; absent where no gate says so. */
  readonly most?: number;
}

/**
 * What the gates of a device say for certain at a current: a larger current is not slower, and nothing more.
 * @param gates the gates
 * @param current current, A
 * @returns times, s
 * @throws CalculationError `invalid-input` where something is no gate, with its path
 * @example
 * ```ts
 * import { amperes } from 'ohmwright';
 * import { gateBounds } from 'ohmwright/physics';
 * import { breakerEnvelope } from 'ohmwright/products';
 *
 * gateBounds(breakerEnvelope('B', amperes(32)), 90); // => { least: 0.1, most: 60 }
 * ```
 */
export function gateBounds(gates: Envelope, current: number): TimeBounds {
  const { fast, slow } = (gates ?? {}) as Partial<Envelope>;
  refuseCurves({ fast, slow }, { current });
  const least = Math.max(0, ...gates.fast.filter((g) => g.current >= current).map((g) => g.time));
  const most = Math.min(...gates.slow.filter((g) => g.current <= current).map((g) => g.time));
  return Number.isFinite(most) ? { least, most } : { least };
}

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

/**
 * Time of a curve at a current by a monotone cubic in log-log through the published points, never outside them.
 * Smoother than straight lines and as monotone as the points.
 * @param points three or more published points, falling in time, in any order
 * @param current current, A
 * @returns time, s
 * @throws CalculationError `out-of-range` outside the published points, `invalid-input` where something is no point
 * @example
 * ```ts
 * import { smoothTimeAt } from 'ohmwright/physics';
 *
 * const points = [
 *   { current: 100, time: 10 },
 *   { current: 200, time: 1 },
 *   { current: 400, time: 0.1 },
 * ];
 * smoothTimeAt(points, 200); // => 1
 * smoothTimeAt(points, 283); // ≈ 0.32
 * ```
 */
export function smoothTimeAt(points: readonly CurvePoint[], current: number): number {
  refuseCurves({ points }, { current });
  const sorted = [...points].sort((a, b) => a.current - b.current);
  if (sorted.length < 3) return timeAt(points, current);
  timeAt(sorted, current); // refuses what lies outside
  const x = sorted.map((p) => Math.log(p.current));
  const y = sorted.map((p) => Math.log(p.time));
  const at = (list: readonly number[], i: number) => list[i] as number;
  const h = x.slice(1).map((v, i) => v - at(x, i));
  const slope = y.slice(1).map((v, i) => (v - at(y, i)) / at(h, i));
  const n = x.length;
  const end = (h0: number, h1: number, d0: number, d1: number) => {
    const d = ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
    if (Math.sign(d) !== Math.sign(d0)) return 0;
    return Math.sign(d0) !== Math.sign(d1) && Math.abs(d) > 3 * Math.abs(d0) ? 3 * d0 : d;
  };
  const d = x.map((_, i) => {
    if (i === 0) return end(at(h, 0), at(h, 1), at(slope, 0), at(slope, 1));
    if (i === n - 1) return end(at(h, n - 2), at(h, n - 3), at(slope, n - 2), at(slope, n - 3));
    const [a, b] = [at(slope, i - 1), at(slope, i)];
    if (a * b <= 0) return 0;
    const [w1, w2] = [2 * at(h, i) + at(h, i - 1), at(h, i) + 2 * at(h, i - 1)];
    return (w1 + w2) / (w1 / a + w2 / b);
  });
  const t = Math.log(current);
  const k = Math.max(0, Math.min(n - 2, x.findIndex((v) => v >= t) - 1));
  const s = (t - at(x, k)) / at(h, k);
  const value =
    (2 * s ** 3 - 3 * s ** 2 + 1) * at(y, k) +
    (s ** 3 - 2 * s ** 2 + s) * at(h, k) * at(d, k) +
    (-2 * s ** 3 + 3 * s ** 2) * at(y, k + 1) +
    (s ** 3 - s ** 2) * at(h, k) * at(d, k + 1);
  return Math.exp(value);
}

/** Time of a thermal trip from its time constant, what it carries for ever, and what flowed before. */
export const thermalTripTime = /* @__PURE__ */ formula({
  id: 'thermal-trip-time',
  title: 'Time of a thermal trip',
  inputs: ['thermalTimeConstant', 'deviceMultiple', 'preloadMultiple', 'thresholdMultiple'],
  output: 'operatingTime',
  expression:
    'thermalTimeConstant * log((deviceMultiple^2 - preloadMultiple^2) / (deviceMultiple^2 - thresholdMultiple^2))',
  compute: ({ thermalTimeConstant, deviceMultiple: m, preloadMultiple: p, thresholdMultiple: t }) =>
    thermalTimeConstant * Math.log((m * m - p * p) / (m * m - t * t)),
  source: { document: 'physics', provenance: 'derived', note: 'one thermal time constant' },
});

/** Time constant of a thermal trip that operates from cold in a given time. */
export const thermalTimeConstantOf = /* @__PURE__ */ formula({
  id: 'thermal-time-constant',
  title: 'Time constant of a thermal trip from one test',
  inputs: ['operatingTime', 'deviceMultiple', 'thresholdMultiple'],
  output: 'thermalTimeConstant',
  expression: 'operatingTime / log(deviceMultiple^2 / (deviceMultiple^2 - thresholdMultiple^2))',
  compute: ({ operatingTime, deviceMultiple: m, thresholdMultiple: t }) =>
    operatingTime / Math.log((m * m) / (m * m - t * t)),
  source: { document: 'physics', provenance: 'derived', note: 'one thermal time constant' },
});

/** Operating time of an inverse-time relay. IEC 60255-151, inverse-time characteristics. */
export const inverseTime = /* @__PURE__ */ formula({
  id: 'inverse-time-relay',
  title: 'Operating time of an inverse-time relay',
  inputs: ['timeMultiplier', 'inverseConstant', 'deviceMultiple', 'inverseExponent', 'inverseOffset'],
  output: 'operatingTime',
  expression: 'timeMultiplier * (inverseConstant / (deviceMultiple^inverseExponent - 1) + inverseOffset)',
  compute: ({ timeMultiplier, inverseConstant, deviceMultiple, inverseExponent, inverseOffset }) =>
    timeMultiplier * (inverseConstant / (deviceMultiple ** inverseExponent - 1) + inverseOffset),
  valid: { deviceMultiple: { above: 1 } },
  source: { document: 'IEC 60255-151', clause: 'inverse-time characteristics', provenance: 'two-sources' },
});

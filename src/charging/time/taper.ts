import { procedure, table } from '../../core/index.js';
import { invalidInput, type Problem, type Ratio, ratio, type WattHours, type Watts } from '../../units/index.js';

/**
 * Power that battery cars take at a direct-current point over their own peak, by state of charge: statistics of 74 measured
 * curves. Open data on electric vehicles.
 */
export const directCurrentTaper = /* @__PURE__ */ table({
  id: 'charging/direct-current-taper',
  title: 'Power that battery cars take at a direct-current point over their own peak',
  axes: [
    { name: 'statistic', labels: ['p10', 'p25', 'median', 'p75', 'p90'] },
    { name: 'stateOfCharge', unit: '1', between: 'linear', allowedBy: 'measured curves are smooth' },
  ],
  rows: `
    0    0.87 0.89 0.98    1    1
    0.1   0.9 0.92 0.97    1    1
    0.2  0.87 0.92 0.96 0.99    1
    0.3  0.77 0.92 0.97 0.99    1
    0.4  0.76 0.87 0.95 0.97    1
    0.5  0.68 0.76 0.86 0.95    1
    0.6  0.56 0.62 0.73 0.85 0.98
    0.7  0.45 0.47  0.6 0.73 0.97
    0.8  0.26 0.33 0.49 0.59  0.7
    0.85 0.22 0.28 0.39 0.48  0.6
    0.9  0.18 0.21  0.3 0.41 0.51
    0.95 0.12 0.13 0.22 0.31  0.4
    1    0.05 0.08 0.12  0.2 0.29`,
  cell: 'taperShare',
  unit: '1',
  source: {
    document: 'Open data on electric vehicles',
    edition: '2021',
    clause: 'measured charging curves of 74 battery cars',
    provenance: 'derived',
    note: 'statistics state by state, not of one car: a car of the tenth part at one state need not be so at another',
  },
});

/** Power of a charge with alternating current over the largest, by state of charge. Common observation, recalled. */
export const alternatingCurrentTaper = /* @__PURE__ */ table({
  id: 'charging/alternating-current-taper',
  title: 'Power that battery cars take with alternating current over the largest of their on-board charger',
  axes: [{ name: 'stateOfCharge', unit: '1', between: 'linear', allowedBy: 'charging slows without steps' }],
  rows: `
    0       1
    0.95    1
    0.97  0.8
    0.99  0.4
    1    0.05`,
  cell: 'taperShare',
  unit: '1',
  source: {
    document: 'Common observation',
    clause: 'charging at home near full',
    provenance: 'memory',
    note: 'an on-board charger is slow beside the battery: its current hardly falls below a state of charge of 95 %',
  },
});

/** Power over the largest at states of charge from 0 to 1, straight lines between; above 0 everywhere. @inline */
export type PowerCourse = readonly (readonly [stateOfCharge: number, share: number])[];

/** What is wrong with a course of power. */
export function courseProblem(course: PowerCourse): string | undefined {
  const list = Array.isArray(course) ? course : [];
  const rising = list.every(([s, p], i) => p > 0 && p <= 1 && (i === 0 ? s === 0 : s > (list[i - 1]?.[0] as number)));
  return list.length > 1 && rising && list.at(-1)?.[0] === 1
    ? undefined
    : 'must rise from a state of charge of 0 to 1, its shares above 0 and at most 1';
}

/** A vehicle at a point whose power falls as it fills. */
export interface TaperedCharge {
  /** Energy that the battery holds, Wh, above 0. */
  readonly battery: WattHours;
  /** Largest power that the vehicle takes, W, above 0. */
  readonly peakPower: Watts;
  /** Power of the point, W, above 0. */
  readonly pointPower: Watts;
  /** State of charge at the start, 1, 0 to 1. */
  readonly from: Ratio;
  /** State of charge at the end, 1; above that at the start. */
  readonly to: Ratio;
  /**
   * Power over the peak at states of charge from 0 to 1, straight lines between: of one car, or such as `taperOf` gives; above
   * 0 everywhere.
   */
  readonly taper: PowerCourse;
}

/** Cars that take less than this course at each state of charge, or charging with alternating current. @inline */
export type TaperKind = (typeof directCurrentTaper)['axes'][0]['labels'][number] | 'alternating-current';

/**
 * The course of power of a car, for `taperedChargeTime` and for the battery of a session: of a statistical car at a
 * direct-current point, or with alternating current.
 * @param kind the share of cars that take less at each state of charge: a tenth, a quarter, half ...; or `alternating-current`
 * @returns states of charge and power over the peak, both from 0 to 1
 * @throws CalculationError `invalid-input` for a course that is not there
 * @example
 * ```ts
 * import { taperOf } from 'ohmwright/charging';
 *
 * taperOf('median')[8]; // => [0.8, 0.49]
 * taperOf('alternating-current')[1]; // => [0.95, 1]
 * ```
 */
export function taperOf(kind: TaperKind): PowerCourse {
  const states = (offered: readonly unknown[]) => offered.map((state) => ratio(state as number));
  if (kind === 'alternating-current')
    return states(alternatingCurrentTaper.offers('stateOfCharge')).map(
      (stateOfCharge) => [stateOfCharge, alternatingCurrentTaper.get({ stateOfCharge })] as const,
    );
  const [{ labels }] = directCurrentTaper.axes;
  if (!(labels as readonly unknown[]).includes(kind))
    throw invalidInput('a taper', [
      { path: ['kind'], message: `is one of ${labels.join(', ')}, or alternating-current` },
    ]);
  return states(directCurrentTaper.offers('stateOfCharge')).map(
    (stateOfCharge) => [stateOfCharge, directCurrentTaper.get({ statistic: kind, stateOfCharge })] as const,
  );
}

function refuse({ battery, peakPower, pointPower, from, to, taper }: TaperedCharge): void {
  const problems: Problem[] = [];
  for (const [name, value] of Object.entries({ battery, peakPower, pointPower }))
    if (!(Number.isFinite(value) && value > 0)) problems.push({ path: [name], message: 'must be above 0' });
  if (!(from >= 0 && to <= 1 && from <= to))
    problems.push({ path: ['from'], message: 'must lie between 0 and the end, which is at most 1' });
  const wrong = courseProblem(taper);
  if (wrong !== undefined) problems.push({ path: ['taper'], message: wrong });
  if (problems.length > 0) throw invalidInput('a charge whose power falls', problems);
}

/** Share of a straight course from `p` to `q`, over a unit, in time: the mean of one over the power, never above the limit. */
function inverse(p: number, q: number, limit: number): number {
  if (p >= limit && q >= limit) return 1 / limit;
  if (p <= limit && q <= limit) return Math.abs(q - p) < 1e-12 * p ? 1 / p : Math.log(q / p) / (q - p);
  const part = (limit - p) / (q - p);
  return part * inverse(p, limit, limit) + (1 - part) * inverse(limit, q, limit);
}

/** Time to charge a vehicle whose power falls as it fills, at a point of limited power. Definition of energy. */
export const taperedChargeTime = /* @__PURE__ */ procedure({
  id: 'tapered-charge-time',
  title: 'Time to charge where the power falls with the state of charge',
  output: 'chargeTime',
  method:
    'the smaller of point and vehicle at each state of charge, straight lines between those given, integrated exactly',
  source: {
    document: 'Definition of energy',
    provenance: 'derived',
    note: 'losses between point and battery are not in it',
  },
  run: (charge: TaperedCharge) => {
    refuse(charge);
    const { battery, peakPower, pointPower, from, to, taper } = charge;
    let hours = 0;
    for (let i = 1; i < taper.length; i++) {
      const [[s, p], [t, q]] = [taper[i - 1], taper[i]] as [readonly [number, number], readonly [number, number]];
      const [a, b] = [Math.max(s, from), Math.min(t, to)];
      if (b <= a) continue;
      const at = (state: number) => peakPower * (p + ((q - p) * (state - s)) / (t - s));
      hours += battery * (b - a) * inverse(at(a), at(b), pointPower);
    }
    return hours * 3600;
  },
});

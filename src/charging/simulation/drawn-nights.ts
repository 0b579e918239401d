import {
  type Amperes,
  type Ratio,
  ratio,
  type Seconds,
  seconds,
  type WattHours,
  wattHours,
} from '../../units/index.js';
import { type Inspection, inspection, isObject } from '../network/refuse.js';
import type { ChargingSession, FillingBattery } from '../time/sessions.js';
import { uniformOf } from '../time/start-delay.js';
import { valueAlong } from '../time/straight-lines.js';
import { inspectSimulation, type SimulationInput } from './input.js';
import { simulate } from './simulate.js';

/**
 * A distribution by its quantiles: share of nights and the value that so many do not exceed, from 0 to 1, straight lines
 * between. @inline
 */
export type Quantiles<V extends number> = readonly (readonly [share: number, value: V])[];

/** A vehicle of which nobody knows when it comes: at a point of its own. @inline */
export interface UncertainVehicle {
  readonly point: string;
  /** Share of nights in which it charges, 0 to 1. */
  readonly comes: Ratio;
  /** Arrival, s since midnight of the first day. */
  readonly arrives: Quantiles<Seconds>;
  /** Departure, s since midnight of the first day. */
  readonly leaves: Quantiles<Seconds>;
  /** Energy that it needs, measured at the point, Wh. */
  readonly energy: Quantiles<WattHours>;
  /** Largest current of vehicle and cable, A; that of the point when absent. */
  readonly most?: Amperes;
  /** How many of the point's lines it uses; all when absent. */
  readonly vehicleLines?: 1 | 2 | 3;
  /** Its battery, which is full once it has what it needs; it takes all that it is offered when absent. */
  readonly battery?: Omit<FillingBattery, 'onArrival'>;
}

/** What is asked of many nights. @inline */
export interface NightsQuestion extends Omit<SimulationInput, 'sessions' | 'keepSeries'> {
  readonly vehicles: readonly UncertainVehicle[];
  /** The moment at which vehicles that are still there are to be full, s since midnight of the first day. */
  readonly by: Seconds;
  /** How many nights are drawn, 1 to 100 000. */
  readonly nights: number;
  /** What the draw begins with: a whole number; the same gives the same nights. */
  readonly seed: number;
  /** Confidence of the intervals, above 0 and below 1; 0.95 when absent. */
  readonly confidence?: Ratio;
}

/** A share that was counted, and the interval that holds the true one with the stated confidence. @inline */
export interface CountedShare {
  readonly count: number;
  readonly of: number;
  /** Count over all; absent of none. */
  readonly share?: Ratio;
  /** Ends of the interval, exact for a binomial count (Clopper and Pearson). */
  readonly least: Ratio;
  readonly most: Ratio;
}

/** What becomes of many nights. @inline */
export interface DrawnNights {
  /** Nights in which every vehicle that came was full by then, or when it left before. */
  readonly allFull: CountedShare;
  /** Of each vehicle, nights in which it was, of those in which it came. */
  readonly vehicles: readonly ({ readonly point: string } & CountedShare)[];
  /** Energy that all together lacked, Wh: the mean of all nights, and what half of them, nine tenths and all did not exceed. */
  readonly missing: {
    readonly mean: WattHours;
    readonly half: WattHours;
    readonly ninety: WattHours;
    readonly all: WattHours;
  };
  readonly confidence: Ratio;
}

const MOST_NIGHTS = 100_000;

function inspectQuantiles(list: unknown, path: readonly (string | number)[], found: Inspection): void {
  const sound =
    Array.isArray(list) &&
    list.length > 1 &&
    list.every((q, i) => {
      if (!(Array.isArray(q) && q.length === 2 && q.every(Number.isFinite))) return false;
      const before = list[i - 1] as readonly [number, number] | undefined;
      return before === undefined ? q[0] === 0 : q[0] > before[0] && q[1] >= before[1];
    }) &&
    list.at(-1)[0] === 1;
  found.when(!sound, path, 'must rise from a share of 0 to 1, its values with it');
}

function refuse(question: NightsQuestion): void {
  const what = 'The question of many nights';
  const found = inspection();
  found.when(!isObject(question), [], 'must be an object');
  found.refuse(what);
  const { vehicles, by, nights, seed, confidence, network } = question;
  found.number(by, ['by'], {});
  found.when(
    !Number.isSafeInteger(nights) || nights < 1 || nights > MOST_NIGHTS,
    ['nights'],
    `must be a whole number from 1 to ${MOST_NIGHTS}`,
  );
  found.when(!Number.isSafeInteger(seed), ['seed'], 'must be a whole number');
  if (found.number(confidence, ['confidence'], { above: 0, optional: true }))
    found.when((confidence ?? 0) >= 1, ['confidence'], 'must be below 1');
  if (found.list(vehicles, ['vehicles'])) {
    const seen = new Set<string>();
    vehicles.forEach(({ point, comes, arrives, leaves, energy }, k) => {
      const path = ['vehicles', k];
      found.when(seen.has(point), [...path, 'point'], `'${point}' has another vehicle too`);
      seen.add(point);
      if (found.number(comes, [...path, 'comes'], { least: 0 }))
        found.when(comes > 1, [...path, 'comes'], 'must be at most 1');
      for (const [key, list] of Object.entries({ arrives, leaves, energy }))
        inspectQuantiles(list, [...path, key], found);
      found.when(!network?.points?.some((p) => p.id === point), [...path, 'point'], `there is no point '${point}'`);
    });
  }
  found.refuse(what);
  const { vehicles: _, by: __, nights: ___, seed: ____, confidence: _____, ...input } = question;
  inspectSimulation({ ...input, sessions: [] });
}

/** Probability that a binomial count is at most so many. */
function atMost(count: number, of: number, share: number): number {
  if (share <= 0) return 1;
  if (share >= 1) return count >= of ? 1 : 0;
  let term = of * Math.log1p(-share);
  let sum = Math.exp(term);
  for (let k = 1; k <= count; k++) {
    term += Math.log((of - k + 1) / k) + Math.log(share) - Math.log1p(-share);
    sum += Math.exp(term);
  }
  return Math.min(1, sum);
}

/** The share at which a falling probability comes down to a level. */
function shareWhere(probability: (share: number) => number, level: number): number {
  let [low, high] = [0, 1];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (probability(middle) > level) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The interval of Clopper and Pearson: each end leaves half of what the confidence leaves. */
export function countedShare(count: number, of: number, confidence: number): CountedShare {
  const half = (1 - confidence) / 2;
  return {
    count,
    of,
    ...(of > 0 ? { share: ratio(count / of) } : {}),
    least: ratio(count === 0 ? 0 : shareWhere((p) => atMost(count - 1, of, p), 1 - half)),
    most: ratio(count === of ? 1 : shareWhere((p) => atMost(count, of, p), half)),
  };
}

/**
 * How often all vehicles are full by a time of day, over many nights that are drawn: who comes, when, for how long and with
 * what need, each by its distribution and for itself. The share is an estimate with its interval; distributions that do not
 * fit the site make it a wrong one, which no confidence shows.
 * @param question network, how current is shared, vehicles with their distributions, number of nights, seed; A, Wh, s, V
 * @returns shares of nights, of all vehicles and of each, with their intervals; energy missing, Wh
 * @throws CalculationError `invalid-input` with everything that is wrong
 * @example
 * ```ts
 * import { amperes, hours, kilowattHours, minutes, ratio, volts, wattHours } from 'ohmwright';
 * import { drawnNights } from 'ohmwright/charging';
 *
 * const line = (a: number) => [amperes(a), amperes(0), amperes(0)] as const;
 * const point = (id: string) => ({ id, node: 'intake', lines: ['L1'], most: amperes(32) }) as const;
 * const vehicle = {
 *   comes: ratio(0.7),
 *   arrives: [[0, hours(16)], [0.5, hours(18)], [1, hours(23)]],
 *   leaves: [[0, hours(30)], [1, hours(33)]],
 *   energy: [[0, wattHours(2000)], [0.5, kilowattHours(8)], [1, kilowattHours(40)]],
 * } as const;
 * const found = drawnNights({
 *   network: { nodes: [{ id: 'intake', limit: line(40), load: line(20) }], points: [point('left'), point('right')] },
 *   vehicles: [{ ...vehicle, point: 'left' }, { ...vehicle, point: 'right' }],
 *   by: hours(31), nights: 200, seed: 1,
 *   from: hours(16), to: hours(33), step: minutes(15), voltage: volts(230),
 *   control: { policy: { rule: 'max-min-amperes', stage: 'zero-or-least' } },
 * });
 * found.allFull.least <= found.allFull.count / 200 && found.allFull.count / 200 <= found.allFull.most; // => true
 * ```
 */
export function drawnNights(question: NightsQuestion): DrawnNights {
  refuse(question);
  const { vehicles, by, nights, seed, confidence = ratio(0.95), ...input } = question;
  const counts = vehicles.map(() => ({ came: 0, full: 0 }));
  let all = 0;
  const missing: number[] = [];
  for (let night = 0; night < nights; night++) {
    const here = vehicles.flatMap((v, k): readonly { readonly k: number; readonly session: ChargingSession }[] => {
      const draw = (what: string) => uniformOf(seed, `${night}/${v.point}/${what}`);
      if (draw('comes') >= v.comes) return [];
      const [arrives, leaves] = [valueAlong(v.arrives, draw('arrives')), valueAlong(v.leaves, draw('leaves'))];
      // who leaves before it would come does not charge
      if (leaves <= arrives) return [];
      const { battery, most, vehicleLines } = v;
      const drawnEnergy = valueAlong(v.energy, draw('energy'));
      const energy = battery ? Math.min(drawnEnergy, battery.holds) : drawnEnergy;
      const session: ChargingSession = {
        id: v.point,
        point: v.point,
        arrives: seconds(arrives),
        leaves: seconds(leaves),
        energy: wattHours(energy),
        ...(most === undefined ? {} : { most }),
        ...(vehicleLines === undefined ? {} : { vehicleLines }),
        ...(battery ? { battery: { ...battery, onArrival: ratio(Math.max(0, 1 - energy / battery.holds)) } } : {}),
      };
      return [{ k, session }];
    });
    const found = simulate({ ...input, sessions: here.map((h) => h.session) });
    let everybody = true;
    for (const [i, { k, session }] of here.entries()) {
      const { fullAt } = found.sessions[i]!;
      const full = fullAt !== undefined && fullAt <= Math.min(by, session.leaves);
      counts[k]!.came++;
      if (full) counts[k]!.full++;
      else everybody = false;
    }
    if (everybody) all++;
    missing.push(found.missing);
  }
  missing.sort((a, b) => a - b);
  const notExceeded = (share: number) => wattHours(missing[Math.max(0, Math.ceil(share * nights) - 1)]!);
  return {
    allFull: countedShare(all, nights, confidence),
    vehicles: vehicles.map(({ point }, k) => ({
      point,
      ...countedShare(counts[k]!.full, counts[k]!.came, confidence),
    })),
    missing: {
      mean: wattHours(missing.reduce((a, b) => a + b, 0) / nights),
      half: notExceeded(0.5),
      ninety: notExceeded(0.9),
      all: notExceeded(1),
    },
    confidence,
  };
}

import { procedure } from '../../core/index.js';
import { CalculationError } from '../../units/index.js';

/** A cumulated probability this close below the percentile counts as reached: rounding, not probability. */
const ROUNDING = 1e-14;
/** Sums of powers that a distribution may hold; a million of them is far beyond any car park. */
const MOST_SUMS = 2_000_000;

/**
 * Probabilities of 0 to n successes of n independent trials, each to about n units of the last place.
 * @param n number of trials, whole, 0 and up
 * @param p probability of one success, 0 to 1
 */
export function binomialProbabilities(n: number, p: number): Float64Array {
  if (!Number.isSafeInteger(n) || n < 0 || n > MOST_SUMS) throw outside('number of trials', n, 0, MOST_SUMS);
  if (!(p >= 0 && p <= 1)) throw outside('probability', p, 0, 1);
  const out = new Float64Array(n + 1);
  if (p === 0 || p === 1) {
    out[p === 0 ? 0 : n] = 1;
    return out;
  }
  // from the most probable count outwards, then to a sum of one: nothing underflows that matters
  const mode = Math.min(n, Math.floor((n + 1) * p));
  const odds = p / (1 - p);
  out[mode] = 1;
  for (let k = mode; k < n; k++) out[k + 1] = ((out[k] as number) * odds * (n - k)) / (k + 1);
  for (let k = mode; k > 0; k--) out[k - 1] = ((out[k] as number) * k) / (odds * (n - k + 1));
  const total = sumOf(out);
  for (let k = 0; k <= n; k++) out[k] = (out[k] as number) / total;
  return out;
}

const outside = (quantity: string, value: number, least: number, most: number) =>
  new CalculationError('out-of-range', `${quantity} is ${value}; it is ${least} to ${most}`, {
    quantity,
    value,
    unit: '1',
    bounds: { least, most },
    source: 'demand of many charge points',
  });

/** Compensated sum. */
function sumOf(values: Iterable<number>): number {
  let sum = 0;
  let lost = 0;
  for (const value of values) {
    const next = sum + value;
    lost += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum;
    sum = next;
  }
  return sum + lost;
}

/** Cumulated probabilities, each sum compensated. */
function cumulated(probabilities: ArrayLike<number>): Float64Array {
  const out = new Float64Array(probabilities.length);
  let sum = 0;
  let lost = 0;
  for (let k = 0; k < out.length; k++) {
    const value = probabilities[k] as number;
    const next = sum + value;
    lost += sum >= value ? sum - next + value : value - next + sum;
    sum = next;
    out[k] = sum + lost;
  }
  return out;
}

const firstReaching = (sums: Float64Array, q: number): number => {
  const at = sums.findIndex((x) => x >= q - ROUNDING);
  return at < 0 ? sums.length - 1 : at;
};

/** Charge points of one kind on one supply. @inline */
export interface CountQuestion {
  /** Number of charge points, whole. */
  readonly count: number;
  /** Probability that one charges at the busiest instant. */
  readonly probability: number;
  /** Percentile, above 0 to 1. */
  readonly percentile: number;
  /** Lines that the count is spread over evenly, of which the worst is asked; 1 when absent. */
  readonly lines?: 1 | 3;
}

/** Smallest number of charge points that is not exceeded with the stated probability: exact binomial sums. */
export const coincidentCount = /* @__PURE__ */ procedure({
  id: 'coincident-count',
  title: 'Charge points that charge together, by percentile',
  output: 'coincidentPoints',
  method:
    'smallest k whose cumulated binomial probability reaches the percentile; over three lines the cube of it for a third of the points',
  source: { document: 'binomial distribution', provenance: 'definition' },
  run: ({ count, probability, percentile, lines = 1 }: CountQuestion) => {
    if (!(percentile > 0 && percentile <= 1)) throw outside('percentile', percentile, 0, 1);
    const onOne = lines === 3 ? Math.ceil(count / 3) : count;
    const sums = cumulated(binomialProbabilities(onOne, probability));
    return firstReaching(lines === 3 ? sums.map((x) => x ** 3) : sums, percentile);
  },
});

/** Like charge points among others. @inline */
export interface PointGroup {
  /** Number of charge points, whole. */
  readonly count: number;
  /** Power of one, W. */
  readonly power: number;
  /** Probability that one charges at the busiest instant. */
  readonly probability: number;
}

/** A sum of powers and its probability. @inline */
export interface PowerProbability {
  /** Power, W. */
  readonly power: number;
  /** Probability of exactly this power. */
  readonly probability: number;
}

/**
 * Distribution of the power of charge points of several kinds: the exact convolution.
 * @param groups number, power in W and probability of each kind
 * @returns sums of powers in rising order with their probabilities
 * @throws CalculationError `out-of-range` for wrong counts and probabilities, and for more than two million sums
 * @example
 * ```ts
 * import { powerDistribution } from 'ohmwright/demand';
 *
 * powerDistribution([{ count: 1, power: 7360, probability: 0.25 }]); // => [{ power: 0, probability: 0.75 }, { power: 7360, probability: 0.25 }]
 * ```
 */
export function powerDistribution(groups: readonly PointGroup[]): readonly PowerProbability[] {
  let sums = new Map<number, number>([[0, 1]]);
  for (const { count, power, probability } of groups) {
    if (!(Number.isFinite(power) && power >= 0)) throw outside('power in W', power, 0, Number.MAX_VALUE);
    const own = binomialProbabilities(count, probability);
    if (sums.size * own.length > MOST_SUMS) throw outside('number of sums', sums.size * own.length, 1, MOST_SUMS);
    const next = new Map<number, number>();
    for (const [base, chance] of sums)
      for (let k = 0; k <= count; k++) {
        // equal sums reached on two ways differ in the last places only
        const at = Math.round((base + k * power) * 1e6) / 1e6;
        next.set(at, (next.get(at) ?? 0) + chance * (own[k] as number));
      }
    sums = next;
  }
  return [...sums].map(([power, probability]) => ({ power, probability })).sort((a, b) => a.power - b.power);
}

/** Smallest power of charge points of several kinds that is not exceeded with the stated probability. */
export const coincidentPowerOf = /* @__PURE__ */ procedure({
  id: 'coincident-power',
  title: 'Power of the charge points that charge together, by percentile',
  output: 'coincidentPower',
  method: 'smallest sum of powers whose cumulated probability, by exact convolution, reaches the percentile',
  source: { document: 'convolution of binomial distributions', provenance: 'definition' },
  run: ({ groups, percentile }: { readonly groups: readonly PointGroup[]; readonly percentile: number }) => {
    if (!(percentile > 0 && percentile <= 1)) throw outside('percentile', percentile, 0, 1);
    const sums = powerDistribution(groups);
    const at = firstReaching(cumulated(sums.map((s) => s.probability)), percentile);
    return (sums[at] as PowerProbability).power;
  },
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coincidentCount, coincidentPowerOf } from '../../src/demand/definitions.js';
import { coincidentCharging, powerDistribution } from '../../src/demand/index.js';
import { binomialProbabilities, type PointGroup } from '../../src/demand/many/coincidence.js';
import { hasCode, hours, known, ratio, unknown, watts } from '../../src/index.js';

/** Exact cumulated binomial probabilities for p = a/b, as whole numbers over b^n. */
function exactSums(n: number, a: bigint, b: bigint): { readonly sums: readonly bigint[]; readonly whole: bigint } {
  const powers = (x: bigint) => {
    const out = [1n];
    for (let k = 1; k <= n; k++) out.push((out[k - 1] as bigint) * x);
    return out;
  };
  const [hit, miss] = [powers(a), powers(b - a)];
  let ways = 1n;
  let sum = 0n;
  const sums: bigint[] = [];
  for (let k = 0; k <= n; k++) {
    sum += ways * (hit[k] as bigint) * (miss[n - k] as bigint);
    sums.push(sum);
    ways = (ways * BigInt(n - k)) / BigInt(k + 1);
  }
  return { sums, whole: b ** BigInt(n) };
}
/** A fraction of two large whole numbers to about 18 places. */
const fraction = (x: bigint, whole: bigint): number => Number((x * 10n ** 30n) / whole) / 1e30;

describe('binomial sums', () => {
  it('agree with exact rational sums to 1e-12 for every number of points from 1 to 1000', () => {
    for (let n = 1; n <= 1000; n++) {
      const [a, b] = [
        [1n, 4n],
        [1n, 2n],
        [3n, 4n],
        [1n, 8n],
        [1n, 64n],
      ][n % 5] as [bigint, bigint];
      const { sums, whole } = exactSums(n, a, b);
      const ours = binomialProbabilities(n, Number(a) / Number(b));
      let total = 0;
      for (let k = 0; k <= n; k++) {
        total += ours[k] as number;
        const exact = fraction(sums[k] as bigint, whole);
        if (Math.abs(total - exact) > 1e-12) expect.fail(`n ${n}, k ${k}: ${total} against ${exact}`);
      }
    }
  });

  it('give the exact percentile for every number of points from 1 to 1000', () => {
    for (let n = 1; n <= 1000; n++) {
      const { sums, whole } = exactSums(n, 1n, 4n);
      const exact = sums.findIndex((s) => s * 100n >= whole * 99n);
      expect(coincidentCount({ count: n, probability: 0.25, percentile: 0.99 })).toBe(exact);
    }
  });

  it('hit a percentile that is reached exactly', () => {
    expect(coincidentCount({ count: 1, probability: 0.25, percentile: 0.75 })).toBe(0);
    expect(coincidentCount({ count: 2, probability: 0.5, percentile: 0.75 })).toBe(1);
    expect(coincidentCount({ count: 10, probability: 0, percentile: 0.99 })).toBe(0);
    expect(coincidentCount({ count: 10, probability: 1, percentile: 0.99 })).toBe(10);
    expect(coincidentCount({ count: 0, probability: 0.5, percentile: 0.99 })).toBe(0);
  });

  it('agree with published ratios of a binomial model at 99 %', () => {
    const ours = (n: number, p: number) => coincidentCount({ count: n, probability: p, percentile: 0.99 }) / n;
    for (const [n, ...ratios] of [
      [4, 0.5, 0.75, 0.75, 0.75],
      [10, 0.4, 0.4, 0.5, 0.7],
      [30, 0.233, 0.3, 0.367, 0.5],
      [100, 0.18, 0.24, 0.3, 0.41],
      [200, 0.15, 0.21, 0.27, 0.375],
    ] as const)
      for (const [i, p] of [0.1, 0.15, 0.2, 0.3].entries()) expect(ours(n, p)).toBeCloseTo(ratios[i] as number, 3);
  });
});

describe('convolution', () => {
  const group = fc.record({
    count: fc.integer({ min: 0, max: 4 }),
    power: fc.constantFrom(3680, 7360, 11040, 22080),
    probability: fc.double({ min: 0, max: 1, noNaN: true }),
  });

  /** Every outcome of every single point. */
  function bruteForce(groups: readonly PointGroup[]): Map<number, number> {
    const points = groups.flatMap((g) => Array.from({ length: g.count }, () => g));
    const sums = new Map<number, number>();
    for (let outcome = 0; outcome < 2 ** points.length; outcome++) {
      let [power, chance] = [0, 1];
      for (const [i, p] of points.entries()) {
        const on = Math.floor(outcome / 2 ** i) % 2 === 1;
        power += on ? p.power : 0;
        chance *= on ? p.probability : 1 - p.probability;
      }
      sums.set(power, (sums.get(power) ?? 0) + chance);
    }
    return sums;
  }

  it('agrees with every outcome enumerated', () => {
    fc.assert(
      fc.property(fc.array(group, { maxLength: 3 }), (groups) => {
        const exact = bruteForce(groups);
        const ours = powerDistribution(groups);
        expect(ours.length).toBe(exact.size);
        for (const { power, probability } of ours) expect(probability).toBeCloseTo(exact.get(power) ?? -1, 12);
      }),
      { numRuns: 200 },
    );
  });

  it('of one kind is the binomial percentile times the power', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 300 }),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (count, probability) => {
          const k = coincidentCount({ count, probability, percentile: 0.95 });
          const power = coincidentPowerOf({ groups: [{ count, power: 7360, probability }], percentile: 0.95 });
          expect(power).toBe(k * 7360);
        },
      ),
    );
  });

  it('does not depend on the order of the kinds', () => {
    fc.assert(
      fc.property(fc.array(group, { minLength: 2, maxLength: 4 }), (groups) => {
        const turned = powerDistribution([...groups].reverse());
        powerDistribution(groups).forEach(({ power, probability }, i) => {
          expect(turned[i]?.power).toBe(power);
          expect(turned[i]?.probability).toBeCloseTo(probability, 12);
        });
      }),
    );
  });
});

describe('many charge points', () => {
  const groups = [
    { count: 20, power: watts(7360), participation: ratio(0.6), sessionDuration: hours(3), arrivalWindow: hours(4) },
  ];
  const ask = (timed: Parameters<typeof coincidentCharging>[0]['timed']) =>
    coincidentCharging({ groups, percentile: ratio(0.99), timed });

  it('a common start makes more of them coincide', () => {
    expect(ask(known(false)).power).toBe(14 * 7360);
    expect(ask(known(true)).power).toBe(17 * 7360);
    expect(ask(known(false)).all).toBe(20 * 7360);
  });

  it('asks whether charging is timed', () => {
    expect(ask(unknown()).power).toMatchObject({ missing: [{ kind: 'fact', fact: 'timed' }] });
  });

  it.each([
    () => binomialProbabilities(-1, 0.5),
    () => binomialProbabilities(1.5, 0.5),
    () => binomialProbabilities(10, 1.1),
    () => binomialProbabilities(10, Number.NaN),
    () => coincidentCount({ count: 3, probability: 0.5, percentile: 0 }),
    () => powerDistribution([{ count: 1, power: Number.NaN, probability: 0.5 }]),
    () => coincidentPowerOf({ groups: [], percentile: 2 }),
  ])('refuses what is no question %#', (run) => {
    let thrown: unknown;
    try {
      run();
    } catch (error) {
      thrown = error;
    }
    expect(hasCode(thrown, 'out-of-range')).toBe(true);
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SharingRule, WaitingRule } from '../../src/charging/allocation/policy.js';
import { type Allocation, type AllocationPolicy, allocate, type ChargingNetwork } from '../../src/charging/index.js';
import { amperes, ratio, seconds } from '../../src/index.js';
import { seedOf } from '../support/seed.js';
import { linesOf, networks, rowsOf, way } from './networks.js';

const RULES: readonly SharingRule[] = [
  'max-min-amperes',
  'max-min-kilowatts',
  'proportional-fairness',
  'strict-priority',
  'equal-share',
];
const policies: fc.Arbitrary<AllocationPolicy> = fc.record({
  rule: fc.constantFrom(...RULES),
  stage: fc.constantFrom('continuous', 'zero-or-least', 'whole-steps'),
  waiting: fc.constantFrom<WaitingRule>('longest-waiting', 'least-energy', 'priority', {
    rotation: seconds(900),
    now: seconds(4000),
  }),
  resolution: fc.constantFrom(amperes(1), amperes(0.1), amperes(2)),
});
const currents = (a: Allocation) => a.points.map((p) => p.current as number);
const run = (network: ChargingNetwork, policy: AllocationPolicy) => currents(allocate(network, policy));

/** Normalised levels, lowest first. */
const sortedLevels = (network: ChargingNetwork, x: readonly number[]) =>
  network.points.flatMap((p, i) => (p.connected === false ? [] : [x[i]! / (p.weight ?? 1)])).sort((a, b) => a - b);

test('charging never exceeds what a limit leaves, nor leans further than allowed: any rule, stage and unbalance', () => {
  fc.assert(
    fc.property(networks({ weights: true, unbalance: true, overload: true }), policies, (network, policy) => {
      const result = allocate(network, policy);
      const x = currents(result);
      for (const { who, sign, room } of rowsOf(network))
        expect(who.reduce((sum, i, k) => sum + sign[k]! * x[i]!, 0)).toBeLessThanOrEqual(room + 1e-6);
      for (const { node, line } of result.overloaded) {
        network.points.forEach((p, i) => {
          if (way(network, p.node).includes(node) && linesOf(p).includes(line)) expect(x[i]!).toBeCloseTo(0, 9);
        });
        expect(line).toMatch(/^L[123]$/);
      }
    }),
    { numRuns: 500, seed: seedOf(1) },
  );
});

test('nothing, or at least the smallest current, and whole steps of it', () => {
  fc.assert(
    fc.property(networks({ unbalance: true, overload: true }), policies, (network, policy) => {
      const x = run(network, policy);
      if (policy.stage === 'continuous') return;
      for (const value of x) expect(value === 0 || value >= 6 - 1e-9).toBe(true);
      if (policy.stage === 'whole-steps')
        for (const value of x)
          expect(Math.abs(value / policy.resolution! - Math.round(value / policy.resolution!))).toBeLessThan(1e-9);
    }),
    { numRuns: 300, seed: seedOf(2) },
  );
});

test('in the continuous stage no point can be raised alone', () => {
  fc.assert(
    fc.property(networks({ weights: true, overload: true }), fc.constantFrom(...RULES.slice(0, 4)), (network, rule) => {
      const x = run(network, { rule, stage: 'continuous' });
      const rows = rowsOf(network);
      network.points.forEach((p, i) => {
        if (p.connected === false || x[i]! > p.most - 1e-6) return;
        const left = rows.filter((r) => r.who.includes(i)).map((r) => r.room - r.who.reduce((s, k) => s + x[k]!, 0));
        expect(Math.min(...left)).toBeLessThan(1e-6);
      });
    }),
    { numRuns: 300, seed: seedOf(3) },
  );
});

test('after rounding no running point can be raised by a step alone', () => {
  fc.assert(
    fc.property(
      networks({ overload: true }),
      fc.constantFrom('max-min-amperes', 'proportional-fairness', 'strict-priority'),
      (network, rule) => {
        const x = run(network, { rule: rule as SharingRule });
        const rows = rowsOf(network);
        network.points.forEach((p, i) => {
          if (x[i] === 0 || x[i]! + 1 > p.most) return;
          const left = rows.filter((r) => r.who.includes(i)).map((r) => r.room - r.who.reduce((s, k) => s + x[k]!, 0));
          expect(Math.min(...left)).toBeLessThan(1);
        });
      },
    ),
    { numRuns: 300, seed: seedOf(4) },
  );
});

test('the order of the input does not matter', () => {
  fc.assert(
    fc.property(
      networks({ weights: true, unbalance: true }),
      policies,
      fc.infiniteStream(fc.nat()),
      (network, policy, keys) => {
        const shuffled = <T>(list: readonly T[]) =>
          list
            .map((item) => ({ item, key: keys.next().value as number }))
            .sort((a, b) => a.key - b.key)
            .map(({ item }) => item);
        const other = { nodes: shuffled(network.nodes), points: shuffled(network.points) };
        const byId = (n: ChargingNetwork) =>
          Object.fromEntries(allocate(n, policy).points.map((p) => [p.id, p.current]));
        expect(byId(other)).toEqual(byId(network));
      },
    ),
    { numRuns: 300, seed: seedOf(5), endOnFailure: true },
  );
});

describe('scaling', () => {
  test('all weights together change nothing', () => {
    fc.assert(
      fc.property(
        networks({ weights: true }),
        fc.constantFrom(...RULES),
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        (network, rule, k) => {
          const heavier = {
            ...network,
            points: network.points.map((p) => ({ ...p, weight: ratio((p.weight ?? 1) * k) })),
          };
          const [a, b] = [run(network, { rule, stage: 'continuous' }), run(heavier, { rule, stage: 'continuous' })];
          a.forEach((value, i) => {
            expect(b[i]!).toBeCloseTo(value, 5);
          });
        },
      ),
      { numRuns: 200, seed: seedOf(6) },
    );
  });

  test('all limits, loads and maxima together scale every current', () => {
    fc.assert(
      fc.property(
        networks({ weights: true }),
        fc.constantFrom(...RULES),
        fc.double({ min: 1, max: 10, noNaN: true }),
        (network, rule, k) => {
          const by = (values: readonly number[]) =>
            values.map((v) => amperes(v * k)) as unknown as NonNullable<ChargingNetwork['nodes'][0]['limit']>;
          const larger: ChargingNetwork = {
            nodes: network.nodes.map((n) => ({
              ...n,
              ...(n.limit ? { limit: by(n.limit) } : {}),
              ...(n.load ? { load: by(n.load) } : {}),
            })),
            points: network.points.map((p) => ({ ...p, most: amperes(p.most * k) })),
          };
          const [a, b] = [run(network, { rule, stage: 'continuous' }), run(larger, { rule, stage: 'continuous' })];
          a.forEach((value, i) => {
            expect(b[i]!).toBeCloseTo(value * k, 4);
          });
        },
      ),
      { numRuns: 200, seed: seedOf(7) },
    );
  });
});

test('raising any limit never worsens the sorted levels of the continuous stage', () => {
  fc.assert(
    fc.property(
      networks({ weights: true, overload: true }),
      fc.nat(),
      fc.nat({ max: 2 }),
      fc.double({ min: 0, max: 60, noNaN: true }),
      (network, which, line, by) => {
        const limited = network.nodes.filter((n) => n.limit);
        if (limited.length === 0) return;
        const chosen = limited[which % limited.length]!;
        const nodes = network.nodes.map((n) =>
          n === chosen
            ? {
                ...n,
                limit: n.limit!.map((v, p) => amperes(p === line ? v + by : v)) as unknown as NonNullable<
                  typeof n.limit
                >,
              }
            : n,
        );
        const policy = { rule: 'max-min-amperes', stage: 'continuous' } as const;
        const [before, after] = [network, { ...network, nodes }].map((n) => sortedLevels(network, run(n, policy)));
        const first = before!.findIndex((value, i) => Math.abs(value - after![i]!) > 1e-7);
        if (first >= 0) expect(after![first]!).toBeGreaterThan(before![first]!);
      },
    ),
    { numRuns: 300, seed: seedOf(8) },
  );
});

test('every binding is real', () => {
  fc.assert(
    fc.property(networks({ overload: true }), policies, (network, policy) => {
      const result = allocate(network, policy);
      const x = currents(result);
      const step = policy.stage === 'whole-steps' ? policy.resolution! : 0;
      result.points.forEach((p, i) => {
        const about = network.points[i]!;
        if (p.binding.kind === 'no-vehicle') expect(about.connected).toBe(false);
        else if (p.binding.kind === 'own-maximum') expect(p.current + step).toBeGreaterThan(about.most - 1e-6);
        else if (!['policy', 'unbalance', 'neutral'].includes(p.binding.kind) && 'line' in p.binding) {
          const { node, line } = p.binding;
          expect(linesOf(about)).toContain(line);
          const at = result.nodes.find((n) => n.id === node)!;
          const limit = network.nodes.find((n) => n.id === node)!.limit![Number(line[1]) - 1]!;
          const left = limit - at.current[Number(line[1]) - 1]!;
          expect(left).toBeLessThan(x[i] === 0 && policy.stage !== 'continuous' ? 6 + step : Math.max(step, 1e-6));
        } else expect(policy.rule).toBe('equal-share');
      });
    }),
    { numRuns: 300, seed: seedOf(9) },
  );
});

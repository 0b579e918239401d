import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SharingRule } from '../../src/charging/allocation/policy.js';
import { allocate, type ChargingNetwork } from '../../src/charging/index.js';
import { seedOf } from '../support/seed.js';
import { expectLexicographic } from './lexicographic.js';
import { linesOf, networks, rowsOf } from './networks.js';
import { maximum } from './solver.js';

const against =
  (rule: SharingRule, weightOf: (n: ChargingNetwork, i: number) => number) => (network: ChargingNetwork) => {
    const x = allocate(network, { rule, stage: 'continuous' }).points.map((p) => p.current as number);
    expectLexicographic(
      network,
      x,
      x.map((_, i) => weightOf(network, i)),
    );
  };

const sinusoidal = (network: ChargingNetwork): ChargingNetwork => ({
  ...network,
  nodes: network.nodes.map(({ thirdHarmonic: _, ...n }) => n),
});

describe('max-min fairness is optimal by a general linear solver', () => {
  test('500 random trees with mixed phases and weights, in amperes', () => {
    fc.assert(
      fc.property(
        networks({ nodes: 6, points: 12, weights: true }),
        against('max-min-amperes', (n, i) => n.points[i]!.weight!),
      ),
      { numRuns: 500, seed: seedOf(6) },
    );
  }, 120_000);

  test('100 random trees, in kilowatts', () => {
    fc.assert(
      fc.property(
        networks({ weights: true }),
        against('max-min-kilowatts', (n, i) => n.points[i]!.weight! / linesOf(n.points[i]!).length),
      ),
      { numRuns: 100, seed: seedOf(7) },
    );
  }, 60_000);

  test('200 random trees with limits on unbalance', () => {
    fc.assert(
      fc.property(
        networks({ nodes: 4, points: 9, weights: true, unbalance: true }),
        against('max-min-amperes', (n, i) => n.points[i]!.weight!),
      ),
      { numRuns: 200, seed: seedOf(8) },
    );
  }, 120_000);

  test('100 random trees with limits of neutrals', () => {
    fc.assert(
      fc.property(
        networks({ nodes: 3, points: 8, weights: true, neutral: true }).map(sinusoidal),
        against('max-min-amperes', (n, i) => n.points[i]!.weight!),
      ),
      { numRuns: 100, seed: seedOf(11) },
    );
  }, 120_000);
});

describe('proportional fairness meets its optimality conditions', () => {
  /** The gradient of the objective at the optimum leads nowhere: maximising it over the limits gains nothing. */
  const stationary = (network: ChargingNetwork) => {
    const x = allocate(network, { rule: 'proportional-fairness', stage: 'continuous' }).points.map(
      (p) => p.current as number,
    );
    const rows = rowsOf(network);
    for (const { who, sign, room } of rows)
      expect(who.reduce((s, i, j) => s + sign[j]! * x[i]!, 0)).toBeLessThanOrEqual(room + 1e-7);
    const running = x.flatMap((value, i) => (value > 0 ? [i] : []));
    const slope = x.map((value, i) => (value > 0 ? network.points[i]!.weight! / value : 0));
    const best = maximum({
      objective: slope,
      least: x.map(() => 0),
      most: network.points.map((p, i) => (p.connected === false ? 0 : x[i]! > 0 ? p.most : 0)),
      rows: rows.map(({ who, sign, room }) => ({ who, by: sign, to: room })),
    });
    const total = running.reduce((s, i) => s + network.points[i]!.weight!, 0);
    // currents are right to 1e-7 A, as the limits are kept: of a few milliamperes that is a larger part
    const rounding = running.reduce((s, i) => s + slope[i]! * 1e-7, 0);
    expect(best?.value ?? 0).toBeLessThanOrEqual(total * (1 + 1e-6) + rounding);
    // who gets nothing can get nothing: even alone
    network.points.forEach((p, i) => {
      if (x[i] !== 0 || p.connected === false) return;
      const alone = maximum({
        objective: x.map((_, k) => (k === i ? 1 : 0)),
        least: x.map(() => 0),
        most: network.points.map((q) => (q.connected === false ? 0 : q.most)),
        rows: rows.map(({ who, sign, room }) => ({ who, by: sign, to: room })),
      });
      expect(alone?.value ?? 0).toBeLessThan(1e-6);
    });
  };

  test('300 random trees', () => {
    fc.assert(fc.property(networks({ nodes: 6, points: 12, weights: true }), stationary), {
      numRuns: 300,
      seed: seedOf(9),
    });
  }, 60_000);

  test('100 random trees with limits on unbalance', () => {
    fc.assert(fc.property(networks({ nodes: 4, points: 9, weights: true, unbalance: true }), stationary), {
      numRuns: 100,
      seed: seedOf(10),
    });
  }, 60_000);

  test('60 random trees with limits of neutrals', () => {
    fc.assert(
      fc.property(networks({ nodes: 3, points: 8, weights: true, neutral: true }).map(sinusoidal), stationary),
      { numRuns: 60, seed: seedOf(12) },
    );
  }, 60_000);
});

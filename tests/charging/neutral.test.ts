import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SharingRule } from '../../src/charging/allocation/policy.js';
import { type AllocationPolicy, allocate, type ChargingNetwork, schedule, simulate } from '../../src/charging/index.js';
import { amperes, hours, minutes, ratio, volts, wattHours } from '../../src/index.js';
import { seedOf } from '../support/seed.js';
import { linesOf, networks, neutralOfLines, node, perLine, point, problemsOf, way } from './networks.js';
import { policies, simulations } from './simulations.js';

/** Share of a limit that the sides of the polygon may cost beside its corners. */
const SIDE = Math.cos(Math.PI / 24);

/** Line currents behind a node: other load, and with what the points draw. */
function linesAt(network: ChargingNetwork, id: string, x: readonly number[], load = true): number[] {
  const below = network.nodes.filter((o) => way(network, o.id).includes(id)).map((o) => o.id);
  return [0, 1, 2].map(
    (p) =>
      (load ? network.nodes.reduce((s, o) => s + (below.includes(o.id) ? (o.load?.[p] ?? 0) : 0), 0) : 0) +
      network.points.reduce(
        (s, q, i) => s + (below.includes(q.node) && linesOf(q).includes((['L1', 'L2', 'L3'] as const)[p]!) ? x[i]! : 0),
        0,
      ),
  );
}

/** No neutral carries more than its limit, or than other load makes it carry already. */
function expectNeutrals(network: ChargingNetwork, x: readonly number[]): void {
  const none = x.map(() => 0);
  for (const n of network.nodes) {
    if (n.neutralLimit === undefined) continue;
    const already = neutralOfLines(linesAt(network, n.id, none), n.thirdHarmonic);
    const now = neutralOfLines(linesAt(network, n.id, x), n.thirdHarmonic);
    const allowed = already <= n.neutralLimit ? n.neutralLimit : already / (SIDE * 0.965);
    expect(now).toBeLessThanOrEqual(allowed + 1e-6);
  }
}

test('no neutral carries more than its limit: any rule and stage, with limits of lines and of unbalance', () => {
  fc.assert(
    fc.property(
      networks({ nodes: 4, points: 8, weights: true, unbalance: true, neutral: true, overload: true }),
      fc.constantFrom(...policies),
      (network, policy) => {
        const result = allocate(network, policy);
        const x = result.points.map((p) => p.current as number);
        expectNeutrals(network, x);
        for (const n of result.nodes) {
          const { thirdHarmonic } = network.nodes.find((o) => o.id === n.id)!;
          expect(n.neutral).toBeCloseTo(neutralOfLines(linesAt(network, n.id, x), thirdHarmonic), 6);
        }
        expect(result.neutrals.map((n) => n.node).sort()).toEqual(
          network.nodes
            .filter((n) => {
              const already = linesAt(
                network,
                n.id,
                x.map(() => 0),
              );
              return neutralOfLines(already, n.thirdHarmonic) > (n.neutralLimit ?? Number.POSITIVE_INFINITY) + 1e-9;
            })
            .map((n) => n.id)
            .sort(),
        );
      },
    ),
    { numRuns: 400, seed: seedOf(41) },
  );
});

test('where one limit is exceeded by a hair another may be by more: lowering goes on', () => {
  const network: ChargingNetwork = {
    nodes: [
      {
        id: 'n0',
        limit: perLine(58.382, 0.012, 119.999),
        unbalance: amperes(31.15),
        neutralLimit: amperes(0.003),
        thirdHarmonic: ratio(0.1),
      },
    ],
    points: [
      { id: 'p1', node: 'n0', lines: ['L3'], most: amperes(7.066), weight: ratio(0.5), priority: 2 },
      { id: 'p2', node: 'n0', lines: ['L3', 'L1', 'L2'], most: amperes(20.221), weight: ratio(1.1), priority: 1 },
      { id: 'p4', node: 'n0', lines: ['L1'], most: amperes(6.007), weight: ratio(2.5), priority: 1 },
      { id: 'p5', node: 'n0', lines: ['L2'], most: amperes(21.58), weight: ratio(3.1), priority: 2 },
    ],
  };
  const { points } = allocate(network, { rule: 'strict-priority', stage: 'continuous' });
  expectNeutrals(
    network,
    points.map((p) => p.current),
  );
});

test('a simulation and a schedule hold it in every step', () => {
  const limited = (network: ChargingNetwork): ChargingNetwork => ({
    ...network,
    nodes: network.nodes.map((n, v) => (v === 0 ? { ...n, neutralLimit: amperes(14) } : n)),
  });
  fc.assert(
    fc.property(simulations({ nodes: 3, points: 5 }), (drawn) => {
      const { load: _, ...input } = drawn;
      const network = limited(input.network);
      const { series } = simulate({ ...input, network });
      series!.minutes.forEach((_minute, k) => {
        const now = { ...network, points: network.points.map(({ vehicleLines: _l, ...p }) => p) };
        const lines = (['L1', 'L2', 'L3'] as const).map((line) =>
          series!.points.reduce((s, p) => s + (p.current[line]?.[k] ?? 0), 0),
        );
        const base = linesAt(
          now,
          network.nodes[0]!.id,
          network.points.map(() => 0),
        );
        const already = neutralOfLines(base);
        if (already <= 14) expect(neutralOfLines(lines.map((i, p) => i + base[p]!))).toBeLessThanOrEqual(14 + 1e-6);
      });
    }),
    { numRuns: 100, seed: seedOf(42) },
  );
  const bays = (['L1', 'L2', 'L3'] as const).map((line, i) => point(`bay ${i}`, 'intake', 32, { lines: [line] }));
  for (const policy of ['earliest-deadline', 'minimum-cost', 'valley-filling'] as const)
    for (const stage of ['continuous', 'zero-or-least'] as const) {
      const found = schedule({
        network: { nodes: [node('intake', perLine(60), { neutralLimit: amperes(12) })], points: bays },
        sessions: bays.slice(0, 2).map((b, i) => ({
          id: `car ${i}`,
          point: b.id,
          arrives: hours(18),
          leaves: hours(22),
          energy: wattHours(i === 0 ? 20_000 : 6000),
        })),
        from: hours(18),
        to: hours(22),
        step: minutes(30),
        voltage: volts(230),
        policy,
        stage,
        ...(policy === 'minimum-cost' ? { prices: { values: [0.3, 0.1] } } : {}),
      } as Parameters<typeof schedule>[0]);
      const courses = found.sessions.map((s) => s.stretches);
      const times = courses.flat().map((p) => (p.from + p.to) / 2);
      for (const time of times) {
        const at = courses.map((c) => c.find((p) => p.from <= time && time < p.to)?.current ?? 0);
        expect(neutralOfLines([at[0]!, at[1]!, 0])).toBeLessThanOrEqual(12 + 1e-6);
      }
      expect(found.delivered).toBeGreaterThan(10_000);
    }
});

describe('what the limit leaves is shared', () => {
  const rule = { rule: 'max-min-amperes', stage: 'continuous' } as const satisfies AllocationPolicy;
  const shares = (
    points: readonly ReturnType<typeof point>[],
    limit: number,
    more = {},
    policy: AllocationPolicy = rule,
  ) =>
    allocate(
      { nodes: [node('board', perLine(200), { neutralLimit: amperes(limit), ...more })], points: [...points] },
      policy,
    );
  const on = (id: string, line: 'L1' | 'L2' | 'L3', most = 32) => point(id, 'board', most, { lines: [line] });

  test('one line: the neutral carries what the line carries', () => {
    const { points, nodes } = shares([on('a', 'L1'), on('b', 'L1')], 40);
    expect(points.map((p) => p.current)).toEqual([20, 20].map((v) => expect.closeTo(v, 9)));
    expect(points[0]?.binding).toEqual({ kind: 'neutral', node: 'board' });
    expect(nodes[0]?.neutral).toBeCloseTo(40, 9);
  });

  test('two lines alike: as much as each of them; three: nothing', () => {
    expect(shares([on('a', 'L1'), on('b', 'L2')], 20).points.map((p) => p.current)).toEqual(
      [20, 20].map((v) => expect.closeTo(v, 9)),
    );
    expect(shares([on('a', 'L1'), on('b', 'L2'), on('c', 'L3')], 20).points.map((p) => p.current)).toEqual(
      [32, 32, 32].map((v) => expect.closeTo(v, 9)),
    );
  });

  test('two unlike lines: A² + B² - A B, within 1 %', () => {
    // B at its 10 A; A² - 10 A + 100 = 400, so A = 5 + √325 = 23.03 A
    const [a, b] = shares([on('a', 'L1'), on('b', 'L2', 10)], 20).points.map((p) => p.current as number);
    expect(b).toBeCloseTo(10, 9);
    expect(a).toBeLessThanOrEqual(5 + Math.sqrt(325) + 1e-9);
    expect(a).toBeGreaterThan(0.985 * (5 + Math.sqrt(325)));
  });

  test('third harmonics add up: three lines in balance with 30 % carry three times 30 % in the neutral', () => {
    const three = ['a', 'b'].map((id) => point(id, 'board', 32, { lines: ['L1', 'L2', 'L3'] }));
    const { points, nodes } = shares(three, 18, { thirdHarmonic: ratio(0.3) });
    // 3 · 0.3 · 2 · I = 18
    expect(points.map((p) => p.current)).toEqual([10, 10].map((v) => expect.closeTo(v, 6)));
    expect(nodes[0]?.neutral).toBeCloseTo(18, 6);
    expect(nodes[0]?.neutralExceeded).toBe(false);
  });

  test('39 A a line with a fifth of third harmonic: 23.4 A in the neutral, as in the example of IEC 60364-5-52, Annex E', () => {
    const { nodes } = shares([point('a', 'board', 39, { lines: ['L1', 'L2', 'L3'] })], 60, {
      thirdHarmonic: ratio(0.2),
    });
    expect(nodes[0]?.neutral).toBeCloseTo(23.4, 9);
  });

  test('in whole steps a second vehicle on another line makes room for the first', () => {
    const steps = { rule: 'max-min-amperes' } as const;
    expect(shares([on('a', 'L1')], 16, {}, steps).points.map((p) => p.current)).toEqual([16]);
    expect(shares([on('a', 'L1'), on('b', 'L2'), on('c', 'L3')], 16, {}, steps).points.map((p) => p.current)).toEqual([
      32, 32, 32,
    ]);
  });

  test('where other load exceeds it already that is said, and charging on the other lines still runs', () => {
    const { neutrals, points, nodes } = shares([on('a', 'L1'), on('b', 'L2')], 20, { load: perLine(30, 0, 0) });
    expect(neutrals).toEqual([{ node: 'board', excess: expect.closeTo(10, 9) }]);
    expect(nodes[0]?.neutral).toBeLessThanOrEqual(30 + 1e-9);
    // a current on L2 makes room for some on L1
    expect(points.every((p) => p.current > 4)).toBe(true);
  });

  test('a limit below the smallest current is told', () => {
    expect(shares([on('a', 'L1')], 5).neverServed.map((p) => p.message)).toEqual([
      "'a' never charges: the limit of the neutral of 'board', 5 A, is below its smallest current, 6 A",
    ]);
  });

  test('a share of the third harmonic that cannot be is refused', () => {
    expect(problemsOf(() => shares([on('a', 'L1')], 20, { thirdHarmonic: ratio(1.2) }))).toEqual([
      'nodes[0].thirdHarmonic: must be at most 1',
    ]);
  });
});

test('a larger neutral never serves the least served less, nor all together less', () => {
  fc.assert(
    fc.property(
      networks({ nodes: 1, points: 7, neutral: true }),
      fc.constantFrom<SharingRule>('max-min-amperes', 'max-min-kilowatts'),
      fc.integer({ min: 1, max: 30 }),
      (network, rule, more) => {
        const levels = (n: ChargingNetwork) =>
          allocate(n, { rule, stage: 'continuous' })
            .points.filter((_, i) => n.points[i]!.connected !== false)
            .map((p) => p.current / (rule === 'max-min-kilowatts' ? 1 / p.lines.length : 1))
            .sort((a, b) => a - b);
        const wider = {
          ...network,
          nodes: network.nodes.map((n) =>
            n.neutralLimit === undefined ? n : { ...n, neutralLimit: amperes(n.neutralLimit + more) },
          ),
        };
        const [few, many] = [levels(network), levels(wider)];
        // compared from the least served on: the first that differs has more
        const at = few.findIndex((v, i) => Math.abs(v - many[i]!) > 1e-6);
        if (at >= 0) expect(many[at]!).toBeGreaterThan(few[at]!);
      },
    ),
    { numRuns: 200, seed: seedOf(43) },
  );
});

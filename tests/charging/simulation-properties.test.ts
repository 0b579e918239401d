import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { excessTimeOf } from '../../src/charging/definitions.js';
import {
  type AllocationPolicy,
  type ChargingNetwork,
  type ChargingSession,
  type ControlSettings,
  type CurrentProfile,
  notPromisedWords,
  type PerLine,
  type Simulation,
  type SimulationInput,
  simulate,
} from '../../src/charging/index.js';
import { amperes, type Line, minutes, ratio, seconds, volts, wattHours } from '../../src/index.js';
import { seedOf } from '../support/seed.js';
import { node, perLine, point, problemsOf, way } from './networks.js';
import { controlled, policies, simulations } from './simulations.js';

const LINES: readonly Line[] = ['L1', 'L2', 'L3'];
const current = (of: Readonly<Partial<Record<Line, readonly number[]>>>, line: Line, k: number) => of[line]?.[k] ?? 0;

describe('whatever the vehicles, the load, the limits and the policy', () => {
  test('energy is current times voltage times time, no more than needed, and nothing is lost', () => {
    fc.assert(
      fc.property(simulations({ nodes: 3, points: 5, overload: true }), (input) => {
        const { sessions, series, delivered, missing } = simulate(input);
        const pointOf = new Map(series!.points.map((p) => [p.id, p.current]));
        sessions.forEach((s, i) => {
          const { arrives, leaves, energy } = input.sessions[i]!;
          // from the currents alone: from the first step at or after the arrival until it leaves or is full
          const until = Math.min(leaves, s.fullAt ?? Number.POSITIVE_INFINITY);
          const sum = series!.minutes.reduce((wh, minute, k) => {
            const begin = minute * 60;
            const time = begin < arrives ? 0 : Math.max(0, Math.min(begin + 300, until) - begin);
            const lines = LINES.reduce((a, line) => a + current(pointOf.get(s.point)!, line, k), 0);
            return wh + (lines * 230 * time) / 3600;
          }, 0);
          expect(s.delivered).toBeCloseTo(sum, 6);
          expect(s.delivered + s.missing).toBeCloseTo(energy, 9);
          expect(s.delivered).toBeLessThanOrEqual(energy);
          expect(s.missing > 0).toBe(s.fullAt === undefined);
          expect(s.pauses).toBeLessThanOrEqual(s.starts);
        });
        const total = sessions.reduce((a, s) => a + s.delivered, 0);
        expect([delivered, missing]).toEqual([total, sessions.reduce((a, s) => a + s.missing, 0)]);
      }),
      { numRuns: 200, seed: seedOf(11) },
    );
  });

  test('no line carries more than its limit, or than other load alone; figures of nodes are those of the series', () => {
    fc.assert(
      fc.property(simulations({ nodes: 4, points: 6, overload: true }), (input) => {
        const { network } = input;
        const { series, nodes } = simulate(input);
        const { stage } = (input.control as { policy: AllocationPolicy }).policy;
        const valueAt = (
          profiles: readonly CurrentProfile[] | undefined,
          id: string,
          minute: number,
          every: number,
        ) => {
          const values = profiles?.find((p) => p.node === id)?.values;
          return values?.[Math.floor(minute / every) % values.length];
        };
        const peak = new Map(nodes.map((n) => [n.id, [-1e9, -1e9, -1e9]]));
        const over = new Map(nodes.map((n) => [n.id, [0, 0, 0]]));
        series!.minutes.forEach((minute, k) => {
          for (const n of network.nodes) {
            const below = network.nodes.filter((o) => way(network, o.id).includes(n.id)).map((o) => o.id);
            const limit = valueAt(input.limits, n.id, minute, 30) ?? n.limit;
            LINES.forEach((line, p) => {
              const load = network.nodes
                .filter((o) => below.includes(o.id))
                .reduce((a, o) => a + (valueAt(input.load, o.id, minute, 10) ?? o.load ?? perLine(0))[p]!, 0);
              const charging = series!.points
                .filter((s) => below.includes(network.points.find((x) => x.id === s.id)!.node))
                .reduce((a, s) => a + current(s.current, line, k), 0);
              const most = limit?.[p] ?? Number.POSITIVE_INFINITY;
              if (charging > 0) expect(load + charging).toBeLessThanOrEqual(most + 1e-6);
              peak.get(n.id)![p] = Math.max(peak.get(n.id)![p]!, load + charging);
              if (load > most) over.get(n.id)![p]! += 300;
              expect(series!.load.find((l) => l.id === n.id)!.current[line][k]).toBeCloseTo(load, 9);
            });
          }
          for (const p of series!.points)
            for (const line of LINES) {
              const x = current(p.current, line, k);
              expect(x >= 0 && (stage === 'continuous' || x === 0 || x >= 6 - 1e-9)).toBe(true);
            }
        });
        for (const n of nodes) {
          n.peak.forEach((value, p) => {
            expect(value).toBeCloseTo(peak.get(n.id)![p]!, 6);
          });
          expect(n.overloaded).toEqual(over.get(n.id));
          expect(n.longestAbove).toEqual([0, 0, 0]);
        }
      }),
      { numRuns: 150, seed: seedOf(12) },
    );
  });

  test('the same again, and in whatever order nodes, points, vehicles and profiles are named', () => {
    fc.assert(
      fc.property(
        simulations({ nodes: 3, points: 5, overload: true }).chain((input) =>
          fc.record({
            input: fc.constant(input),
            nodes: fc.shuffledSubarray([...input.network.nodes], { minLength: input.network.nodes.length }),
            points: fc.shuffledSubarray([...input.network.points], { minLength: input.network.points.length }),
            sessions: fc.shuffledSubarray([...input.sessions], { minLength: input.sessions.length }),
          }),
        ),
        ({ input, nodes, points, sessions }) => {
          const byId = <T extends { readonly id: string }>(list: readonly T[]) =>
            [...list].sort((a, b) => (a.id < b.id ? -1 : 1));
          const sorted = (s: Simulation) => [
            byId(s.sessions),
            byId(s.nodes),
            byId(s.series!.points),
            byId(s.series!.load),
          ];
          const before = JSON.stringify(input);
          const first = simulate(input);
          expect(simulate(input)).toEqual(first);
          expect(JSON.stringify(input)).toBe(before);
          const other = { ...input, network: { nodes, points }, sessions, load: [...input.load!].reverse() };
          expect(sorted(simulate(other))).toEqual(sorted(first));
        },
      ),
      { numRuns: 100, seed: seedOf(13) },
    );
  });
});

const base = {
  from: seconds(0),
  to: seconds(10 * 3600),
  step: minutes(1),
  voltage: volts(230),
  load: [],
} as const;
const stay = (id: string, leaves: number, energy: number): ChargingSession => ({
  id,
  point: id,
  arrives: seconds(0),
  leaves: seconds(leaves * 3600),
  energy: wattHours(energy * 230),
});
const total = (input: SimulationInput) => simulate(input).sessions.reduce((a, s) => a + s.delivered / 230, 0);

describe('more capacity', () => {
  const fixed = (input: SimulationInput): SimulationInput => {
    const { limits: _, ...rest } = input;
    return { ...rest, control: { policy: (input.control as { policy: AllocationPolicy }).policy } };
  };
  const raised = (network: ChargingNetwork, ids: readonly string[], by: number): ChargingNetwork => ({
    ...network,
    nodes: network.nodes.map((n) =>
      n.limit && ids.includes(n.id) ? { ...n, limit: n.limit.map((a) => amperes(a + by)) as unknown as PerLine } : n,
    ),
  });
  const never = (before: Simulation, after: Simulation) => {
    before.sessions.forEach((s, i) => {
      expect(after.sessions[i]!.delivered).toBeGreaterThanOrEqual(s.delivered - 1e-3);
    });
  };

  test('at the intake is less energy for nobody, when any current is shared among vehicles on the same lines', () => {
    const continuous = policies.filter((p) => p.stage === 'continuous');
    fc.assert(
      fc.property(
        simulations({ nodes: 4, points: 6, weights: true }, continuous),
        fc.integer({ min: 1, max: 40 }),
        fc.constantFrom<readonly Line[]>(['L1'], ['L1', 'L2', 'L3']),
        (drawn, by, lines) => {
          const input = fixed(drawn);
          const network = {
            ...input.network,
            points: input.network.points.map(({ vehicleLines: _, ...p }) => ({ ...p, lines })),
          };
          const before = simulate({ ...input, network });
          expect(before.notPromised).toEqual([]);
          never(before, simulate({ ...input, network: raised(network, ['n0'], by) }));
        },
      ),
      { numRuns: 200, seed: seedOf(14) },
    );
  });

  test('anywhere is less energy for nobody, when shares are equal', () => {
    const equal = policies.filter((p) => p.rule === 'equal-share');
    fc.assert(
      fc.property(
        simulations({ nodes: 4, points: 6 }, equal),
        fc.integer({ min: 1, max: 40 }),
        fc.nat({ max: 3 }),
        (drawn, by, which) => {
          const input = fixed(drawn);
          const before = simulate(input);
          expect(before.notPromised).toEqual([]);
          never(before, simulate({ ...input, network: raised(input.network, [`n${which}`], by) }));
        },
      ),
      { numRuns: 200, seed: seedOf(15) },
    );
  });

  test('may be less energy in all: 17 A serve two who leave early, 18 A serve a third who had the night', () => {
    const at = (limit: number): SimulationInput => ({
      ...base,
      network: {
        nodes: [node('intake', perLine(limit, 0, 0))],
        points: ['a', 'b', 'c'].map((id, k) => point(id, 'intake', 10, { priority: k + 1 })),
      },
      sessions: [stay('a', 2, 100), stay('b', 2, 100), stay('c', 10, 40)],
      control: { policy: { rule: 'max-min-amperes', waiting: 'priority' } },
    });
    // 17 A: 8 and 9 A for two hours, then 10 A for four; 18 A: three times 6 A for two hours, then what is missing of 40 Ah
    expect(total(at(17))).toBeCloseTo(2 * 17 + 40, 6);
    expect(total(at(18))).toBeCloseTo(2 * 12 + 40, 6);
    expect(simulate(at(17)).notPromised).toEqual(['less-energy-may-come-from-more-capacity']);
    expect(notPromisedWords['less-energy-may-come-from-more-capacity']).toContain('18 A');
  });

  test('of one row may be less energy in all: it serves one who could have waited before one who leaves', () => {
    const at = (limit: number): SimulationInput => ({
      ...base,
      network: {
        nodes: [node('intake', perLine(20, 0, 0)), node('row', perLine(limit, 0, 0), { parent: 'intake' })],
        points: [point('a', 'row', 20), point('b', 'intake', 20)],
      },
      sessions: [stay('a', 10, 50), stay('b', 2, 100)],
      control: { policy: { rule: 'max-min-amperes', stage: 'continuous' } },
    });
    expect(total(at(5))).toBeCloseTo(50 + 2 * 15, 6);
    expect(total(at(10))).toBeCloseTo(50 + 2 * 10, 6);
  });

  test('of one line may be less energy in all where vehicles use different lines', () => {
    const at = (limit: number): SimulationInput => ({
      ...base,
      network: {
        nodes: [node('intake', perLine(limit, 12, 100))],
        points: [
          point('a', 'intake', 32, { weight: ratio(1) }),
          point('b', 'intake', 32, { lines: ['L1', 'L2'] }),
          point('c', 'intake', 32, { lines: ['L2'] }),
        ],
      },
      sessions: [stay('a', 2, 100), stay('b', 10, 40), stay('c', 2, 100)],
      control: { policy: { rule: 'max-min-amperes', stage: 'continuous' } },
    });
    // L1 at 4 A: 2, 2 and 10 A; at 8 A: 4, 4 and 8 A
    expect(simulate(at(4)).notPromised).toEqual(['less-energy-may-come-from-more-capacity']);
    const who = (limit: number) => simulate(at(limit)).sessions.map((s) => Math.round(s.delivered / 230));
    expect(who(4)).toEqual([4, 40, 20]);
    expect(who(8)).toEqual([8, 40, 16]);
  });
});

describe('a load control', () => {
  test('charging above limit and other load lasts no longer than meter, controller and vehicle take together', () => {
    let seen = 0;
    fc.assert(
      fc.property(controlled, (input) => {
        const { nodes, series } = simulate(input);
        const bound = excessTimeOf(input.control as Required<ControlSettings>);
        for (const n of nodes)
          for (const time of n.longestAbove) {
            if (time > 0) seen++;
            expect(time).toBeLessThanOrEqual(bound);
          }
        for (const p of series!.points)
          for (const values of Object.values(p.current)) for (const x of values) expect(x === 0 || x >= 6).toBe(true);
      }),
      { numRuns: 150, seed: seedOf(16) },
    );
    // the bound is looked at where something is above a limit, not where nothing ever is
    expect(seen).toBeGreaterThan(50);
  });

  /** Takes what the meters say at once, for as long as a step. */
  const atOnce = (step: SimulationInput['step'], nodes: readonly { readonly id: string }[]): ControlSettings => ({
    policy: { rule: 'max-min-amperes' },
    meters: nodes.map((n) => ({ node: n.id, measures: 'everything', positive: 'import' })),
    meterPeriod: step,
    controllerPeriod: step,
    pointReaction: seconds(0),
    vehicleReaction: seconds(0),
    staleAfter: step,
    riseAfter: seconds(0),
    resumeAfter: seconds(0),
    exportCounts: true,
  });

  test('that has no limit to keep is refused, where sharing at once needs none', () => {
    const input: SimulationInput = {
      ...base,
      network: { nodes: [{ id: 'intake' }], points: [point('a', 'intake', 6)] },
      sessions: [stay('a', 2, 100)],
      control: { policy: { rule: 'max-min-amperes' } },
    };
    expect(total(input)).toBeCloseTo(2 * 6, 6);
    expect(problemsOf(() => simulate({ ...input, control: atOnce(base.step, input.network.nodes) })).join()).toBe(
      "points[0].node: no node on the way to 'a' has a limit",
    );
  });

  test('goes on with its turns while nobody is there', () => {
    const input: SimulationInput = {
      ...base,
      step: minutes(5),
      network: {
        nodes: [node('intake', perLine(58, 0, 0))],
        points: [point('a', 'intake', 6), point('b', 'intake', 12)],
      },
      load: [{ node: 'intake', values: [perLine(48, 0, 0)] }],
      sessions: [
        { ...stay('a', 3, 99), arrives: minutes(60) },
        { ...stay('b', 3, 99), arrives: minutes(65) },
      ],
      control: { policy: { rule: 'max-min-amperes' } },
      keepSeries: true,
    };
    // 10 A are enough for one of them; turns are at every quarter of an hour
    for (const control of [input.control, atOnce(input.step, input.network.nodes)])
      expect(simulate({ ...input, control }).series!.points.map((p) => p.current.L1!.slice(12, 21))).toEqual([
        [6, 6, 6, 0, 0, 0, 6, 6, 6],
        [0, 0, 0, 10, 10, 10, 0, 0, 0],
      ]);
  });

  test('without delays and holds comes to what is shared at once, where each node is metered', () => {
    fc.assert(
      fc.property(simulations({ nodes: 3, points: 5 }, [{ rule: 'max-min-amperes' }]), (drawn) => {
        const { limits: _, ...rest } = drawn;
        const { network, step } = rest;
        // a control knows of an arrival when it next measures: here that is when it is
        const arrivals = rest.sessions.map((s) => ({ ...s, arrives: seconds(Math.ceil(s.arrives / step) * step) }));
        const input = { ...rest, sessions: arrivals.filter((s) => s.leaves > s.arrives) };
        const limited = new Set(network.nodes.flatMap((n) => (n.limit ? [n.id] : [])));
        // a control without anything to keep is refused
        fc.pre(network.points.every((p) => way(network, p.node).some((id) => limited.has(id))));
        const control = atOnce(input.step, network.nodes);
        const shared = simulate({ ...input, control: { policy: control.policy } });
        const controlled = simulate({ ...input, control });
        expect(controlled.nodes).toEqual(shared.nodes);
        controlled.sessions.forEach((s, i) => {
          expect(s.delivered).toBeCloseTo(shared.sessions[i]!.delivered, 6);
        });
      }),
      { numRuns: 60, seed: seedOf(17) },
    );
  });
});

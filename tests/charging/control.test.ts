import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { safeCurrents, worstCase } from '../../src/charging/control/safe-currents.js';
import { excessTimeOf, safeCurrentOf } from '../../src/charging/definitions.js';
import {
  type ChargingNetwork,
  type ControlMeasurement,
  type ControlSettings,
  type ControlState,
  controllerOf,
  judgeMainFuse,
  type PerLine,
} from '../../src/charging/index.js';
import { amperes, type Line, ratio, seconds } from '../../src/index.js';
import { seedOf } from '../support/seed.js';
import { limited, linesOf, networks, node, perLine, point, rowsOf, way } from './networks.js';

const one = (a: number) => perLine(a, 0, 0);
const settings = (more: Partial<ControlSettings> = {}): ControlSettings => ({
  policy: { rule: 'max-min-amperes' },
  meters: [{ node: 'intake', measures: 'everything', positive: 'import' }],
  meterPeriod: seconds(1),
  controllerPeriod: seconds(1),
  pointReaction: seconds(0),
  vehicleReaction: seconds(5),
  staleAfter: seconds(10),
  riseAfter: seconds(0),
  resumeAfter: seconds(600),
  ...more,
});
const home: ChargingNetwork = { nodes: [node('intake', one(60), { load: one(50) })], points: [point('a', 'intake')] };
const reading = (at: number, current: readonly [number, number, number], drawn: Record<string, number>) => ({
  at: seconds(at),
  nodes: { intake: current as unknown as PerLine }, // a broken meter delivers what it likes
  points: Object.fromEntries(
    Object.entries(drawn).map(([id, current]) => [id, { connected: true, current: amperes(current) }]),
  ),
});

describe('house-load protection of one point', () => {
  // fuse 60 A, no margin, no holds; derived case: current of the house, current of the vehicle
  test('the vehicle gets what the house leaves, from 6 A up', () => {
    const house = [5, 10, 20, 30, 40, 50, 56, 57, 50, 40, 20, 20, 5, 5];
    const { start, step } = controllerOf(home, settings({ vehicleReaction: seconds(0), resumeAfter: seconds(0) }));
    let state = start;
    let drawn = 0;
    const given = house.map((load, at) => {
      const next = step(state, reading(at, [load + drawn, 0, 0], { a: drawn }), seconds(at));
      state = next.state;
      drawn = next.commands.a!;
      return drawn;
    });
    expect(given).toEqual([32, 32, 32, 30, 20, 10, 0, 0, 10, 20, 32, 32, 32, 32]);
  });

  test('after a pause for want of current it resumes only when 6 A were there for ten minutes', () => {
    const { start, step } = controllerOf(home, settings());
    let state = start;
    let drawn = 0;
    const resumed: number[] = [];
    for (let at = 0; at < 1500; at++) {
      const load = at < 100 ? 20 : at < 200 ? 58 : at === 500 ? 57 : 30;
      const next = step(state, reading(at, [load + drawn, 0, 0], { a: drawn }), seconds(at));
      if (drawn === 0 && next.commands.a! > 0) resumed.push(at);
      state = next.state;
      drawn = next.commands.a!;
    }
    expect(resumed).toEqual([0, 501 + 600]);
  });

  test('a rise needs the hold, and brings no more than was there throughout', () => {
    const { start, step } = controllerOf(home, settings({ riseAfter: seconds(10), riseBy: amperes(2) }));
    let state = start;
    let drawn = 0;
    const given: number[] = [];
    for (let at = 0; at < 60; at++) {
      const load = at < 20 ? 44 : at === 25 ? 38 : 30;
      const next = step(state, reading(at, [load + drawn, 0, 0], { a: drawn }), seconds(at));
      state = next.state;
      drawn = next.commands.a!;
      given.push(drawn);
    }
    expect(given[9]).toBe(0);
    expect(given[10]).toBe(16);
    expect(given[29]).toBe(16);
    expect(given[30]).toBe(22);
    expect(given[40]).toBe(22);
    expect(given[41]).toBe(30);
  });

  test('export leaves no room beyond the limit unless it is to count', () => {
    const meters = [{ node: 'intake', measures: 'other-load', positive: 'export' }] as const;
    const sunny = { at: seconds(0), nodes: { intake: one(40) }, points: { a: { connected: true } } };
    const strong: ChargingNetwork = { nodes: [node('intake', one(20))], points: [point('a', 'intake')] };
    const command = (more: Partial<ControlSettings>) => {
      const { start, step } = controllerOf(strong, settings({ meters, ...more }));
      return step(start, sunny, seconds(0)).commands.a;
    };
    expect(command({})).toBe(20);
    expect(command({ exportCounts: true })).toBe(32);
  });
});

describe('several points', () => {
  const nodes = [node('intake', one(40), { load: one(10) })];
  const points = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'].map((id) => point(id, 'intake'));

  test('a rotation serves each of eight points on 40 A six eighths of the time', () => {
    const policy = { rule: 'max-min-amperes', waiting: { rotation: seconds(900), now: seconds(0) } } as const;
    const { start, step } = controllerOf(
      { nodes: [node('intake', one(40))], points },
      settings({
        policy,
        controllerPeriod: seconds(10),
        meters: [{ node: 'intake', measures: 'other-load', positive: 'import' }],
      }),
    );
    let state = start;
    const served: Record<string, number> = {};
    for (let at = 0; at < 8 * 900; at += 10) {
      const word = Object.fromEntries(points.map((p) => [p.id, { connected: true }]));
      const next = step(state, { at: seconds(at), nodes: { intake: one(0) }, points: word }, seconds(at));
      state = next.state;
      for (const [id, current] of Object.entries(next.commands)) if (current > 0) served[id] = (served[id] ?? 0) + 10;
    }
    for (const { id } of points) expect(Math.abs(served[id]! / (8 * 900) - 6 / 8)).toBeLessThan(0.03);
  });

  test('what a silent point was told is kept free for it', () => {
    const two: ChargingNetwork = { nodes, points: points.slice(0, 2) };
    const meters = [{ node: 'intake', measures: 'other-load', positive: 'import' }] as const;
    const { start, step } = controllerOf(two, settings({ meters, vehicleReaction: seconds(0) }));
    const word = (at: number, points: ControlMeasurement['points']) => ({
      at: seconds(at),
      nodes: { intake: one(0) },
      points,
    });
    const both = step(start, word(0, { a: { connected: true }, b: { connected: true } }), seconds(0));
    expect(both.commands).toEqual({ a: 20, b: 20 });
    const silent = step(both.state, word(1, { a: { connected: true } }), seconds(1));
    expect(silent.commands).toEqual({ a: 20, b: 20 });
    const gone = step(silent.state, word(2, { a: { connected: true }, b: { connected: false } }), seconds(2));
    expect(gone.commands).toEqual({ a: 32, b: 0 });
  });

  test('who rises waits until who makes room has had time', () => {
    const ranked = [point('a', 'intake', 32, { priority: 2 }), point('b', 'intake', 32, { priority: 1 })];
    const meters = [{ node: 'intake', measures: 'other-load', positive: 'import' }] as const;
    const { start, step } = controllerOf(
      { nodes: [node('intake', one(32))], points: ranked },
      settings({ meters, policy: { rule: 'strict-priority' } }),
    );
    const word = (at: number, b: boolean) => ({
      at: seconds(at),
      nodes: { intake: one(0) },
      points: { a: { connected: true }, b: { connected: b } },
    });
    let { state, commands } = step(start, word(0, false), seconds(0));
    expect(commands).toEqual({ a: 32, b: 0 });
    for (let at = 1; at <= 5; at++) {
      ({ state, commands } = step(state, word(at, true), seconds(at)));
      expect(commands).toEqual({ a: 0, b: 0 });
    }
    expect(step(state, word(6, true), seconds(6)).commands).toEqual({ a: 0, b: 32 });
  });
});

describe('fallback', () => {
  // 100 A, 70 A worst other load: 30/4 = 7.5, 7 A each; six points at 5 A are under 6 A, five run (derived case)
  test.each([
    [4, [7, 7, 7, 7]],
    [6, [6, 6, 6, 6, 6, 0]],
  ])('%d points', (count, due) => {
    const points = Array.from({ length: count }, (_, i) => point(`p${i}`, 'intake'));
    const safe = safeCurrents(
      worstCase({ nodes: [node('intake', one(100), { load: one(70) })], points }, new Set(['intake'])),
    );
    expect(Object.values(safe)).toEqual(due);
    const exact = safeCurrentOf({
      sharedCapacity: amperes(100),
      worstOtherLoad: amperes(70),
      pointsSharing: ratio(count),
    });
    expect(exact).toBe(30 / count);
  });

  test('safe currents fit every limit beside the stated load, whoever is plugged in', () => {
    fc.assert(
      fc.property(networks({ overload: true }).map(limited), (network) => {
        const safe = safeCurrents(worstCase(network, new Set()));
        const worst = {
          nodes: network.nodes.map((n) => ({
            ...n,
            ...(n.load ? { load: perLine(...(n.load.map((a) => Math.max(0, a)) as [number, number, number])) } : {}),
          })),
          points: network.points.map(({ vehicleLines: _, connected: __, ...p }) => p),
        };
        for (const { who, room } of rowsOf(worst))
          expect(who.reduce((sum, i) => sum + safe[network.points[i]!.id]!, 0)).toBeLessThanOrEqual(room + 1e-6);
        for (const value of Object.values(safe)) expect(value === 0 || value >= 6).toBe(true);
      }),
      { numRuns: 300, seed: seedOf(3) },
    );
  });

  test('silence: first nothing rises, then safe currents, never more than before', () => {
    const { start, step, safe } = controllerOf(home, settings());
    expect(safe).toEqual({ a: 10 });
    const { state, commands } = step(start, reading(0, [10, 0, 0], { a: 0 }), seconds(0));
    expect(commands).toEqual({ a: 32 });
    expect(step(state, undefined, seconds(10))).toMatchObject({ mode: 'holding', commands: { a: 32 }, fault: 'none' });
    const fallen = step(state, undefined, seconds(10.5));
    expect(fallen).toMatchObject({ mode: 'safe', commands: { a: 10 } });
    expect(step(fallen.state, undefined, seconds(1e6)).commands).toEqual({ a: 10 });
    expect(step(start, undefined, seconds(0))).toMatchObject({ mode: 'safe', commands: { a: 0 } });
    expect(step(state, reading(1, [0, 0, 0], { a: 0 }), Number.NaN as never)).toMatchObject({
      mode: 'safe',
      fault: 'clock',
    });
  });

  test.each([
    ['not-a-number', reading(1, [Number.NaN, 0, 0], { a: 0 })],
    ['not-a-number', reading(1, [0, 0, 0], { a: -1 })],
    ['not-new', reading(0, [0, 0, 0], { a: 0 })],
    ['from-the-future', reading(99, [0, 0, 0], { a: 0 })],
    ['incomplete', { at: seconds(1), nodes: {}, points: {} }],
    ['incomplete', { at: seconds(1), nodes: { intake: one(0) }, points: null as never }],
  ])('%s', (fault, measurement) => {
    const { start, step } = controllerOf(home, settings());
    const { state } = step(start, reading(0, [50, 0, 0], { a: 0 }), seconds(0));
    const next = step(state, measurement as ControlMeasurement, seconds(2));
    expect(next).toMatchObject({ mode: 'holding', fault, commands: { a: 10 } });
  });
});

/** Measurements as a broken world may deliver them, against a random network. */
const history = (network: ChargingNetwork) =>
  fc.array(
    fc.record({
      wait: fc.constantFrom(0, 1, 1, 1, 5, 60),
      age: fc.constantFrom(0, 0, 0, 1, 7, -3, 50),
      broken: fc.constantFrom(false, false, false, false, true),
      load: fc.tuple(...network.nodes.map(() => fc.integer({ min: -30, max: 120 }))),
      connected: fc.tuple(...network.points.map(() => fc.boolean())),
    }),
    { minLength: 1, maxLength: 30 },
  );

test('whatever is measured: nothing rises without a good measurement, no command between 0 and 6 A, states are plain', () => {
  fc.assert(
    fc.property(
      networks({ nodes: 3, points: 6, unbalance: true })
        .map(limited)
        .chain((network) => fc.tuple(fc.constant(network), history(network))),
      ([network, events]) => {
        const meters = network.nodes.map((n) => ({ node: n.id, measures: 'other-load', positive: 'import' }) as const);
        const { start, step } = controllerOf(
          network,
          settings({ meters, resumeAfter: seconds(20), recoverAfter: seconds(1e6) }),
        );
        let state = start;
        let clock = 0;
        for (const event of events) {
          clock += event.wait;
          const load = (v: number) => (event.broken && v === 0 ? Number.NaN : event.load[v]!);
          const measurement = {
            at: (clock - event.age) as never,
            nodes: Object.fromEntries(network.nodes.map((n, v) => [n.id, [load(v), load(v), load(v)] as never])),
            points: Object.fromEntries(network.points.map((p, i) => [p.id, { connected: event.connected[i]! }])),
          };
          const before = state;
          const next = step(JSON.parse(JSON.stringify(state)) as ControlState, measurement, seconds(clock));
          const bad =
            event.broken || event.age < 0 || clock - event.age <= (before.measuredAt ?? -1e9) || event.age > 10;
          expect(next.mode === 'sharing').toBe(!bad);
          for (const [id, current] of Object.entries(next.commands)) {
            expect(current === 0 || current >= 6).toBe(true);
            if (bad) expect(current).toBeLessThanOrEqual(before.points[id]!.command);
          }
          state = next.state;
        }
      },
    ),
    { numRuns: 300, seed: seedOf(4) },
  );
});

/** A world in steps of a second: other load by node and line, vehicles that follow late when told to draw less. */
describe('bound on the excess', () => {
  const worlds = networks({ nodes: 3, points: 6, overload: true })
    .map(limited)
    .chain((network) =>
      fc.record({
        network: fc.constant(network),
        meterPeriod: fc.integer({ min: 1, max: 5 }),
        controllerPeriod: fc.integer({ min: 1, max: 5 }),
        reaction: fc.integer({ min: 0, max: 5 }),
        everything: fc.boolean(),
        rule: fc.constantFrom('max-min-amperes', 'max-min-kilowatts', 'strict-priority' as const),
        steps: fc.array(
          fc.record({
            at: fc.integer({ min: 0, max: 150 }),
            node: fc.nat({ max: network.nodes.length - 1 }),
            line: fc.nat({ max: 2 }),
            load: fc.integer({ min: -20, max: 110 }),
          }),
          { minLength: 1, maxLength: 12 },
        ),
        takes: fc.array(fc.constantFrom(0, 0.5, 1, 1), { minLength: 7, maxLength: 7 }),
        plugs: fc.array(fc.integer({ min: 0, max: 80 }), { minLength: 6, maxLength: 6 }),
      }),
    );

  test('charging above what limits leave lasts no longer than meter, controller and vehicle take together', () => {
    fc.assert(
      fc.property(
        worlds,
        ({ network, meterPeriod, controllerPeriod, reaction, everything, rule, steps, takes, plugs }) => {
          const measures = everything ? ('everything' as const) : ('other-load' as const);
          const meters = network.nodes.map((n) => ({ node: n.id, measures, positive: 'import' as const }));
          const { start, step, excessTime } = controllerOf(
            network,
            settings({
              meters,
              policy: { rule },
              meterPeriod: seconds(meterPeriod),
              controllerPeriod: seconds(controllerPeriod),
              pointReaction: seconds(0),
              vehicleReaction: seconds(reaction),
              resumeAfter: seconds(15),
            }),
          );
          expect(excessTime).toBe(meterPeriod + controllerPeriod + reaction);
          const below = network.nodes.map((n) => network.nodes.map((o) => way(network, o.id).includes(n.id)));
          const onLine = (i: number, k: number) => linesOf(network.points[i]!).includes(`L${k + 1}` as Line);
          const behind = network.nodes.map((n) => network.points.map((p) => way(network, p.node).includes(n.id)));
          const own = network.nodes.map((n) => [...(n.load ?? [0, 0, 0])] as number[]);
          const told: number[][] = []; // commands second by second
          const loads: number[][][] = [];
          let state = start;
          let measured: ControlMeasurement | undefined;
          let commands: Record<string, number> = Object.fromEntries(network.points.map((p) => [p.id, 0]));
          for (let t = 0; t < 170; t++) {
            for (const s of steps) if (s.at === t) own[s.node]![s.line] = s.load;
            const plugged = network.points.map((p, i) => p.connected !== false && t >= plugs[i % plugs.length]!);
            const load = network.nodes.map((_, v) =>
              [0, 1, 2].map((k) => own.reduce((sum, o, w) => sum + (below[v]![w] ? o[k]! : 0), 0)),
            );
            // the most that a vehicle may draw now: what it was told within its reaction time
            const draw = network.points.map((_, i) =>
              plugged[i]
                ? Math.max(0, ...told.slice(Math.max(0, t - reaction)).map((c) => c[i]!)) * takes[(i + (t >> 4)) % 7]!
                : 0,
            );
            loads.push(load);
            if (t % meterPeriod === 0)
              measured = {
                at: seconds(t),
                nodes: Object.fromEntries(
                  network.nodes.map((n, v) => [
                    n.id,
                    perLine(
                      ...([0, 1, 2].map(
                        (k) =>
                          load[v]![k]! +
                          (everything ? draw.reduce((s, d, i) => s + (behind[v]![i] && onLine(i, k) ? d : 0), 0) : 0),
                      ) as [number, number, number]),
                    ),
                  ]),
                ),
                points: Object.fromEntries(
                  network.points.map((p, i) => [p.id, { connected: plugged[i]!, current: amperes(draw[i]!) }]),
                ),
              };
            if (t % controllerPeriod === 0) {
              const next = step(state, measured, seconds(t));
              state = next.state;
              commands = next.commands;
            }
            told.push(network.points.map((p) => commands[p.id]!));
            network.nodes.forEach((n, v) => {
              if (!n.limit) return;
              for (let k = 0; k < 3; k++) {
                const now = load[v]![k]!;
                const total = now + draw.reduce((s, d, i) => s + (behind[v]![i] && onLine(i, k) ? d : 0), 0);
                const lately = loads.slice(Math.max(0, t - excessTime)).map((l) => Math.max(0, l[v]![k]!));
                const rise = Math.max(0, now - Math.min(...lately));
                expect(total).toBeLessThanOrEqual(Math.max(n.limit[k]!, now) + rise + 1e-6);
              }
            });
          }
        },
      ),
      { numRuns: 200, seed: seedOf(5) },
    );
  });

  test('the sum of the delays, and a verdict on the fuse only with its curve', () => {
    const time = excessTimeOf({
      meterPeriod: seconds(10),
      controllerPeriod: seconds(1),
      pointReaction: seconds(10),
      vehicleReaction: seconds(5),
    });
    expect(time).toBe(26);
    // a limit of 75 A on a gG fuse of 80 A, its gates from memory: (2·75 + 20)·20·26 = 88 400 A²s above the limit,
    // 215²·10·(1 - (75/100)²) = 202 234 A²s that the fuse takes up beside it
    const excess = { limit: amperes(75), rise: amperes(20), time };
    const fuse = { gates: [{ current: 215, time: 10 }], nonFusing: amperes(100) };
    expect(judgeMainFuse(excess)).toMatchObject({ verdict: 'not-determined', gaps: [{}, {}] });
    expect(judgeMainFuse({ ...excess, gates: fuse.gates })).toMatchObject({ verdict: 'not-determined', gaps: [{}] });
    expect(judgeMainFuse({ ...excess, ...fuse })).toMatchObject({ verdict: 'pass' });
    expect(judgeMainFuse({ ...excess, ...fuse, rise: amperes(50) }).verdict).toBe('fail');
    // a limit above what the fuse carries for ever is left nothing
    expect(judgeMainFuse({ ...excess, ...fuse, limit: amperes(101), rise: amperes(1) }).verdict).toBe('fail');
    // a gate of a tenth of a second says less than that of ten seconds: the better one decides
    const gates = [...fuse.gates, { current: 610, time: 0.1 }];
    expect(judgeMainFuse({ ...excess, ...fuse, gates })).toEqual(judgeMainFuse({ ...excess, ...fuse }));
  });
});

test('bad settings are refused, each with its path', () => {
  const bad = settings({
    meterPeriod: seconds(0),
    meters: [
      { node: 'cellar', measures: 'everything', positive: 'import' },
      { node: 'cellar', measures: 'everything', positive: 'import' },
    ],
    safe: { a: amperes(3) },
  });
  try {
    controllerOf(home, bad);
    expect.unreachable();
  } catch (error) {
    const paths = (error as { detail: { problems: { path: unknown[] }[] } }).detail.problems.map((p) =>
      p.path.join('.'),
    );
    expect(paths).toEqual(['meterPeriod', 'meters.0.node', 'meters.1.node', 'meters.1.node', 'safe.a']);
  }
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ScheduleInput, schedule } from '../../../src/charging/index.js';
import type { SchedulePolicy } from '../../../src/charging/schedule/input.js';
import { type Amperes, amperes, hours, seconds, volts, wattHours } from '../../../src/index.js';
import { seedOf } from '../../support/seed.js';
import { node, perLine, point } from '../networks.js';
import { expectSound, inputs } from './inputs.js';

/** Unit slots of one hour, unit currents of 1 A at 1000 V: an energy of e unit-slots is e kWh. */
const unitCars = (
  cars: readonly { a: number; d: number; e: number }[],
  capacity: number,
  slots: number,
): Omit<ScheduleInput, 'policy'> => ({
  network: {
    nodes: [node('intake', perLine(capacity, 0, 0))],
    points: cars.map((_, k) => point(`c${k}`, 'intake', 1, { least: amperes(0.001) })),
  },
  sessions: cars.map(({ a, d, e }, k) => ({
    id: `c${k}`,
    point: `c${k}`,
    arrives: hours(a),
    leaves: hours(d),
    energy: wattHours(1000 * e),
  })),
  from: hours(0),
  to: hours(slots),
  step: hours(1),
  voltage: volts(1000),
  stage: 'continuous',
});

/** Current of each car in each unit slot. */
const bySlot = (input: Omit<ScheduleInput, 'policy'>, policy: SchedulePolicy) =>
  schedule({ ...input, policy }).sessions.map((s) =>
    Array.from({ length: Math.round(input.to / 3600) }, (_, t) =>
      s.stretches.reduce((sum, { from, to, current }) => sum + (from <= 3600 * t && to > 3600 * t ? current : 0), 0),
    ),
  );

/** Small instances, computed apart from this project's code; energies in unit-slots. Provenance: derived. */
describe('instances with known schedules', () => {
  const three = unitCars(
    [
      { a: 0, d: 2, e: 1 },
      { a: 0, d: 2, e: 1 },
      { a: 0, d: 3, e: 3 },
    ],
    2,
    3,
  );

  test('earliest deadline lets the vehicle without time to spare wait and misses it', () => {
    expect(bySlot(three, 'earliest-deadline')).toEqual([
      [1, 0, 0],
      [1, 0, 0],
      [0, 1, 1],
    ]);
    const result = schedule({ ...three, policy: 'earliest-deadline', bound: true });
    expect(result.sessions.map((s) => s.shortfall)).toEqual([0, 0, 1000]);
    expect(result.bound?.shortfall).toBe(0);
    expect(schedule({ ...three, policy: 'earliest-deadline' }).bound).toBeUndefined();
    expect(result.notPromised).toEqual(['may-miss-what-can-be-met']);
  });

  test('least laxity meets all', () => {
    expect(bySlot(three, 'least-laxity')).toEqual([
      [1, 0, 0],
      [0, 1, 0],
      [1, 1, 1],
    ]);
    expect(schedule({ ...three, policy: 'least-laxity' }).shortfall).toBe(0);
  });

  test('both meet four vehicles of which one comes late', () => {
    const four = unitCars(
      [
        { a: 0, d: 4, e: 2 },
        { a: 0, d: 4, e: 2 },
        { a: 0, d: 4, e: 2 },
        { a: 2, d: 4, e: 2 },
      ],
      2,
      4,
    );
    expect(bySlot(four, 'earliest-deadline')).toEqual([
      [1, 1, 0, 0],
      [1, 1, 0, 0],
      [0, 0, 1, 1],
      [0, 0, 1, 1],
    ]);
    expect(bySlot(four, 'least-laxity')).toEqual([
      [1, 1, 0, 0],
      [1, 0, 1, 0],
      [0, 1, 0, 1],
      [0, 0, 1, 1],
    ]);
  });

  test('three vehicles that together need more than there is: the shortfall is said', () => {
    const short = unitCars(
      [0, 1, 2].map(() => ({ a: 0, d: 2, e: 2 })),
      2,
      2,
    );
    for (const policy of ['earliest-deadline', 'least-laxity'] as const) {
      expect(schedule({ ...short, policy }).shortfall).toBeCloseTo(2000, 6);
      expect(schedule({ ...short, policy, bound: true }).bound?.shortfall).toBeCloseTo(2000, 6);
    }
    const fair = schedule({ ...short, policy: 'valley-filling' });
    fair.sessions.forEach((s) => {
      expect(s.shortfall).toBeCloseTo(2000 / 3, 6);
    });
  });
});

describe('properties', () => {
  const shape = { nodes: 4, points: 7, profiles: true, hours: true, between: true, overload: true };
  const both = fc.constantFrom<SchedulePolicy>('earliest-deadline', 'least-laxity');
  const all = fc.constantFrom<SchedulePolicy>('earliest-deadline', 'least-laxity', 'minimum-cost', 'valley-filling');
  const stages = fc.constantFrom('continuous' as const, 'zero-or-least' as const);

  test('no limit is exceeded, nobody charges outside its stay or hours, nor beyond its need', () => {
    fc.assert(
      fc.property(inputs({ ...shape, unbalance: true }), all, stages, (input, policy, stage) => {
        const full = { ...input, policy, stage, bound: true };
        const result = schedule(full);
        expectSound(full, result);
        expect(result.shortfall).toBeGreaterThanOrEqual(result.bound!.shortfall - 1e-5);
      }),
      { numRuns: 400, seed: seedOf(31) },
    );
  });

  test('more supply never serves less in total: lines, unbalance and neutrals, each raised', () => {
    fc.assert(
      fc.property(
        inputs({ nodes: 3, points: 5, steps: 4, unbalance: true, neutral: true }),
        fc.constantFrom<SchedulePolicy>('minimum-cost', 'valley-filling'),
        fc.integer({ min: 1, max: 20 }),
        (input, policy, more) => {
          const priced = {
            ...input,
            policy,
            stage: 'continuous',
            prices: { values: [0.3, 0.1], every: input.step },
          } as const;
          const up = (current: Amperes) => amperes(current + more);
          const wider = input.network.nodes.map((n) => ({
            ...n,
            ...(n.limit ? { limit: [up(n.limit[0]), up(n.limit[1]), up(n.limit[2])] as const } : {}),
            ...(n.unbalance === undefined ? {} : { unbalance: up(n.unbalance) }),
            ...(n.neutralLimit === undefined ? {} : { neutralLimit: up(n.neutralLimit) }),
          }));
          const [few, many] = [input.network.nodes, wider].map(
            (nodes) => schedule({ ...priced, network: { ...input.network, nodes } }).shortfall,
          );
          expect(many!).toBeLessThanOrEqual(few! + 1e-3);
        },
      ),
      { numRuns: 60, seed: seedOf(36) },
    );
  });

  test('the order of the input leaves no trace', () => {
    fc.assert(
      fc.property(inputs(shape), all, stages, (input, policy, stage) => {
        const turned = {
          ...input,
          network: {
            nodes: [...input.network.nodes].reverse(),
            points: [...input.network.points].reverse(),
          },
          sessions: [...input.sessions].reverse(),
        };
        const [a, b] = [schedule({ ...input, policy, stage }), schedule({ ...turned, policy, stage })];
        expect([...b.sessions].reverse()).toEqual(a.sessions);
        expect(b.nodes).toEqual(a.nodes);
      }),
      { numRuns: 100, seed: seedOf(32) },
    );
  });

  test('nobody waits while there is room: a vehicle that lacks energy is stopped by a limit or itself at any instant', () => {
    fc.assert(
      fc.property(inputs({ nodes: 1, points: 4, singlePhase: true }), both, (input, policy) => {
        const full: ScheduleInput = { ...input, policy, stage: 'continuous' };
        const result = schedule(full);
        const limit = input.network.nodes[0]!.limit!;
        const base = input.network.nodes[0]!.load ?? [0, 0, 0];
        result.sessions.forEach((s, k) => {
          if (s.shortfall <= 1e-3) return;
          const session = input.sessions[k]!;
          const p = input.network.points.find((q) => q.id === s.point)!;
          const line = ['L1', 'L2', 'L3'].indexOf(p.lines[0]!);
          const room = Math.max(0, limit[line]! - base[line]!);
          const most = Math.min(p.most, session.most ?? p.most);
          const edges = [...new Set(result.sessions.flatMap((o) => o.stretches.flatMap((x) => [x.from, x.to])))];
          edges.push(session.arrives, session.leaves);
          edges.sort((a, b) => a - b);
          edges.slice(1).forEach((to, e) => {
            const middle = (edges[e]! + to) / 2;
            if (to - edges[e]! < 1e-6 || middle < session.arrives || middle > session.leaves || middle > input.to)
              return;
            const at = (o: number) =>
              result.sessions[o]!.stretches.find((x) => x.from <= middle && middle < x.to)?.current ?? 0;
            const sum = input.sessions.reduce((total, o, i) => {
              const lines = input.network.points.find((q) => q.id === o.point)!.lines;
              return total + (lines.includes(p.lines[0]!) ? at(i) : 0);
            }, 0);
            expect(at(k) >= most - 1e-9 || sum >= room - 1e-9).toBe(true);
          });
        });
      }),
      { numRuns: 200, seed: seedOf(33) },
    );
  });
});

test('vehicles that stop within a step are stopped to the second, and cost is that of the energy', () => {
  const night = schedule({
    network: { nodes: [node('intake', perLine(40, 0, 0))], points: [point('p', 'intake')] },
    sessions: [{ id: 'car', point: 'p', arrives: hours(18.25), leaves: hours(30), energy: wattHours(7360) }],
    from: hours(18),
    to: hours(30),
    step: hours(0.5),
    voltage: volts(230),
    policy: 'earliest-deadline',
    stage: 'zero-or-least',
    prices: { values: [0.4, 0.1], every: hours(1) },
  });
  expect(night.sessions[0]).toEqual({
    id: 'car',
    point: 'p',
    stretches: [{ from: hours(18.25), to: hours(19.25), current: 32 }],
    delivered: 7360,
    shortfall: 0,
    fullAt: seconds(19.25 * 3600),
    cost: night.cost,
  });
  expect(night.cost).toBeCloseTo(7.36 * (0.75 * 0.4 + 0.25 * 0.1), 12);
});

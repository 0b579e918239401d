import fc from 'fast-check';
import { expect } from 'vitest';
import {
  type ChargingHours,
  type ChargingNetwork,
  type ChargingSession,
  type CurrentProfile,
  type NetworkPoint,
  type Schedule,
  type ScheduleInput,
  windowsOf,
} from '../../../src/charging/index.js';
import { amperes, hours, minutes, ratio, seconds, volts, wattHours } from '../../../src/index.js';
import { smartChargingPeak } from '../../../src/networks/index.js';
import { type NetworkShape, networks, rowsOf } from '../networks.js';

const STEP = 1800;
const FROM = 18 * 3600;

export interface InputShape extends NetworkShape {
  /** Largest number of steps. */
  readonly steps?: number;
  /** Whether arrivals, departures and delays fall between steps. */
  readonly between?: boolean;
  /** Whether loads and limits change with time. */
  readonly profiles?: boolean;
  /** Whether hours are limited, with random delays. */
  readonly hours?: boolean;
  /** Energy that is needed, as a share of what the vehicle could take in its stay. */
  readonly share?: readonly [number, number];
}

/** Random schedules of a shape, all policies and stages to be chosen by the test. */
export function inputs(shape: InputShape = {}): fc.Arbitrary<Omit<ScheduleInput, 'policy' | 'stage'>> {
  const { steps: mostSteps = 8, share = [0, 1.1] } = shape;
  return fc
    .record({ network: networks(shape), steps: fc.integer({ min: 1, max: mostSteps }), second: fc.boolean() })
    .chain(({ network: drawn, steps, second }) => {
      const network = { ...drawn, points: drawn.points.map(({ connected: _, ...p }) => p) };
      const end = FROM + steps * STEP;
      const time = shape.between
        ? fc.integer({ min: FROM - 900, max: end + 900 })
        : fc.integer({ min: 0, max: steps }).map((k) => FROM + k * STEP);
      const stay = (id: string, p: NetworkPoint, least: number, most: number): fc.Arbitrary<ChargingSession> =>
        fc
          .record({
            times: fc.tuple(time, time),
            part: fc.integer({ min: Math.round(100 * share[0]), max: Math.round(100 * share[1]) }),
            cap: fc.option(fc.integer({ min: 6, max: 40 }), { nil: undefined }),
            lines: fc.option(fc.constantFrom(1, 2, 3), { nil: undefined }),
          })
          .map(({ times: [a, b], part, cap, lines }): ChargingSession => {
            const arrives = Math.min(Math.max(Math.min(a, b), least), most - (shape.between ? 60 : STEP));
            const leaves = Math.max(Math.min(Math.max(a, b), most), arrives + (shape.between ? 60 : STEP));
            const used = Math.min(lines ?? 3, p.vehicleLines ?? 3, p.lines.length) as 1 | 2 | 3;
            const power = Math.min(p.most, cap ?? p.most) * used * 230;
            return {
              id,
              point: p.id,
              arrives: seconds(arrives),
              leaves: seconds(leaves),
              energy: wattHours((Math.round((power * (leaves - arrives)) / 3600) * part) / 100),
              ...(cap === undefined ? {} : { most: amperes(cap) }),
              ...(lines === undefined ? {} : { vehicleLines: used }),
            };
          });
      const middle = FROM + Math.max(1, Math.floor(steps / 2)) * STEP;
      const sessions = fc
        .tuple(
          ...network.points.flatMap((p, k) =>
            second && k % 2 === 0 && steps > 2
              ? [stay(`s${k}`, p, 0, middle), stay(`t${k}`, p, middle, 1e9)]
              : [stay(`s${k}`, p, 0, 1e9)],
          ),
        )
        // nobody arrives before the one ahead has left
        .map((list) =>
          list.flatMap((s) => {
            const ahead = list.find((other) => other !== s && other.point === s.point && other.id.startsWith('s'));
            return s.id.startsWith('t') && ahead && ahead.leaves > s.arrives ? [] : [s];
          }),
        );
      const current = (min: number, max: number) =>
        fc.integer({ min: 10 * min, max: 10 * max }).map((x) => amperes(x / 10));
      const profiles = (min: number, max: number): fc.Arbitrary<CurrentProfile[]> =>
        shape.profiles
          ? fc.uniqueArray(
              fc.record({
                node: fc.constantFrom(...network.nodes.map((n) => n.id)),
                values: fc.array(fc.tuple(current(min, max), current(min, max), current(min, max)), {
                  minLength: 1,
                  maxLength: 4,
                }),
                every: fc.constantFrom(minutes(30), hours(1)),
                from: fc.constantFrom(hours(18), hours(17)),
              }),
              { selector: (p) => p.node, maxLength: 2 },
            )
          : fc.constant([]);
      const windows: fc.Arbitrary<ChargingHours> = shape.hours
        ? fc
            .record({
              delay: fc.record({ seed: fc.nat(), maximum: fc.constantFrom(seconds(0), seconds(600)) }),
              first: fc.constantFrom('Monday', 'Sunday'),
              kind: fc.constantFrom('any', 'off-peak', 'windows'),
              begin: fc.integer({ min: 0, max: 3 * STEP }),
            })
            .map(({ kind, first, delay, begin }) =>
              kind === 'windows'
                ? {
                    kind,
                    delay,
                    windows: [
                      { from: seconds(FROM + begin), to: seconds(FROM + begin + STEP) },
                      { from: seconds(FROM + begin + STEP), to: seconds(FROM + begin + 3 * STEP) },
                    ],
                  }
                : kind === 'off-peak'
                  ? { kind, peak: smartChargingPeak, first: first as 'Monday', delay }
                  : { kind: 'any' as const, delay },
            )
        : fc.constant({ kind: 'any' });
      return fc
        .record({
          sessions,
          load: profiles(-10, 40),
          limits: profiles(0, 90),
          hours: windows,
          prices: fc.array(fc.integer({ min: -3, max: 40 }), { minLength: 1, maxLength: 6 }),
        })
        .map(({ prices, ...rest }) => ({
          network,
          from: seconds(FROM),
          to: seconds(end),
          step: seconds(STEP),
          voltage: volts(230),
          ...rest,
          prices: { values: prices.map((p) => p / 100), every: hours(0.5) },
        }));
    });
}

const valueAt = (profile: CurrentProfile, input: Omit<ScheduleInput, 'policy' | 'stage'>, time: number) => {
  const every = profile.every ?? input.step;
  const place = Math.floor((time - (profile.from ?? input.from)) / every) % profile.values.length;
  return profile.values[(place + profile.values.length) % profile.values.length]!;
};

/** The network at a moment, with those who may charge then as its points: from definitions alone. */
export function networkAt(
  input: Omit<ScheduleInput, 'policy' | 'stage'>,
  time: number,
): { network: ChargingNetwork; sessions: number[] } {
  const { network } = input;
  const here = input.sessions.flatMap((s, k) => {
    const windows = windowsOf(input.hours ?? { kind: 'any' }, { from: s.arrives, to: s.leaves }, s.id);
    return windows.some((w) => w.from <= time && time < w.to) ? [k] : [];
  });
  const pick = (list: readonly CurrentProfile[] | undefined, id: string) => {
    const profile = list?.find((p) => p.node === id);
    return profile && valueAt(profile, input, time);
  };
  return {
    network: {
      nodes: network.nodes.map((n) => {
        const [load, limit] = [pick(input.load, n.id), pick(input.limits, n.id)];
        return { ...n, ...(load ? { load } : {}), ...(limit ? { limit } : {}) };
      }),
      points: here.map((k) => {
        const s = input.sessions[k]!;
        const p = network.points.find((q) => q.id === s.point)!;
        return {
          ...p,
          id: s.id,
          most: amperes(Math.min(p.most, s.most ?? p.most)),
          ...(s.vehicleLines === undefined ? {} : { vehicleLines: s.vehicleLines }),
          weight: ratio(1),
        };
      }),
    },
    sessions: here,
  };
}

/** Every instant at which anything may change, in order, within the time that is looked at. */
export function edgesOf(input: Omit<ScheduleInput, 'policy' | 'stage'>, result?: Schedule): number[] {
  const edges = new Set<number>([input.from, input.to]);
  for (let t = input.from as number; t < input.to; t += input.step) edges.add(t);
  for (const s of input.sessions)
    for (const w of windowsOf(input.hours ?? { kind: 'any' }, { from: s.arrives, to: s.leaves }, s.id))
      edges.add(w.from).add(w.to);
  for (const s of result?.sessions ?? []) for (const { from, to } of s.stretches) edges.add(from).add(to);
  return [...edges].filter((t) => t >= input.from && t <= input.to).sort((a, b) => a - b);
}

/** Whether a schedule keeps every limit at every instant, stays, hours, currents and needs: from definitions alone. */
export function expectSound(input: ScheduleInput, result: Schedule): void {
  const edges = edgesOf(input, result);
  for (let e = 0; e + 1 < edges.length; e++) {
    const [from, to] = [edges[e]!, edges[e + 1]!];
    if (to - from < 1e-6) continue;
    const middle = (from + to) / 2;
    const { network, sessions } = networkAt(input, middle);
    const currents = result.sessions.map(
      (s) => s.stretches.find((stretch) => stretch.from <= middle && middle < stretch.to)?.current ?? 0,
    );
    currents.forEach((current, k) => {
      if (current === 0) return;
      expect(sessions, `session ${k} at ${middle}`).toContain(k);
      const { most, least } = network.points[sessions.indexOf(k)]!;
      expect(current).toBeLessThanOrEqual(most + 1e-9);
      if (input.stage === 'zero-or-least') expect(current).toBeGreaterThanOrEqual((least ?? 6) - 1e-9);
    });
    for (const { who, sign, room } of rowsOf(network)) {
      const sum = who.reduce((total, i, k) => total + sign[k]! * currents[sessions[i]!]!, 0);
      expect(sum, `at ${middle}`).toBeLessThanOrEqual(room + 1e-6);
    }
  }
  input.sessions.forEach((s, k) => {
    const given = result.sessions[k]!;
    const p = input.network.points.find((q) => q.id === s.point)!;
    const lines = s.vehicleLines ?? p.vehicleLines ?? p.lines.length;
    const energy = given.stretches.reduce(
      (sum, { from, to, current }) => sum + (current * lines * input.voltage * (to - from)) / 3600,
      0,
    );
    expect(given.delivered).toBeLessThanOrEqual(s.energy);
    expect(Math.abs(given.delivered - energy)).toBeLessThan(1e-6 * (1 + s.energy));
    expect(given.delivered + given.shortfall).toBeCloseTo(s.energy, 6);
  });
}

/** Vehicles that take less as they fill, and points that are kept running once they run. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { taperedChargeTime } from '../../src/charging/definitions.js';
import { type ChargingSession, type SimulationInput, schedule, simulate, taperOf } from '../../src/charging/index.js';
import { amperes, hours, kilowattHours, minutes, ratio, seconds, volts, wattHours, watts } from '../../src/index.js';
import { node, perLine, point, problemsOf } from './networks.js';
import { simulations } from './simulations.js';

const refused = (run: () => unknown) => problemsOf(run).join();
const one = (session: Partial<ChargingSession>, more: Partial<SimulationInput> = {}) =>
  simulate({
    network: { nodes: [node('intake', perLine(100))], points: [point('bay', 'intake', 32, { lines: ['L1'] })] },
    sessions: [
      { id: 'car', point: 'bay', arrives: seconds(0), leaves: hours(30), energy: kilowattHours(12), ...session },
    ],
    from: seconds(0),
    to: hours(30),
    step: seconds(10),
    voltage: volts(230),
    control: { policy: { rule: 'max-min-amperes', stage: 'zero-or-least' } },
    keepSeries: true,
    ...more,
  });
const battery = (onArrival: number, course = taperOf('alternating-current'), peak = 32) => ({
  holds: kilowattHours(60),
  onArrival: ratio(onArrival),
  peak: amperes(peak),
  course,
});

describe('a battery that fills', () => {
  test('takes as long as the integral of its course says', () => {
    for (const [course, from, peak] of [
      [taperOf('alternating-current'), 0.8, 32],
      [taperOf('alternating-current'), 0.8, 16],
      [taperOf('median'), 0.8, 48],
      [taperOf('p10'), 0.8, 32],
    ] as const) {
      const { fullAt } = one({ battery: battery(from, course, peak) }).sessions[0]!;
      const exact = taperedChargeTime({
        battery: kilowattHours(60),
        peakPower: watts(peak * 230),
        pointPower: watts(32 * 230),
        from: ratio(from),
        to: ratio(1),
        taper: course,
      });
      expect((fullAt as number) / exact).toBeCloseTo(1, 2);
    }
  });

  test('leaves what it does not take to the others', () => {
    const two = simulate({
      network: {
        nodes: [node('intake', perLine(32))],
        points: ['nearly full', 'empty'].map((id) => point(id, 'intake', 32, { lines: ['L1'] })),
      },
      sessions: ['nearly full', 'empty'].map((id) => ({
        id,
        point: id,
        arrives: seconds(0),
        leaves: hours(4),
        energy: wattHours(id === 'empty' ? 40_000 : 600),
        ...(id === 'empty' ? {} : { battery: battery(0.99) }),
      })),
      from: seconds(0),
      to: hours(4),
      step: minutes(1),
      voltage: volts(230),
      control: { policy: { rule: 'max-min-amperes', stage: 'zero-or-least' } },
      keepSeries: true,
    });
    const currents = two.series!.points.map((p) => p.current.L1![0]);
    // 0.4 of 32 A at 99 %: the other has the rest of 32 A
    expect(currents[0]).toBeCloseTo(12.8, 6);
    expect(currents[1]).toBeCloseTo(19.2, 6);
    // below 6 A it is still offered 6 A and takes less
    const last = two.series!.points[0]!.current.L1!;
    expect(Math.min(...last.filter((i) => i > 0))).toBeLessThan(6);
  });

  test('never takes more than without its course, nor is full earlier; energy balances and limits hold', () => {
    fc.assert(
      fc.property(simulations({ nodes: 3, points: 5, overload: true }), (input) => {
        const sessions = input.sessions.map((s) => ({
          ...s,
          battery: { ...battery(0.5), holds: wattHours(Math.max(1, s.energy) * 2) },
        }));
        const found = simulate({ ...input, sessions, keepSeries: true });
        const { series } = found;
        for (const s of found.sessions) {
          const asked = sessions.find((o) => o.id === s.id)!;
          expect(s.delivered + s.missing).toBeCloseTo(asked.energy, 6);
          expect(s.delivered).toBeGreaterThanOrEqual(0);
        }
        for (const n of found.nodes) for (const time of n.longestAbove) expect(time).toBe(0);
        const most = Math.max(0, ...series!.points.flatMap((p) => Object.values(p.current).flat()));
        expect(most).toBeLessThanOrEqual(32);
      }),
      { numRuns: 60 },
    );
  });

  test('is refused where it has no room for what is needed, or no course', () => {
    expect(refused(() => one({ battery: battery(0.9) }))).toMatch(/holds/);
    expect(refused(() => one({ battery: { ...battery(0.5), course: [[0, 1]] } }))).toMatch(/course/);
    expect(refused(() => one({ battery: 7 as never }))).toMatch(/battery/);
    const planned = () =>
      schedule({
        network: { nodes: [node('intake', perLine(32))], points: [point('bay', 'intake', 32)] },
        sessions: [
          {
            id: 'car',
            point: 'bay',
            arrives: seconds(0),
            leaves: hours(4),
            energy: wattHours(600),
            battery: battery(0.5),
          },
        ],
        policy: 'earliest-deadline',
        stage: 'continuous',
        from: seconds(0),
        to: hours(4),
        step: minutes(15),
        voltage: volts(230),
      });
    expect(refused(planned)).toMatch(/battery/);
  });
});

describe('a point that runs', () => {
  /** Three vehicles on 12 A, two of which can run at a time; every quarter of an hour it is somebody else's turn. */
  const turns = (
    control: Partial<Extract<SimulationInput['control'], { policy: unknown }>>,
    limits?: SimulationInput['limits'],
  ) =>
    simulate({
      network: {
        nodes: [node('intake', perLine(13))],
        points: ['a', 'b', 'c'].map((id) => point(id, 'intake', 32, { lines: ['L1'] })),
      },
      sessions: ['a', 'b', 'c'].map((id) => ({
        id,
        point: id,
        arrives: seconds(0),
        leaves: hours(8),
        energy: kilowattHours(30),
      })),
      from: seconds(0),
      to: hours(8),
      step: minutes(5),
      voltage: volts(230),
      control: { policy: { rule: 'max-min-amperes', stage: 'zero-or-least' }, ...control } as never,
      ...(limits ? { limits } : {}),
      keepSeries: true,
    });
  const runs = (found: ReturnType<typeof turns>) =>
    found.series!.points.flatMap(({ current }) => {
      const text = current.L1!.map((i) => (i > 0 ? '1' : '0')).join('');
      // the last run is cut by the end
      return (
        text
          .replace(/1+$/, '')
          .match(/1+/g)
          ?.map((r) => r.length * 5) ?? []
      );
    });

  test('goes on for the least time, and starts less often', () => {
    const [free, held] = [turns({}), turns({ leastOn: hours(1) })];
    expect(Math.min(...runs(free))).toBeLessThan(60);
    expect(Math.min(...runs(held))).toBeGreaterThanOrEqual(60);
    const starts = (f: typeof free) => f.sessions.reduce((sum, s) => sum + s.starts, 0);
    expect(starts(held)).toBeLessThan(starts(free));
    expect(held.sessions.every((s) => s.cutShort === 0)).toBe(true);
    expect(free.sessions[0]).not.toHaveProperty('cutShort');
  });

  test('is paused earlier only where a limit leaves it nothing, and that is counted', () => {
    const off = [{ node: 'intake', every: minutes(30), values: [perLine(13), perLine(0)] }];
    const found = turns({ leastOn: hours(1) }, off);
    expect(found.sessions.reduce((sum, s) => sum + (s.cutShort ?? 0), 0)).toBeGreaterThan(0);
    for (const n of found.nodes) expect(n.longestAbove).toEqual([0, 0, 0]);
  });

  test('is not paused for others once it has started as often as it may', () => {
    const most = (f: ReturnType<typeof turns>) => Math.max(...f.sessions.map((s) => s.starts));
    expect(most(turns({}))).toBeGreaterThan(3);
    expect(most(turns({ mostStarts: 3 }))).toBeLessThanOrEqual(3);
  });

  test('goes before a higher priority while it is held', () => {
    const found = simulate({
      network: {
        nodes: [node('intake', perLine(10))],
        points: [
          point('first', 'intake', 32, { lines: ['L1'], priority: 2 }),
          point('later', 'intake', 32, { lines: ['L1'], priority: 1 }),
        ],
      },
      sessions: [
        { id: 'a', point: 'first', arrives: seconds(0), leaves: hours(4), energy: kilowattHours(20) },
        { id: 'b', point: 'later', arrives: minutes(30), leaves: hours(4), energy: kilowattHours(20) },
      ],
      from: seconds(0),
      to: hours(4),
      step: minutes(15),
      voltage: volts(230),
      control: { policy: { rule: 'strict-priority', stage: 'zero-or-least' }, leastOn: hours(1) },
      keepSeries: true,
    });
    const [a, b] = found.series!.points.map((p) => p.current.L1!);
    expect(a!.map((i) => i > 0).lastIndexOf(true)).toBe(3);
    expect(b!.findIndex((i) => i > 0)).toBe(4);
  });

  test('settings that cannot be are refused', () => {
    expect(refused(() => turns({ leastOn: seconds(-1) }))).toMatch(/leastOn/);
    expect(refused(() => turns({ mostStarts: 1.5 }))).toMatch(/mostStarts/);
  });
});

import { describe, expect, test } from 'vitest';
import {
  type ChargingSession,
  fullInTime,
  pointsSharing,
  type SimulationInput,
  simulate,
  stackedLoad,
} from '../../src/charging/index.js';
import { amperes, hours, kilowattHours, minutes, seconds, volts, wattHours } from '../../src/index.js';
import { smartChargingPeak } from '../../src/networks/index.js';
import { node, perLine, point, problemsOf } from './networks.js';

const one = (a: number) => perLine(a, 0, 0);
const stay = (id: string, at: string, more: Partial<ChargingSession> = {}): ChargingSession => ({
  id,
  point: at,
  arrives: hours(18),
  leaves: hours(31),
  energy: kilowattHours(20),
  ...more,
});
const night = (more: Partial<SimulationInput> = {}): SimulationInput => ({
  network: { nodes: [node('intake', one(60))], points: [point('a', 'intake')] },
  sessions: [stay('car', 'a')],
  from: hours(18),
  to: hours(31),
  step: minutes(1),
  voltage: volts(230),
  control: { policy: { rule: 'max-min-amperes' } },
  ...more,
});
const currentOf = (input: SimulationInput, id: string, line: 'L1' | 'L2' | 'L3' = 'L1') =>
  simulate({ ...input, keepSeries: true }).series?.points.find((p) => p.id === id)?.current[line];

describe('by hand', () => {
  test('32 A at 230 V: 7.36 kW, 20 kWh in 20/7.36 h', () => {
    const { sessions, nodes, delivered, missing } = simulate(night());
    expect(sessions).toEqual([
      {
        id: 'car',
        point: 'a',
        delivered: 20_000,
        missing: 0,
        fullAt: hours(18 + 20 / 7.36),
        starts: 1,
        pauses: 0,
        waited: 0,
      },
    ]);
    expect([delivered, missing]).toEqual([20_000, 0]);
    expect(nodes[0]).toMatchObject({ id: 'intake', peak: [32, 0, 0], longestAbove: [0, 0, 0] });
    expect(nodes[0]?.atLimit[0]).toBe(0);
  });

  // derived case: fuse 60 A, no margin, no holds
  test('the vehicle gets what the house leaves, from 6 A up', () => {
    const house = [5, 10, 20, 30, 40, 50, 56, 57, 50, 40, 20, 20, 5, 5];
    const input = night({
      to: seconds(hours(18) + 60 * house.length),
      load: [{ node: 'intake', values: house.map(one) }],
    });
    expect(currentOf(input, 'a')).toEqual([32, 32, 32, 30, 20, 10, 0, 0, 10, 20, 32, 32, 32, 32]);
    const { sessions, nodes } = simulate(input);
    expect(sessions[0]).toMatchObject({ starts: 2, pauses: 1, waited: 120 });
    expect(sessions[0]?.delivered).toBeCloseTo(((32 * 7 + 30 + 20 + 10 + 10 + 20) * 230) / 60, 6);
    // 60 A are reached while the vehicle takes all that is left: 30, 20, 10, 10 and 20 A
    expect(nodes[0]).toMatchObject({ peak: [60, 0, 0], atLimit: [300, 0, 0], overloaded: [0, 0, 0] });
  });

  test('a pause for want of current is followed by a hold', () => {
    const house = [20, 20, 58, 30, 30, 58, 30, 30, 30, 30, 30, 30];
    const resumeAfter = minutes(3);
    const input = night({
      to: seconds(hours(18) + 60 * house.length),
      load: [{ node: 'intake', values: house.map(one) }],
      control: { policy: { rule: 'max-min-amperes' }, resumeAfter },
    });
    expect(currentOf(input, 'a')).toEqual([32, 32, 0, 0, 0, 0, 0, 0, 0, 30, 30, 30]);
    expect(simulate(input).sessions[0]).toMatchObject({ starts: 2, pauses: 1, waited: 420 });
  });

  // derived case: 40 A for eight points, six run and two wait; each is served six eighths of the time
  test('a rotation gives each of eight points the same in eight turns', () => {
    const ids = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'];
    const { sessions, nodes } = simulate(
      night({
        network: { nodes: [node('intake', one(40))], points: ids.map((id) => point(id, 'intake')) },
        sessions: ids.map((id) => stay(id, id, { arrives: hours(16), energy: kilowattHours(100) })),
        to: hours(20),
        control: {
          policy: {
            rule: 'max-min-amperes',
            stage: 'zero-or-least',
            waiting: { rotation: minutes(15), now: seconds(0) },
          },
        },
      }),
    );
    for (const s of sessions) {
      expect(s.delivered).toBeCloseTo((6 * 0.25 * 230 * 40) / 6, 6);
      expect(s.waited).toBe(1800);
    }
    expect(nodes[0]?.atLimit[0]).toBe(7200);
  });

  // derived cases: unit slots, first come first served; what is not served. The order of equal arrivals is that of priority.
  test.each([
    [
      [
        [0, 2, 1],
        [0, 2, 1],
        [0, 3, 3],
      ],
      3,
      [0, 0, 1],
    ],
    [
      [
        [0, 4, 2],
        [0, 4, 2],
        [0, 4, 2],
        [2, 4, 2],
      ],
      4,
      [0, 0, 0, 0],
    ],
    [
      [
        [0, 2, 2],
        [0, 2, 2],
        [0, 2, 2],
      ],
      2,
      [0, 0, 2],
    ],
  ] as const)('room for two at a time, vehicles %j', (vehicles, slots, unserved) => {
    const { sessions } = simulate(
      night({
        network: {
          nodes: [node('intake', one(64))],
          points: vehicles.map((_, i) => point(`p${i}`, 'intake', 32, { priority: i + 1 })),
        },
        sessions: vehicles.map(([from, to, energy], i) =>
          stay(`p${i}`, `p${i}`, { arrives: hours(from), leaves: hours(to), energy: wattHours(energy * 32 * 230) }),
        ),
        from: hours(0),
        to: hours(slots),
        control: { policy: { rule: 'strict-priority' } },
      }),
    );
    sessions.forEach((s, i) => {
      expect(s.missing / (32 * 230)).toBeCloseTo(unserved[i]!, 9);
    });
  });

  test('three lines bring three times the energy; a vehicle on one line of a three-phase point does not', () => {
    const network = {
      nodes: [node('intake', perLine(40))],
      points: [point('a', 'intake', 16, { lines: ['L2', 'L3', 'L1'] })],
    };
    const to = hours(20);
    const energy = kilowattHours(100);
    const of = (more: Partial<ChargingSession>) =>
      simulate(night({ network, to, sessions: [stay('car', 'a', { energy, ...more })] }));
    expect(of({}).delivered).toBeCloseTo(2 * 16 * 3 * 230, 6);
    const single = of({ vehicleLines: 1, most: amperes(10) });
    expect(single.delivered).toBeCloseTo(2 * 10 * 230, 6);
    expect(single.nodes[0]?.peak).toEqual([0, 10, 0]);
  });

  test('limits that change, and other load that exceeds one', () => {
    const input = night({
      network: {
        nodes: [node('intake', undefined), node('row', perLine(0), { parent: 'intake', load: one(12) })],
        points: [point('a', 'row')],
      },
      limits: [{ node: 'row', values: [one(40), one(10), one(60)], every: minutes(2) }],
      to: seconds(hours(18) + 360),
    });
    expect(currentOf(input, 'a')).toEqual([28, 28, 0, 0, 32, 32]);
    const { nodes, sessions } = simulate(input);
    expect(nodes.map((n) => n.id)).toEqual(['intake', 'row']);
    expect(nodes[1]).toMatchObject({ overloaded: [120, 0, 0], excess: [2, 0, 0], peak: [44, 0, 0] });
    expect(nodes[0]).toMatchObject({ peak: [44, 0, 0], atLimit: [0, 0, 0] });
    expect(sessions[0]).toMatchObject({ starts: 2, pauses: 1, waited: 120 });
  });

  test('hours: begins when the peak is over and the delay has passed, pauses in the next peak without a count', () => {
    const input = night({
      sessions: [stay('car', 'a', { leaves: hours(36), energy: kilowattHours(100) })],
      to: hours(36),
      hours: { kind: 'off-peak', peak: smartChargingPeak, first: 'Monday' },
    });
    const { sessions, series } = simulate({ ...input, keepSeries: true });
    // 22:00 to 08:00, 11:00 to 12:00
    expect(sessions[0]).toMatchObject({ starts: 2, pauses: 0, waited: 0 });
    expect(sessions[0]?.delivered).toBeCloseTo(11 * 7360, 6);
    expect(series?.minutes[series.points[0]!.current.L1!.indexOf(32)]).toBe(22 * 60);
    const delay = { seed: 3, maximum: seconds(600) };
    const delayed = simulate({
      ...input,
      hours: { kind: 'off-peak', peak: smartChargingPeak, first: 'Monday', delay },
    });
    expect(delayed.delivered).toBeLessThan(sessions[0]!.delivered);
    expect(delayed.delivered).toBeGreaterThan(sessions[0]!.delivered - (2 * 660 * 7360) / 3600);
  });

  test('a vehicle that needs nothing, one that is there before the begin, one that comes within a step', () => {
    const { sessions } = simulate(
      night({
        network: { nodes: [node('intake', one(100))], points: ['a', 'b', 'c', 'd'].map((id) => point(id, 'intake')) },
        sessions: [
          stay('nothing', 'a', { energy: wattHours(0) }),
          stay('before', 'b', { arrives: hours(10), energy: wattHours(7360) }),
          stay('within', 'c', { arrives: seconds(hours(18) + 30), energy: wattHours(7360) }),
          stay('gone', 'd', { arrives: hours(10), leaves: hours(12), energy: wattHours(7360) }),
        ],
      }),
    );
    expect(sessions[0]).toMatchObject({ fullAt: hours(18), starts: 0, waited: 0, delivered: 0, missing: 0 });
    expect(sessions[1]?.fullAt).toBeCloseTo(hours(19), 6);
    expect(sessions[2]?.fullAt).toBeCloseTo(hours(19) + 60, 6);
    expect(sessions[3]).toMatchObject({ starts: 0, delivered: 0, missing: 7360 });
  });

  test('one vehicle after the other at the same point', () => {
    const { sessions } = simulate(
      night({
        sessions: [
          stay('later', 'a', { arrives: hours(20), energy: kilowattHours(100), most: amperes(16) }),
          stay('first', 'a', { leaves: hours(20), energy: kilowattHours(100) }),
        ],
      }),
    );
    expect(sessions.map((s) => Math.round(s.delivered))).toEqual([11 * 16 * 230, 2 * 32 * 230]);
  });

  test('least energy is served first, looked at anew each quarter of an hour', () => {
    const { sessions } = simulate(
      night({
        network: { nodes: [node('intake', one(11))], points: ['a', 'b'].map((id) => point(id, 'intake')) },
        sessions: ['a', 'b'].map((id) => stay(id, id, { energy: kilowattHours(100) })),
        to: hours(20),
        control: { policy: { rule: 'max-min-amperes', waiting: 'least-energy' } },
      }),
    );
    expect(sessions.map((s) => [Math.round(s.delivered), s.pauses, s.waited])).toEqual([
      [11 * 230, 4, 3600],
      [11 * 230, 3, 3600],
    ]);
  });
});

describe('with a load control', () => {
  const settings = {
    policy: { rule: 'max-min-amperes' },
    meters: [{ node: 'intake', measures: 'everything', positive: 'import' }],
    meterPeriod: seconds(10),
    controllerPeriod: seconds(5),
    pointReaction: seconds(0),
    vehicleReaction: seconds(5),
    staleAfter: seconds(30),
    riseAfter: seconds(0),
    resumeAfter: seconds(60),
  } as const;
  const base = night({
    network: { nodes: [node('intake', one(60), { load: one(50) })], points: [point('a', 'intake')] },
    step: seconds(5),
    control: settings,
  });

  test('a rise of the house is seen late by meter, controller and vehicle', () => {
    // the house rises from 20 to 40 A five seconds after a reading
    const house = [20, 20, 20, 40, 40, 40, 40, 40, 40, 40];
    const input = { ...base, to: seconds(hours(18) + 50), load: [{ node: 'intake', values: house.map(one) }] };
    // told 32 A at once, followed after 5 s; the reading at 20 s sees 40 + 32, the vehicle follows at 25 s
    expect(currentOf(input, 'a')).toEqual([0, 32, 32, 32, 32, 20, 20, 20, 20, 20]);
    const { nodes, sessions } = simulate(input);
    expect(nodes[0]).toMatchObject({ peak: [72, 0, 0], longestAbove: [10, 0, 0], overloaded: [0, 0, 0] });
    expect(sessions[0]?.delivered).toBeCloseTo(((4 * 32 + 5 * 20) * 5 * 230) / 3600, 9);
  });

  test('export counted as positive, other load alone, and a limit that falls', () => {
    const meters = [{ node: 'intake', measures: 'other-load', positive: 'export' }] as const;
    const input = {
      ...base,
      to: seconds(hours(18) + 60),
      control: { ...settings, meters },
      load: [{ node: 'intake', values: [one(30)] }],
      limits: [{ node: 'intake', values: [one(60), one(45)], every: seconds(30) }],
    };
    expect(currentOf(input, 'a')).toEqual([0, 30, 30, 30, 30, 30, 30, 15, 15, 15, 15, 15]);
  });

  test('a vehicle on one line of a three-phase point leaves the other lines to others', () => {
    const meters = [{ node: 'intake', measures: 'everything', positive: 'import' }] as const;
    const input = {
      ...base,
      network: {
        nodes: [node('intake', perLine(40), { load: perLine(10) })],
        points: [point('a', 'intake', 32, { lines: ['L1', 'L2', 'L3'] }), point('b', 'intake', 32, { lines: ['L2'] })],
      },
      sessions: [stay('a', 'a', { vehicleLines: 1 }), stay('b', 'b')],
      to: seconds(hours(18) + 60),
      control: { ...settings, meters },
    };
    expect(currentOf(input, 'a')?.at(-1)).toBe(30);
    expect(currentOf(input, 'b', 'L2')?.at(-1)).toBe(30);
    expect(simulate(input).nodes[0]?.peak).toEqual([40, 40, 10]);
  });
});

describe('questions', () => {
  const ask = {
    intake: { id: 'intake', limit: one(60), load: one(20) },
    from: hours(18),
    to: hours(31),
    step: minutes(5),
    voltage: volts(230),
    control: { policy: { rule: 'max-min-amperes', stage: 'continuous' } },
  } as const;
  const car = { arrives: hours(18), leaves: hours(31), energy: kilowattHours(20) };

  test('full by seven, and what there was instead', () => {
    const point = { lines: ['L1'], most: amperes(32) } as const;
    const full = fullInTime({ ...ask, point, stay: car });
    expect(full).toMatchObject({ full: true, fullAt: hours(18 + 20 / 7.36), missing: 0 });
    const short = fullInTime({ ...ask, point, stay: { ...car, energy: kilowattHours(100) } });
    expect(short).toMatchObject({ full: false, starts: 1, pauses: 0 });
    expect(short.delivered).toBeCloseTo(13 * 7360, 6);
    expect(short.intake.peak).toEqual([52, 0, 0]);
    const limited = fullInTime({
      ...ask,
      point,
      stay: { ...car, energy: kilowattHours(100) },
      limits: { values: [one(26)] },
      load: { values: [one(6)] },
    });
    expect(limited.delivered).toBeCloseTo(13 * 20 * 230, 6);
    expect(limited.intake.atLimit[0]).toBe(13 * 3600);
  });

  test('as many points as the energy of the night allows', () => {
    // 40 A for 13 h at 230 V are 119.6 kWh: five vehicles of 20 kWh, not six
    const points = [{ lines: ['L1'], most: amperes(32) }] as const;
    const { most, answers } = pointsSharing({ ...ask, points, stays: [car], upTo: 7 });
    expect(most).toBe(5);
    expect(answers.map((a) => [a.points, a.allFull, a.short])).toEqual([
      [1, true, 0],
      [2, true, 0],
      [3, true, 0],
      [4, true, 0],
      [5, true, 0],
      [6, false, 6],
      [7, false, 7],
    ]);
    expect(answers[5]?.missing).toBeCloseTo(120_000 - 119_600, 6);
    // equal shares until all are full together
    expect(answers[4]?.lastFullAt).toBeCloseTo(hours(18 + 100 / 9.2), 6);
    // on three lines three times as many
    const three = ['L1', 'L2', 'L3'].map((line) => ({ lines: [line as 'L1'], most: amperes(32) }));
    const intake = { id: 'intake', limit: perLine(60), load: perLine(20) };
    expect(pointsSharing({ ...ask, intake, points: three, stays: [car], upTo: 17 }).most).toBe(15);
  });
});

describe('stacked load', () => {
  const network = {
    nodes: [node('intake', perLine(60), { load: one(10) }), node('row', undefined, { parent: 'intake', load: one(3) })],
    points: [point('b', 'row', 16), point('a', 'intake', 10), point('c', 'row', 16, { lines: ['L2'] })],
  };
  const kept = simulate(
    night({
      network,
      sessions: ['a', 'b', 'c'].map((id) => stay(id, id)),
      to: seconds(hours(18) + 120),
      keepSeries: true,
    }),
  );

  test('other load at the bottom, then each point behind the node on the line', () => {
    expect(stackedLoad(kept, network, { node: 'intake', line: 'L1', name: 'house' })).toEqual({
      minutes: [1080, 1081],
      bands: [
        { name: 'house', current: [13, 13] },
        { name: 'b', current: [16, 16] },
        { name: 'a', current: [10, 10] },
      ],
      limit: [60, 60],
    });
  });

  test('what there is no series or no limit for is refused', () => {
    const at = { node: 'intake', line: 'L1', name: 'house' } as const;
    const { series: _, ...without } = kept;
    const code = (run: () => unknown) => {
      try {
        run();
      } catch (error) {
        return (error as { code: string }).code;
      }
      return undefined;
    };
    expect(code(() => stackedLoad(without, network, at))).toBe('unknown-definition');
    expect(code(() => stackedLoad(kept, network, { ...at, node: 'attic' }))).toBe('unknown-definition');
    expect(code(() => stackedLoad(kept, network, { ...at, node: 'row' }))).toBe('not-covered');
  });
});

describe('bad input', () => {
  test('every problem of a simulation, each with its path', () => {
    expect(
      problemsOf(() =>
        simulate(
          night({
            sessions: [stay('car', 'a', { arrives: hours(31), leaves: hours(18) }), stay('lost', 'nowhere')],
            from: hours(31),
            to: hours(18),
            step: seconds(0),
            voltage: volts(-230),
            control: { policy: { rule: 'max-min-amperes' }, resumeAfter: seconds(-1) },
            load: [{ node: 'attic', values: [] }],
            limits: [{ node: 'intake', values: [one(-5)] }],
            hours: { kind: 'windows', windows: [{ from: hours(2), to: hours(1) }] },
          }),
        ),
      ),
    ).toEqual([
      'to: ends at 64800 s, not after its begin at 111600 s',
      'step: must be above 0',
      'voltage: must be above 0',
      'control.resumeAfter: must be at least 0',
      'sessions[0].leaves: leaves at 64800 s, not after its arrival at 111600 s',
      "sessions[1].point: there is no point 'nowhere'",
      "load[0].node: there is no node 'attic'",
      'load[0].values: must have at least one value',
      'limits[0].values[0][0]: must be at least 0',
      'hours.windows[0].to: ends at 3600 s, not after its begin at 7200 s',
    ]);
    expect(problemsOf(() => simulate(night({ step: seconds(0.001) })))).toEqual([
      'step: makes more than 5500000 steps',
    ]);
    expect(problemsOf(() => simulate(night({ network: { nodes: [], points: [] }, sessions: [] })))).toEqual([
      'nodes: must name at least one node',
    ]);
  });

  test('periods of a load control are whole numbers of steps', () => {
    const control = {
      policy: { rule: 'max-min-amperes' },
      meters: [],
      meterPeriod: seconds(10),
      controllerPeriod: seconds(1),
      pointReaction: seconds(0),
      vehicleReaction: seconds(5),
      staleAfter: seconds(30),
      riseAfter: seconds(0),
      resumeAfter: seconds(60),
    } as const;
    expect(problemsOf(() => simulate(night({ step: seconds(5), control })))).toEqual([
      'control.controllerPeriod: must be a whole number of steps of 5 s',
    ]);
    expect(
      problemsOf(() => simulate(night({ step: seconds(5), control: { ...control, meterPeriod: seconds(0) } }))),
    ).toEqual([
      'control.meterPeriod: must be above 0',
      'control.controllerPeriod: must be a whole number of steps of 5 s',
    ]);
  });

  test('questions name what is wrong by their own paths', () => {
    const ask = {
      intake: { id: 'intake', limit: one(-1) },
      from: hours(18),
      to: hours(31),
      step: minutes(5),
      voltage: volts(230),
      control: { policy: { rule: 'max-min-amperes' } },
      load: { values: [[amperes(1)] as never] },
    } as const;
    const car = { arrives: hours(18), leaves: hours(31), energy: kilowattHours(20) };
    const late = { ...car, leaves: hours(17) };
    const wrong = { lines: [], most: amperes(32) } as const;
    const right = { lines: ['L1'], most: amperes(32) } as const;
    expect(problemsOf(() => fullInTime({ ...ask, point: wrong, stay: late }))).toEqual([
      'intake.limit[0]: must be at least 0',
      'point.lines: must name one to three lines',
      'stay.leaves: leaves at 61200 s, not after its arrival at 64800 s',
      'load.values[0]: must have three currents, for L1, L2 and L3',
    ]);
    expect(
      problemsOf(() => pointsSharing({ ...ask, points: [right, wrong], stays: [car, car, late], upTo: 2 })),
    ).toEqual([
      'intake.limit[0]: must be at least 0',
      'points[1].lines: must name one to three lines',
      'stays[2].leaves: leaves at 61200 s, not after its arrival at 64800 s',
      'load.values[0]: must have three currents, for L1, L2 and L3',
    ]);
    expect(problemsOf(() => pointsSharing({ ...ask, points: [], stays: [], upTo: 1.5 }))).toEqual([
      'upTo: must be a whole number up to 1000',
      'points: must describe at least one point',
      'stays: must describe at least one stay',
    ]);
  });
});

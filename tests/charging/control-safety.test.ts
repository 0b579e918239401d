import { describe, expect, test } from 'vitest';
import {
  type ChargingNetwork,
  type ControlMeasurement,
  type ControlSettings,
  controllerOf,
  INTAKE,
  networkOf,
  simulate,
} from '../../src/charging/index.js';
import { bs7671Demand } from '../../src/codes/bs7671/index.js';
import { demandOf, existingOnLines } from '../../src/demand/index.js';
import {
  amperes,
  hasCode,
  hours,
  isMissing,
  kilowattHours,
  minutes,
  seconds,
  squareMillimetres,
  volts,
} from '../../src/index.js';
import { readSurvey } from '../../src/io/index.js';
import { decidedRun, withAddedRun } from '../../src/site/index.js';
import { surveyDocument } from '../support/surveys.js';
import { node, perLine, point } from './networks.js';

const one = (a: number) => perLine(a, 0, 0);
const settings = (more: Partial<ControlSettings> = {}): ControlSettings => ({
  policy: { rule: 'max-min-amperes' },
  meters: [{ node: 'intake', measures: 'everything', positive: 'import' }],
  meterPeriod: seconds(1),
  controllerPeriod: seconds(1),
  vehicleReaction: seconds(5),
  staleAfter: seconds(10),
  riseAfter: seconds(0),
  resumeAfter: seconds(600),
  ...more,
});
const word = (at: number, seen: number, points: ControlMeasurement['points']): ControlMeasurement => ({
  at: seconds(at),
  nodes: { intake: one(seen) },
  points,
});
const draws = (current: number) => ({ connected: true, current: amperes(current) });

describe('a metered node whose worst load nobody has stated', () => {
  const { installation, wanted } = readSurvey(surveyDocument('easy-home'));
  const [drive] = wanted;
  if (!drive) throw new Error('no point is wanted');
  const house = withAddedRun(
    installation,
    drive.from,
    decidedRun(drive, drive.run.cable, squareMillimetres(6), amperes(32)),
  );
  const worst = existingOnLines(demandOf(bs7671Demand, installation, { premises: 'dwelling' }));

  test.each([
    ['not stated: nothing, and it is told', {}, 0, 1],
    ['80 A, 70.15 A by the demand: 9 A', { worst: { [INTAKE]: worst } }, 9, 0],
  ])('%s', (_, options, current, notes) => {
    const network = networkOf(house, options);
    if (isMissing(network)) throw new Error('gaps');
    const control = controllerOf(network, settings());
    expect(control.safe).toEqual({ drive: current });
    expect(control.notes.length).toBe(notes);
    for (const { message } of control.notes) expect(message).toContain("the worst load of 'intake' is not stated");
    const { state, commands } = control.step(control.start, word(0, 10, { drive: draws(0) }), seconds(0));
    expect(commands).toEqual({ drive: 32 });
    expect(control.step(state, undefined, seconds(11))).toMatchObject({ mode: 'safe', commands: { drive: current } });
  });

  test('a demand that is not known is a gap of the network, with its fact', () => {
    const unknown = { missing: [{ kind: 'fact', fact: 'demand', obtain: 'ask' }] } as const;
    expect(networkOf(house, { worst: { [INTAKE]: unknown } })).toEqual(unknown);
  });

  test('an unknown load further down is unknown above, unless the worst of all is stated there', () => {
    const meters = ['intake', 'garage'].map(
      (at) => ({ node: at, measures: 'everything', positive: 'import' }) as const,
    );
    const at = (more: object) =>
      controllerOf(
        {
          nodes: [node('intake', one(60), more), node('garage', one(40), { parent: 'intake' })],
          points: [point('a', 'intake'), point('b', 'garage')],
        },
        settings({ meters }),
      ).safe;
    expect(at({ load: one(20) })).toEqual({ a: 0, b: 0 });
    expect(at({ worst: one(20) })).toEqual({ a: 32, b: 0 });
  });

  test('safe currents of one’s own must fit beside the worst load', () => {
    const network = { nodes: [node('intake', one(60), { worst: one(50) })], points: [point('a', 'intake')] };
    expect(controllerOf(network, settings({ safe: { a: amperes(10) } })).safe).toEqual({ a: 10 });
    expect(() => controllerOf(network, settings({ safe: { a: amperes(11) } }))).toThrow(/leaves 10 A/);
  });
});

test('a paused point that loses its link: its safe current is kept free, also when it comes back', () => {
  const points = [point('a', 'row', 32, { priority: 1 }), point('b', 'row', 32, { priority: 2 })];
  const network: ChargingNetwork = {
    nodes: [node('intake', one(100), { worst: one(40) }), node('row', one(32), { parent: 'intake' })],
    points,
  };
  const control = controllerOf(network, settings({ policy: { rule: 'strict-priority' } }));
  expect(control.safe).toEqual({ a: 16, b: 16 });
  const both = control.step(control.start, word(0, 10, { a: draws(0), b: draws(0) }), seconds(0));
  expect(both.commands).toEqual({ a: 32, b: 0 });
  const lost = control.step(both.state, word(1, 42, { a: draws(32) }), seconds(1));
  expect(lost.commands).toEqual({ a: 16, b: 0 });
  // back again and paused, but perhaps not yet down from its safe current: 15 s for point and vehicle
  let { state, commands } = lost;
  for (let at = 2; at < 17; at++) {
    ({ state, commands } = control.step(state, word(at, 42, { a: draws(16), b: draws(16) }), seconds(at)));
    expect(commands).toEqual({ a: 16, b: 0 });
  }
  expect(control.step(state, word(17, 26, { a: draws(16), b: draws(0) }), seconds(17)).commands).toEqual({
    a: 32,
    b: 0,
  });
});

describe('clocks', () => {
  const network: ChargingNetwork = {
    nodes: [node('intake', one(60), { load: one(50) })],
    points: [point('a', 'intake')],
  };
  /** Clock and stamp second by second; gives the time at which it shares for good. */
  const sharesFrom = (clock: (t: number) => number, stamp: (t: number) => number) => {
    const { start, step } = controllerOf(network, settings());
    let state = start;
    let from = 0;
    for (let t = 0; t < 6000; t++) {
      const next = step(state, word(stamp(t), 20, { a: draws(10) }), seconds(clock(t)));
      state = next.state;
      if (next.mode !== 'sharing') from = t + 1;
    }
    return from;
  };
  const glitch = (from: number, to: number, by: number) => (t: number) => t + (t >= from && t < to ? by : 0);
  const right = (t: number) => t;

  test.each([
    ['one step with a clock of a thousand million seconds', glitch(100, 101, 1e9), right, 102],
    ['the same in clock and meter', glitch(100, 101, 1e9), glitch(100, 101, 1e9), 102],
    ['an hour ahead for an hour', glitch(100, 3700, 3600), right, 3761],
    ['an hour behind for an hour', glitch(100, 3700, -3600), right, 3761],
    ['the clock goes on by an hour for good', glitch(100, 1e9, 3600), right, 161],
    ['the clock goes back by an hour for good', glitch(100, 1e9, -3600), right, 161],
    ['both go back by an hour for good', glitch(100, 1e9, -3600), glitch(100, 1e9, -3600), 101],
    ['a meter two seconds ahead', right, glitch(0, 1e9, 2), 0],
    ['a meter a minute ahead', right, glitch(0, 1e9, 60), 61],
    ['one stamp from the year 2300', right, glitch(100, 101, 1e10), 101],
    ['a meter that goes back by a minute', right, glitch(100, 1e9, -60), 161],
  ])('%s', (_, clock, stamp, due) => {
    expect(sharesFrom(clock, stamp)).toBeLessThanOrEqual(due);
  });

  test('readings that are late without a jump of a clock stay late', () => {
    expect(sharesFrom(right, (t) => (t < 100 ? t : Math.max(99, t - 60)))).toBe(6000);
    expect(sharesFrom(right, (t) => t - 60)).toBe(6000);
  });

  test('a clock that stands still does not keep a reading fresh', () => {
    const { start, step } = controllerOf(network, settings());
    let { state, mode } = step(start, word(0, 20, { a: draws(10) }), seconds(0));
    for (let k = 0; k < 11; k++) ({ state, mode } = step(state, undefined, seconds(0)));
    expect(mode).toBe('safe');
  });

  test('a clock that jumps ahead shortens no hold', () => {
    const { start, step } = controllerOf(network, settings());
    const full = step(start, word(0, 57 + 0, { a: draws(0) }), seconds(0));
    expect(full.commands).toEqual({ a: 0 });
    let state = step(full.state, word(1, 20, { a: draws(0) }), seconds(1)).state;
    state = step(state, word(2, 58 + 32, { a: draws(32) }), seconds(2)).state;
    // paused for want of current: ten minutes must pass, whatever the clock says
    expect(step(state, word(5000, 20, { a: draws(0) }), seconds(5000)).commands).toEqual({ a: 0 });
  });
});

test('a point that does not say what it draws keeps to its safe current: no hunting at constant load', () => {
  const network: ChargingNetwork = {
    nodes: [node('intake', one(60), { worst: one(40) })],
    points: [point('a', 'intake'), point('b', 'intake')],
  };
  const { start, step } = controllerOf(network, settings());
  let state = start;
  let commands: Readonly<Record<string, number>> = { a: 0, b: 0 };
  let changes = 0;
  for (let t = 0; t < 1800; t++) {
    const seen = 20 + commands.a! + commands.b!;
    const next = step(state, word(t, seen, { a: { connected: true }, b: draws(commands.b!) }), seconds(t));
    expect(next.unread).toEqual(['a']);
    if (JSON.stringify(next.commands) !== JSON.stringify(commands)) changes++;
    state = next.state;
    commands = next.commands;
    expect(20 + commands.a! + commands.b!).toBeLessThanOrEqual(60);
  }
  expect(commands).toEqual({ a: 10, b: 30 });
  expect(changes).toBeLessThanOrEqual(4);
  // where a meter sees other load alone, it need not say
  const meters = [{ node: 'intake', measures: 'other-load', positive: 'import' }] as const;
  const other = controllerOf(network, settings({ meters }));
  const first = other.step(other.start, word(0, 20, { a: { connected: true }, b: { connected: true } }), seconds(0));
  expect(first).toMatchObject({ commands: { a: 20, b: 20 }, unread: [] });
});

describe('a vehicle that ignores its command', () => {
  const network: ChargingNetwork = {
    nodes: [node('intake', one(80), { load: one(38) })],
    points: [point('a', 'intake', 32), point('b', 'intake', 32)],
  };

  test.each(['everything', 'other-load'] as const)('is told, and the others make room: meter of %s', (measures) => {
    const meters = [{ node: 'intake', measures, positive: 'import' }] as const;
    const { start, step } = controllerOf(network, settings({ meters }));
    const seen = (a: number, b: number) => 38 + (measures === 'everything' ? a + b : 0);
    const first = step(start, word(0, seen(0, 0), { a: draws(0), b: draws(0) }), seconds(0));
    expect(first.commands).toEqual({ a: 21, b: 21 });
    const next = step(first.state, word(1, seen(32, 21), { a: draws(32), b: draws(21) }), seconds(1));
    expect(next).toMatchObject({ commands: { a: 21, b: 10 }, ignoring: ['a'], overloaded: [] });
    // a little more than it was told is the error of its meter: no flag, but the room is made
    const little = step(first.state, word(1, seen(22, 21), { a: draws(22), b: draws(21) }), seconds(1));
    expect(little).toMatchObject({ commands: { a: 21, b: 20 }, ignoring: [] });
  });

  test('is told to stop where the others cannot make enough room', () => {
    const alone = { ...network, points: [point('a', 'intake', 64)] };
    const { start, step } = controllerOf(alone, settings());
    const first = step(start, word(0, 60, { a: draws(0) }), seconds(0));
    expect(first.commands).toEqual({ a: 20 });
    const next = step(first.state, word(1, 38 + 64, { a: draws(64) }), seconds(1));
    expect(next).toMatchObject({ commands: { a: 0 }, ignoring: ['a'], overloaded: [{ node: 'intake', line: 'L1' }] });
  });
});

test('two cars, 10 A, twelve hours: the one who has waited longest is next, and both get the same', () => {
  const stay = (id: string) => ({ id, point: id, arrives: hours(18), leaves: hours(30), energy: kilowattHours(60) });
  const night = {
    network: {
      nodes: [node('intake', one(10), { load: one(0) })],
      points: [point('a', 'intake'), point('b', 'intake')],
    },
    sessions: [stay('a'), stay('b')],
    from: hours(18),
    to: hours(30),
    step: minutes(1),
    voltage: volts(230),
  };
  const policy = { rule: 'max-min-amperes', waiting: 'longest-waiting' } as const;
  const minute = seconds(60);
  const periods = { meterPeriod: minute, controllerPeriod: minute, pointReaction: seconds(0), vehicleReaction: minute };
  for (const control of [{ policy }, settings({ policy, ...periods, staleAfter: seconds(120) })]) {
    const { sessions } = simulate({ ...night, control });
    const [a, b] = sessions.map((s) => s.delivered / 1000);
    expect(a! + b!).toBeGreaterThan(24);
    expect(Math.abs(a! - b!)).toBeLessThan(1.5);
  }
});

test('a vehicle that may not have its smallest current now, and a point that no limit lets run, are told', () => {
  const network: ChargingNetwork = {
    nodes: [
      node('intake', one(60), { load: one(10), unbalance: amperes(5) }),
      node('row', one(5), { parent: 'intake' }),
    ],
    points: [point('a', 'row'), point('b', 'intake')],
  };
  expect(controllerOf(network, settings()).notes.map((n) => n.message)).toEqual([
    "'a' never charges: the limit of 'row' on L1, 5 A, is below its smallest current, 6 A",
    "'a' never charges: the limit of unbalance of 'intake', 5 A, is below its smallest current, 6 A",
    "'b' never charges: the limit of unbalance of 'intake', 5 A, is below its smallest current, 6 A",
  ]);
  const { start, step } = controllerOf(network, settings());
  const next = step(
    start,
    word(0, 10, { a: draws(0), b: { connected: true, current: amperes(0), most: amperes(5) } }),
    seconds(0),
  );
  expect(next.unable).toEqual(['b']);
  expect(next.unbalanced).toEqual([
    { node: 'intake', lines: ['L1', 'L2'], excess: 5 },
    { node: 'intake', lines: ['L1', 'L3'], excess: 5 },
  ]);
});

describe('what nobody states holds no point', () => {
  const refusedAt = (network: object) => {
    try {
      controllerOf(network as never, settings({ meters: [] }));
    } catch (error) {
      if (hasCode(error, 'invalid-input')) return error.detail.problems.map((p) => p.path.join('.'));
      throw error;
    }
    return [];
  };
  const drive = { id: 'p', node: 'n', lines: ['L1'], most: 32 };
  const limit = [60, 60, 60];
  test('a point without a limit on its way, and a root without a meter of which nobody says what else flows, are refused', () => {
    expect(refusedAt({ nodes: [{ id: 'n' }], points: [drive] })).toEqual(['points.0.node']);
    expect(refusedAt({ nodes: [{ id: 'n', limit }], points: [drive] })).toEqual(['nodes.0.load']);
    expect(refusedAt({ nodes: [{ id: 'n', limit, load: [0, 0, 0] }], points: [drive] })).toEqual([]);
  });
  test('what is no state of a control is safe mode', () => {
    const { step } = controllerOf(
      { nodes: [{ id: 'n', limit, load: [0, 0, 0] }], points: [drive] } as never,
      settings({ meters: [] }),
    );
    for (const state of [null, undefined, {}, { stamps: {} }, 5])
      expect(step(state as never, undefined, seconds(0))).toMatchObject({ mode: 'safe', commands: { p: 0 } });
  });
});

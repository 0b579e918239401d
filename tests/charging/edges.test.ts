/** What sharing, control and simulation do exactly at their limits. */
import { expect, test } from 'vitest';
import { allocate, type ControlSettings, controllerOf, judgeMainFuse, simulate } from '../../src/charging/index.js';
import { amperes, hasCode, hours, minutes, seconds, volts, wattHours } from '../../src/index.js';
import { node, perLine, point } from './networks.js';

const one = (a: number) => perLine(a, 0, 0);

test('a main fuse of which nothing is known is open, and says what is wanted', () => {
  const { gaps } = judgeMainFuse({ limit: amperes(60), rise: amperes(32), time: seconds(16) });
  expect(gaps?.map((gap) => gap.kind === 'fact' && gap.fact)).toEqual([
    'time-current gates of the main fuse',
    'conventional non-fusing current of the main fuse',
  ]);
});

test('the smallest current is a whole number of steps: 6 A in steps of 4 A is 8 A', () => {
  const at = (limit: number) =>
    allocate(
      { nodes: [node('intake', one(limit))], points: [point('a', 'intake')] },
      { rule: 'max-min-amperes', stage: 'whole-steps', resolution: amperes(4) },
    ).points[0]?.current;
  expect(at(7.9)).toBe(0);
  expect(at(8)).toBe(8);
  expect(at(11.9)).toBe(8);
});

test('who has received least comes first; nothing is known to have been received where nothing is said', () => {
  const who = (...received: (number | undefined)[]) =>
    allocate(
      {
        nodes: [node('intake', one(7))],
        points: received.map((wh, i) =>
          point('abc'.charAt(i), 'intake', 32, wh === undefined ? {} : { received: wattHours(wh) }),
        ),
      },
      { rule: 'max-min-amperes', waiting: 'least-energy' },
    ).points.flatMap((p) => (p.current > 0 ? [p.id] : []));
  expect(who(5000, 1000, 3000)).toEqual(['b']);
  expect(who(5000, 1000, undefined)).toEqual(['c']);
  expect(who(undefined, undefined, undefined)).toEqual(['a']);
});

test('a safe current is none, or at least 6 A', () => {
  const network = { nodes: [node('intake', one(40), { load: one(30) })], points: [point('a', 'intake')] };
  const settings = (safe: number): ControlSettings => ({
    policy: { rule: 'max-min-amperes' },
    meters: [{ node: 'intake', measures: 'everything', positive: 'import' }],
    meterPeriod: seconds(1),
    controllerPeriod: seconds(1),
    pointReaction: seconds(0),
    vehicleReaction: seconds(1),
    staleAfter: seconds(5),
    riseAfter: seconds(0),
    resumeAfter: seconds(0),
    safe: { a: amperes(safe) },
  });
  const refused = (safe: number) => {
    try {
      controllerOf(network, settings(safe));
    } catch (error) {
      return hasCode(error, 'invalid-input');
    }
    return false;
  };
  expect([0, 6, 6.5].map(refused)).toEqual([false, false, false]);
  expect([5.9, 10.5].map(refused)).toEqual([true, true]);
});

test('vehicles that stand there in no hours of charging get nothing, and all is missing', () => {
  const night = simulate({
    network: {
      nodes: [node('intake', one(40))],
      points: [point('a', 'intake'), point('b', 'intake'), point('c', 'intake')],
    },
    sessions: ['a', 'b', 'c'].map((id) => ({
      id,
      point: id,
      arrives: hours(id === 'c' ? 23 : 18),
      leaves: hours(id === 'c' ? 25 : 20),
      energy: wattHours(1000),
    })),
    hours: { kind: 'windows', windows: [{ from: hours(23), to: hours(26) }] },
    from: hours(17),
    to: hours(26),
    step: minutes(1),
    voltage: volts(230),
    control: { policy: { rule: 'max-min-amperes' } },
  });
  expect(night.sessions.map((s) => [s.id, s.delivered, s.missing])).toEqual([
    ['a', 0, 1000],
    ['b', 0, 1000],
    ['c', 1000, 0],
  ]);
});

test('names that every object inherits are names like any other, but for the one that no record can hold', () => {
  const at = (names: readonly [string, string, string], intake: string) => {
    const control: ControlSettings = {
      policy: { rule: 'max-min-amperes' },
      meters: [{ node: intake, measures: 'everything', positive: 'import' }],
      meterPeriod: seconds(2),
      controllerPeriod: seconds(1),
      pointReaction: seconds(0),
      vehicleReaction: seconds(1),
      staleAfter: seconds(5),
      riseAfter: seconds(0),
      resumeAfter: seconds(0),
      safe: Object.fromEntries(names.map((name) => [name, amperes(0)])),
    };
    const night = simulate({
      network: { nodes: [node(intake, one(20))], points: names.map((name) => point(name, intake)) },
      sessions: names.map((name, i) => ({
        id: `s${i}`,
        point: name,
        arrives: seconds(10 * i),
        leaves: seconds(300),
        energy: wattHours(900),
      })),
      from: seconds(0),
      to: seconds(300),
      step: seconds(1),
      voltage: volts(230),
      control,
    });
    return night.sessions.map((s) => s.delivered);
  };
  expect(at(['constructor', 'hasOwnProperty', 'valueOf'], 'toString')).toEqual(at(['a', 'b', 'c'], 'n'));
  const settings = { rule: 'max-min-amperes' } as const;
  const inherited = { nodes: [node('toString', one(20))], points: [point('__proto__', 'toString')] };
  expect(() => allocate(inherited, settings)).toThrow(/'__proto__' cannot be a name/);
});

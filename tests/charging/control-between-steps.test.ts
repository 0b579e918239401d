/** What a load control makes of limits that no meter sees, of a link that works one way, and of a state that is not its own. */
import { describe, expect, test } from 'vitest';
import {
  type ChargingNetwork,
  type ControlMeasurement,
  type ControlSettings,
  controllerOf,
  INTAKE,
  networkOf,
} from '../../src/charging/index.js';
import { amperes, hasCode, isMissing, known, seconds } from '../../src/index.js';
import { chargePoint, circuit, house, load } from '../support/house.js';
import { node, perLine, point } from './networks.js';

const one = (a: number) => perLine(a, 0, 0);
const settings = (more: Partial<ControlSettings> = {}): ControlSettings => ({
  policy: { rule: 'max-min-amperes' },
  meters: [{ node: 'intake', measures: 'everything', positive: 'import' }],
  meterPeriod: seconds(1),
  controllerPeriod: seconds(1),
  pointReaction: seconds(2),
  vehicleReaction: seconds(3),
  staleAfter: seconds(10),
  riseAfter: seconds(0),
  resumeAfter: seconds(20),
  ...more,
});
const word = (at: number, seen: number, drawn?: number): ControlMeasurement => ({
  at: seconds(at),
  nodes: { intake: one(seen) },
  points: drawn === undefined ? {} : { a: { connected: true, current: amperes(drawn) } },
});
const home = (most = 32): ChargingNetwork => ({
  nodes: [node('intake', one(60), { worst: one(40) })],
  points: [point('a', 'intake', most)],
});
const refusedAt = (network: ChargingNetwork) => {
  try {
    controllerOf(network, settings());
  } catch (error) {
    if (hasCode(error, 'invalid-input')) return error.detail.problems.map((p) => p.path.join('.'));
    throw error;
  }
  return [];
};
const boardRated = (rating: number, runs = [circuit()]) =>
  house(
    runs,
    {},
    { mainSwitch: { rating: known(amperes(rating)), noFuseAhead: known(true) }, rating: known(amperes(100)) },
  );
const made = (installation: ReturnType<typeof house>) => {
  const network = networkOf(installation, { worst: { [INTAKE]: one(60) } });
  if (isMissing(network)) throw new Error('gaps');
  return network;
};

describe('a limit that no meter sees', () => {
  const behind = (limit: number, more: object = {}): ChargingNetwork => ({
    nodes: [
      node('intake', one(80), { worst: one(70) }),
      node('garage', one(limit), { parent: 'intake', ...more }),
      node('row', one(32), { parent: 'garage' }),
    ],
    points: [point('a', 'row')],
  });
  test('is not kept by a meter ahead of it that keeps a higher one: what else flows there has to be stated', () => {
    expect(refusedAt(behind(40))).toEqual(['nodes.1.load']);
    expect(refusedAt(behind(40, { load: one(25) }))).toEqual([]);
    // 80 A are kept at the intake
    expect(refusedAt(behind(80))).toEqual([]);
  });
  test('of the board at the origin is one of the intake: a 63 A switch behind a 100 A fuse', () => {
    const { start, step, safe } = controllerOf(made(boardRated(63)), settings());
    expect(safe).toEqual({ point: 0 });
    const measured = {
      at: seconds(0),
      nodes: { intake: one(50) },
      points: { point: { connected: true, current: amperes(0) } },
    };
    // 63 A less 50 A
    expect(step(start, measured, seconds(0)).commands).toEqual({ point: 13 });
    expect(controllerOf(made(boardRated(100)), settings()).start).toBeDefined();
  });
  test('of a row has the loads in it that the installation lists beside the point', () => {
    const heater = load(10, { id: 'heater' });
    const shared = circuit({ feeds: [chargePoint, heater] });
    expect(made(boardRated(100, [shared])).nodes.find((n) => n.id === 'ev')?.load).toEqual(one(10));
  });
  test('of a board with points alone needs no meter, of one with more or with an open list it does', () => {
    const yard = (more: object, ...others: ReturnType<typeof circuit>[]) =>
      boardRated(100, [
        circuit({
          id: 'feeder',
          feeds: [
            {
              kind: 'board',
              id: 'yard',
              mainSwitch: { rating: known(amperes(40)), noFuseAhead: known(true) },
              rating: known(amperes(100)),
              noResidual: known(true),
              complete: known(true),
              runs: [circuit(), ...others],
              ...more,
            },
          ],
        }),
      ]);
    const at = (installation: ReturnType<typeof house>) => refusedAt(made(installation));
    expect(at(yard({}))).toEqual([]);
    expect(at(yard({ complete: known(false) }))).toEqual(['nodes.2.load']);
    expect(at(yard({}, circuit({ id: 'sauna', feeds: [load(25, { id: 'stove' })] })))).toEqual(['nodes.2.load']);
  });
});

test('a point of which no word comes is told its safe current after a while: it may hear all the same', () => {
  const { start, step, safe } = controllerOf(home(), settings());
  expect(safe).toEqual({ a: 20 });
  let next = step(start, word(0, 10, 0), seconds(0));
  expect(next.commands).toEqual({ a: 32 });
  for (let t = 1; t <= 10; t++) next = step(next.state, word(t, 42), seconds(t));
  expect(next.commands).toEqual({ a: 32 });
  next = step(next.state, word(11, 87), seconds(11));
  expect(next.commands).toEqual({ a: 20 });
});

describe('a state from before', () => {
  const begun = controllerOf(home(), settings());
  const { state } = begun.step(begun.start, word(0, 10, 0), seconds(0));
  test('handed on as text is the same', () => {
    const again = JSON.parse(JSON.stringify(state));
    expect(begun.step(again, word(1, 50, 32), seconds(1))).toEqual(begun.step(state, word(1, 50, 32), seconds(1)));
  });
  test('of a network that had other points commands those that there are, and none above its maximum', () => {
    const other = controllerOf({ ...home(16), points: [point('a', 'intake', 16), point('z', 'intake')] }, settings());
    for (const measured of [undefined, word(1, 42)])
      expect(other.step(state, measured, seconds(1)).commands).toEqual({ a: 16, z: 0 });
    const gone = controllerOf({ ...home(), points: [point('z', 'intake')] }, settings());
    expect(gone.step(state, undefined, seconds(1)).commands).toEqual({ z: 0 });
  });
  const points = (a: unknown) => ({ ...state, points: { a } });
  test.each<[string, unknown]>([
    ['a command that is text', points({ command: '32', received: 0 })],
    ['a command that is nothing', points({ command: null, received: 0 })],
    ['a negative command', points({ command: -5, received: 0 })],
    ['nothing for a point', points(null)],
    ['a lingering current that is none', points({ command: 6, received: 0, lingers: { current: null, until: 3 } })],
    ['a running time that is text', { ...state, running: '5' }],
    ['a shift of stamps that is nothing', { ...state, stamps: { shift: null } }],
    ['a measurement after its last step', { ...state, measuredAt: 1e9 }],
    ['a count that is no number', { ...state, missed: Number.NaN }],
  ])('with %s is none: every point is paused', (_, given) => {
    for (const measured of [undefined, word(1, 10, 0)])
      expect(begun.step(given as never, measured, seconds(1))).toMatchObject({ mode: 'safe', commands: { a: 0 } });
  });
  test('with a command above all that a point may have is held at that', () => {
    const given = points({ command: 1000, received: 0 });
    expect(begun.step(given as never, undefined, seconds(1)).commands).toEqual({ a: 32 });
  });
});

test.each<[string, unknown]>([
  ['text for three currents', { ...word(1, 10, 0), nodes: { intake: 'abc' } }],
  ['something as long as three currents', { ...word(1, 10, 0), nodes: { intake: { length: 3 } } }],
  // biome-ignore lint/suspicious/noSparseArray: a hole is what is tried
  ['a hole among them', { ...word(1, 10, 0), nodes: { intake: [, 0, 0] } }],
  [
    'what throws when it is read',
    {
      get at() {
        throw new TypeError('unreadable');
      },
    },
  ],
])('a measurement with %s is not used, and stops nothing', (_, measured) => {
  const { start, step } = controllerOf(home(), settings());
  const first = step(start, word(0, 10, 0), seconds(0));
  const next = step(first.state, measured as never, seconds(1));
  expect(next).toMatchObject({ mode: 'holding', commands: { a: 32 } });
  expect(step(next.state, measured as never, seconds(20))).toMatchObject({ mode: 'safe', commands: { a: 20 } });
});

import { expect, test } from 'vitest';
import { allocate, networkOf } from '../../src/charging/index.js';
import { amperes, isMissing, known, metres, ratio, unknown } from '../../src/index.js';
import { chargePoint, circuit, house as homeOf, stretch } from '../support/house.js';
import { perLine, problemsOf } from './networks.js';

const read = { mainSwitch: { rating: known(amperes(100)) }, rating: known(amperes(100)) };
const house = (...[runs, supply, board]: Parameters<typeof homeOf>) => homeOf(runs, supply, { ...read, ...board });
const boardOf = (id: string, runs: ReturnType<typeof circuit>[]) => ({ kind: 'board' as const, id, ...read, runs });
/** Four cores and a protective one, for three lines and neutral. */
const cable = { ...circuit().cable, construction: 'multicore', cores: 5, protective: 'core' } as const;
const garage = circuit({
  cable,
  id: 'feeder',
  lines: ['L1', 'L2', 'L3'],
  device: { ...circuit().device, rating: known(amperes(40)) },
  feeds: [
    boardOf('garage', [
      circuit({ id: 'ev-1', feeds: [{ ...chargePoint, id: 'one' }] }),
      circuit({
        id: 'ev-2',
        cable,
        lines: ['L2', 'L3', 'L1'],
        feeds: [{ ...chargePoint, id: 'two', lines: ['L2', 'L3', 'L1'] }],
      }),
    ]),
  ],
});

test('an installation becomes fuse, boards, rows and points, each with its smallest rating', () => {
  const network = networkOf(
    house(
      [garage],
      { phases: known(3) },
      { control: { name: 'load control', limit: known(amperes(60)), controls: ['one'] } },
    ),
    { otherLoad: { db: perLine(30, 10, 10) }, margin: amperes(5) },
  );
  if (isMissing(network)) throw new Error('gaps');
  expect(network.nodes.map((n) => [n.id, n.parent, n.limit?.[1]])).toEqual([
    ['intake', undefined, 95],
    ['db', 'intake', 60],
    ['garage', 'db', 40],
    ['ev-1', 'garage', 0],
    ['ev-2', 'garage', 32],
  ]);
  const { points } = allocate(network, { rule: 'max-min-amperes' });
  // L1: 60 less 30 of other load, two vehicles
  expect(points.map((p) => [p.id, p.current, p.binding])).toEqual([
    ['one', 15, { kind: 'limit', node: 'db', line: 'L1' }],
    ['two', 15, { kind: 'limit', node: 'db', line: 'L1' }],
  ]);
});

test('on a single-phase supply only L1 carries', () => {
  const network = networkOf(house([circuit()]));
  expect(isMissing(network) ? [] : network.nodes.map((n) => n.limit)).toEqual([
    perLine(100, 0, 0),
    perLine(100, 0, 0),
    perLine(32, 0, 0),
  ]);
});

test('facts that are not known are named, all of them', () => {
  const network = networkOf(
    house([circuit({ feeds: [{ ...chargePoint, setting: unknown('read it off the point') }] })], {
      cutOut: { kind: known({ standard: 'BS 88-3' }), rating: unknown('ask the operator') },
    }),
  );
  expect(isMissing(network) ? network.missing.map((gap) => gap.kind === 'fact' && gap.fact) : []).toEqual([
    'cutOutRating',
    'point.setting',
  ]);
});

test.each(['mainSwitch', 'rating'] as const)(
  'a board of whose %s nobody says anything bounds what nobody knows',
  (left) => {
    const { [left]: _, ...board } = house([circuit()]).board;
    const network = networkOf({ ...house([circuit()]), board });
    expect(isMissing(network) ? network.missing.map((gap) => gap.kind === 'fact' && gap.fact) : []).toEqual([
      left === 'rating' ? 'db.rating' : 'db.mainSwitch.rating',
    ]);
  },
);

test('the neutral of a feeder is a limit of its own', () => {
  const options = { neutral: { garage: { limit: amperes(10), thirdHarmonic: ratio(0.1) } } };
  const network = networkOf(house([garage], { phases: known(3) }), options);
  if (isMissing(network)) throw new Error('gaps');
  const { nodes, points } = allocate(network, { rule: 'max-min-amperes' });
  // one on L1 alone, one on three lines: the first makes a neutral of its current, with third harmonics of all four line currents
  const [one, two] = points.map((p) => p.current as number);
  expect(Math.hypot(one!, 0.1 * (one! + 3 * two!))).toBeLessThanOrEqual(10);
  expect(nodes.find((n) => n.id === 'garage')).toMatchObject({ neutralExceeded: false });
  expect(Math.min(one!, two!)).toBeGreaterThanOrEqual(6);
  expect(
    problemsOf(() =>
      networkOf(house([garage], { phases: known(3) }), {
        neutral: { garage: { limit: amperes(-1), thirdHarmonic: ratio(2) } },
      }),
    ),
  ).toEqual([
    'options.neutral.garage.limit: must be at least 0',
    'options.neutral.garage.thirdHarmonic: must be at most 1',
  ]);
  expect(
    problemsOf(() => networkOf(house([garage], { phases: known(3) }), { neutral: { garage: 10 } as never })),
  ).toEqual(['options.neutral.garage: must have a limit']);
  expect(problemsOf(() => networkOf(house([garage], { phases: known(3) }), { neutral: 10 as never }))).toEqual([
    'options.neutral: must hold neutrals by name',
  ]);
});

test('a third harmonic that the installation states limits the neutral of its run without being said again', () => {
  const stated = { ...garage, thirdHarmonic: known(ratio(0.4)) };
  const shares = (run: typeof garage) => {
    const network = networkOf(house([run], { phases: known(3) }));
    if (isMissing(network)) throw new Error('gaps');
    const [one, two] = allocate(network, { rule: 'max-min-amperes' }).points.map((p) => p.current as number);
    return [one ?? 0, two ?? 0] as const;
  };
  const neutral = ([one, two]: readonly [number, number]) => Math.hypot(one, 0.4 * (one + 3 * two));
  // 40 A on L1 shared by two: 20 A each, in the neutral 20 A and 0.4 x 80 A of third harmonics, 37.7 A; with 32 A the one
  // on three lines alone makes 0.4 x 96 A = 38.4 A
  expect(neutral(shares(stated))).toBeLessThanOrEqual(40);
  const large = (run: typeof garage) => ({ ...run, device: { ...run.device, rating: known(amperes(63)) } });
  // 63 A in whole amperes: 32 A and 31 A, in the neutral 32 A and 0.4 x 125 A: 59.4 A; by half of third harmonics it is limited
  expect(shares(large(stated))).toEqual([32, 31]);
  const half = { ...large(stated), thirdHarmonic: known(ratio(0.5)) };
  const [one, two] = shares(half);
  expect(Math.hypot(one, 0.5 * (one + 3 * two))).toBeLessThanOrEqual(63);
  expect(one + two).toBeLessThan(63);
});

test('boards along one run share what its device carries', () => {
  const board = (id: string) => boardOf(id, [circuit({ id: `circuit of ${id}`, feeds: [{ ...chargePoint, id }] })]);
  const riser = circuit({
    id: 'riser',
    device: { ...circuit().device, rating: known(amperes(40)) },
    feeds: [board('one'), board('two')],
  });
  const network = networkOf(house([riser]));
  if (isMissing(network)) throw new Error('gaps');
  // 2 x 32 A behind 40 A
  expect(allocate(network, { rule: 'max-min-amperes' }).points.map((p) => p.current)).toEqual([20, 20]);
});

test('feeders side by side carry together what lets the first of their devices reach its rating', () => {
  const fuse = (rating: number) => ({ kind: known({ standard: 'BS 88-2' } as const), rating: known(amperes(rating)) });
  const route = (length: number) => [stretch({ length: known(metres(length)) })];
  const feeder = circuit({
    id: 'short way',
    device: fuse(63),
    stretches: route(20),
    beside: [{ id: 'long way', device: fuse(63), stretches: route(60) }],
    feeds: [boardOf('yard', [circuit({ feeds: [chargePoint] })])],
  });
  const network = networkOf(house([feeder]));
  if (isMissing(network)) throw new Error('gaps');
  // three quarters take the short way: 63 A / 0.75
  expect(network.nodes.find((n) => n.id === 'yard')?.limit?.[0]).toBeCloseTo(84, 9);
});

import { expect, test } from 'vitest';
import { allocate, networkOf } from '../../src/charging/index.js';
import {
  type Amperes,
  amperes,
  type Fact,
  isMissing,
  kilovoltAmperes,
  known,
  metres,
  ratio,
  type Supply,
  unknown,
  volts,
  watts,
} from '../../src/index.js';
import { chargePoint, circuit, house as homeOf, plainBreaker, stretch } from '../support/house.js';
import { perLine, problemsOf } from './networks.js';

const read = { mainSwitch: { rating: known(amperes(100)), noFuseAhead: known(true) }, rating: known(amperes(100)) };
const house = (...[runs, supply, board]: Parameters<typeof homeOf>) => homeOf(runs, supply, { ...read, ...board });
const boardOf = (id: string, runs: ReturnType<typeof circuit>[]) => ({
  kind: 'board' as const,
  id,
  ...read,
  noResidual: known(true),
  runs,
});
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
    // all that passes the intake passes the board, whose load control keeps 60 A
    ['intake', undefined, 60],
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
      ...(left === 'rating' ? ['db.rating'] : ['db.mainSwitch.rating', 'db.mainSwitch.fuseAhead']),
    ]);
  },
);

/** The limit on L1 of a node, or what stands in the way. */
const limitAt = (id: string, ...[runs, supply, board]: Parameters<typeof homeOf>) => {
  const network = networkOf(house(runs, supply, board));
  return isMissing(network)
    ? network.missing.map((gap) => gap.kind === 'fact' && gap.fact)
    : network.nodes.find((n) => n.id === id)?.limit?.[0];
};
const amps = (n: number) => known(amperes(n));
const residual = {
  position: 'origin-of-circuit',
  type: known('A'),
  rating: known(amperes(0.03)),
} as const;

test('a switch-fuse ahead of a board bounds what the board takes', () => {
  const ahead = (fuseAhead: Fact<Amperes>) =>
    limitAt('db', [circuit()], {}, { mainSwitch: { rating: amps(100), fuseAhead } });
  expect(ahead(amps(63))).toBe(63);
  expect(ahead(unknown())).toEqual(['db.mainSwitch.fuseAhead']);
});

test('a residual current device bounds the board or the part that it serves; of one that nobody looked for nothing is known', () => {
  expect(limitAt('db', [circuit()], {}, { residual: [{ ...residual, ratedCurrent: amps(63) }] })).toBe(63);
  expect(limitAt('db', [circuit()], {}, { residual: [residual] })).toEqual(['db.residual.ratedCurrent']);
  expect(limitAt('db', [circuit()], {}, { noResidual: unknown() })).toEqual(['db.noResidual']);
  expect(limitAt('db', [circuit()], {}, { noResidual: known(false) })).toEqual(['db.residual']);
  expect(limitAt('ev', [circuit({ existing: true })])).toEqual(['ev.noResidual']);
  // what is part of the device of the circuit is rated for it; what stands apart is not
  const small = [{ ...residual, ratedCurrent: amps(25) }];
  expect(limitAt('ev', [circuit({ residual: small })])).toBe(32);
  expect(limitAt('ev', [circuit({ residual: small, device: plainBreaker })])).toBe(25);
  expect(limitAt('ev', [circuit({ residual: [residual], device: plainBreaker })])).toEqual([
    'ev.residual.ratedCurrent',
  ]);
  const [one, two, three] = ['one', 'two', 'three'].map((id) => circuit({ id, feeds: [{ ...chargePoint, id }] }));
  const part = { ...residual, ratedCurrent: amps(40), serves: ['one', 'two'] };
  const shares = (more: object[]) => {
    const split = house([one!, two!, three!], {}, { residual: [part, ...more] as never });
    const network = networkOf(split);
    if (isMissing(network)) throw new Error('gaps');
    return allocate(network, { rule: 'max-min-amperes' }).points.map((p) => p.current);
  };
  // 40 A for two; with one of 25 A that shares a circuit with it all three count together
  expect(shares([])).toEqual([20, 20, 32]);
  expect(shares([{ ...part, ratedCurrent: amps(25), serves: ['two', 'three'] }])).toEqual([9, 8, 8]);
});

test('a transformer of its own bounds the intake', () => {
  const plate = {
    rating: known(kilovoltAmperes(50)),
    voltage: known(volts(410)),
    impedanceVoltage: known(ratio(0.04)),
    loss: known(watts(900)),
    gridFaultPower: unknown(),
    owner: 'customer',
  } as const;
  const intake = (transformer: NonNullable<Supply['transformer']>) =>
    limitAt('intake', [circuit()], { phases: known(3), transformer });
  // 50 kVA / (√3 · 410 V) = 70.4 A; two of them are more than the fuse of 100 A
  expect(intake(plate)).toBeCloseTo(70.409, 3);
  expect(intake({ ...plate, parallel: 2 })).toBe(100);
  expect(intake({ ...plate, harmonicLossFactor: known(ratio(1.25)) })).toBeCloseTo(56.327, 3);
  expect(intake({ ...plate, rating: unknown() })).toEqual(['rated power of the transformer']);
  // one of 25 kVA beside it, of half its impedance voltage, takes as much as it: it is full at 50 kVA together
  const half = { rating: known(kilovoltAmperes(25)), impedanceVoltage: known(ratio(0.02)), loss: known(watts(225)) };
  expect(intake({ ...plate, beside: [half] })).toBeCloseTo(70.409, 3);
});

test('third harmonics of which nobody says anything may fill a neutral', () => {
  const { thirdHarmonic: _, ...silent } = garage;
  expect(limitAt('intake', [silent], { phases: known(3) })).toEqual(['feeder.thirdHarmonic']);
});

test('what is said of a node that there is not is refused', () => {
  const said = { otherLoad: { Db: perLine(30, 0, 0) }, worst: { db: perLine(30, 0, 0), evs: perLine(1, 1, 1) } };
  const known = 'known are intake, db, ev';
  expect(problemsOf(() => networkOf(house([circuit()]), said))).toEqual([
    `options.otherLoad.Db: there is no node 'Db'; ${known}`,
    `options.worst.evs: there is no node 'evs'; ${known}`,
  ]);
  expect(problemsOf(() => networkOf(house([circuit()]), { neutral: { other: { limit: amperes(10) } } }))).toEqual([
    `options.neutral.other: there is no node 'other'; ${known}`,
  ]);
});

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

// 80 A at the fuse, held to 70 A: what leaves the tails is held with the rest
test.each([
  ['a board and what leaves the tails ahead of it', true, 70],
  ['a board without a load control', false, 80],
])('%s', (_, controlled, most) => {
  const control = { name: 'limiter', limit: known(amperes(70)), controls: ['point'] };
  const ahead = house(
    [circuit({ fromTails: known(true) })],
    { cutOut: { kind: known({ standard: 'BS 88-3' }), rating: known(amperes(80)) } },
    controlled ? { control } : {},
  );
  const network = networkOf(ahead);
  expect(isMissing(network) ? network.missing : network.nodes[0]?.limit?.[0]).toBe(most);
});

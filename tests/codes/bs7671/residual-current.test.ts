import { expect, test } from 'vitest';
import { bs7671 } from '../../../src/codes/bs7671/index.js';
import { delayOf } from '../../../src/codes/iec-family/residual-position.js';
import type { CircuitCase } from '../../../src/codes/wiring-code.js';
import {
  amperes,
  type Board,
  type ChargePoint,
  known,
  type Load,
  milliamperes,
  type ResidualDevice,
  type Run,
  recorder,
  type Sheet,
  type Supply,
  seconds,
  unknown,
} from '../../../src/index.js';
import { smoothCurrentBreakTimes } from '../../../src/products/iec62955/break-times.js';
import { barePoint, caseOf, chargePoint, circuit, house } from '../../support/house.js';
import { judged } from '../../support/judged.js';

const code = bs7671('2018+A2:2022');
const device = (change: Partial<ResidualDevice> = {}): ResidualDevice => ({
  position: 'origin-of-circuit',
  type: known('A'),
  rating: known(milliamperes(30)),
  opensAllLive: known(true),
  bidirectional: known(true),
  ...change,
});
const point = (change: Partial<ChargePoint> = {}): ChargePoint => ({
  ...(change.residual ? barePoint : chargePoint),
  directCurrentDetection: known(true),
  standingLeakage: known(milliamperes(3)),
  ...change,
});
const judge = (
  runs: readonly Run[],
  s: Partial<Supply> = {},
  b: Partial<Board> = {},
): Record<string, string | undefined> => {
  const results = residualCurrent(caseOf(house(runs, s, b), 'ev'));
  return Object.fromEntries(results.map((r) => [r.check, r.verdict]));
};
/** A circuit-breaker without a residual current part. */
const plain: Pick<Run, 'device'> = {
  device: { ...circuit().device, kind: known({ standard: 'EN 60898', type: 'B' }) },
};
const one = (d: Partial<ResidualDevice> = {}, p: Partial<ChargePoint> = {}) => [
  circuit({ residual: [device(d)], feeds: [point(p)] }),
];

const residualCurrent = (c: CircuitCase, sheet?: Sheet) => judged(code, 'residual-current', c, sheet);

test('a charge point on type A, 30 mA, with detection of direct current', () => {
  const r = judge(one());
  expect(Object.values(r).filter((v) => v === 'fail' || v === 'not-determined')).toEqual([]);
  expect(r['smooth-current-upstream']).toBe('pass');
});
test('type, rating, poles', () => {
  expect(judge(one({ type: known('AC') }))['residual-current-type']).toBe('fail');
  expect(judge(one({}, { directCurrentDetection: known(false) }))['residual-current-type']).toBe('fail');
  expect(judge(one({ type: known('B') }, { directCurrentDetection: known(false) }))['residual-current-type']).toBe(
    'pass',
  );
  expect(judge(one({ rating: known(milliamperes(100)) }))['residual-current-rating']).toBe('fail');
  expect(judge(one({ opensAllLive: known(false) }))['residual-current-poles']).toBe('fail');
  expect(judge([circuit({ feeds: [point()] })])['residual-current-rating']).toBe('not-determined');
});
test('a device of which nobody says what it is may be an RCBO, whose residual current part is not described', () => {
  const standing = (kind: Run['device']['kind']) =>
    judge(
      [circuit({ device: { ...circuit().device, kind }, residual: [], feeds: [point()] })],
      {},
      { residual: [device()] },
    )['standing-current'];
  expect(standing(unknown('look at it'))).toBe('not-determined');
  expect(standing(plain.device.kind)).toBe('pass');
});
test('standing currents add up in a device that several points share', () => {
  const shared = (n: number) => {
    const runs = Array.from({ length: n }, (_, i) =>
      circuit({
        id: i === 0 ? 'ev' : `ev${i}`,
        residual: [device()],
        feeds: [point({ id: `point ${i}`, standingLeakage: known(milliamperes(3)) })],
      }),
    );
    const ahead = device({ type: known('B'), rating: known(milliamperes(100)), delay: known('selective') });
    return residualCurrent(caseOf(house(runs, {}, { residual: [ahead] }), 'ev'))
      .filter((r) => r.check === 'standing-current')
      .map((r) => r.verdict);
  };
  // 30 % of 100 mA are 30 mA, of 30 mA 9 mA
  expect(shared(10)).toEqual(['pass', 'pass']);
  expect(shared(11)).toEqual(['fail', 'pass']);
  // three times 3 mA are 9 mA, though not in binary
  const three = ['a', 'b', 'c'].map((id) => point({ id, standingLeakage: known(milliamperes(3)) }));
  expect(judge([circuit({ residual: [device()], feeds: three })])['standing-current']).toBe('pass');
});
test('a device with a delay gives no additional protection', () => {
  expect(judge(one({ delay: known('selective') }))['residual-current-rating']).toBe('not-determined');
  expect(judge(one({ delayTime: known(seconds(0.06)) }))['residual-current-rating']).toBe('not-determined');
  expect(judge(one({ delay: unknown() }))['residual-current-rating']).toBe('not-determined');
  const behind = [circuit({ residual: [device({ delay: known('selective') }), device()], feeds: [point()] })];
  expect(judge(behind)['residual-current-rating']).toBe('pass');
  expect(judge(one({ delay: known('general') }))['residual-current-rating']).toBe('pass');
  expect(judge(one({ delay: known('selective'), rating: known(milliamperes(100)) }))['residual-current-rating']).toBe(
    'fail',
  );
});
test('a delay that is not stated is the slower one, except where no slower device exists', () => {
  expect(delayOf(device()).delay).toEqual(known('general'));
  expect(delayOf(device({ rating: known(milliamperes(100)) })).delay).toEqual(known('selective'));
  expect(delayOf(device({ delay: known('general'), rating: known(milliamperes(100)) })).delay).toEqual(
    known('general'),
  );
  expect(delayOf(device({ delay: unknown() })).delay.state).toBe('unknown');
  expect(delayOf(device({ rating: unknown() })).delay).toEqual(known('selective'));
});
test('on TT a device inside the point does not protect the cable', () => {
  const clipped = [{ ...circuit().stretches[0], concealedShallow: known(false) }] as Run['stretches'];
  const inside = [
    circuit({ ...plain, stretches: clipped, feeds: [point({ residual: device({ position: 'inside-equipment' }) })] }),
  ];
  expect(judge(inside)['residual-current-position']).toBe('not-required');
  expect(judge(inside, { system: known('TT') })['residual-current-position']).toBe('fail');
  expect(judge(one(), { system: known('TT') })['residual-current-position']).toBe('pass');
});
test('two points with 6 mA detectors can pass 12 mA through one device', () => {
  const second = circuit({ id: 'ev2', residual: [device()], feeds: [point({ id: 'second' })] });
  const both = (type: 'A' | 'F' | 'B') =>
    residualCurrent(
      caseOf(
        house([...one(), second], {}, { residual: [device({ type: known(type), rating: known(milliamperes(100)) })] }),
        'ev',
      ),
    ).find((r) => r.check === 'smooth-current-upstream');
  expect(both('A')).toMatchObject({ verdict: 'fail', value: { value: 0.012 }, limit: { value: 0.006 } });
  expect(both('F')).toMatchObject({ verdict: 'fail', limit: { value: 0.01 } });
  expect(both('B')).toMatchObject({ verdict: 'pass', value: { value: 0.006 } });
});
test('one device a point; selectivity; standing current', () => {
  const pair = [circuit({ residual: [device()], feeds: [point(), point({ id: 'second' })] })];
  expect(judge(pair)['residual-current-one-per-point']).toBe('fail');
  const bare = [circuit({ feeds: [point()] }), circuit({ id: 'ev2', feeds: [point({ id: 'second' })] })];
  expect(judge(bare, {}, { residual: [device()] })['residual-current-one-per-point']).toBe('fail');
  expect(judge(bare.slice(0, 1), {}, { residual: [device()] })['residual-current-one-per-point']).toBe('pass');
  const above = (d: Partial<ResidualDevice>) => ({ residual: [device({ position: 'origin-of-installation', ...d })] });
  expect(judge(one(), {}, above({ delay: known('general') }))['residual-current-selectivity']).toBe('fail');
  const delayed = above({ delay: known('selective'), rating: known(milliamperes(100)) });
  expect(judge(one(), {}, delayed)['residual-current-selectivity']).toBe('pass');
  expect(judge(one({}, { standingLeakage: known(milliamperes(9.1)) }))['standing-current']).toBe('fail');
});
test('overload is judged without diversity, by the smaller of what is ahead and what is below', () => {
  const rated = (a: number) => ({ residual: [device({ ratedCurrent: known(amperes(a)) })] });
  const check = (a: number, n: number) =>
    judge(
      Array.from({ length: n }, (_, i) => circuit({ id: i === 0 ? 'ev' : `c${i}` })),
      {},
      rated(a),
    )['residual-current-device-overload'];
  expect(check(63, 1)).toBe('pass');
  expect(check(63, 2)).toBe('fail');
  expect(check(100, 4)).toBe('pass');
});
test('what feeds back: devices and board', () => {
  const back = { bidirectional: true };
  expect(judge(one({}, back))['residual-current-marked-both-ways']).toBe('pass');
  // 530.3.201 came with A3; before, the marking of the maker leaves it open
  const oneWay = one({ bidirectional: known(false) }, back);
  expect(judge(oneWay)['residual-current-marked-both-ways']).toBe('not-determined');
  const later = judged(bs7671('2018+A3:2024'), 'residual-current', caseOf(house(oneWay), 'ev'));
  expect(later.find((r) => r.check === 'residual-current-both-ways')?.verdict).toBe('fail');
  expect(judge(one({}, back), {}, { rating: known(amperes(100)) })['board-rating']).toBe('fail');
  expect(judge(one({}, back), {}, { rating: known(amperes(132)) })['board-rating']).toBe('pass');
  expect(judge(one({}, back))['board-rating']).toBe('not-determined');
});
test('failing shock checks carry their caution; silent and recorded sheets agree', () => {
  const c = caseOf(house(one({ type: known('AC') })), 'ev');
  const results = residualCurrent(c);
  expect(residualCurrent(c, recorder('Residual current'))).toEqual(results);
  for (const r of results.filter((x) => x.verdict === 'fail'))
    expect(r.caution).toContain('must not be energised on the strength of a calculation alone');
});
test('break times on smooth direct current', () => {
  expect(smoothCurrentBreakTimes.get({ detector: 'IEC 62955', smoothResidualCurrent: milliamperes(6) })).toBe(10);
  expect(smoothCurrentBreakTimes.get({ detector: 'IEC 62955', smoothResidualCurrent: milliamperes(200) })).toBe(0.1);
});

test('surge protection: asked for, declined, not known', () => {
  const board = { surgeProtection: known(false) };
  const surge = (premises: object | undefined, b: Partial<Board> = board) =>
    judged(
      code,
      'surge-protection',
      caseOf(house([circuit()], {}, b), 'ev', premises ? { premises: { kind: known('dwelling'), ...premises } } : {}),
    )[0]?.verdict;
  expect(surge(undefined)).toBe('not-determined');
  expect(surge({ overvoltageSerious: known(true) })).toBe('fail');
  expect(surge({ overvoltageSerious: known(false), surgeProtectionDeclined: known(true) })).toBe('not-required');
  expect(surge({ overvoltageSerious: known(false), surgeProtectionDeclined: known(false) })).toBe('fail');
  expect(surge({ overvoltageSerious: known(false) })).toBe('not-determined');
  expect(surge({ overvoltageSerious: known(true) }, {})).toBe('not-determined');
  expect(surge(undefined, { surgeProtection: known(true) })).toBe('pass');
});
test('arc detection: required, advised, not asked for', () => {
  const sockets = circuit({
    feeds: [{ kind: 'load', id: 'ring', purpose: 'socket-outlets', current: known(amperes(20)), lines: ['L1'] }],
  });
  const arc = (run: Run, kind?: 'multiple-occupation' | 'dwelling', fitted = false) =>
    judged(
      code,
      'arc-detection',
      caseOf(house([run]), 'ev', kind ? { premises: { kind: known(kind), arcDetection: known(fitted) } } : {}),
    ).map((r) => [r.verdict, r.weight]);
  expect(arc(sockets, 'multiple-occupation')).toEqual([['fail', 'rule']]);
  expect(arc(sockets, 'multiple-occupation', true)).toEqual([['pass', 'rule']]);
  expect(arc(sockets, 'dwelling')).toEqual([['fail', 'advice']]);
  expect(arc(sockets)).toEqual([['not-determined', 'rule']]);
  expect(arc(circuit(), 'multiple-occupation')).toEqual([['not-required', 'rule']]);
});
test('overload counts the circuits that the device serves, and no others', () => {
  const runs = [circuit(), circuit({ id: 'c1' }), circuit({ id: 'c2' })];
  const serving = (serves: readonly string[] | undefined) =>
    residualCurrent(
      caseOf(
        house(runs, {}, { residual: [device({ ratedCurrent: known(amperes(63)), ...(serves ? { serves } : {}) })] }),
        'ev',
      ),
    ).find((r) => r.check === 'residual-current-device-overload');
  expect(serving(['ev'])).toMatchObject({ verdict: 'pass', limit: { value: 32 } });
  expect(serving(['ev', 'c1'])).toMatchObject({ verdict: 'fail', limit: { value: 64 } });
  expect(serving(undefined)).toMatchObject({ verdict: 'fail', limit: { value: 96 } });
  expect(serving(['c1', 'c2'])).toBeUndefined();
  // nothing on the board, nothing to overload
  expect(judge([circuit()])['residual-current-device-overload']).toBeUndefined();
});
test('a board carries what is ahead and what feeds back, not what only draws', () => {
  const back = circuit({ residual: [device()], feeds: [point({ bidirectional: true })] });
  const others = [circuit({ id: 'c1' }), circuit({ id: 'c2' })];
  const found = residualCurrent(caseOf(house([back, ...others], {}, { rating: known(amperes(132)) }), 'ev')).find(
    (r) => r.check === 'board-rating',
  );
  expect(found).toMatchObject({ verdict: 'pass', limit: { value: 132 } });
});
test('type AC is left for heaters of water alone, BS 7671 531.3.3', () => {
  const behind = (purpose: Load['purpose'], asks?: 'AC') =>
    judge([
      circuit({
        residual: [device({ type: known('AC') })],
        feeds: [
          {
            kind: 'load',
            id: 'load',
            purpose,
            current: known(amperes(20)),
            lines: ['L1'],
            ...(asks ? { residualType: known(asks) } : {}),
          },
        ],
      }),
    ])['residual-current-type'];
  expect(behind('instantaneous-water-heating')).toBe('not-determined');
  expect(behind('instantaneous-water-heating', 'AC')).toBeUndefined();
  expect(behind('thermostatic-water-heating', 'AC')).toBeUndefined();
  expect(behind('cooking')).toBe('fail');
});
test('of three devices each is judged against the one above it', () => {
  const series = (middle: number) =>
    residualCurrent(
      caseOf(
        house(
          [
            circuit({
              residual: [device({ rating: known(milliamperes(middle)), delay: known('selective') }), device()],
            }),
          ],
          {},
          {
            residual: [
              device({
                position: 'origin-of-installation',
                rating: known(milliamperes(300)),
                delay: known('selective'),
              }),
            ],
          },
        ),
        'ev',
      ),
    )
      .filter((r) => r.check === 'residual-current-selectivity')
      .map((r) => r.verdict);
  expect(series(100)).toEqual(['pass', 'pass']);
  expect(series(150)).toEqual(['fail', 'pass']);
  expect(series(60)).toEqual(['pass', 'fail']);
});
test('of several devices one that suits protects, else that of the smallest rating; while one is not known nobody can say which', () => {
  const two = (a: Partial<ResidualDevice>, b: Partial<ResidualDevice>) =>
    judge([circuit({ residual: [device(a), device(b)], feeds: [point()] })]);
  expect(
    two({ rating: known(milliamperes(100)), type: known('B') }, { type: known('AC') })['residual-current-type'],
  ).toBe('fail');
  expect(two({ rating: unknown() }, {})['residual-current-type']).toBe('pass');
  expect(two({ type: known('AC') }, {})['residual-current-type']).toBe('pass');
  expect(two({ rating: unknown() }, { type: known('AC') })['residual-current-type']).toBe('not-determined');
  expect(two({ rating: unknown() }, { opensAllLive: known(false) })['residual-current-poles']).toBe('not-determined');
  expect(judge(one({ rating: unknown() }))['residual-current-type']).toBe('pass');
  const inside = [
    circuit({
      residual: [device({ rating: unknown() })],
      feeds: [point({ residual: device({ position: 'inside-equipment' }) })],
    }),
  ];
  expect(judge(inside)['residual-current-type']).toBe('pass');
});
test('smallest conductors, BS 7671 Table 52.3: 1 mm² for lighting, 1.5 mm² for power, 16 mm² of aluminium', () => {
  const limit = (run: Partial<Run>) =>
    judged(bs7671('2018+A2:2022'), 'minimum-size', caseOf(house([circuit(run)]), 'ev'))[0]?.limit?.value;
  const lamp: Load = { kind: 'load', id: 'lamps', purpose: 'lighting', current: known(amperes(6)), lines: ['L1'] };
  const { cable } = circuit();
  expect(limit({ feeds: [lamp] })).toBe(1);
  expect(limit({ feeds: [lamp, { ...lamp, id: 'sockets', purpose: 'socket-outlets' }] })).toBe(1.5);
  expect(limit({})).toBe(1.5);
  expect(limit({ feeds: [] })).toBe(1.5);
  expect(limit({ cable: { ...cable, material: 'aluminium' } })).toBe(16);
  expect(limit({ cable: { ...cable, construction: 'flexible' } })).toBe(0.75);
});
test('a cable concealed less than 50 mm deep needs the device itself, BS 7671 522.6.202', () => {
  const shallow = [{ ...circuit().stretches[0], concealedShallow: known(true) }] as Run['stretches'];
  const lamp: Load = { kind: 'load', id: 'lamps', purpose: 'lighting', current: known(amperes(6)), lines: ['L1'] };
  const check = 'residual-current-concealed-cable';
  expect(judge([circuit({ stretches: shallow, feeds: [lamp] })])[check]).toBe('not-determined');
  expect(judge([circuit({ feeds: [lamp] })])[check]).toBe('not-determined');
  const clipped = [{ ...circuit().stretches[0], concealedShallow: known(false) }] as Run['stretches'];
  expect(judge([circuit({ stretches: clipped, feeds: [lamp] })])[check]).toBeUndefined();
  const inside = { ...plain, feeds: [point({ residual: device({ position: 'inside-equipment' }) })] };
  expect(judge([circuit({ ...inside, stretches: shallow })])['residual-current-position']).toBe('fail');
  expect(judge([circuit({ ...inside, stretches: clipped })])['residual-current-position']).toBe('not-required');
  expect(judge([circuit(inside)])['residual-current-position']).toBe('not-determined');
  const open = [{ ...circuit().stretches[0], concealedShallow: unknown('open the wall') }] as Run['stretches'];
  expect(judge([circuit({ ...inside, stretches: open })])['residual-current-position']).toBe('not-determined');
});
test('a device of unknown rating may be the one that protects: that is neither a pass nor a fail', () => {
  const beside = (rating: ResidualDevice['rating']) =>
    judge([
      circuit({ residual: [device({ rating: known(milliamperes(100)) }), device({ rating })], feeds: [point()] }),
    ]);
  expect(beside(unknown())['residual-current-rating']).toBe('not-determined');
  expect(beside(known(milliamperes(100)))['residual-current-rating']).toBe('fail');
  expect(beside(known(milliamperes(30)))['residual-current-rating']).toBe('pass');
  // the only device is the one that protects, whatever its rating
  const alone = (type: 'A' | 'AC') =>
    judge([
      circuit({
        ...plain,
        feeds: [point({ residual: device({ position: 'inside-equipment', rating: unknown(), type: known(type) }) })],
      }),
    ])['residual-current-type'];
  expect(alone('A')).toBe('pass');
  expect(alone('AC')).toBe('fail');
});
test('one outlet that is no heater of water, or that feeds back, is enough', () => {
  const outlet = (purpose: Load['purpose']): Load => ({
    kind: 'load',
    id: purpose,
    purpose,
    current: known(amperes(10)),
    lines: ['L1'],
  });
  const mixed = circuit({
    residual: [device({ type: known('AC') })],
    feeds: [outlet('thermostatic-water-heating'), outlet('cooking')],
  });
  expect(judge([mixed])['residual-current-type']).toBe('fail');
  for (const source of ['generation', 'storage'] as const) {
    const back = circuit({ residual: [device()], feeds: [outlet('cooking'), outlet(source)] });
    expect(judge([back], {}, { rating: known(amperes(100)) })['board-rating']).toBe('fail');
  }
});
test('overload with ratings that are not known: only what is small enough decides', () => {
  const check = (cutOut: Supply['cutOut']['rating'], below: Run['device']['rating']) =>
    judge(
      [circuit({ device: { ...circuit().device, rating: below } })],
      { cutOut: { kind: known({ standard: 'BS 88-3' }), rating: cutOut } },
      { residual: [device({ ratedCurrent: known(amperes(63)) })] },
    )['residual-current-device-overload'];
  expect(check(unknown(), known(amperes(32)))).toBe('pass');
  expect(check(known(amperes(60)), unknown())).toBe('pass');
  expect(check(unknown(), known(amperes(80)))).toBe('not-determined');
  expect(check(known(amperes(100)), unknown())).toBe('not-determined');
  expect(check(known(amperes(100)), known(amperes(80)))).toBe('fail');
});
test('one device a point: its rating decides, and while that is open nobody can say', () => {
  const own = (rating: ResidualDevice['rating']) => judge(one({ rating }))['residual-current-one-per-point'];
  expect(own(known(milliamperes(30)))).toBe('pass');
  expect(own(known(milliamperes(100)))).toBe('fail');
  expect(own(unknown())).toBe('not-determined');
  const inside = (said: Partial<ResidualDevice>) =>
    judge([circuit({ feeds: [point({ residual: device({ position: 'inside-equipment', ...said }) })] })])[
      'residual-current-one-per-point'
    ];
  expect(inside({ pointsServed: 1 })).toBe('pass');
  expect(inside({ pointsServed: 2 })).toBe('fail');
  // one device inside may serve two sockets
  expect(inside({})).toBe('not-determined');
});
test('arc detection waits for the rating of the socket-outlets', () => {
  const feeds: Run['feeds'] = [
    {
      kind: 'load',
      id: 'ring',
      purpose: 'socket-outlets',
      current: known(amperes(20)),
      lines: ['L1'],
      socketRating: unknown('its marking'),
    },
  ];
  const premises = { premises: { kind: known('care-home' as const), arcDetection: known(false) } };
  const [result] = judged(code, 'arc-detection', caseOf(house([circuit({ feeds })]), 'ev', premises));
  expect(result?.verdict).toBe('not-determined');
  expect(result?.gaps).toMatchObject([{ obtain: 'look at the socket-outlets and the cooker unit' }]);
});

/** A ring that feeds boards along it. */
import { describe, expect, test } from 'vitest';
import { bs7671, bs7671Demand } from '../../src/codes/bs7671/index.js';
import { feederDemandOf } from '../../src/demand/feeder.js';
import { amperes, assess, type Board, between, isMissing, known, metres, squareMillimetres } from '../../src/index.js';
import { solveNetwork } from '../../src/physics/power/index.js';
import { chargePoint, circuit, house, stretch } from '../support/house.js';

const board = (id: string, at?: number, setting = 32): Board => ({
  kind: 'board',
  id,
  ...(at === undefined ? {} : { at: metres(at) }),
  complete: known(true),
  noResidual: known(true),
  runs: [
    circuit({ id: `ev of ${id}`, feeds: [{ ...chargePoint, id: `point of ${id}`, setting: known(amperes(setting)) }] }),
  ],
});
const installation = (feeds: readonly Board[], length = known(metres(40)), ring = true) =>
  house(
    [
      circuit({
        id: 'ring',
        ring,
        device: { ...circuit().device, rating: known(amperes(80)) },
        cable: { ...circuit().cable, area: known(squareMillimetres(16)) },
        stretches: [stretch({ length })],
        feeds,
      }),
    ],
    { prospectiveCurrent: known(amperes(9000)) },
  );
const figuresOf = (of: ReturnType<typeof installation>, run: string) =>
  assess(bs7671('2018+A2:2022'), of, run).results.map((r) => [
    r.check,
    r.verdict,
    JSON.stringify(r.value, (_, v) => (typeof v === 'number' ? +v.toPrecision(9) : v)),
  ]);

describe('a ring of boards', () => {
  test('is to a board what its two legs in parallel are', () => {
    // 10 m one way and 30 m the other: as 7.5 m of one cable
    for (const [at, way] of [
      [10, 7.5],
      [20, 10],
      [30, 7.5],
      [36, 3.6],
    ] as const) {
      const straight = installation([board('one', way), board('two', way)], known(metres(way)), false);
      expect(figuresOf(installation([board('one', at), board('two', 20)]), 'ev of one')).toEqual(
        figuresOf(straight, 'ev of one'),
      );
    }
  });
  test('of a length within a range lies between its ends', () => {
    const drop = (length: ReturnType<typeof known<ReturnType<typeof metres>>>) => {
      const found = assess(
        bs7671('2018+A2:2022'),
        installation([board('one', 10), board('two', 20)], length),
        'ev of one',
      );
      const along = found.figures?.dropAlong;
      return along === undefined || isMissing(along) ? along : (along.find((d) => d.run === 'ring')?.drop as number);
    };
    const [short, long] = [drop(known(metres(30))), drop(known(metres(60)))] as [number, number];
    expect(short).toBeLessThan(long);
    expect(JSON.stringify(drop(between(metres(30), metres(60)) as never))).toMatch(
      new RegExp(`within a range, ${short.toPrecision(3)}.* to ${long.toPrecision(3)}`),
    );
  });
  test('has legs that carry what the general network says', () => {
    const boards = [board('one', 10, 32), board('two', 30, 16)];
    const { legs } = feederDemandOf(bs7671Demand, installation(boards), 'ring', { premises: 'other' });
    const section = (name: string, from: string, to: string, length: number) => ({
      name,
      from,
      to,
      line: { resistance: length / 1000, reactance: 0 },
    });
    const { branches } = solveNetwork({
      sources: [{ node: 'origin', voltage: 1e6 }],
      branches: [
        section('first', 'origin', 'one', 10),
        section('middle', 'one', 'two', 20),
        section('second', 'two', 'origin', 10),
      ],
      stars: ['one', 'two'],
      loads: [
        { node: 'one', line: 0, load: { kind: 'current', current: 32, angle: 0 } },
        { node: 'two', line: 0, load: { kind: 'current', current: 16, angle: 0 } },
      ],
    });
    // 32 x 30/40 + 16 x 10/40 = 28 A, and 20 A the other way
    expect(legs).toEqual([expect.closeTo(28, 9), expect.closeTo(20, 9)]);
    expect(branches.map((b) => b.currents[0])).toEqual([
      expect.closeTo(28, 4),
      expect.closeTo(4, 4),
      expect.closeTo(20, 4),
    ]);
    const somewhere = installation([board('one'), board('two', 20)]);
    expect(() => feederDemandOf(bs7671Demand, somewhere, 'ring', { premises: 'other' })).toThrow(
      'a ring to a board of which nobody says where along it the board stands',
    );
  });
  test('has a device that a single leg bears: what one leg takes near the origin is nearly all', () => {
    const small = house([
      circuit({
        id: 'ring',
        ring: true,
        device: { ...circuit().device, rating: known(amperes(80)) },
        cable: { ...circuit().cable, area: known(squareMillimetres(10)) },
        stretches: [stretch({ length: known(metres(40)) })],
        feeds: [board('one', 1), board('two', 2)],
      }),
    ]);
    const verdict = (of: typeof small) =>
      assess(bs7671('2018+A2:2022'), of, 'ring').results.find((r) => r.check === 'tabulated-capacity')?.verdict;
    expect(verdict(small)).toBe('fail');
    expect(verdict(installation([board('one', 1), board('two', 2)]))).toBe('pass');
  });
});

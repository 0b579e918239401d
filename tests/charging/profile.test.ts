import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  asChargingProfile,
  type ChargingProfile,
  type ProfileQuestion,
  profileLimitAt,
  type Schedule,
} from '../../src/charging/index.js';
import { amperes, seconds, volts, wattHours, watts } from '../../src/index.js';

const network: ProfileQuestion['network'] = {
  nodes: [{ id: 'intake', limit: [amperes(63), amperes(63), amperes(63)] }],
  points: [
    { id: 'left', node: 'intake', lines: ['L1'], most: amperes(32) },
    { id: 'right', node: 'intake', lines: ['L1', 'L2', 'L3'], most: amperes(16) },
  ],
};
const question: ProfileQuestion = {
  network,
  midnight: '2026-11-30T00:00:00Z',
  unit: 'A',
  voltage: volts(230),
  fallback: amperes(6),
  mostPeriods: 50,
};
const scheduleOf = (point: string, stretches: readonly (readonly [number, number, number])[]): Schedule => ({
  sessions: [
    {
      id: 'van',
      point,
      stretches: stretches.map(([from, to, current]) => ({
        from: seconds(from),
        to: seconds(to),
        current: amperes(current),
      })),
      delivered: wattHours(0),
      shortfall: wattHours(0),
    },
  ],
  nodes: [],
  delivered: wattHours(0),
  shortfall: wattHours(0),
  peak: watts(0),
  notPromised: [],
});
const at = (second: number) => new Date(Date.parse(question.midnight) + second * 1000).toISOString();
const profile = (
  chargingProfilePurpose: ChargingProfile['chargingProfilePurpose'],
  stackLevel: number,
  limit: number,
  valid: Pick<ChargingProfile, 'validFrom' | 'validTo'> = {},
): ChargingProfile => ({
  chargingProfileId: 1,
  stackLevel,
  chargingProfilePurpose,
  chargingProfileKind: 'Relative',
  ...valid,
  chargingSchedule: { chargingRateUnit: 'A', chargingSchedulePeriod: [{ startPeriod: 0, limit }] },
});

describe('which profile holds', () => {
  // worked by the rules of the specification, 3.13.1 and 3.13.2
  const stack = [
    profile('TxDefaultProfile', 0, 16),
    profile('TxDefaultProfile', 2, 10, { validFrom: '2026-01-01T00:00:00Z', validTo: '2026-01-02T00:00:00Z' }),
    profile('TxProfile', 0, 13),
  ];
  test('that of the transaction before every default, whatever its level', () =>
    expect(profileLimitAt(stack, '2026-01-01T12:00:00Z', '2026-01-01T11:00:00Z')).toBe(13));
  test('the highest level that is valid', () => {
    expect(profileLimitAt(stack, '2026-01-01T12:00:00Z')).toBe(10);
    expect(profileLimitAt(stack, '2026-01-03T12:00:00Z')).toBe(16);
  });
  test('never above that of the charge point, and no limit where there is no profile', () => {
    expect(profileLimitAt([...stack, profile('ChargePointMaxProfile', 0, 8)], '2026-01-03T12:00:00Z')).toBe(8);
    expect(profileLimitAt([], '2026-01-03T12:00:00Z')).toBeUndefined();
  });
  test('different units are refused', () => {
    const [first] = stack as [ChargingProfile];
    const inWatts = { ...first, chargingSchedule: { ...first.chargingSchedule, chargingRateUnit: 'W' as const } };
    expect(() => profileLimitAt([first, inWatts], '2026-01-03T12:00:00Z')).toThrow('different units');
  });
});

describe('a schedule as profiles', () => {
  test('pauses are limits of nothing, the plan is valid for its time, the fall-back for every other', () => {
    const schedule = scheduleOf('right', [
      [3600, 7200, 16],
      [9000, 10_800, 10.27],
    ]);
    const [left, right] = asChargingProfile(schedule, question);
    expect(left?.planned).toEqual([]);
    expect(right?.planned[0]).toMatchObject({
      stackLevel: 1,
      validFrom: '2026-11-30T01:00:00.000Z',
      validTo: '2026-11-30T03:00:00.000Z',
      chargingSchedule: {
        duration: 7200,
        chargingSchedulePeriod: [
          { startPeriod: 0, limit: 16, numberPhases: 3 },
          { startPeriod: 3600, limit: 0, numberPhases: 3 },
          { startPeriod: 5400, limit: 10.2, numberPhases: 3 },
        ],
      },
    });
    const held = [right?.fallback as ChargingProfile, ...(right?.planned ?? [])];
    expect([0, 3600, 7199, 7200, 9000, 10_800].map((s) => profileLimitAt(held, at(s)))).toEqual([
      6, 16, 16, 0, 10.2, 6,
    ]);
  });
  test('a cap at the largest current of the point holds whatever else it is told', () => {
    const [left, right] = asChargingProfile(scheduleOf('right', [[0, 60, 16]]), question);
    for (const [point, found] of [
      ['left', left],
      ['right', right],
    ] as const) {
      const { most } = question.network.points.find((p) => p.id === point)!;
      const told = {
        ...(found!.fallback as ChargingProfile),
        stackLevel: 9,
        chargingSchedule: {
          ...found!.fallback.chargingSchedule,
          chargingSchedulePeriod: [{ startPeriod: 0, limit: 500 }],
        },
      };
      expect(profileLimitAt([found!.cap, told], at(0))).toBe(most);
    }
    const ids = [left, right].flatMap((p) => [p!.fallback, p!.cap, ...p!.planned].map((q) => q.chargingProfileId));
    expect(new Set(ids).size).toBe(ids.length);
  });
  test('fall-backs that exceed a limit together are refused, those that fill it are not', () => {
    const points = ['a', 'b', 'c'].map((id) => ({ id, node: 'intake', lines: ['L1'], most: amperes(32) }) as const);
    const network = (limit: number) => ({
      nodes: [{ id: 'intake', limit: [amperes(limit), amperes(0), amperes(0)] as const }],
      points,
    });
    const with1 = (limit: number) => asChargingProfile(scheduleOf('a', []), { ...question, network: network(limit) });
    expect(with1(18)).toHaveLength(3);
    expect(() => with1(17)).toThrow(/fallback[\s\S]*18 A/);
  });
  test('in watts of all lines together: 16 A x 230 V x 3', () => {
    const [, right] = asChargingProfile(scheduleOf('right', [[0, 60, 16]]), { ...question, unit: 'W' });
    expect(right?.planned[0]?.chargingSchedule.chargingSchedulePeriod[0]?.limit).toBe(11_040);
    expect(right?.fallback.chargingSchedule.chargingSchedulePeriod[0]?.limit).toBe(4140);
  });
  test('more periods than the points take are refused', () => {
    const schedule = scheduleOf('left', [
      [0, 60, 16],
      [60, 120, 10],
    ]);
    expect(() => asChargingProfile(schedule, { ...question, mostPeriods: 1 })).toThrow('needs 2 periods');
  });
  test('wrong questions name all that is wrong', () => {
    const wrong = { ...question, midnight: 'yesterday', unit: 'kW' as 'A', mostPeriods: 0 };
    expect(() => asChargingProfile(scheduleOf('left', []), wrong)).toThrow(/midnight[\s\S]*unit[\s\S]*mostPeriods/);
  });
  test('no instant has more than the schedule gives, and little is lost', () => {
    const piece = fc.tuple(fc.double({ min: 0.1, max: 900, noNaN: true }), fc.double({ min: 6, max: 32, noNaN: true }));
    fc.assert(
      fc.property(fc.array(fc.tuple(piece, fc.boolean()), { minLength: 1, maxLength: 12 }), (pieces) => {
        const stretches: [number, number, number][] = [];
        let now = 1000.37;
        for (const [[length, current], charging] of pieces) {
          if (charging) stretches.push([now, now + length, current]);
          now += length;
        }
        const [left] = asChargingProfile(scheduleOf('left', stretches), question);
        const held = left?.planned ?? [];
        const given = (s: number) => stretches.find(([from, to]) => from <= s && s < to)?.[2] ?? 0;
        let lost = 0;
        for (let s = 990; s < now + 10; s += 0.25) {
          const limit = profileLimitAt(held, at(s)) ?? 0;
          expect(limit).toBeLessThanOrEqual(given(s) + 1e-9);
          lost += (given(s) - limit) * 0.25;
        }
        // a tenth of an ampere all the time, and two seconds of 32 A at either end of each stretch
        expect(lost).toBeLessThanOrEqual(0.1 * (now - 990) + stretches.length * 2 * 64);
      }),
      { numRuns: 40 },
    );
  });
});

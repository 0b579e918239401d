/** Ways side by side to one board, each with a device of its own. */
import { describe, expect, test } from 'vitest';
import { bs7671, bs7671Demand } from '../../src/codes/bs7671/index.js';
import { feederDemandOf } from '../../src/demand/feeder.js';
import {
  amperes,
  assess,
  type Board,
  isMissing,
  known,
  type Line,
  metres,
  ohms,
  type Run,
  squareMillimetres,
  unknown,
} from '../../src/index.js';
import { solveNetwork } from '../../src/physics/power/index.js';
import { circuit, house, load, stretch } from '../support/house.js';

const code = bs7671('2018+A2:2022');
const all: readonly Line[] = ['L1', 'L2', 'L3'];
const seen = 'seen at the survey';
const fuse = (rating: number): Run['device'] => ({
  kind: known({ standard: 'BS 88-2' }, seen),
  rating: known(amperes(rating), seen),
  breakingCapacity: known(amperes(80_000), seen),
  groupingFactor: known(1, seen),
});
const cable: Run['cable'] = {
  construction: 'multicore',
  material: 'copper',
  insulation: 'thermosetting-90',
  cores: 5,
  area: known(squareMillimetres(70), seen),
  protective: 'core',
};
const board = (current: number): Board => ({
  kind: 'board',
  id: 'far board',
  mainSwitch: {
    rating: known(amperes(400), seen),
    overloadDeclared: known(true, seen),
    noFuseAhead: known(true, seen),
  },
  complete: known(true, seen),
  noResidual: known(true, seen),
  runs: [
    circuit({
      id: 'press',
      lines: all,
      device: fuse(current),
      cable: { ...cable, area: known(squareMillimetres(95), seen) },
      feeds: [load(current, { id: 'press', lines: all })],
    }),
  ],
});
const route = (length: number) => [stretch({ length: known(metres(length), seen), method: known('E', seen) })];
/** Cables of 70 mm² with a core as protective conductor to one board, each behind a fuse of its own. */
const feeders = (lengths: readonly number[], ratings: readonly number[], current: number): Run => {
  const [first = 0, ...others] = lengths;
  return circuit({
    id: 'feeder 1',
    lines: all,
    device: fuse(ratings[0] ?? 0),
    cable,
    stretches: route(first),
    beside: others.map((length, i) => ({
      id: `feeder ${i + 2}`,
      device: fuse(ratings[i + 1] ?? 0),
      stretches: route(length),
    })),
    feeds: [board(current)],
  });
};
const installation = (run: Run, impedance = 0.1) =>
  house([run], {
    system: known('TN-S', seen),
    phases: known(3, seen),
    externalImpedance: known(ohms(impedance), seen),
    prospectiveCurrent: known(amperes(230 / impedance), seen),
    cutOut: { kind: known({ standard: 'BS 88-2' }, seen), rating: known(amperes(315), seen) },
  });
const resultsOf = (run: Run, impedance?: number) => assess(code, installation(run, impedance), 'feeder 1').results;
const found = (run: Run, check: string, impedance?: number) => resultsOf(run, impedance).find((r) => r.check === check);

describe('two ways side by side', () => {
  // 60 m and 90 m: 90/150 and 60/150 of 200 A
  test('share by the inverse of their lengths', () => {
    const carries = (ratings: readonly number[]) => found(feeders([60, 90], ratings, 200), 'device-carries-load');
    expect(carries([125, 80])).toMatchObject({ verdict: 'pass', because: expect.stringContaining('feeder 2') });
    expect(carries([125, 80])?.limit?.value ?? carries([125, 80])?.value?.value).toBeCloseTo(80, 9);
    expect(carries([100, 160])).toMatchObject({ verdict: 'fail', because: expect.stringContaining('feeder 1') });
    expect(carries([160, 63])).toMatchObject({ verdict: 'fail', because: expect.stringContaining('feeder 2') });
  });
  test('share as the general network has it', () => {
    const { branches } = solveNetwork({
      sources: [{ node: 'origin', voltage: 1e6 }],
      branches: [60, 90].map((length, i) => ({
        name: `feeder ${i + 1}`,
        from: 'origin',
        to: 'far board',
        line: { resistance: length * 3e-4, reactance: length * 8e-5 },
      })),
      stars: ['far board'],
      loads: [{ node: 'far board', line: 0, load: { kind: 'current', current: 200, angle: 0 } }],
    });
    expect(branches.map((b) => b.currents[0])).toEqual([expect.closeTo(120, 3), expect.closeTo(80, 3)]);
  });
  test('are together what 36 m of one are, for the board that they feed', () => {
    // 60 x 90/150
    const { beside: _, ...one } = feeders([36, 36], [200, 200], 63);
    const behind = (run: Run) => assess(code, installation(run), 'press').figures;
    expect(behind(feeders([60, 90], [160, 160], 63)).loopImpedance).toBeCloseTo(Number(behind(one).loopImpedance), 12);
    expect(behind(feeders([60, 90], [160, 160], 63)).totalDrop).toBeCloseTo(Number(behind(one).totalDrop), 12);
  });
  test('carry together what lets the first device reach its rating', () => {
    // 160 A x 150/90 by the short one, 160 A x 150/60 by the long one
    const limit = (ratings: readonly number[]) =>
      feederDemandOf(bs7671Demand, installation(feeders([60, 90], ratings, 100)), 'feeder 1', { premises: 'other' })
        .limit;
    expect(limit([160, 160])).toBeCloseTo(266.667, 3);
    expect(limit([160, 100])).toBeCloseTo(250, 9);
  });
  /** Loop impedance of one way alone behind an impedance, Ω. */
  const alone = (length: number, ze: number) => {
    const { beside: _, ...run } = feeders([length], [160], 63);
    const of = installation(run);
    const supply = { ...of.supply, externalImpedance: known(ohms(ze), seen) };
    return Number(assess(code, { ...of, supply }, 'feeder 1').figures.loopImpedance);
  };
  const valuesOf = (run: Run, impedance?: number) => {
    const off = found(run, 'automatic-disconnection', impedance);
    return [off, ...(off?.alternatives ?? [])].flatMap((r) => [r?.value?.value ?? 0, r?.limit?.value ?? 0]);
  };
  test('each device sees its share of a fault at the far board', () => {
    // I_1 = 0.6 U/(Z_e + z 36 m), so that device 1 sees U/I_1 = Z_e/0.6 + z 60 m; device 2 sees Z_e/0.4 + z 90 m
    const run = feeders([60, 90], [160, 160], 63);
    expect(valuesOf(run)).toContainEqual(expect.closeTo(alone(90, 0.1 / 0.4), 9));
    expect(found(run, 'automatic-disconnection')?.because).toContain('feeder 2, fault at the far board');
  });
  test('one device clears alone a fault in the other way, there and back', () => {
    // resistances of line and protective conductor alike; a fault after x m of the long way, whose device has opened:
    // there by 20 m and back by 200 m - x, the protective conductors of both in parallel
    const loop = (x: number) => 220 - x + (x * (220 - x)) / 220;
    expect(Math.max(...Array.from({ length: 2001 }, (_, i) => loop(i / 10)))).toBeCloseTo(2 * 110, 9);
    const run = feeders([20, 200], [200, 63], 63);
    expect(valuesOf(run, 0.02)).toContainEqual(expect.closeTo(alone(110, 0.02), 9));
    expect(found(run, 'automatic-disconnection', 0.02)?.because).toContain('feeder 1, fault in feeder 2');
  });
  test('of a length that nobody knows share in a way that nobody knows', () => {
    const run = feeders([60, 90], [160, 160], 100);
    const open = { ...run, stretches: [stretch({ length: unknown('tape') })] };
    expect(found(open, 'automatic-disconnection')?.verdict).toBe('not-determined');
    expect(assess(code, installation(open), 'feeder 1').overall.verdict).not.toBe('pass');
    const { limit } = feederDemandOf(bs7671Demand, installation(open), 'feeder 1', { premises: 'other' });
    expect(isMissing(limit)).toBe(true);
  });
  test('with residual current devices of their own are refused', () => {
    const run = feeders([60, 60], [160, 160], 100);
    const kind = known({ standard: 'EN 61009', type: 'B' } as const, seen);
    expect(() => resultsOf({ ...run, device: { ...run.device, kind } })).toThrow('neutrals do not share as lines do');
    expect(() => resultsOf({ ...run, ring: true })).toThrow('a ring beside which other ways run');
    expect(() => resultsOf({ ...run, feeds: [...run.feeds, load(5)] })).toThrow('anything but one board at their end');
  });
});

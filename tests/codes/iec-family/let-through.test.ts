import { describe, expect, test } from 'vitest';
import { Span } from '../../../src/calculation/index.js';
import { bs7671 } from '../../../src/codes/bs7671/index.js';
import type { AssessmentOptions } from '../../../src/codes/wiring-code.js';
import {
  amperes,
  between,
  celsius,
  isMissing,
  known,
  milliamperes,
  type OvercurrentDevice,
  ohms,
  type ResidualDevice,
  seconds,
  squareMillimetres,
  unknown,
} from '../../../src/index.js';
import { figures } from '../../support/figures.js';
import { caseOf, circuit, house } from '../../support/house.js';
import { judged } from '../../support/judged.js';

/** What a device lets through in a fault of a line conductor at the origin, where the prospective current flows. */
function ask(device: OvercurrentDevice, current: number, options: AssessmentOptions = {}) {
  const place = caseOf(house([circuit({ device })], { prospectiveCurrent: known(amperes(current)) }), 'ev', options);
  const of = (name: string) => figures(place, `faults/${name}`)[0];
  return { energy: of('letThrough'), bound: of('energyIsBound'), because: of('energyRests') };
}
/** The same in an earth fault at the origin, at 1.1 times the voltage over the declared impedance. */
function askEarth(
  device: OvercurrentDevice,
  current: number,
  largest: number,
  residual: readonly ResidualDevice[] = [],
) {
  const supply = { prospectiveCurrent: known(amperes(largest)), externalImpedance: known(ohms((1.1 * 230) / current)) };
  return figures(caseOf(house([circuit({ device, residual })], supply), 'ev'), 'faults/letThrough')[2];
}
const breaker = (
  type: 'B' | 'C' | 'D',
  rating: number,
  change: Partial<OvercurrentDevice> = {},
): OvercurrentDevice => ({
  kind: known({ standard: 'EN 60898', type }),
  rating: known(amperes(rating)),
  breakingCapacity: known(amperes(6000)),
  ...change,
});
const fuse = (standard: 'BS 88-3' | 'BS 3036', rating: number): OvercurrentDevice => ({
  kind: known({ standard }),
  rating: known(amperes(rating)),
});
// m of IEC 60909-0 for κ 1.8 over 0.1 s at 50 Hz
const decay = 5 * Math.log(0.8);
const bound = (i: number) => i * i * 0.1 * (1 + Math.expm1(4 * decay) / (2 * decay));

describe('energy that a circuit-breaker lets through', () => {
  const three = { energyClass: known(3) } as const;
  test('by the marked class, or the bound for 0.1 s where that is less', () => {
    expect(ask(breaker('B', 32, three), 3000)).toMatchObject({ energy: 45000, bound: true });
    expect(ask(breaker('B', 32, three), 3000).because).toMatch(/class 3.*memory \(grade C\)/);
    const low = ask(breaker('B', 32, three), 200);
    expect(low.energy).toBeCloseTo(bound(200), 6);
    expect(low.because).toMatch(/0.1 s/);
  });
  test('class 2 has to be accepted, class 1 and an unmarked one have no limit, type D and an unknown capacity no row', () => {
    const two = breaker('B', 32, { energyClass: known(2) });
    expect(ask(two, 3000).energy).toBeCloseTo(bound(3000), 3);
    expect(ask(two, 3000, { acceptMemoryFigures: true }).energy).toBe(130000);
    for (const device of [
      breaker('B', 32, { energyClass: known(1) }),
      breaker('B', 32),
      breaker('B', 32, { energyClass: unknown() }),
      breaker('D', 32, three),
      breaker('B', 32, { ...three, breakingCapacity: unknown() }),
      breaker('B', 63, three),
    ])
      expect(ask(device, 3000).energy).toBeCloseTo(bound(3000), 3);
    expect(ask(breaker('B', 32, three), 7000).energy).toBeCloseTo(bound(7000), 3); // above its capacity
  });
  test('the prospective current guards the bound where the impedance is only declared', () => {
    expect(askEarth(breaker('D', 32), 700, 1000)).toBeCloseTo(bound(1000), 6);
    // the limits of a class hold up to the marked capacity only, 6 kA here
    const of = (largest: number) => askEarth(breaker('B', 32, three), 722, largest);
    expect(of(6000)).toBe(45000);
    expect(of(16000)).toBeCloseTo(bound(16000), 3);
  });
  test('below the instantaneous trip nothing is known, unless a residual current device clears the fault', () => {
    expect(isMissing(ask(breaker('C', 32), 300).energy)).toBe(true);
    const residual = (delay: 'general' | 'selective'): ResidualDevice => ({
      position: 'origin-of-circuit',
      type: known('A'),
      rating: known(milliamperes(100)),
      delay: known(delay),
      delayTime: known(seconds(0)),
    });
    expect(askEarth(breaker('C', 32), 300, 300, [residual('general')])).toBeCloseTo(300 ** 2 * 0.04, 9);
    expect(askEarth(breaker('C', 32), 300, 300, [residual('selective')])).toBeCloseTo(300 ** 2 * 0.15, 9);
    expect(isMissing(askEarth(breaker('C', 32), 0.4, 300, [residual('general')]))).toBe(true);
    const { delay: _, ...unstated } = residual('general');
    expect(askEarth(breaker('C', 32), 300, 300, [unstated])).toBeCloseTo(300 ** 2 * 0.15, 9);
  });
  test('an old breaker has no class', () => {
    const old: OvercurrentDevice = { kind: known({ standard: 'BS 3871', type: '2' }), rating: known(amperes(30)) };
    expect(ask(old, 500).energy).toBeCloseTo(bound(500), 6);
  });
});

describe('energy at a current that is known within a range', () => {
  const over = (device: OvercurrentDevice, least: number, most: number, residual: readonly ResidualDevice[] = []) => {
    const current = (i: number) => ohms((1.1 * 230) / i);
    const supply = {
      externalImpedance: between(current(most), current(least)),
      prospectiveCurrent: known(amperes(least)),
    };
    return figures(caseOf(house([circuit({ device, residual })], supply), 'ev'), 'faults/letThrough')[2];
  };
  const selective: ResidualDevice = {
    position: 'origin-of-circuit',
    type: known('A'),
    rating: known(milliamperes(100)),
    delay: known('selective'),
    delayTime: known(seconds(0)),
  };
  test('is that of both sides where the circuit-breaker takes over from the residual current device, at 320 A', () => {
    const energy = over(breaker('C', 32), 300, 322, [selective]) as Span;
    expect(energy.least).toBeCloseTo(300 ** 2 * 0.15, 6);
    expect(energy.most).toBeCloseTo(320 ** 2 * 0.15, 6);
    expect(energy.most).toBeGreaterThan(bound(322));
    expect(over(breaker('C', 32), 320, 330, [selective])).toEqual(new Span(bound(320), bound(330)));
  });
  test('is not known where a part of it trips nothing at once', () => {
    expect(isMissing(over(breaker('C', 32), 300, 322))).toBe(true);
    expect(isMissing(over(fuse('BS 88-3', 32), 120, 200))).toBe(true);
  });
  test('is that of the class up to the marked capacity, beyond it the bound alone', () => {
    const energy = over(breaker('B', 32, { energyClass: known(3) }), 5900, 6100) as Span;
    expect(energy.least).toBe(45000);
    expect(energy.most).toBeCloseTo(bound(6100), 3);
  });
  test('falls along the curve of a fuse to its last point', () => {
    const energy = over(fuse('BS 88-3', 32), 140.2, 400) as Span;
    expect(energy.most).toBeCloseTo(140.2 ** 2 * 5, 6);
    expect(energy.least).toBeCloseTo(239.6 ** 2 * 0.4, 6);
  });
});

describe('energy that a fuse lets through', () => {
  const thirtyTwo = fuse('BS 88-3', 32); // 140.2 A in 5 s, 239.6 A in 0.4 s
  test('by its curve between the points, its last point beyond, nothing below', () => {
    expect(ask(thirtyTwo, 140.2).energy).toBeCloseTo(140.2 ** 2 * 5, 6);
    const middle = ask(thirtyTwo, 180).energy as number;
    expect(middle).toBeLessThan(140.2 ** 2 * 5);
    expect(middle).toBeGreaterThan(239.6 ** 2 * 0.4);
    expect(ask(thirtyTwo, 2000)).toMatchObject({ bound: true, energy: expect.closeTo(239.6 ** 2 * 0.4, 6) });
    expect(isMissing(ask(thirtyTwo, 100).energy)).toBe(true);
  });
  test('a rating without a figure for 0.4 s keeps that for 5 s; one that is not printed has none', () => {
    expect(ask(fuse('BS 88-3', 63), 2000).energy).toBeCloseTo(319.4 ** 2 * 5, 6);
    expect(isMissing(ask(fuse('BS 3036', 40), 2000).energy)).toBe(true);
  });
  test('an unknown kind is a reason', () => {
    expect(isMissing(ask({ kind: unknown(), rating: known(amperes(32)) }, 500).energy)).toBe(true);
  });
});

describe('withstand of other cables', () => {
  const judge = (change: object, supply: object = {}, options: AssessmentOptions = {}) => {
    const installation = house([circuit(change)], supply);
    const own = caseOf(installation, 'ev', options);
    return (['disconnection', 'line-withstand', 'protective-conductor'] as const).flatMap((group) =>
      judged(bs7671('2018+A2:2022'), group, own),
    );
  };
  const verdict = (results: ReturnType<typeof judge>, id: string) => results.find((r) => r.check === id)?.verdict;

  test('a rewirable fuse is judged by the adiabatic equation, not by 435.1', () => {
    const device = { ...fuse('BS 3036', 30), breakingCapacity: known(amperes(4000)) };
    const results = judge({ device, existing: true });
    const first = results.find((r) => r.check === 'line-withstand')?.alternatives?.[0];
    expect(first?.verdict).toBe('not-required');
    expect(verdict(results, 'protective-conductor')).toBe('pass');
  });
  test('k by conductor, insulation and option: copper, aluminium, thermosetting, large, armour', () => {
    const k = (cable: object, of: 'line' | 'protective' | 'armour', options: AssessmentOptions = {}) => {
      const own = caseOf(house([circuit({ cable: { ...circuit().cable, ...cable } })]), 'ev', options);
      return Math.round(figures(own, `cables/${of}Factor`)[0] as number);
    };
    expect(k({}, 'line')).toBe(115);
    expect(k({ material: 'aluminium' }, 'line')).toBe(76);
    expect(k({ insulation: 'thermosetting-90' }, 'line')).toBe(143);
    expect(k({ insulation: 'thermosetting-60' }, 'line')).toBe(141);
    expect(k({ area: known(squareMillimetres(400)) }, 'line')).toBe(103);
    expect(k({ protectiveMaterial: 'aluminium' }, 'protective')).toBe(76);
    expect(k({ insulation: 'thermosetting-90' }, 'protective')).toBe(143);
    expect(k({ insulation: 'thermosetting-90' }, 'armour')).toBe(46);
    expect(k({}, 'armour')).toBe(51);
    expect(k({}, 'line', { initialTemperature: celsius(30) })).toBe(143); // the real load counted
  });
  test('without a protective conductor the question is put', () => {
    const results = judge({ cable: { ...circuit().cable, protective: 'none' } });
    expect(verdict(results, 'protective-conductor')).toBe('not-determined');
    expect(verdict(results, 'automatic-disconnection')).toBe('not-determined');
  });
  test('on TT the smallest line-neutral current comes from the prospective current', () => {
    const tt = { system: known('TT'), externalImpedance: unknown(), electrode: { resistance: known(ohms(90)) } };
    expect(verdict(judge({}, tt), 'line-neutral-fault-clears')).toBe('pass');
    expect(verdict(judge({}, { ...tt, prospectiveCurrent: unknown() }), 'line-neutral-fault-clears')).toBe(
      'not-determined',
    );
  });
  test('above 35 mm² the reactance counts', () => {
    const big = circuit({
      cable: { ...circuit().cable, construction: 'multicore', protective: 'core', area: known(squareMillimetres(50)) },
    });
    const at = caseOf(house([big]), 'ev', { testTemperature: celsius(20) });
    const code = bs7671('2018+A2:2022');
    const z = code.runFigures(code.calculator.of(at), at.run, 'test').impedance as number;
    expect(z).toBeCloseTo(20 * Math.hypot(2 * 0.387e-3, 0.16e-3), 12);
  });
  test('an unknown or IT system is not guessed', () => {
    expect(verdict(judge({}, { system: unknown() }), 'automatic-disconnection')).toBe('not-determined');
    expect(verdict(judge({}, { system: known('IT') }), 'automatic-disconnection')).toBe('not-determined');
  });
});

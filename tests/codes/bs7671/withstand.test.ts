import { describe, expect, test } from 'vitest';
import { bs7671 } from '../../../src/codes/bs7671/index.js';
import type { AssessmentOptions } from '../../../src/codes/wiring-code.js';
import {
  type Amperes,
  amperes,
  between,
  type CheckResult,
  type Fact,
  type Installation,
  known,
  milliohmsPerMetre,
  overall,
  recorder,
  squareMillimetres,
  unknown,
  writeSheet,
} from '../../../src/index.js';
import { caseOf, circuit, house } from '../../support/house.js';
import { figuresOf, judged } from '../../support/judged.js';

const code = bs7671('2018+A2:2022');

function judgeAll(installation: Installation = house([circuit()]), options: AssessmentOptions = {}) {
  const c = caseOf(installation, 'ev', options);
  const out: Record<string, CheckResult> = {};
  for (const group of ['disconnection', 'line-withstand', 'protective-conductor', 'breaking-capacity'] as const)
    for (const r of judged(code, group, c)) out[r.check] = r;
  return { out, figures: figuresOf(code, c) };
}
const breaker = (capacity: number, rating = 32) => ({
  kind: known({ standard: 'EN 61009', type: 'B' } as const),
  rating: known(amperes(rating)),
  breakingCapacity: known(amperes(capacity)),
});

describe('thermal withstand', () => {
  test('ordinary 6 mm² flat cable behind a 6 kA breaker is determinable, and says that it rests on class 3 from memory', () => {
    const { out, figures } = judgeAll();
    const result = out['protective-conductor']!;
    expect(result.verdict).toBe('pass');
    // 18000 A²s of class 3 at 3 kA, k 115.0: 1.167 mm² against 2.5
    expect(result.alternatives?.[1]?.verdict).toBe('fail'); // Table 54.7 asks for 6 mm²
    expect(figures.protectiveArea).toBe(2.5);
    expect(out['line-withstand']!.verdict).toBe('pass');
    expect(out['line-withstand']!.alternatives?.[0]?.check).toBe('line-conductor-behind-overload-device');
  });

  test('the near end rests on class 3, with its grade', () => {
    const sheet = recorder('Protective conductor');
    const c = caseOf(house([circuit()]), 'ev');
    judged(code, 'protective-conductor', c, sheet);
    const text = JSON.stringify(writeSheet(sheet));
    expect(text).toMatch(
      /energy limiting class 3 of EN 60898-1 at 3 kA, by the fault level, On-Site Guide Table B7, a figure from memory \(grade C\)/,
    );
  });

  test('a bound that is more than the conductor withstands condemns nothing: the maker is asked', () => {
    const small = circuit({ cable: { ...circuit().cable, protectiveArea: known(squareMillimetres(1.5)) } });
    const near = house([small], { prospectiveCurrent: known(amperes(4000)) });
    const { out } = judgeAll(near);
    expect(out['protective-conductor']!.verdict).toBe('not-determined');
    expect(JSON.stringify(out['protective-conductor'])).toMatch(/from its maker/);
    expect(judgeAll(near, { makersLetThrough: 12000 }).out['protective-conductor']!.verdict).toBe('pass');
    expect(judgeAll(near, { makersLetThrough: 45000 }).out['protective-conductor']!.verdict).toBe('fail');
  });

  test('up to 3 kA class 3 asks for 1.5 mm², as the guide has it; above, or without a class, nothing says so', () => {
    // On-Site Guide Table B7, from memory: 1.5 mm² at 3 kA and 2.5 mm² at 6 kA behind 32 A, type B; the adiabatic
    // equation with the limits of class 3 gives 1.17 and 1.84 mm²
    const of = (energyClass: 1 | 3, current: Fact<Amperes>, area: number) => {
      const device = { ...breaker(6000), energyClass: known(energyClass) };
      const cable = { ...circuit().cable, protectiveArea: known(squareMillimetres(area)) };
      const installation = house([circuit({ device, cable })], { prospectiveCurrent: current });
      return judgeAll(installation).out['protective-conductor']!.verdict;
    };
    const at = (current: number) => known(amperes(current));
    expect(of(3, at(2900), 1.5)).toBe('pass');
    expect(of(3, at(3000), 1.5)).toBe('pass');
    expect(of(3, at(3001), 1.5)).toBe('not-determined');
    expect(of(3, at(3001), 2.5)).toBe('pass');
    expect(of(1, at(2900), 1.5)).toBe('not-determined');
    expect(of(3, unknown('measured on site'), 1.5)).toBe('not-determined');
    expect(of(3, between(amperes(900), amperes(2900)), 1.5)).toBe('pass');
    expect(of(3, between(amperes(900), amperes(5000)), 1.5)).toBe('not-determined');
    // the equation asks for more than the guide's 1.0 mm² behind 16 A
    expect(of(3, at(2900), 1)).toBe('not-determined');
  });

  test('armour as protective conductor: recalled figures have to be accepted, a maker can be quoted instead', () => {
    const cable = {
      construction: 'armoured',
      material: 'copper',
      insulation: 'thermosetting-90',
      cores: 3,
      area: known(squareMillimetres(10)),
      protective: 'armour',
    } as const;
    const verdict = (change: object, options: AssessmentOptions = {}) => {
      const { out } = judgeAll(house([circuit({ cable: { ...cable, ...change } })]), options);
      return [out['automatic-disconnection']!.verdict, out['protective-conductor']!.verdict];
    };
    expect(verdict({})).toEqual(['not-determined', 'not-determined']);
    expect(verdict({}, { acceptMemoryFigures: true })).toEqual(['pass', 'pass']);
    const quoted = { protectiveImpedance: known(milliohmsPerMetre(4)), protectiveArea: known(squareMillimetres(39)) };
    expect(verdict(quoted)).toEqual(['pass', 'pass']);
    expect(verdict({ cores: 2, area: known(squareMillimetres(6)) })).toEqual(['pass', 'pass']);
    const conduit = { construction: 'single-core', cores: 2, protective: 'conduit' };
    expect(verdict(conduit)[0]).toBe('not-determined');
    expect(verdict({ ...conduit, protectiveImpedance: known(milliohmsPerMetre(5)) })[0]).toBe('pass');
  });

  test('the verdict shows the end of the circuit that is closer to its limit', () => {
    // near end: 45000 A²s of class 3; far end, where less than 3 kA flows, 18000 A²s
    const high = house([circuit()], { prospectiveCurrent: known(amperes(4000)) });
    const near = judgeAll(high).out['protective-conductor']!.alternatives?.[0];
    expect(near?.limit?.value).toBeCloseTo(Math.sqrt(45000) / 115, 2);
  });

  test('435.1 says nothing of a breaker that does not limit its energy', () => {
    const of = (energyClass: 1 | 3, area: number, current: number) => {
      const device = { ...breaker(6000), energyClass: known(energyClass) };
      const cable = { ...circuit().cable, area: known(squareMillimetres(area)) };
      const high = { prospectiveCurrent: known(amperes(current)) };
      return judgeAll(house([circuit({ device, cable })], high)).out['line-withstand']!;
    };
    expect(of(3, 6, 6000).alternatives?.[0]?.verdict).toBe('pass');
    expect(of(1, 6, 1200).alternatives?.[0]?.verdict).toBe('not-required');
    expect(of(1, 6, 1200).verdict).toBe('pass'); // 476 kA²s against 208 kA²s for 0.1 s
    expect(of(1, 2.5, 6000).verdict).toBe('not-determined');
  });

  test('class 2 is a recalled figure: it has to be accepted', () => {
    const device = { ...breaker(6000), energyClass: known(2 as const) };
    const high = { prospectiveCurrent: known(amperes(5000)), externalImpedance: known(0.06 as never) };
    const nd = judgeAll(house([circuit({ device })], high)).out['protective-conductor']!;
    expect(nd.verdict).toBe('not-determined');
  });
});

describe('breaking capacity', () => {
  const declared = { prospectiveCurrent: known(amperes(16000)) };
  test('6 kA at a declared 16 kA is not simply a fail', () => {
    expect(judgeAll(house([circuit()], declared)).out['breaking-capacity']!.verdict).toBe('not-determined');
    const rated = house([circuit()], declared, { conditionalRating: known(amperes(16000)) });
    expect(judgeAll(rated).out['breaking-capacity']!.verdict).toBe('pass');
    const less = house([circuit()], declared, { conditionalRating: known(amperes(10000)) });
    expect(judgeAll(less).out['breaking-capacity']!.verdict).toBe('fail');
  });
  test('an unknown prospective current is named', () => {
    const { out } = judgeAll(house([circuit()], { prospectiveCurrent: unknown('measure') }));
    expect(out['breaking-capacity']!.verdict).toBe('not-determined');
    expect(overall([out['breaking-capacity']!]).undetermined).toHaveLength(1);
  });
  test('discrimination: a verdict where data allow, else what is missing', () => {
    const asked = judgeAll().out['discrimination-with-cut-out']!;
    expect(asked).toMatchObject({ verdict: 'not-determined', weight: 'advice' });
    const low = house([circuit()], { prospectiveCurrent: known(amperes(750)) });
    expect(judgeAll(low, { acceptMemoryFigures: true }).out['discrimination-with-cut-out']!.verdict).toBe('pass');
  });
});

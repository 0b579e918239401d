import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bs7671Demand } from '../../src/codes/bs7671/demand.js';
import { adequacyOf, demandOf } from '../../src/demand/index.js';
import {
  amperes,
  between,
  kilowatts,
  known,
  recorder,
  squareMillimetres,
  unknown,
  writeSheet,
} from '../../src/index.js';
import { circuit, type LoadSpec, number, point, premises } from './premises.js';

const small: LoadSpec[] = [
  { purpose: 'lighting', current: 6 },
  { purpose: 'socket-outlets', current: 20 },
];
const plain = { premises: 'other' } as const; // connected load governs: figures can be done in the head
const house = (current: number, cutOut: number, points = [point('ev', 32)]) =>
  premises([{ purpose: 'other', current }], points, { cutOut: { kind: unknown(), rating: known(amperes(cutOut)) } });

describe('adequacy of a supply', () => {
  it('judges cut-out, main switch and tails on the line', () => {
    const found = adequacyOf(bs7671Demand, house(40, 80), plain);
    expect(found.results.map((r) => [r.check, r.verdict])).toEqual([
      ['demand-within-cut-out', 'pass'],
      ['demand-within-main-switch', 'pass'],
      ['main-switch-overload', 'pass'],
      ['board-overload', 'pass'],
      ['tails-overload', 'pass'],
      ['service-of-its-own', 'pass'],
    ]);
    expect(found.overall.verdict).toBe('pass');
    expect(found.lines[0]).toMatchObject({ demand: 72, headroom: 8, headroomWithoutPoints: 40 });
    expect(found.limiter.verdict).toBe('not-needed');
  });

  it('61 A is not 60 A', () => {
    expect(adequacyOf(bs7671Demand, house(28, 60), plain).overall.verdict).toBe('pass');
    expect(adequacyOf(bs7671Demand, house(29, 60), plain).overall.verdict).toBe('fail');
  });

  it('an unknown cut-out blocks the decision and is never taken for a usual one', () => {
    const unsure = premises(small, [point('ev', 32)], { cutOut: { kind: unknown(), rating: unknown() } });
    const found = adequacyOf(bs7671Demand, unsure, plain);
    expect(found.overall.verdict).toBe('not-determined');
    expect(found.results[0]?.gaps?.[0]).toMatchObject({ kind: 'fact', obtain: expect.stringContaining('fuse') });
    expect(found.settings[0]?.setting).toHaveProperty('missing');
    expect(found.limiter.verdict).toBe('not-determined');
    expect(found.changes).toEqual([]);
  });

  it.each([
    ['main switch', premises(small, [], {}, { mainSwitch: { rating: unknown(), noFuseAhead: known(true) } })],
    ['tails', premises(small, [], { tails: unknown() })],
    ['tails of a size without a figure', premises(small, [], { tails: known(squareMillimetres(20)) })],
    ['loop', premises(small, [], { looped: unknown('ask the distributor') })],
    ['a load', premises([{ purpose: 'cooking', current: unknown('rating plate') }])],
  ])('unknown %s: not determined', (_, installation) => {
    expect(adequacyOf(bs7671Demand, installation, plain).overall.verdict).toBe('not-determined');
  });

  it('larger tails are judged by the table of single-core cables', () => {
    const tails = (size: number, phases: 1 | 3) => {
      const found = adequacyOf(
        bs7671Demand,
        premises(small, [], { tails: known(squareMillimetres(size)), phases: known(phases) }),
        plain,
      );
      return found.results.find((r) => r.check === 'tails-overload')?.alternatives?.[0]?.value?.value;
    };
    expect([tails(16, 1), tails(25, 1), tails(35, 1), tails(95, 3)]).toEqual([80, 100, 141, 261]);
  });

  it('a looped service blocks the decision, the setting and the limiter', () => {
    const found = adequacyOf(bs7671Demand, premises(small, [point('ev', 32)], { looped: known(true) }), plain);
    expect(found.overall.verdict).toBe('not-determined');
    expect(found.results.at(-1)).toMatchObject({ check: 'service-of-its-own', verdict: 'not-determined' });
    expect(found.settings[0]?.setting).toHaveProperty('missing');
    expect(found.limiter.verdict).toBe('not-determined');
  });

  it('a limiter that leaves less than 6 A says that charging pauses', () => {
    expect(adequacyOf(bs7671Demand, house(50, 60), plain).limiter.because).toContain('10 A are left for charging');
    expect(adequacyOf(bs7671Demand, house(56, 60), plain).limiter.because).toContain('4 A are left, less than the 6 A');
  });

  it('a cut-out known within a range counts at its lower end, a load at its upper end', () => {
    const found = adequacyOf(
      bs7671Demand,
      premises([{ purpose: 'other', current: between(amperes(40), amperes(50)) }], [], {
        cutOut: { kind: unknown(), rating: between(amperes(60), amperes(80)) },
      }),
      plain,
    );
    expect(found.lines[0]).toMatchObject({ demand: 50, headroom: 10 });
  });

  it('finds the largest setting that fits, 6 A to 32 A', () => {
    const setting = (current: number, cutOut: number) =>
      adequacyOf(bs7671Demand, house(current, cutOut), plain).settings[0]?.setting;
    expect(setting(20, 60)).toBe(32);
    expect(setting(33.5, 60)).toBe(26);
    expect(setting(54, 60)).toBe(6);
    expect(setting(54.1, 60)).toBe(0);
    expect(setting(80, 60)).toBe(0);
  });

  it('the largest setting fits and one ampere more does not', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1000 }), (tenths) => {
        const found = number(adequacyOf(bs7671Demand, house(tenths / 10, 80), plain).settings[0]?.setting);
        const passes = (s: number) =>
          adequacyOf(bs7671Demand, house(tenths / 10, 80, [point('ev', s)]), plain).overall.verdict;
        if (found > 0) expect(passes(found)).toBe('pass');
        if (found < 32) expect(passes(Math.max(found + 1, 6))).toBe('fail');
      }),
      { numRuns: 60 },
    );
  });

  it('a three-phase point is held by its worst line', () => {
    const loads: LoadSpec[] = [
      { purpose: 'other', current: 10, lines: ['L1'] },
      { purpose: 'other', current: 50, lines: ['L2'] },
    ];
    const found = adequacyOf(
      bs7671Demand,
      premises(loads, [point('ev', 32, ['L1', 'L2', 'L3'])], {
        phases: known(3),
        cutOut: { kind: unknown(), rating: known(amperes(63)) },
      }),
      plain,
    );
    expect(found.lines.map((l) => l.demand)).toEqual([42, 82, 32]);
    expect(found.settings[0]?.setting).toBe(13);
    expect(found.results.filter((r) => r.verdict === 'fail').map((r) => r.check)).toEqual(['demand-within-cut-out']);
  });

  it('a limiter helps a house that fits, and cannot cure one that does not', () => {
    expect(adequacyOf(bs7671Demand, house(38, 60), plain).limiter.verdict).toBe('helps');
    expect(adequacyOf(bs7671Demand, house(62, 60), plain).limiter).toMatchObject({ verdict: 'cannot-help', limit: 60 });
  });

  it('says what a larger fuse and three lines would change', () => {
    const { changes } = adequacyOf(bs7671Demand, house(58, 60), plain);
    expect(changes).toMatchObject([
      { change: 'larger-fuse', cutOutRating: 80, demand: 90, fits: false },
      { change: 'larger-fuse', cutOutRating: 100, demand: 90, fits: true },
      { change: 'three-phase', cutOutRating: 100, demand: 58, fits: true },
    ]);
  });

  it('is plain data, the same on a silent and a recorded sheet', () => {
    const sheet = recorder('adequacy');
    const installation = premises(small, [point('ev', 32)]);
    const recorded = adequacyOf(bs7671Demand, installation, { premises: 'dwelling' }, sheet);
    const silent = adequacyOf(bs7671Demand, installation, { premises: 'dwelling' });
    expect(JSON.parse(JSON.stringify(recorded))).toEqual(recorded);
    expect(recorded).toEqual(silent);
    const text = JSON.stringify(writeSheet(sheet));
    for (const id of ['on-site-guide/a2', 'demand-with-points', 'demand-within-cut-out']) expect(text).toContain(id);
  });
});

describe('load control', () => {
  const control = (limit: number, controls = ['ev'], name = 'limiter') => ({
    control: { name, limit: known(amperes(limit)), controls },
  });
  const demand = (current: number, limit: number) =>
    demandOf(bs7671Demand, premises([{ purpose: 'other', current }], [point('ev', 32)], {}, control(limit)), plain)
      .governing.lines[0]?.demand;

  it('holds the whole to its limit, but never below the house', () => {
    expect(demand(38, 60)).toBe(60);
    expect(demand(62, 60)).toBe(62);
    expect(demand(20, 60)).toBe(52);
  });

  it('is between the house alone and the full sum, and falls with the limit', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 99 }), fc.integer({ min: 1, max: 99 }), (d, limit) => {
        const found = number(demand(d, limit));
        expect(found).toBeGreaterThanOrEqual(d);
        expect(found).toBeLessThanOrEqual(d + 32);
        expect(number(demand(d, limit + 1))).toBeGreaterThanOrEqual(found);
      }),
    );
  });

  it('does not lower a point that it does not hold', () => {
    const two = premises([{ purpose: 'other', current: 20 }], [point('ev', 32), point('other', 32)], {}, control(40));
    expect(demandOf(bs7671Demand, two, plain).governing.lines[0]?.demand).toBe(52);
  });

  it('without a known limit counts for nothing, and says so', () => {
    const open = premises(
      [{ purpose: 'other', current: 38 }],
      [point('ev', 32)],
      {},
      {
        control: { name: 'limiter', limit: unknown(), controls: ['ev'] },
      },
    );
    const found = demandOf(bs7671Demand, open, plain);
    expect(found.governing.lines[0]?.demand).toBe(70);
    expect(found.controls[0]).toContain('100 %');
  });

  it('at a board further down sees that board only', () => {
    const garage = (limit: number) => ({
      kind: 'board' as const,
      id: 'garage',
      complete: known(true),
      runs: [
        circuit('g1', { kind: 'load', id: 'freezer', purpose: 'other', current: known(amperes(8)), lines: ['L1'] }, [
          'L1',
        ]),
        circuit('g2', point('ev', 32), ['L1']),
      ],
      control: { name: 'garage limiter', limit: known(amperes(limit)), controls: ['ev'] },
    });
    const at = (limit: number) => {
      const main = premises([{ purpose: 'other', current: 40 }]);
      const whole = {
        ...main,
        board: { ...main.board, runs: [...main.board.runs, circuit('feeder', garage(limit), ['L1'])] },
      };
      return demandOf(bs7671Demand, whole, plain).governing.lines[0]?.demand;
    };
    expect(at(20)).toBe(60); // 40 A elsewhere, 20 A at the garage
    expect(at(5)).toBe(48); // the freezer alone exceeds the limit
    expect(at(100)).toBe(80);
  });

  it('a rated power stands for a setting that is not stated', () => {
    const byPower = premises([], [{ ...point('ev', 6), setting: unknown(), power: kilowatts(7.36) }]);
    expect(demandOf(bs7671Demand, byPower, plain).governing.lines[0]?.demand).toBeCloseTo(32, 9);
  });
});

describe('which method governs', () => {
  const installation = premises(small);
  it('is stated, and can be named instead', () => {
    const byRule = demandOf(bs7671Demand, installation, { premises: 'dwelling' });
    expect(byRule.governing.method).toBe('on-site-guide-dwelling');
    expect(byRule.governedBy).toContain('otherwise');
    const named = demandOf(bs7671Demand, installation, { premises: 'dwelling', governing: 'one-line-rule' });
    expect([named.governing.method, named.governedBy]).toEqual(['one-line-rule', 'named by the user']);
  });

  it('a named method that gives less than the rule would says so, one that gives more does not', () => {
    const said = (governing: 'one-line-rule' | 'connected-load' | 'on-site-guide-dwelling') =>
      demandOf(bs7671Demand, installation, { premises: 'dwelling', governing }).cautions.filter((c) =>
        c.includes('named by the user'),
      );
    const { methods } = demandOf(bs7671Demand, installation, { premises: 'dwelling' });
    const of = (id: string) => Number(methods.find((m) => m.method === id)?.lines[0]?.demand);
    expect(of('one-line-rule')).toBeLessThan(of('on-site-guide-dwelling'));
    expect(said('one-line-rule')).toHaveLength(1);
    expect(said('connected-load')).toEqual([]);
    expect(said('on-site-guide-dwelling')).toEqual([]);
  });

  it('a named method that does not apply determines nothing', () => {
    const found = adequacyOf(bs7671Demand, installation, { premises: 'small-shop', governing: 'one-line-rule' });
    expect(found.overall.verdict).toBe('not-determined');
  });

  it('a motor or direct heating takes the one-line rule away', () => {
    for (const purpose of ['motor', 'space-heating', 'air-conditioning', 'other'] as const) {
      const { methods } = demandOf(bs7671Demand, premises([...small, { purpose, current: 5 }]), {
        premises: 'dwelling',
      });
      expect(methods.find((m) => m.method === 'one-line-rule')).toMatchObject({ verdict: 'not-applicable' });
    }
  });

  it('conflicting figures of a shop stand side by side', () => {
    const shop = premises([20, 20].map((current) => ({ purpose: 'socket-outlets', current, standardCircuit: false })));
    const found = demandOf(bs7671Demand, shop, { premises: 'small-shop' }).methods.filter(
      (m) => m.verdict === 'applicable',
    );
    expect(found.map((m) => [m.method, m.source.provenance, m.lines[0]?.demand])).toEqual([
      ['on-site-guide-small-shop', 'one-source', 35],
      ['on-site-guide-small-shop-recalled', 'memory', 34],
      ['connected-load', 'definition', 40],
    ]);
  });

  it('every result carries what it takes for granted', () => {
    for (const m of demandOf(bs7671Demand, installation, { premises: 'dwelling' }).methods)
      expect(m.assumption.length).toBeGreaterThan(30);
  });
});

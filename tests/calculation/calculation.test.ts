import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Calculation, isWide, Span } from '../../src/calculation/index.js';
import { amperes, between, type Fact, known, metres, unknown } from '../../src/index.js';
import { seedOf } from '../support/seed.js';
import { calculator, type ToyCircuit } from './toy.js';

const circuit = (change: Partial<ToyCircuit> = {}): ToyCircuit => ({
  load: known(amperes(32)),
  system: known('TN-S'),
  sections: [
    { name: 'wall', length: known(metres(6)), ambient: known(25) },
    { name: 'loft', length: known(metres(8)), ambient: known(38) },
  ],
  ...change,
});
const toy = calculator();
const all = (c: Calculation) => ['warmth', 'drop'].flatMap((g) => c.results(g));
const verdicts = (c: Calculation) => all(c).map((r) => [r.check, r.verdict]);

describe('a calculation', () => {
  it('works out what is asked for, by hand: 40 A at 0.8 and 1, 0.01 V/(A·m) over 14 m at 32 A', () => {
    const c = toy.of(circuit());
    expect(c.figure('capacity')).toBe(32);
    expect(c.figure('sectionName')).toBe('loft');
    expect(c.figure('totalDrop')).toBeCloseTo(4.48, 12);
    expect(c.figure('dropRatio')).toBeCloseTo(4.48 / 230, 12);
    expect(verdicts(c)).toEqual([
      ['toy-carries', 'pass'],
      ['toy-carries', 'pass'],
      ['toy-cool', 'pass'],
      ['toy-drop-limited', 'pass'],
      ['toy-either', 'pass'],
    ]);
    expect(all(c)[1]).toMatchObject({ because: 'loft', margin: 0 });
    expect(c.figure('nobody')).toBeUndefined();
    expect(c.results('nothing')).toMatchObject([{ check: 'nothing-rule', verdict: 'not-required' }]);
  });

  it('carries what is missing to the checks that need it, and to no other', () => {
    const c = toy.of(
      circuit({ system: unknown('ask'), sections: [{ name: 'a', length: unknown(), ambient: known(25) }] }),
    );
    expect(verdicts(c)).toEqual([
      ['toy-carries', 'pass'],
      ['toy-cool', 'pass'],
      ['toy-drop-limited', 'not-determined'],
      ['toy-either', 'not-determined'],
    ]);
    expect(all(c)[2]?.gaps).toEqual([
      { kind: 'fact', fact: 'length' },
      { kind: 'fact', fact: 'system', obtain: 'ask' },
    ]);
  });

  it('of a list without a thing: a sum is 0, a smallest is missing', () => {
    const c = toy.of(circuit({ sections: [] }));
    expect(c.figure('totalDrop')).toBe(0);
    expect(c.figure('capacity')).toMatchObject({ missing: [{ fact: 'capacity' }] });
  });

  it('a value that its role forbids is an error, a table without a cell is a gap', () => {
    const cold = (t: number) => circuit({ sections: [{ name: 'a', length: known(metres(1)), ambient: known(t) }] });
    expect(() => toy.of(circuit({ load: known(-1 as never) })).figure('designCurrent')).toThrow(/designCurrent/);
    expect(toy.of(cold(61)).figure('capacity')).toMatchObject({ missing: [{ kind: 'cell', table: 'toy/ambient' }] });
  });

  it('bounds spans: by direction, by printed rows, by a threshold; without a direction it says so', () => {
    const c = toy.of(
      circuit({
        load: between(amperes(20), amperes(30)),
        sections: [{ name: 'a', length: between(metres(5), metres(10)), ambient: between<number>(25, 35) }],
      }),
    );
    expect(c.figure('totalDrop')).toEqual(new Span(0.01 * 20 * 5, 0.01 * 30 * 10));
    expect(c.figure('capacity')).toEqual(new Span(32, 40));
    expect(c.figure('buried')).toBe(false);
    expect(c.figure('groupFactor')).toMatchObject({ wide: 'blind' });
    expect(verdicts(c).every(([, v]) => v === 'pass')).toBe(true);
    const wide = toy.of(circuit({ load: between(amperes(20), amperes(50)) }));
    expect(all(wide)[1]).toMatchObject({ verdict: 'not-determined', gaps: [{ fact: 'designCurrent' }] });
    expect(all(wide).filter(isWide).length).toBeGreaterThan(0);
  });

  const drawnFact = (least: number, most: number): fc.Arbitrary<Fact<never>> =>
    fc.oneof(
      fc.double({ min: least, max: most, noNaN: true }).map((v) => known(v as never)),
      fc
        .tuple(fc.double({ min: least, max: most, noNaN: true }), fc.double({ min: least, max: most, noNaN: true }))
        .map(([a, b]) => between(Math.min(a, b), Math.max(a, b)) as Fact<never>),
      fc.constant(unknown() as Fact<never>),
    );
  const drawn: fc.Arbitrary<ToyCircuit> = fc.record({
    load: drawnFact(0, 60),
    system: fc.constantFrom(known('TN-S' as const), known('TT' as const), unknown()),
    sections: fc.array(
      fc.record({ name: fc.constantFrom('a', 'b'), length: drawnFact(0, 60), ambient: drawnFact(10, 70) }),
      {
        maxLength: 3,
      },
    ),
  });

  it('given other facts, comes to what a new calculation comes to', () => {
    fc.assert(
      fc.property(fc.array(drawn, { minLength: 2, maxLength: 6 }), (circuits) => {
        const kept = toy.of(circuits[0]);
        for (const place of circuits) {
          kept.change(place);
          const fresh = toy.of(place);
          expect(all(kept)).toEqual(all(fresh));
          expect(kept.figure('capacity')).toEqual(fresh.figure('capacity'));
        }
      }),
      { seed: seedOf(1), numRuns: 300 },
    );
  });

  it('over spans says nothing that a value inside contradicts', () => {
    const inside = (f: Fact<never>, share: number): Fact<never> =>
      f.state === 'between'
        ? known(((f.least as number) + ((f.most as number) - (f.least as number)) * share) as never)
        : f;
    fc.assert(
      fc.property(
        drawn,
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 8, maxLength: 8 }),
        (place, shares) => {
          const whole = verdicts(toy.of(place));
          let n = 0;
          const next = () => shares[n++ % 8] as number;
          const one = verdicts(
            toy.of({
              ...place,
              load: inside(place.load as Fact<never>, next()),
              sections: place.sections.map((s) => ({
                ...s,
                length: inside(s.length as Fact<never>, next()),
                ambient: inside(s.ambient as Fact<never>, next()),
              })),
            }),
          );
          whole.forEach(([check, verdict], i) => {
            if (verdict === 'pass' || verdict === 'fail') expect(one[i]).toEqual([check, verdict]);
          });
        },
      ),
      { seed: seedOf(2), numRuns: 500 },
    );
  });
});

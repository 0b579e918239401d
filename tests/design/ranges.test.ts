import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Calculator, derive, holds, set } from '../../src/calculation/index.js';
import { bs7671 } from '../../src/codes/bs7671/index.js';
import { ofCircuit } from '../../src/codes/iec-family/places.js';
import {
  amperes,
  assess,
  between,
  celsius,
  type Fact,
  type Installation,
  type Known,
  known,
  metres,
  missing,
  ohms,
  type Run,
  ratio,
  recorder,
  squareMillimetres,
  statement,
  unknown,
  writeSheet,
} from '../../src/index.js';
import { chargePoint, circuit, house } from '../support/house.js';
import { smallCode } from '../support/small-code.js';

const code = bs7671('2018+A2:2022');

interface Facts {
  readonly length: Fact<ReturnType<typeof metres>>;
  readonly ambient: Fact<ReturnType<typeof celsius>>;
  readonly external: Fact<ReturnType<typeof ohms>>;
  readonly prospective: Fact<ReturnType<typeof amperes>>;
  readonly circuits: Fact<number>;
  readonly setting: Fact<ReturnType<typeof amperes>>;
}

const at: Facts = {
  length: known(metres(20)),
  ambient: known(celsius(30)),
  external: known(ohms(0.35)),
  prospective: known(amperes(1200)),
  circuits: known(2),
  setting: known(amperes(32)),
};

const build = (change: Partial<Facts>): Installation => {
  const f = { ...at, ...change };
  const run: Run = circuit({
    stretches: [
      {
        name: 'route',
        length: f.length,
        method: known('C'),
        ambient: f.ambient,
        group: { arrangement: 'bunched', circuits: f.circuits, unequal: known(false) },
        insulated: known(metres(0)),
      },
    ],
    feeds: [{ ...chargePoint, setting: f.setting }],
  });
  return house([run], { externalImpedance: f.external, prospectiveCurrent: f.prospective });
};

const find = (a: ReturnType<typeof assess>, check: string) => a.results.find((r) => r.check === check);
const over = (a: ReturnType<typeof assess>, check: string) => a.ranges?.checks.find((c) => c.check === check);

describe('assess over ranges', () => {
  it('bounds checks over many ranges at once', () => {
    const bonds = (least: number) =>
      house([circuit({})], {
        bonding: Array.from({ length: 12 }, (_, i) => ({
          what: `pipe ${i}`,
          area: between(squareMillimetres(least), squareMillimetres(16)),
        })),
        earthingConductor: between(squareMillimetres(16), squareMillimetres(25)),
      });
    const verdicts = (least: number) =>
      assess(code, bonds(least), 'ev')
        .results.filter((r) => r.check === 'main-bonding-conductor')
        .map((r) => r.verdict);
    // 10 mm² at a neutral of up to 35 mm² on PME, Table 54.8
    expect(verdicts(10)).toEqual(Array(12).fill('pass'));
    expect(verdicts(6)).toEqual(Array(12).fill('not-determined'));
  });

  it('passes for the whole range where the worst point passes', () => {
    const found = assess(smallCode, build({ length: between(metres(10), metres(30)) }), 'ev');
    expect(found.overall.verdict).toBe('pass');
    expect(found.ranges?.verdict).toBe('pass');
    expect(over(found, 'voltage-drop')).toMatchObject({
      verdict: 'pass',
      grounds: 'bounds',
    });
    expect(over(found, 'device-carries-load')).toMatchObject({ verdict: 'pass', grounds: 'bounds' });
    // 7.3 mV/A/m, 32 A, 30 m
    expect(find(found, 'voltage-drop')?.value?.value).toBeCloseTo((7.3e-3 * 32 * 30) / 230, 12);
    expect(JSON.parse(JSON.stringify(found))).toEqual(found);
  });

  it('says up to which value a check holds', () => {
    const found = assess(smallCode, build({ length: between(metres(10), metres(80)) }), 'ev');
    expect(found.overall.verdict).toBe('not-determined');
    expect(found.ranges?.verdict).toBe('depends');
    const drop = over(found, 'voltage-drop');
    expect(drop?.verdict).toBe('depends');
    const limit = 11.5 / (7.3e-3 * 32);
    expect(drop?.holds?.[0]?.intervals[0]?.to.value).toBeCloseTo(limit, 1);
    expect(drop?.holds?.[0]?.intervals[0]?.to.beyond?.check.check).toBe('voltage-drop');
    const [gap] = find(found, 'voltage-drop')?.gaps ?? [];
    expect(gap?.kind === 'fact' && gap.obtain).toMatch(/known only from 10 m to 80 m.*holds up to 49\.2/);
  });

  it('fails for the whole range where the best point fails', () => {
    const found = assess(smallCode, build({ length: between(metres(60), metres(80)) }), 'ev');
    expect(found.overall.verdict).toBe('fail');
    expect(over(found, 'voltage-drop')?.verdict).toBe('fail');
  });

  it('is open, and no failure, where a part of the range fails and another fact leaves the rest open', () => {
    const asked = { kind: 'fact', fact: 'colour of the cable', obtain: 'look' } as const;
    const rule = statement({
      id: 'beside-two',
      title: 'A rule of this test: beside two circuits never, beside one by the colour of the cable',
      weight: 'rule',
      source: { document: 'test', provenance: 'definition' },
    });
    const { contents } = smallCode.calculator;
    const figures = {
      ...contents.figures,
      circuit: {
        ...contents.figures.circuit,
        beside: ofCircuit(({ run }) => run.stretches[0]?.group?.circuits ?? unknown('look'), { called: 'beside it' }),
      },
    };
    const judge = derive(['beside'], ({ beside }): Known<boolean> => (beside > 2 ? false : missing(asked)));
    const checks = { ...contents.checks, 'minimum-size': [holds(rule, judge, set('so it says'))] };
    const made = { ...contents, figures, checks } as never;
    const own = { ...smallCode, calculator: new Calculator(made, { document: 'test', edition: 'of today' }) };
    const over = (circuits: Facts['circuits']) =>
      find(assess(own as typeof smallCode, build({ circuits }), 'ev'), 'beside-two');
    expect(over(known(3))?.verdict).toBe('fail');
    expect(over(known(2))?.verdict).toBe('not-determined');
    const partly = over(between<number>(2, 3));
    expect(partly?.verdict).toBe('not-determined');
    expect(partly?.gaps?.[0]).toEqual(asked);
    expect(partly?.gaps?.[1]).toMatchObject({ obtain: expect.stringContaining('for a part of it beside-two fails') });
    expect(over(between<number>(3, 4))?.verdict).toBe('fail');
  });

  it('judges each check where it is worst: a high loop impedance for disconnection, a high current for breaking', () => {
    const found = assess(
      code,
      build({ external: between(ohms(0.1), ohms(0.8)), prospective: between(amperes(1000), amperes(5000)) }),
      'ev',
    );
    const external = 'external earth fault loop impedance';
    const name = found.ranges?.facts.find((f) => f.role === 'externalImpedance')?.name ?? '';
    expect(name).toContain(external);
    expect(find(found, 'automatic-disconnection')?.alternatives?.[0]?.value?.value).toBeCloseTo(0.8 + 0.2098 * 1.2, 10);
    const values = find(found, 'breaking-capacity')?.alternatives?.flatMap((r) => r.limit?.value ?? []);
    expect(values).toContain(5000);
  });

  it('leaves unknown facts unknown, and gives figures that differ with their range', () => {
    const found = assess(smallCode, build({ length: between(metres(10), metres(30)), ambient: unknown() }), 'ev');
    expect(found.overall.verdict).toBe('not-determined');
    expect(found.ranges?.verdict).toBe('not-determined');
    expect(find(found, 'voltage-drop')?.verdict).toBe('pass');
    const { totalDrop } = assess(smallCode, build({ length: between(metres(10), metres(30)) }), 'ev').figures;
    expect(totalDrop).toMatchObject({ missing: [{ obtain: 'known only within a range, 2.336 to 7.008' }] });
  });

  it('writes the calculation at each worst point', () => {
    const sheet = recorder('ev');
    const installation = build({ length: between(metres(10), metres(30)) });
    const loud = assess(smallCode, installation, 'ev', {}, sheet);
    expect(loud).toEqual(assess(smallCode, installation, 'ev'));
    expect(JSON.stringify(writeSheet(sheet))).toContain('At length of route one way, route 30 m');
  });

  const range = <T extends number>(from: number, to: number, make: (n: number) => T) =>
    fc
      .tuple(fc.double({ min: from, max: to, noNaN: true }), fc.double({ min: from, max: to, noNaN: true }))
      .map(([a, b]) => between(make(Math.min(a, b)), make(Math.max(a, b))));
  const inside = (fact: { readonly least: number; readonly most: number }, share: number) =>
    fact.least + (fact.most - fact.least) * share;

  it('bounds every sample inside', () => {
    fc.assert(
      fc.property(
        range(1, 90, metres),
        range(20, 60, celsius),
        range(0.05, 1.6, ohms),
        range(200, 9000, amperes),
        range(6, 40, amperes),
        fc.tuple(fc.integer({ min: 1, max: 3 }), fc.integer({ min: 3, max: 6 })),
        fc.array(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 6, maxLength: 6 }), {
          minLength: 12,
          maxLength: 12,
        }),
        fc.constantFrom(undefined, 'neighbours-at-full-load' as const, 'group-at-same-load' as const),
        (length, ambient, external, prospective, setting, [few, many], samples, dropTemperature) => {
          const options = dropTemperature ? { dropTemperature } : {};
          const ranged = {
            length,
            ambient,
            external,
            prospective,
            setting,
            circuits: between(few, many),
            unequal: known(false),
          };
          const whole = assess(code, build(ranged), 'ev', options);
          const verdicts = new Map(whole.ranges?.checks.map((c) => [c.check, c.verdict]));
          for (const share of samples) {
            const one = assess(
              code,
              build({
                length: known(metres(inside(length, share[0] ?? 0))),
                ambient: known(celsius(inside(ambient, share[1] ?? 0))),
                external: known(ohms(inside(external, share[2] ?? 0))),
                prospective: known(amperes(inside(prospective, share[3] ?? 0))),
                setting: known(amperes(inside(setting, share[4] ?? 0))),
                circuits: known(Math.round(inside({ least: few, most: many }, share[5] ?? 0))),
              }),
              'ev',
              options,
            );
            for (const r of one.results) {
              const verdict = verdicts.get(r.check);
              expect(verdict).toBeDefined();
              if (verdict === 'pass') expect([r.check, r.verdict]).not.toEqual([r.check, 'fail']);
              if (verdict === 'fail') expect([r.check, r.verdict]).toEqual([r.check, 'fail']);
              if (verdict === 'pass') expect(['pass', 'not-required']).toContain(r.verdict);
            }
          }
        },
      ),
      { numRuns: 5 },
    );
  });

  it('keeps one range with equal ends as a known fact', () => {
    const found = assess(smallCode, build({ setting: between(amperes(32), amperes(32)) }), 'ev');
    expect(found.ranges).toBeUndefined();
    expect(ratio(1)).toBe(1);
  });
});

/** What passes by assumed facts alone is never said to pass. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bs7671 } from '../../src/codes/bs7671/index.js';
import { assess, hasCode, type Installation } from '../../src/index.js';
import { pathsOf, withoutAssumed } from '../../src/installation/index.js';
import { readSurvey } from '../../src/io/index.js';
import { withAllWanted } from '../../src/site/index.js';
import { arbitraryInstallation } from '../../src/testing/index.js';
import { premises, soundHouse } from '../hazards/sound.js';
import { surveyDocuments } from '../support/surveys.js';
import { changedAt, factsOf } from './facts.js';

const code = bs7671('2018+A2:2022');

/** The installation with some of its known facts marked as assumed, every one by an assumption of its own. */
function marked(installation: Installation, which: readonly number[]): Installation {
  const all = factsOf(installation);
  let now = installation;
  for (const place of which) {
    const fact = all[place % all.length];
    if (!fact) continue;
    const said = fact.path.reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], now);
    if (typeof said !== 'object' || said === null || (said as { state?: string }).state !== 'known') continue;
    now = changedAt(now, fact.path, { ...said, assumed: `test/${fact.path.join('.')}` });
  }
  return now;
}

const houses: readonly Installation[] = [
  soundHouse(),
  ...Object.values(surveyDocuments).map((d) => withAllWanted(readSurvey(d))),
  ...fc.sample(arbitraryInstallation(), { numRuns: 20, seed: 11 }),
];

/** Circuits that pass with everything known, and as many that do not. */
const circuits = houses.flatMap((house) =>
  pathsOf(house).map(({ run }) => ({
    house,
    run: run.id,
    verdict: assess(code, house, run.id, premises).overall.verdict,
  })),
);
const passing = circuits.filter((c) => c.verdict === 'pass');
const drawn = [...passing, ...circuits.filter((c) => c.verdict !== 'pass').slice(0, passing.length)];

const order = ['fail', 'not-determined', 'conditional', 'pass'] as const;

describe('facts that are assumed', () => {
  it('make nothing better than it is without them, but for what is conditional, and nothing else than it is with them', () => {
    let conditional = 0;
    fc.assert(
      fc.property(fc.nat(drawn.length - 1), fc.array(fc.nat(400), { minLength: 1, maxLength: 4 }), (c, which) => {
        const { house, run } = drawn[c] as (typeof drawn)[number];
        try {
          const assumed = marked(house, which);
          const [with_, known, bare] = [assumed, house, withoutAssumed(assumed)].map(
            (i) => assess(code, i, run, premises).overall.verdict,
          ) as [(typeof order)[number], (typeof order)[number], (typeof order)[number]];
          if (with_ === 'pass') expect(bare).toBe('pass');
          if (with_ === 'conditional') {
            conditional++;
            expect(known).toBe('pass');
            expect(bare).not.toBe('pass');
          } else expect(with_).toBe(known);
        } catch (e) {
          if (!hasCode(e, 'invalid-input')) throw e;
        }
      }),
      { numRuns: 150, seed: 2026 },
    );
    expect(conditional).toBeGreaterThan(10);
  });

  it('name the assumption that a rule rests on', () => {
    const house = soundHouse();
    const at = ['supply', 'externalImpedance'];
    const assumed = changedAt(house, at, { ...house.supply.externalImpedance, assumed: 'test/z-e' });
    const run = pathsOf(house).at(-1)?.run.id as string;
    const { overall, conditions } = assess(code, assumed, run, premises);
    expect(overall.verdict).toBe('conditional');
    expect(conditions?.map((c) => [c.assumption, c.role, c.unit])).toEqual([['test/z-e', 'externalImpedance', 'Ω']]);
    expect(conditions?.[0]?.checks).toContain('automatic-disconnection');
  });
});

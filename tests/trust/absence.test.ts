import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bs7671 } from '../../src/codes/bs7671/index.js';
import type { Verdict } from '../../src/core/index.js';
import { assess, hasCode, type Installation } from '../../src/index.js';
import { pathsOf } from '../../src/installation/index.js';
import { readSurvey } from '../../src/io/index.js';
import { withAllWanted } from '../../src/site/index.js';
import { arbitraryInstallation } from '../../src/testing/index.js';
import { premises, soundHouse } from '../hazards/sound.js';
import { surveyDocuments } from '../support/surveys.js';
import { asHeld, changedAt, type Found, factsOf } from './facts.js';

const code = bs7671('2018+A2:2022');
const cases = Number(process.env.OHMWRIGHT_TRUST_CASES ?? 2000);

/** Fields that are no facts: what somebody chose, or how the installation is put together. */
const choices: Readonly<Record<string, string>> = {
  'chargePoint.earthing': 'an arrangement that is chosen: left out, the best of those that are open is taken',
  'cable.parallel': 'how the circuit is put together: a second cable for a line is described or is not there',
  'run.ring': 'how the circuit is put together: a second leg is described or is not there',
  'group.overloads':
    'a relief that somebody claims: left out, all circuits are taken as overloaded together; claimed where the device does not carry the load, which fails in either case, it asks for more',
};

/** The worst verdict by check, and that of the whole; undefined where the installation is refused. */
type Verdicts = ReadonlyMap<string, Verdict>;
const worst: readonly Verdict[] = ['fail', 'not-determined', 'pass', 'not-required'];

function judge(installation: Installation, run: string): Verdicts | undefined {
  try {
    const { results, overall } = assess(code, installation, run, premises);
    const found = new Map<string, Verdict>([['the circuit', overall.verdict]]);
    for (const { check, verdict, weight } of results) {
      if (weight !== 'rule') continue;
      const before = found.get(check);
      if (before === undefined || worst.indexOf(verdict) < worst.indexOf(before)) found.set(check, verdict);
    }
    return found;
  } catch (e) {
    if (hasCode(e, 'invalid-input') || hasCode(e, 'unknown-definition')) return undefined;
    throw e;
  }
}

/** Checks that pass without a fact and fail with it, or are not asked without it though nothing else objects then. */
function better(silent: Verdicts, said: Verdicts): readonly string[] {
  const blocks = (v: Verdict | undefined) => v === 'fail' || v === 'not-determined';
  const asksElsewhere = [...silent].some(([c, v]) => blocks(v) && !blocks(said.get(c)));
  return [...said].flatMap(([check, verdict]) => {
    const before = silent.get(check) ?? (asksElsewhere ? 'not-determined' : 'not-required');
    return verdict === 'fail' && !blocks(before) ? [check] : [];
  });
}

const houses: readonly Installation[] = [
  soundHouse(),
  soundHouse(),
  ...Object.values(surveyDocuments).map((d) => withAllWanted(readSurvey(d))),
  ...fc.sample(arbitraryInstallation(), { numRuns: 60, seed: 7 }),
];
interface Home {
  readonly house: Installation;
  readonly runs: readonly string[];
  readonly facts: readonly Found[];
}
const homes: readonly Home[] = houses.map((house) => {
  const runs = pathsOf(house).map((p) => p.run.id);
  // the circuits of charge points, which were added last, and the boards that they leave
  return {
    house,
    runs: runs.slice(-2),
    facts: factsOf(house).filter((f) => f.choices.length > 0 && !(f.name in choices)),
  };
});

/** The house without a fact: left out, or with a fact that says that nobody knows. */
function without(house: Installation, { field: [how], path }: Found, left: boolean): Installation {
  const out = how.endsWith('?') && (left || !how.startsWith('fact'));
  return changedAt(house, path, out ? undefined : { state: 'unknown' });
}
const may = ({ field: [how] }: Found): boolean => how.endsWith('?') || how.startsWith('fact');
const said = (house: Installation, { field, path }: Found, value: unknown) =>
  changedAt(house, path, asHeld(field, value));

/** A case: a house, its circuit, facts that are left out, and what they may turn out to be. */
const drawn = (facts: 1 | 2) =>
  fc.nat(homes.length - 1).chain((h) => {
    const { house, runs, facts: all } = homes[h] as Home;
    const open = all.filter(may);
    // facts of the house at large count as often as those of one of its many circuits
    const names = [...new Set(open.map((f) => f.name))];
    const fact = fc
      .constantFrom(...names)
      .chain((name) => fc.constantFrom(...open.filter((f) => f.name === name)))
      .chain((f) => fc.record({ fact: fc.constant(f), value: fc.constantFrom(...f.choices), left: fc.boolean() }));
    return fc.record({
      house: fc.constant(house),
      run: fc.constantFrom(...runs),
      facts: fc.array(fact, { minLength: facts, maxLength: facts }),
    });
  });

function violations(facts: 1 | 2, count: number, seed: number): readonly string[] {
  const found = new Set<string>();
  for (const { house, run, facts: of } of fc.sample(drawn(facts), { numRuns: count, seed })) {
    const known = judge(
      of.reduce((h, { fact, value }) => said(h, fact, value), house),
      run,
    );
    if (!known || ![...known.values()].includes('fail')) continue;
    const silent = judge(
      of.reduce((h, { fact, left }) => without(h, fact, left), house),
      run,
    );
    if (!silent) continue;
    for (const check of better(silent, known))
      found.add(`${of.map(({ fact, value }) => `${fact.name} = ${JSON.stringify(value)}`).join(', ')}: ${check}`);
  }
  return [...found].sort();
}

describe('absence is never favourable', () => {
  it('what passes without a fact fails with no value of it', () => {
    expect(violations(1, Math.ceil(cases * 0.8), 41)).toEqual([]);
  }, 600_000);

  it('what passes without two facts fails with no values of them', () => {
    expect(violations(2, Math.ceil(cases * 0.2), 42)).toEqual([]);
  }, 600_000);
});

/** The plan under facts made worse, facts that are not known, and another order of what has no order. */
import { describe, expect, it } from 'vitest';
import type { CheckResult } from '../../src/core/index.js';
import { readSurvey } from '../../src/io/index.js';
import type { OptionPlan, Survey } from '../../src/site/index.js';
import { planInBritain } from '../support/plan.js';
import { type Json, surveyDocument } from '../support/surveys.js';

type Tree = { [key: string]: Json };

const inner = (node: Json): [string, Json][] =>
  typeof node === 'object' && node !== null ? (Object.entries(node) as [string, Json][]) : [];

/** Every place of a document that holds a quantity or another fact in the form `known`, or a bare quantity. */
function facts(node: Json, path: readonly string[] = []): (readonly string[])[] {
  return inner(node).flatMap(([key, value]): (readonly string[])[] => {
    const here = [...path, key];
    if (typeof value === 'object' && value !== null && 'known' in value) return [here];
    return facts(value, here);
  });
}

function at(node: Json, path: readonly string[]): Json {
  return path.reduce<Json>((n, key) => (n as Tree)[key] as Json, node);
}

/** A document with its ranges taken at their larger ends: ranges take their time, and are judged elsewhere. */
function document(name: string): Tree {
  return JSON.parse(JSON.stringify(surveyDocument(name)), (_key, v) =>
    Array.isArray(v?.between) ? { known: v.between[1] } : v,
  ) as Tree;
}

const planned = (d: Json, survey?: (s: Survey) => Survey): OptionPlan => {
  const read = readSurvey(d);
  const plan = planInBritain(survey ? survey(read) : read, { sheets: 'none', lengths: false });
  return plan.options.find((o) => o.id === 'as-wanted') as OptionPlan;
};

/** Results of an option by what they are of. */
function resultsOf({ supply, feeders, points, notification }: OptionPlan): Map<string, CheckResult> {
  const found = new Map<string, CheckResult>();
  const add = (of: string, results: readonly CheckResult[]) => {
    const count = new Map<string, number>();
    for (const r of results) {
      const nth = count.get(r.check) ?? 0;
      count.set(r.check, nth + 1);
      found.set(`${of}: ${r.check} ${nth}`, r);
    }
  };
  add('supply', supply.results);
  add('operator', notification.decision.results);
  for (const f of feeders) add(f.run, [...f.demand.results, ...f.assessment.results]);
  for (const p of points) add(p.point, p.assessment.results);
  return found;
}

const QUANTITY = /^([\d.]+)(\s*\D+)$/;
const times = (quantity: Json, by: number): string => {
  const [, number, unit] = QUANTITY.exec(quantity as string) ?? [];
  return `${Number(number) * by}${unit}`;
};

/** Facts whose worse direction is plain: what it is, where it stands, and what makes it worse. */
const worse: readonly (readonly [string, readonly string[], number])[] = [
  ['a smaller cut-out', ['supply', 'cutOut', 'rating'], 0.6],
  ['a smaller main switch', ['board', 'mainSwitch', 'rating'], 0.5],
  ['thinner tails', ['supply', 'tails'], 0.64],
  ['a thinner earthing conductor', ['supply', 'earthingConductor'], 0.25],
  ['thinner bonding', ['supply', 'bonding', '0', 'area'], 0.4],
  ['a higher loop impedance', ['supply', 'externalImpedance'], 4],
  ['a higher fault current', ['supply', 'prospectiveCurrent'], 40],
];
const names = ['easy-home', 'garage-submain', 'tt-cottage', 'workshop'] as const;

describe.each(names)('%s', (name) => {
  it('passes nothing that failed when a fact gets worse', () => {
    const base = document(name);
    // the sizes of what is wanted stay what they are: the search would answer a worse fact with a thicker cable
    const before = resultsOf(planned(base));
    for (const [what, path, by] of worse) {
      const changed = structuredClone(base);
      const holder = at(changed, path.slice(0, -1)) as Tree;
      const key = path.at(-1) as string;
      const fact = holder[key] as Tree | string | undefined;
      const value = typeof fact === 'object' ? fact.known : fact;
      if (typeof value !== 'string') continue;
      holder[key] = times(value, by);
      const option = planned(changed);
      const after = resultsOf(option);
      for (const [of, result] of before)
        if (result.verdict === 'fail' && result.weight === 'rule')
          expect([what, of, after.get(of)?.verdict]).not.toEqual([what, of, 'pass']);
    }
  });

  it('passes no more when a fact is not known', () => {
    const base = document(name);
    const option = planned(base);
    const before = resultsOf(option);
    // a fact of every kind: those of one key are alike
    const byKey = new Map(facts(base).map((path) => [path.filter((k) => !/^\d+$/.test(k)).join('.'), path] as const));
    expect(byKey.size).toBeGreaterThan(20);
    const some = [...byKey.values()].filter((_, i) => i % names.length === names.indexOf(name));
    for (const path of some) {
      const changed = structuredClone(base);
      (at(changed, path.slice(0, -1)) as Tree)[path.at(-1) as string] = { unknown: 'look at it' };
      const open = planned(changed);
      const after = resultsOf(open);
      if (option.overall.verdict !== 'pass') expect([path.join('.'), open.overall.verdict]).not.toContain('pass');
      for (const [of, result] of before)
        if (result.verdict === 'not-determined' && result.weight === 'rule')
          expect([path.join('.'), of, after.get(of)?.verdict]).not.toEqual([path.join('.'), of, 'pass']);
    }
  });

  it('says the same in whatever order things stand that have none', () => {
    const base = document(name);
    const turned = structuredClone(base);
    const turn = (node: Json): void => {
      for (const [key, value] of inner(node)) {
        if (Array.isArray(value) && ['runs', 'bonding', 'controls', 'serves', 'wanted'].includes(key)) value.reverse();
        turn(value);
      }
    };
    turn(turned);
    // keys of an object have no order either
    const again = JSON.parse(JSON.stringify(turned), (_key, v) =>
      typeof v === 'object' && v !== null && !Array.isArray(v) ? Object.fromEntries(Object.entries(v).reverse()) : v,
    ) as Json;
    const plain = (option: OptionPlan) =>
      [...resultsOf(option)]
        .map(([of, { verdict, value, limit }]) => [
          of.replace(/bonding\S* \d+$/, 'bonding'),
          verdict,
          value && Number(value.value.toPrecision(9)),
          limit && Number(limit.value.toPrecision(9)),
        ])
        .map((row) => JSON.stringify(row))
        .sort();
    const [one, two] = [planned(base), planned(again)];
    expect(plain(two)).toEqual(plain(one));
    expect(two.overall.verdict).toBe(one.overall.verdict);
    for (const end of ['low', 'typical', 'high'] as const) expect(two.hours[end]).toBeCloseTo(one.hours[end], 9);
    const sizes = (o: OptionPlan) => Object.fromEntries(o.points.map((p) => [p.point, p.run.cable.area]));
    expect(sizes(two)).toEqual(sizes(one));
  });
});

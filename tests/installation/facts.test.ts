/** The register of facts and the questionnaire say everything of every field that a survey has. */
import { describe, expect, it } from 'vitest';
import { parseQuantity, termOf } from '../../src/index.js';
import { questionnaire, questionOf } from '../../src/installation/facts/questionnaire.js';
import { factRegister, placeOf } from '../../src/installation/facts/register.js';
import { fieldNames, recordNames } from '../../src/installation/facts/survey-shapes.js';
import { surveyJsonSchema } from '../../src/io/index.js';
import type { CanonicalUnit } from '../../src/units/spellings.js';
import { surveyDocument } from '../support/surveys.js';

type Json = Record<string, unknown>;

describe('the register', () => {
  const entries = [...factRegister().values()];

  it('has a line for every field of every record, and none besides', () => {
    const fields = recordNames().flatMap((record) => fieldNames(record).map((field) => `${record}.${field}`));
    expect([...factRegister().keys()].sort()).toEqual([...new Set(fields)].sort());
  });

  it('gives each a title, somebody to ask, and a question', () => {
    for (const { id, title, whom, question } of entries) {
      expect(['customer', 'operator', 'site', 'maker', 'firm'], id).toContain(whom);
      expect(title, id).toMatch(/^\p{Lu}.+[^.?]$/u);
      expect(question, id).toMatch(/^\p{Lu}.+[.?]$/u);
    }
  });

  it('knows every key that the schema of the document has', () => {
    const keys = new Set<string>();
    const walk = (at: unknown): void => {
      if (typeof at !== 'object' || at === null) return;
      const { properties } = at as { properties?: Json };
      for (const key of Object.keys(properties ?? {})) keys.add(key.replace(/_\w+$/, ''));
      Object.values(at).forEach(walk);
    };
    walk(surveyJsonSchema());
    const known = new Set(entries.map((e) => e.id.split('.')[1]));
    // the forms of a fact, and the two parts of a kind of device
    for (const own of ['known', 'between', 'unknown', 'by', 'assumed', 'standard', 'type']) known.add(own);
    expect([...keys].filter((k) => !known.has(k))).toEqual([]);
  });
});

describe('the question of a fact', () => {
  it('is found by its place in a survey, however that is written', () => {
    expect(questionOf('installation.supply.externalImpedance')?.id).toBe('ze');
    expect(questionOf('supply.cutOut.rating')?.id).toBe('mainFuse');
    expect(questionOf('board.runs[0].device.rating')?.id).toBe('device.rating');
    expect(questionOf('board.runs.0.feeds.0.purpose')?.id).toBe('load.purpose');
    expect(questionOf('board.runs[1].feeds[0].runs[0].feeds[2].standingLeakage')?.id).toBe(
      'chargePoint.standingLeakage',
    );
    expect(questionOf('wanted[0].run.stretches[1].length')?.id).toBe('stretch.length');
    expect(questionOf('wanted[0].run.feeds[0].setting')?.id).toBe('chargeCurrent');
    expect(questionOf('prospectiveCurrent')?.id).toBe('ipf');
    expect(questionOf('supply.colour')).toBeUndefined();
  });

  it('is found for every fact of a survey', () => {
    const lost: string[] = [];
    const walk = (at: unknown, path: string): void => {
      const fact = typeof at === 'object' && at !== null && ['known', 'between', 'unknown'].some((k) => k in at);
      if (fact || typeof at !== 'object' || at === null) {
        if (!/\.(kind\.(standard|type)|lines\[\d\])$/.test(path) && !questionOf(path)) lost.push(path);
        return;
      }
      for (const [key, inner] of Object.entries(at))
        walk(inner, Array.isArray(at) ? `${path}[${key}]` : path ? `${path}.${key}` : key);
    };
    walk(surveyDocument('easy-home'), '');
    expect(lost.filter((p) => !/device\.kind/.test(p))).toEqual([]);
  });
});

describe('the questionnaire', () => {
  it('sets facts that there are, has no id twice, and asks something', () => {
    const ids = questionnaire().map((q) => q.id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const q of questionnaire()) {
      for (const path of q.sets) expect([path, placeOf(path) !== undefined]).toEqual([path, true]);
      expect(q.question, q.id).toMatch(/[.?]$/);
      expect(q.answer !== 'choice' || (q.choices?.length ?? 0) > 1, q.id).toBe(true);
    }
  });

  it('asks no more than about a score first, and says what to photograph for most', () => {
    const first = questionnaire().filter((q) => q.first);
    expect(first.length).toBeLessThanOrEqual(22);
    expect(first.filter((q) => q.photo).length).toBeGreaterThan(first.length / 2);
  });

  it('reads every quantity in a unit of its role', () => {
    const quantities = questionnaire().filter((q) => q.answer === 'quantity' || q.answer === 'bond');
    expect(quantities.length).toBeGreaterThan(25);
    for (const { id, role = '', unit } of quantities) {
      const canonical = termOf(role)?.unit as CanonicalUnit;
      expect([id, parseQuantity(`1 ${unit}`, canonical) > 0]).toEqual([id, true]);
    }
  });
});

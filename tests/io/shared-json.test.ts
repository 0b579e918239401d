/** JSON in which parts that occur more than once are written once. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readSharedJson, readSurvey, sharedJson } from '../../src/io/index.js';
import { planInBritain } from '../support/plan.js';
import { surveyDocument } from '../support/surveys.js';

const value = fc.letrec((tie) => ({
  any: fc.oneof(
    { maxDepth: 5 },
    fc.jsonValue(),
    fc.array(tie('any'), { maxLength: 4 }),
    fc.dictionary(fc.oneof(fc.constantFrom('=', '==', 'name', '__proto__', '0'), fc.string()), tie('any'), {
      maxKeys: 4,
    }),
  ),
})).any;

describe('shared JSON', () => {
  it('gives back what was written, whatever it is', () => {
    fc.assert(
      fc.property(value, (v) => {
        const twice = [v, { of: v }, v];
        expect(readSharedJson(sharedJson(twice))).toEqual(JSON.parse(JSON.stringify(twice)));
      }),
      { numRuns: 1000 },
    );
  });

  it('keeps the order of keys, which tells one record from another', () => {
    const text = sharedJson([
      { a: 1, bcdefghijklmnopqrstuvwxyz: 2 },
      { bcdefghijklmnopqrstuvwxyz: 2, a: 1 },
    ]);
    expect((readSharedJson(text) as object[]).map((o) => Object.keys(o)[0])).toEqual([
      'a',
      'bcdefghijklmnopqrstuvwxyz',
    ]);
  });

  it('refuses what is no such text', () => {
    for (const text of [
      '',
      '{',
      '[]',
      'null',
      '{"format":"another/1","parts":[],"whole":1}',
      '{"format":"ohmwright-shared/1","parts":[{"=":0}],"whole":1}',
      '{"format":"ohmwright-shared/1","parts":[],"whole":{"=":"length"}}',
      '{"format":"ohmwright-shared/1","parts":[],"whole":{"=":3}}',
    ])
      expect(() => readSharedJson(text), text).toThrow(expect.objectContaining({ code: 'invalid-input' }));
  });

  it('carries the plan of a block of flats with 24 points in less than 3 MB, and the same plan again', () => {
    const plan = planInBritain(readSurvey(surveyDocument('flats')));
    const text = sharedJson(plan);
    expect(Buffer.byteLength(text)).toBeLessThan(3_000_000);
    expect(readSharedJson(text)).toEqual(JSON.parse(JSON.stringify(plan)));
  });
});

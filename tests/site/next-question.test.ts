import { describe, expect, it } from 'vitest';
import { adequacyOf } from '../../src/demand/index.js';
import { inGreatBritain } from '../../src/great-britain.js';
import { assess, overall } from '../../src/index.js';
import { readAssumptions, readSurvey } from '../../src/io/index.js';
import { nextQuestions, planOf, type Survey } from '../../src/site/index.js';
import { surveyDocument } from '../support/surveys.js';
import { changedAt } from '../trust/facts.js';

const by = inGreatBritain('2018+A2:2022');

type Loose = Record<string, unknown>;

/** The easy home with facts of the supply that nobody looked at. */
function without(...keys: readonly string[]): Survey {
  const home = surveyDocument('easy-home') as unknown as { supply: Loose };
  for (const key of keys) home.supply[key] = { unknown: true };
  return readSurvey(home as unknown as Loose);
}

describe('the next question', () => {
  it('is none where nothing is open', () => {
    const survey = readSurvey(surveyDocument('easy-home'));
    const [option] = planOf(survey, { ...by, lengths: false }).options;
    if (!option) throw new Error('no option');
    expect(option.overall.verdict).toBe('pass');
    expect(nextQuestions(survey, option, by)).toEqual([]);
  });

  it('is in words for whom it is to be put to, and says what each answer decides', () => {
    const survey = without('looped');
    const [option] = planOf(survey, { ...by, lengths: false, remedies: false }).options;
    if (!option) throw new Error('no option');
    const [first] = nextQuestions(survey, option, by);
    expect(first).toMatchObject({ fact: 'supply.looped', path: ['supply', 'looped'] });
    expect(first?.question).toMatch(/\?$/);
    // a looped service leaves what is not known: only "no" decides
    expect(first?.answers.find((a) => a.value === false)?.settles).toBeGreaterThan(0);
    expect(first?.answers.find((a) => a.value === true)?.settles).toBe(0);
  });

  it('is ranked as trying every answer by hand ranks it', () => {
    const survey = without('looped', 'externalImpedance', 'supplyNeutral');
    const [option] = planOf(survey, { ...by, lengths: false, remedies: false }).options;
    if (!option) throw new Error('no option');
    const questions = nextQuestions(survey, option, by, 100);
    const open = (installation: typeof option.installation) => {
      const premises = survey.about.premises === 'dwelling' ? 'dwelling' : 'other';
      const results = [
        ...adequacyOf(by.demand, installation, { premises, ...survey.demand }).results,
        ...option.points.flatMap((p) => assess(by.code, installation, p.run.id, survey.options).results),
      ];
      return overall(results).undetermined.length;
    };
    const before = open(option.installation);
    expect(questions.map((q) => q.fact).sort()).toEqual([
      'supply.externalImpedance',
      'supply.looped',
      'supply.supplyNeutral',
    ]);
    for (const q of questions) {
      for (const { value, settles } of q.answers)
        expect(before - open(changedAt(option.installation, q.path, { state: 'known', value }))).toBe(settles);
      expect(q.settles).toBe(Math.min(...q.answers.map((a) => a.settles)));
    }
    const least = questions.map((q) => q.settles);
    expect([...least].sort((a, b) => b - a)).toEqual(least);
  });
});

describe('a firm’s own assumptions', () => {
  const source = { document: 'house rule (invented)', provenance: 'common-practice' };
  const entry = { id: 'not-looped', fact: 'supply.looped', value: false, source, confirm: 'Ask the distributor.' };
  const set = { format: 'assumptions/1', id: 'ours', title: 'Ours', by: 'a firm (invented)', entries: [entry] };

  it('decide on condition what they are about, and nothing else', () => {
    const [option] = planOf(without('looped'), { ...by, assumptions: readAssumptions(set), lengths: false }).options;
    expect(option?.overall.verdict).toBe('conditional');
    expect(option?.conditions.map((c) => c.assumption)).toEqual(['ours/not-looped']);
  });

  it('are refused with every problem', () => {
    const wrong = {
      ...set,
      id: 'Ours!',
      entries: [
        { ...entry, fact: 'looped' },
        { ...entry, value: 'perhaps' },
      ],
    };
    expect(() => readAssumptions(wrong)).toThrow(/id.*fact/s);
    expect(() => readAssumptions({ ...set, entries: [{ ...entry, value: 'perhaps' }] })).toThrow(/true or false/);
  });
});

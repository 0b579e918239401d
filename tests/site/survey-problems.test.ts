import { expect, test } from 'vitest';
import { inGreatBritain } from '../../src/great-britain.js';
import { type Board, hasCode, known, type Run } from '../../src/index.js';
import { readSurvey } from '../../src/io/index.js';
import { planOf, type Survey } from '../../src/site/index.js';
import { garageFeeder } from '../hazards/residual-circuits.js';
import { hostileValues, placesOf, put } from '../support/hostile.js';
import { planInBritain } from '../support/plan.js';
import { surveyDocument } from '../support/surveys.js';

test('a plan of boards one behind another without end is refused in a sentence, and not worked on for minutes', () => {
  const survey = readSurvey(surveyDocument('easy-home'));
  let run: Run = garageFeeder({ id: 'last' });
  for (let i = 3000; i > 0; i--) {
    const board: Board = { kind: 'board', id: `board ${i}`, complete: known(true), runs: [run] };
    run = garageFeeder({ id: `feeder ${i}`, feeds: [board] });
  }
  const { board } = survey.installation;
  const deep = { ...survey, installation: { ...survey.installation, board: { ...board, runs: [...board.runs, run] } } };
  try {
    planInBritain(deep);
    throw new Error('is not refused');
  } catch (error) {
    if (!hasCode(error, 'invalid-input')) throw error;
    expect(error.detail.problems.map((p) => p.message)).toEqual([
      'not covered: more than 100 boards one behind another',
    ]);
  }
});

/** The rules do not follow what a damaged survey says of its edition. */
const plan = (survey: Survey) => planOf(survey, { ...inGreatBritain('2018+A2:2022'), remedies: false, lengths: false });

test('whatever stands at whatever place beside the installation, the survey is planned, or refused with its place', () => {
  const { installation, ...survey } = readSurvey(surveyDocument('easy-home'));
  const raw: string[] = [];
  let refused = 0;
  for (const path of placesOf(survey))
    for (const value of hostileValues)
      try {
        plan({ ...put(survey, path, value), installation });
      } catch (error) {
        if (hasCode(error, 'invalid-input') || hasCode(error, 'not-covered')) refused++;
        else raw.push(`${path.join('.')}: ${error}`);
      }
  expect(raw).toEqual([]);
  expect(refused).toBeGreaterThan(500);
});

test('what is said about the survey itself is refused with its place', () => {
  const survey = readSurvey(surveyDocument('easy-home'));
  const problems = (change: object) => {
    try {
      plan({ ...survey, ...change } as Survey);
      return [];
    } catch (error) {
      if (!hasCode(error, 'invalid-input')) throw error;
      return error.detail.problems.map(({ path, id }) => `${path.join('.')}: ${id}`);
    }
  };
  const { title: _, ...about } = survey.about;
  expect(problems({ about })).toEqual(['about.title: missing']);
  expect(problems({ about: { ...survey.about, date: '1.12.2026', premises: 'castle' } })).toEqual([
    'about.date: not-a-day',
    'about.premises: not-allowed',
  ]);
  expect(problems({ work: { ...survey.work, travelMinutes: -5, electrode: 'yes', supplyChange: 'more' } })).toEqual([
    'work.electrode: wrong-kind',
    'work.supplyChange: not-allowed',
    'work.travelMinutes: out-of-range',
  ]);
  expect(problems({ code: { id: 'BS 7671' } })).toEqual(['code.edition: missing']);
  expect(problems({})).toEqual([]);
});

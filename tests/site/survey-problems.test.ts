import { expect, test } from 'vitest';
import { type Board, hasCode, known, type Run } from '../../src/index.js';
import { readSurvey } from '../../src/io/index.js';
import { garageFeeder } from '../hazards/residual-circuits.js';
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

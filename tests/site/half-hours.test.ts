import { expect, test } from 'vitest';
import { ordinaryHome } from '../../src/great-britain.js';
import { readSurvey } from '../../src/io/index.js';
import { type Change, changedSurvey } from '../hazards/hazard.js';
import { planInBritain } from '../support/plan.js';

/** Larch Cottage without what its meter saw, what is not known taken from an ordinary home. */
const asWanted = (...changes: Change[]) => {
  const survey = readSurvey(
    changedSurvey('easy-home', [['supply.meteredDemand', undefined], ['demand', undefined], ...changes]),
  );
  const options = { sheets: 'none', lengths: false, limits: false, assumptions: ordinaryHome } as const;
  return planInBritain(survey, options).options.find((o) => o.id === 'as-wanted');
};
const halfHour = 'ordinary-home/largest-half-hour-45';

test('not where nobody says that everything is listed: what is not listed may be the largest of all', () => {
  const listed = asWanted(['supply.cutOut.rating', '100 A']);
  expect(listed?.overall.verdict).toBe('conditional');
  expect(listed?.conditions.map((c) => c.assumption)).toContain(halfHour);
  const open = asWanted(['supply.cutOut.rating', '100 A'], ['board.complete', undefined]);
  expect(open?.overall.verdict).toBe('not-determined');
  expect(open?.conditions.map((c) => c.assumption)).not.toContain(halfHour);
});

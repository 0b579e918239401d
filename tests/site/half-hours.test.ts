import { expect, test } from 'vitest';
import { ordinaryHome } from '../../src/great-britain.js';
import { readSurvey } from '../../src/io/index.js';
import { type Change, changedSurvey } from '../hazards/hazard.js';
import { planInBritain } from '../support/plan.js';
import type { Json } from '../support/surveys.js';

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

test('not where an appliance takes nobody knows what: it may be more than all that is known', () => {
  const shower = (current: Json): Change => [
    'board.runs.4',
    {
      id: 'shower',
      lines: ['L1'],
      existing: true,
      device: { kind: { standard: 'EN 60898', type: 'B' }, rating: '50 A', breakingCapacity: '6 kA' },
      feeds: [{ kind: 'load', id: 'shower unit', purpose: 'instantaneous-water-heating', current, lines: ['L1'] }],
    },
  ];
  const used = (current: Json) =>
    asWanted(['supply.cutOut.rating', '100 A'], shower(current))?.conditions.map((c) => c.assumption);
  expect(used('37 A')).toContain(halfHour);
  expect(used({ unknown: 'rating plate' })).not.toContain(halfHour);
});

/** Over drawn jobs: what is offered is what comes of it, and conditions are sharp. */
import { describe, expect, it } from 'vitest';
import { inGreatBritain, ordinaryHome } from '../../../src/great-britain.js';
import { assess } from '../../../src/index.js';
import { withAssumption } from '../../../src/installation/index.js';
import { readSurvey } from '../../../src/io/index.js';
import { nextQuestions, type OptionPlan, settle, withChanges } from '../../../src/site/index.js';
import { surveyOf } from '../../jobs/base.js';
import { wholePlanInBritain } from '../../support/plan.js';
import { seedOf } from '../../support/seed.js';
import { drawnJobs } from '../drawn-jobs.js';

const brief = { sheets: 'none', lengths: false } as const;
const asWanted = (options: readonly OptionPlan[]) => options.find((o) => o.id === 'as-wanted');

describe('an offer', () => {
  const jobs = drawnJobs(2, 'measured', seedOf(15));
  const kinds = new Set<string>();
  let offers = 0;
  let combined = 0;

  it.each(jobs.map((job, i) => [`${i} ${job.faults.join(', ')}`, job] as const))(
    'of %s: applied to the survey it gives the verdict and the way to the operator that were offered',
    (name, { survey: short }) => {
      const survey = readSurvey(surveyOf(name, short));
      const plan = wholePlanInBritain(survey, brief);
      for (const offer of plan.remedies) {
        const told = offer.remedies.map((r) => r.what).join('; ');
        const then = asWanted(
          wholePlanInBritain(withChanges(survey, offer.changes), { ...brief, remedies: false }).options,
        );
        expect([told, then?.overall.verdict], name).toEqual([told, offer.verdict]);
        expect([told, then?.notification.decision.route], name).toEqual([told, offer.route]);
        expect(offer.remedies.length, told).toBeGreaterThan(0);
        expect(offer.changes.length, told).toBeGreaterThan(0);
        offers += 1;
        if (offer.remedies.length > 1) combined += 1;
        for (const r of offer.remedies) kinds.add(r.id);
      }
    },
    60_000,
  );

  it('was made in many kinds, alone and together', () => {
    expect(offers).toBeGreaterThan(jobs.length / 2);
    expect(combined).toBeGreaterThan(5);
    expect([...kinds].sort()).toEqual(expect.arrayContaining(drawn));
  });
});

/** Remedies that the drawn jobs have to lead to; the others have cases of their own beside this file. */
const drawn = [
  'charge-point-earthing',
  'direct-current-detection',
  'double-pole',
  'earthing-conductor',
  'larger-fuse-and-limiter',
  'main-bonding',
  'main-switch',
  'residual-rated-current',
  'residual-type-a',
  'second-board',
  'sound-cut-out',
  'surge-protection',
  'tails',
];

describe('what passes on conditions', () => {
  const by = { ...inGreatBritain('2018+A2:2022'), assumptions: ordinaryHome, ...brief } as const;
  const jobs = drawnJobs(1, 'by photograph', seedOf(151));
  const count = { conditional: 0, ends: 0, soft: 0, undone: 0, answers: 0 };

  it.each(jobs.map((job, i) => [`${i} ${job.faults.join(', ')}`, job] as const))(
    '%s: its conditions are sharp, and the next question says of each answer whether the option stands',
    (name, { survey: short }) => {
      const survey = readSurvey(surveyOf(name, short));
      const plan = wholePlanInBritain(survey, by);
      const [best] = plan.options;
      if (best?.overall.verdict !== 'conditional') return;
      count.conditional += 1;
      for (const { assumption, value, atLeast, atMost } of best.conditions)
        for (const limit of [atLeast, atMost]) {
          if (!limit) continue;
          const at = (found: number) =>
            assess(
              by.code,
              withAssumption(best.installation, assumption, { state: 'known', value: found, assumed: assumption }),
              limit.run,
              survey.options,
            ).overall;
          const advised = (found: number) => at(found).advice.some((r) => r.title === limit.because);
          const told = `${name}: ${assumption}, ${limit.value} then ${limit.beyond}`;
          expect([told, ['pass', 'conditional'].includes(at(limit.value).verdict)]).toEqual([told, true]);
          if (limit.advice) {
            expect([told, advised(limit.value), advised(limit.beyond)]).toEqual([told, false, true]);
            count.soft += 1;
          } else expect([told, ['fail', 'not-determined'].includes(at(limit.beyond).verdict)]).toEqual([told, true]);
          // what was assumed lies between them
          if (limit === atLeast) expect(limit.value).toBeLessThanOrEqual(value as number);
          else if (typeof value === 'number') expect(limit.value).toBeGreaterThanOrEqual(value);
          count.ends += 1;
        }
      const questions = nextQuestions(survey, best, by, 100);
      // every condition that can be answered is asked
      const asked = questions.map((q) => q.assumption);
      expect(new Set(asked).size).toBe(asked.length);
      expect(best.conditions.map((c) => c.assumption)).toEqual(expect.arrayContaining(asked));
      // by the second document, which finds all of it anew
      for (const q of questions.slice(0, 2))
        for (const { value, verdict } of [...q.answers.slice(0, 1), ...q.answers.slice(-1)]) {
          const found = settle(
            survey,
            { ...plan, options: [best] },
            [{ assumption: q.assumption as string, value, by: 'tried' }],
            { ...by, remedies: false, limits: false },
          );
          const told = `${name}: ${q.assumption} ${JSON.stringify(value)}`;
          expect([told, found.stands]).toEqual([told, verdict === 'conditional' || verdict === 'pass']);
          count.answers += 1;
        }
      const undone = (q: (typeof questions)[number]) =>
        q.answers.some((a) => a.verdict !== 'conditional' && a.verdict !== 'pass');
      for (const q of questions) expect([q.assumption, q.decides]).toEqual([q.assumption, undone(q)]);
      count.undone += questions.filter(undone).length;
      const order = questions.map((q) => [Number(q.decides), Number(q.whom === 'customer'), q.settles] as const);
      expect(order).toEqual([...order].sort((a, b) => b[0] - a[0] || b[1] - a[1] || b[2] - a[2]));
    },
    120_000,
  );

  it('was met often enough', () => {
    expect(count.conditional).toBeGreaterThan(jobs.length / 2);
    expect(count.ends).toBeGreaterThan(20);
    expect(count.soft).toBeGreaterThan(0);
    expect(count.undone).toBeGreaterThan(10);
    expect(count.answers).toBeGreaterThan(30);
  });
});

/** Every job is planned and compared with the decision that was written before. `docs/jobs.md` is made here. After a change: `npm run generated`. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { inGreatBritain } from '../../src/great-britain.js';
import { readSurvey } from '../../src/io/index.js';
import { nextQuestions } from '../../src/site/index.js';
import type { Json } from '../support/surveys.js';
import { type ShortSurvey, surveyOf } from './base.js';
import { differences, plannedJob } from './compare.js';
import { conditionKeys, type Job, jobs, questionKeys, remedyKeys } from './jobs.js';
import { jobsPage, type NotExpressible } from './page.js';

const plans = new Map<string, ReturnType<typeof plannedJob>>();
const planOfJob = (job: Job) => {
  const plan = plans.get(job.name) ?? plannedJob(job);
  plans.set(job.name, plan);
  return plan;
};

it('has at least sixty jobs, each told, decided and reasoned in words that are known', () => {
  expect(jobs.length).toBeGreaterThanOrEqual(60);
  for (const { name, story, source, decision } of jobs) {
    expect(story.length, name).toBeGreaterThan(40);
    expect(source, name).not.toBe('');
    expect(decision.reasons, name).not.toEqual([]);
    expect(Object.keys(decision.next).length, name).toBeLessThanOrEqual(1);
    expect(remedyKeys, name).toEqual(expect.arrayContaining(Object.keys(decision.remedies)));
    expect(conditionKeys, name).toEqual(expect.arrayContaining(Object.keys(decision.conditions)));
    expect(questionKeys, name).toEqual(expect.arrayContaining(Object.keys(decision.next)));
    // what passes on conditions says which, what is open says what to ask
    if (decision.verdict === 'conditional') expect(decision.conditions, name).not.toEqual({});
    if (decision.verdict === 'not-determined') expect(decision.next, name).not.toEqual({});
    if (decision.verdict === 'fail') expect(decision.remedies, name).not.toEqual({});
  }
});

it.each(jobs.map((job) => [job.name, job] as const))(
  '%s: the plan says what was decided, but for what is listed',
  (_, job) => {
    const found = differences(job, planOfJob(job));
    // a difference that is gone has to leave the list as well
    expect(found.map(([what]) => what).sort(), JSON.stringify(found)).toEqual(Object.keys(job.differs ?? {}).sort());
  },
);

const commonest = jobs.filter(({ name }) => Number.parseInt(name, 10) <= 10);
const unseen = { unknown: 'not on the pictures' };
/** What pictures often do not show either, by what is left out of the survey then. */
const leftOut: Readonly<Record<string, Partial<Record<'supply' | 'board' | 'work', Record<string, Json>>>>> = {
  nothing: {},
  'the fuse': { supply: { cutOut: { kind: unseen, rating: unseen } } },
  'how it is earthed': { supply: { system: unseen, earthingConductorLaid: unseen } },
  'tails and main switch': {
    supply: { tails: unseen },
    board: { mainSwitch: { rating: unseen, noFuseAhead: unseen } },
  },
  'bonding and earthing conductor': {
    supply: { earthingConductor: unseen, bonding: [{ what: 'water', area: unseen }] },
  },
  'whether it is looped, and the cut-out': { supply: { looped: unseen, cutOutSound: unseen } },
  'the board': {
    board: { spareWays: unseen, surgeProtection: unseen, complete: unseen, rating: unseen },
    work: { newEnclosure: unseen },
  },
};
const houses = commonest.flatMap((job, i) =>
  Object.keys(leftOut)
    // each house whole, and with three of them left out, all of them by turns
    .filter((_, k) => k === 0 || (k + i) % 2 === 0)
    .map((what) => [job.name, what, job] as const),
);

it.each(houses)(
  '%s by photograph only, %s unseen besides: it passes on conditions, or a question is asked that decides',
  (_, what, job) => {
    const { supply, board, work } = leftOut[what] ?? {};
    const survey: ShortSurvey = {
      ...job.survey,
      supply: { ...job.survey.supply, ...supply },
      board: { ...job.survey.board, ...board },
      work: { ...job.survey.work, ...work },
    };
    const plan = what === 'nothing' ? planOfJob(job) : plannedJob({ ...job, survey });
    if ('refused' in plan) throw new Error(plan.refused);
    const [best] = plan.options;
    const verdict = best?.overall.verdict ?? 'none';
    expect(['pass', 'conditional', 'not-determined']).toContain(verdict);
    if (!best || verdict !== 'not-determined') return;
    const read = readSurvey(surveyOf(job.title, survey));
    const [first] = nextQuestions(read, best, inGreatBritain('2018+A2:2022'), 1);
    // what the customer, the operator or a visit can tell, and what it would settle; or what has to be measured
    const settles = first?.answers.some((a) => a.settles > 0) ?? false;
    // or what comes before a measurement: nobody can say of a demand what it leaves before all circuits are seen
    const leads = first?.fact === 'board.complete';
    expect([best.id, settles || leads || (best.measure ?? []).length > 0]).toEqual([best.id, true]);
  },
);

it('the page of jobs', async () => {
  const file = new URL('../../docs/jobs/not-expressible.json', import.meta.url);
  const others = JSON.parse(readFileSync(file, 'utf8')) as readonly NotExpressible[];
  const page = jobsPage(
    jobs.map((job) => ({ job, differences: differences(job, planOfJob(job)) })),
    others,
  );
  await expect(page).toMatchFileSnapshot('../../docs/jobs.md');
});

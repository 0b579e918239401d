/** Every job is planned and compared with the decision that was written before. `docs/jobs.md` is made here. After a change: `npm run generated`. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
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

it.each(jobs.filter(({ name }) => Number(name.slice(0, 2)) <= 10).map((job) => [job.name, job] as const))(
  '%s, surveyed by photograph only, is not left without an answer: it passes on conditions, or what decides is asked',
  (_, job) => {
    const plan = planOfJob(job);
    const best = 'refused' in plan ? undefined : plan.options[0];
    expect(best?.overall.verdict).not.toBe('fail');
    const asks = (best?.measure ?? []).length > 0 || best?.unknown.some((u) => u.decides);
    expect(['pass', 'conditional'].includes(best?.overall.verdict ?? '') || asks).toBe(true);
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

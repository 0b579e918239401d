import type { differences } from './compare.js';
import type { Job } from './jobs.js';

/** A published job that a survey cannot express. */
export interface NotExpressible {
  readonly job: string;
  readonly source: string;
  readonly because: string;
}
interface Compared {
  readonly job: Job;
  readonly differences: ReturnType<typeof differences>;
}

const listed = (title: string, of: Readonly<Record<string, string>>): readonly string[] =>
  Object.keys(of).length === 0
    ? []
    : [
        `- **${title}:** ${Object.entries(of)
          .map(([key, words]) => `${words} (\`${key}\`)`)
          .join('; ')}`,
      ];

function jobLines({ job, differences: found }: Compared): readonly string[] {
  const { decision, story, source, corrected = {}, differs = {} } = job;
  const { cable, device } = decision;
  const built = [
    ...(decision.option ? [`\`${decision.option}\``] : []),
    ...(cable ? [`${cable.area[0]} ${cable.kind}`] : []),
    ...(device ? [`${device.rating[0]}, curve ${device.curve}`] : []),
    ...(decision.earthing ? [`\`${decision.earthing}\``] : []),
    ...(decision.operator ? [`operator: \`${decision.operator}\``] : []),
  ];
  return [
    '',
    `### ${job.name.split('-', 1)[0]} ${job.title}`,
    '',
    story,
    '',
    `- **Source:** ${source}`,
    `- **Decided:** ${decision.verdict}; ${built.join('; ')}`,
    ...listed('Put right', decision.remedies),
    ...listed('Confirmed on site', decision.conditions),
    ...listed('Asked next', decision.next),
    ...decision.reasons.map((r, i) => (i === 0 ? `- **Because:** ${r}` : `- ${r}`)),
    ...Object.entries(corrected).map(([what, why]) => `- **Corrected** (${what}): ${why}`),
    ...found.map(([what, , said]) => `- **The plan differs** (${what}): it says ${said}. ${differs[what] ?? ''}`),
  ];
}

/** `docs/jobs.md`: the jobs, what was decided, and where the plan says something else. */
export function jobsPage(compared: readonly Compared[], others: readonly NotExpressible[]): string {
  const same = compared.filter((c) => c.differences.length === 0).length;
  const single = compared.reduce((n, c) => n + c.differences.length, 0);
  return `${[
    '# Everyday jobs, decided by hand',
    '',
    `${compared.length} jobs as they come in, each with what a competent electrician decides and why, written down before the survey was planned,`,
    `and compared with the plan whenever the tests run. In ${same} of them the plan says the same of option, verdict, cable, device,`,
    `earthing, operator's route, remedies, conditions and the next question; ${single} single points differ, each with its reason. Published jobs name their source, and what was`,
    'filled in around them is said; the others are common practice without a source. No decision was fitted to the plan: where one was',
    'wrong, it says so. The surveys, in short form, are the files in `docs/jobs`. Everything is by BS 7671:2018+A2:2022 where no other',
    'edition is named; the edition in force, local rules and licensed practice decide.',
    ...compared.flatMap(jobLines),
    '',
    '## Published jobs that a survey cannot express',
    '',
    ...others.map((o) => `- **${o.job}** (${o.source}): ${o.because}.`),
  ].join('\n')}\n`;
}

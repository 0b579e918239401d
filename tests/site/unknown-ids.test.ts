/** What a plan waits for has a place in the register, whose question finds it out. */
import { expect, test } from 'vitest';
import { questionOf } from '../../src/installation/index.js';
import { blankSurvey, readSurvey, usualDefaults } from '../../src/io/index.js';
import { planInBritain } from '../support/plan.js';
import { surveyDocument, surveyDocuments } from '../support/surveys.js';

/** What no survey holds: what is chosen, figured out, or asked of the owner about more than the installation. */
const none = [
  /^distance to metal/,
  /^whether more installations are planned nearby$/,
  /^whether overvoltage could be serious$/,
  /^discrimination with the device ahead$/,
  // figures that follow from others
  /^(cutOutClears|reactance)$/,
];

const surveys = [
  ['nothing known', blankSurvey('2026-09-21', '2018+A2:2022', usualDefaults)],
  ...Object.keys(surveyDocuments)
    .filter((name) => name !== 'flats')
    .map((name) => [name, surveyDocument(name)] as const),
] as const;

test.each(surveys)('%s', (name, document) => {
  const plan = planInBritain(readSurvey(document), { sheets: 'none', lengths: false });
  const unknown = plan.options.flatMap((o) => o.unknown);
  if (name === 'nothing known') expect(unknown.length).toBeGreaterThan(20);
  const nameless = unknown.filter((u) => !u.id && !none.some((words) => words.test(u.fact))).map((u) => u.fact);
  expect([...new Set(nameless)]).toEqual([]);
  for (const { fact, id } of unknown)
    if (id) expect([fact, id, questionOf(id) !== undefined]).toEqual([fact, id, true]);
});

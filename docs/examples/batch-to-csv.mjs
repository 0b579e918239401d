// An estimator's batch: a spreadsheet of brief surveys, one row each, or a folder of full surveys, to a spreadsheet of decisions.
// npx ohmwright batch jobs.csv decisions.csv [--defaults firm.json] [--prices prices.json] [--edition 2018+A2:2022]
// What nobody looked at is taken from the assumptions of an ordinary home, or from --assumptions FILE, and the decision rests on
// conditions then; --assumptions none takes nothing for granted.
// npx ohmwright batch folder-of-surveys decisions.csv [--prices prices.json]
import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { inGreatBritain, ordinaryHome } from 'ohmwright/great-britain';
import {
  csvText,
  parseSurvey,
  readAssumptions,
  readBriefRows,
  readDefaults,
  readPriceBook,
  usualDefaults,
} from 'ohmwright/io';
import { decisionHeadings, decisionRow } from 'ohmwright/report';
import { decisionOf, planOf } from 'ohmwright/site';

const USAGE =
  'usage: npx ohmwright batch jobs.csv [decisions.csv] [--defaults FILE] [--prices FILE] [--edition EDITION] [--assumptions FILE|none]';
const text = { type: 'string' };
const options = { defaults: text, prices: text, edition: text, assumptions: text };

/** What is asked for; an option that is none of these is told with those that are. */
function asked() {
  try {
    return parseArgs({ allowPositionals: true, options });
  } catch (error) {
    console.error(`${error.message.replace(/\. .*$/s, '')}.\n${USAGE}`);
    process.exit(1);
  }
}
const { values: given, positionals } = asked();
const [from, to = 'decisions.csv'] = positionals;

/** The text of a file, or its name with what is wrong with it. */
function textOf(file) {
  try {
    return readFileSync(file, 'utf8');
  } catch (error) {
    throw new Error(`${file} ${error.code === 'ENOENT' ? 'is not there' : `cannot be read: ${error.code}`}`);
  }
}
function json(file) {
  const written = textOf(file);
  try {
    return JSON.parse(written);
  } catch (error) {
    throw new Error(`${file} is no JSON: ${error.message}`);
  }
}

/** Jobs one after the other: a survey, or what is wrong with it. */
function jobs() {
  if (statSync(from, { throwIfNoEntry: false })?.isDirectory())
    return readdirSync(from)
      .filter((file) => file.endsWith('.json'))
      .sort()
      .map((file) => ({
        reference: file,
        read: () => ({ survey: parseSurvey(textOf(join(from, file))) }),
      }));
  const defaults = given.defaults ? readDefaults(json(given.defaults)) : usualDefaults;
  const same = given.edition ? { edition: given.edition } : {};
  const { rows, ignored } = readBriefRows(textOf(from), defaults, same);
  if (ignored.length > 0) console.error(`Nothing is read from the columns ${ignored.join(', ')}.`);
  return rows.map(({ reference, brief, problems }) => ({
    reference,
    read: () => {
      if (!brief) throw new Error(problems.map(({ path, message }) => `${path.join('.')}: ${message}`).join('; '));
      return brief;
    },
  }));
}

try {
  if (!from) throw new Error(USAGE);
  const book = given.prices && readPriceBook(json(given.prices));
  const assumptions =
    given.assumptions === undefined
      ? ordinaryHome
      : given.assumptions === 'none'
        ? undefined
        : readAssumptions(json(given.assumptions));
  const all = jobs();
  if (assumptions)
    console.error(`What nobody looked at is taken from ‘${assumptions.title}’, and has to be confirmed.`);
  const counts = {};
  let wrong;
  const rows = all.map(({ reference, read }, i) => {
    if (i > 0 && i % 10 === 0) console.error(`${i} of ${all.length}`);
    try {
      const { survey, questions } = read();
      // permitted lengths and limits take many assessments, and no column shows them
      const by = inGreatBritain(survey.code.edition);
      const plan = planOf(survey, {
        ...by,
        ...(assumptions && { assumptions }),
        lengths: false,
        limits: false,
        sheets: 'none',
      });
      const decision = decisionOf(plan, book);
      counts[decision.verdict] = (counts[decision.verdict] ?? 0) + 1;
      // what is outside of what is usual is asked about, whether it stood in a row or in a survey
      const odd = [...new Set([...(questions ?? []), ...plan.questions.map((q) => q.question)])];
      return decisionRow(reference, { decision, questions: odd });
    } catch (error) {
      counts.problem = (counts.problem ?? 0) + 1;
      wrong ??= `${reference}: ${error.message}`;
      return decisionRow(reference, { problem: error.message });
    }
  });
  writeFileSync(to, csvText([decisionHeadings(), ...rows]));
  const summary = Object.entries(counts).map(([verdict, count]) => `${count} ${verdict}`);
  console.log(`${rows.length} ${rows.length === 1 ? 'job' : 'jobs'}: ${summary.join(', ')}. Written to ${to}.`);
  if (wrong) console.error(`What is wrong stands in the last column; the first is ${wrong}`);
} catch (error) {
  console.error(error.message);
  process.exitCode = 1;
}

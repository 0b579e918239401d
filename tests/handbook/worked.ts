import { readFileSync } from 'node:fs';
import type { Formula, Relation } from '../../src/core/index.js';
import { formatIn, termOf } from '../../src/index.js';
import { readSurvey } from '../../src/io/index.js';
import type { CaseFile } from '../support/evidence.js';
import { planInBritain } from '../support/plan.js';
import type { PublishedCase } from '../support/published.js';
import { statedInputs } from './stated-inputs.js';
import { type Call, callsOf } from './trace.js';
import { escaped, provenanceWords, symbolOf } from './words.js';

/** One line of figures for a formula, and where the figures come from. */
interface Worked {
  readonly call: Call;
  readonly from: string;
}
/** The line that the handbook shows for a formula. */
export type WorkedLine = (f: Formula | Relation) => string;

const ranks: readonly PublishedCase['provenance'][] = ['two-sources', 'one-source', 'derived', 'memory'];

/** How good a case is as the example of a formula: lower is better. */
function rank(f: PublishedCase, call: Call, ours: number): number {
  const own = Math.abs(call.result - ours) <= 1e-9 * Math.abs(ours);
  const plain = Object.values(call.values).every((v) => v !== 0) && call.result !== 0;
  return (f.differs ? 100 : 0) + (own ? 0 : 20) + (plain ? 0 : 10) + ranks.indexOf(f.provenance);
}

const print = (value: number, unit: string): string => (unit === '1' || unit === '' ? `${value}` : `${value} ${unit}`);

/** The best published case of each formula that any case calls. */
function published(files: readonly CaseFile[]): ReadonlyMap<string, Worked> {
  const best = new Map<string, Worked & { readonly rank: number }>();
  for (const { cases } of files)
    for (const c of cases) {
      const { value: ours, calls } = callsOf(c.ours);
      for (const call of calls) {
        const at = rank(c, call, ours);
        if (at >= (best.get(call.id)?.rank ?? Number.POSITIVE_INFINITY)) continue;
        const named = c.exercises.includes(call.id);
        const printed = `${escaped(c.source.document)}, ${escaped(c.source.where)}, prints ${print(c.published, c.unit)} (${provenanceWords(c.provenance)})`;
        const result = print(Number(ours.toPrecision(5)), c.unit);
        const from = `${named ? 'Published case' : 'A step of the published case'}: ${escaped(c.about)}. ${printed}; ours is ${result}.${c.differs ? ` They differ: ${escaped(c.differs)}.` : ''}`;
        best.set(call.id, { call, from, rank: at });
      }
    }
  return best;
}

/** The first call of each formula when the invented surveys of the documentation are planned. */
function fromSurveys(root: string, names: readonly string[]): ReadonlyMap<string, Worked> {
  const first = new Map<string, Worked>();
  for (const name of names) {
    const text = readFileSync(`${root}docs/examples/surveys/${name}.json`, 'utf8');
    const { calls } = callsOf(() => planInBritain(readSurvey(JSON.parse(text))));
    const from = `Not published: a step of the plan for the invented survey \`${name}\`.`;
    for (const call of calls)
      if (!first.has(call.id) && Object.values(call.values).every((v) => v !== 0)) first.set(call.id, { call, from });
  }
  return first;
}

const amount = (name: string, value: number): string =>
  `${symbolOf(name)} = ${formatIn(value, termOf(name)?.unit ?? '', 6)}`;

/**
 * How to work out a line for any formula: a published case where there is one, else a plan of an invented survey, else
 * inputs stated for the purpose.
 * @param root folder of the project
 * @param files all files of published cases
 */
export function workedLines(root: string, files: readonly CaseFile[]): WorkedLine {
  const cases = published(files);
  const plans = fromSurveys(root, ['easy-home', 'tt-cottage', 'garage-submain']);
  return (f) => {
    const { call, from } = cases.get(f.id) ?? plans.get(f.id) ?? stated(f);
    const inputs = f.inputs.map((name) => amount(name, call.values[name] as number)).join(', ');
    const result = formatIn(call.result, termOf(f.output)?.unit ?? '', 5);
    return `${inputs} give ${symbolOf(f.output)} = ${result}. ${from}`;
  };
}

function stated(f: Formula | Relation): Worked {
  const values = statedInputs(f);
  const result = f(values as never);
  if (!Number.isFinite(result)) throw new Error(`tests/handbook/stated-inputs.ts: ${f.id} gives ${result}`);
  return {
    call: { id: f.id, values, result },
    from: 'Not published: inputs stated for this line, invented.',
  };
}

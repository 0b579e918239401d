import { own } from '../core/own.js';
import {
  factProblems,
  type Installation,
  isFeeder,
  isRecord,
  pathTo,
  problemAt,
  type Say,
  valueProblem,
  valueProblemId,
} from '../installation/index.js';
import { type Problem, shown } from '../units/index.js';
import type { AssessmentOptions } from './wiring-code.js';

/** Labels that options alone have. */
const labels = {
  dropTemperature: ['neighbours-at-full-load', 'group-at-same-load'],
  fuseEdition: ['2008', '2011'],
} as const;
const premisesKinds = [
  'dwelling',
  'multiple-occupation',
  'student-accommodation',
  'care-home',
  'higher-risk-residential',
  'other',
] as const;

/** What the plain options are: roles of the vocabulary, yes or no, or text. */
const plain: Readonly<Partial<Record<keyof AssessmentOptions, string>>> = {
  dropLimit: 'dropLimit',
  testTemperature: 'ambientTemperature',
  acceptMemoryFigures: 'yes',
  initialTemperature: 'initialTemperature',
  pointNeverAlone: 'text',
};
/** Temperatures of a conductor before the fault, °C: no colder than the ground in winter, no hotter than any cable is rated for; practice. */
const INITIAL: readonly [least: number, most: number] = [5, 105];
const structured: readonly (keyof AssessmentOptions)[] = [
  'feederDemand',
  'demandBeyond',
  'loadStates',
  'premises',
  'makersLetThrough',
];

function premisesProblems(premises: unknown, say: Say): undefined {
  if (!isRecord(premises)) return say([], `is ${shown(premises)}; an object is due`, 'wrong-kind');
  const { kind, ...rest } = premises;
  if (isRecord(kind) && kind.state === 'known') {
    if (!premisesKinds.includes(kind.value as never))
      say(['kind', 'value'], `is ${shown(kind.value)}; known are ${premisesKinds.join(', ')}`, 'not-allowed');
  } else if (!isRecord(kind) || kind.state !== 'unknown')
    say(['kind'], `is ${shown(kind)}; a fact is due: it is known or unknown`, 'wrong-kind');
  for (const key of ['overvoltageSerious', 'surgeProtectionDeclined', 'arcDetection'])
    if (rest[key] !== undefined) factProblems('yes', rest[key], (at, message, id) => say([key, ...at], message, id));
}

function statesProblems(states: unknown, say: Say): undefined {
  if (!Array.isArray(states)) return say([], `is ${shown(states)}; a list is due`, 'wrong-kind');
  for (const [i, state] of states.entries()) {
    if (!isRecord(state)) {
      say([i], `is ${shown(state)}; a state of load is due`, 'wrong-kind');
      continue;
    }
    const name = valueProblem('text', state.name);
    if (name) say([i, 'name'], name, valueProblemId('text', state.name));
    const { currents } = state;
    if (!Array.isArray(currents) || currents.length !== 3)
      say([i, 'currents'], 'must have three currents, for L1, L2 and L3', 'wrong-kind');
    else
      for (const [k, current] of currents.entries()) {
        const problem = valueProblem('lineCurrent1', current);
        if (problem) say([i, 'currents', k], problem, valueProblemId('lineCurrent1', current));
      }
  }
}

/** A let-through energy, A²s, beyond which it is a slip of the pen. */
const LARGEST_ENERGY = 1e12;
const inOrder = /* @__PURE__ */ new WeakSet<object>();
/** No choices: one record for all, since what is in order is kept in mind by record. */
export const noOptions: AssessmentOptions = {};

/** Declared demands of what is no feeder of the installation: nothing would be counted for them. */
export function feederProblems(installation: Installation, options: AssessmentOptions): readonly Problem[] {
  return (['feederDemand', 'demandBeyond'] as const).flatMap((key) => unfed(installation, options[key], key));
}

function unfed(installation: Installation, declared: unknown, key: string): readonly Problem[] {
  const names = isRecord(declared) ? Object.keys(declared) : [];
  return names.flatMap((name) => {
    const run = pathTo(installation, name)?.run;
    if (run && isFeeder(run)) return [];
    const what = run ? 'feeds no board' : 'is no run of the installation';
    return [problemAt(['options', key, name], `${shown(name)} ${what}: it has no demand to declare`)];
  });
}

function beyondProblems(declared: unknown, say: Say): void {
  if (!isRecord(declared)) {
    say([], `is ${shown(declared)}; an object is due`, 'wrong-kind');
    return;
  }
  for (const [run, list] of Object.entries(declared)) {
    if (!Array.isArray(list)) {
      say([run], `is ${shown(list)}; a list is due`, 'wrong-kind');
      continue;
    }
    list.forEach((entry: unknown, i) => {
      const { at, demand } = isRecord(entry) ? entry : {};
      const wrong = valueProblem('demand', demand);
      if (wrong) say([run, `${i}`, 'demand'], wrong, valueProblemId('demand', demand));
      const place = at === undefined ? undefined : valueProblem('length', at);
      if (place) say([run, `${i}`, 'at'], place, valueProblemId('length', at));
    });
  }
}

/** Everything for which options are refused, each with its path; what is in order is looked through once. */
export function optionProblems(options: AssessmentOptions): readonly Problem[] {
  if (!isRecord(options))
    return [{ path: ['options'], id: 'wrong-kind', message: `is ${shown(options)}; an object is due` }];
  if (inOrder.has(options)) return [];
  const problems: Problem[] = [];
  const say: Say = (path, message, id) => void problems.push(problemAt(['options', ...path], message, id));
  const within =
    (...root: string[]): Say =>
    (path, message, id) =>
      say([...root, ...path], message, id);
  for (const [key, value] of Object.entries(options)) {
    if (value === undefined) continue;
    const what = own<string>(plain, key);
    const list = own<readonly string[]>(labels, key);
    if (what) {
      const problem = valueProblem(what, value);
      if (problem) say([key], problem, valueProblemId(what, value));
      else if (key === 'initialTemperature' && !((value as number) >= INITIAL[0] && (value as number) <= INITIAL[1]))
        say([key], `is ${value} °C; it is from ${INITIAL[0]} to ${INITIAL[1]} °C`, 'out-of-range');
    } else if (list) {
      if (!list.includes(value as string))
        say([key], `is ${shown(value)}; known are ${list.join(', ')}`, 'not-allowed');
    } else if (!structured.includes(key as never)) say([key], 'is no option', 'unknown-key');
  }
  const { feederDemand, demandBeyond, loadStates, premises, makersLetThrough: energy } = options;
  if (energy !== undefined && !(typeof energy === 'number' && energy > 0 && energy <= LARGEST_ENERGY))
    say(['makersLetThrough'], `is ${shown(energy)}; it is a let-through energy above 0 A²s`, 'out-of-range');
  if (premises !== undefined) premisesProblems(premises, within('premises'));
  if (loadStates !== undefined) statesProblems(loadStates, within('loadStates'));
  if (feederDemand !== undefined) {
    if (isRecord(feederDemand))
      for (const [run, demand] of Object.entries(feederDemand)) {
        const problem = valueProblem('demand', demand);
        if (problem) say(['feederDemand', run], problem, valueProblemId('demand', demand));
      }
    else say(['feederDemand'], `is ${shown(feederDemand)}; an object is due`, 'wrong-kind');
  }
  if (demandBeyond !== undefined) beyondProblems(demandBeyond, within('demandBeyond'));
  if (problems.length === 0) inOrder.add(options);
  return problems;
}

import { own } from '../core/own.js';
import { type Problem, type ProblemId, shown } from '../units/index.js';
import { deniedIn } from './denied.js';
import { labels } from './labels.js';
import { type Field, shapes } from './shapes.js';
import { isRecord, valueProblem, valueProblemId } from './values.js';

export type Where = readonly (string | number)[];
type Shape = keyof typeof shapes;
/** Takes down a problem, at a place from where it is asked. */
export type Say = (at: Where, message: string, id?: ProblemId) => undefined;

/** A problem; whoever names nothing more precise says that it does not fit the rest. */
export const problemAt = (path: Where, message: string, id: ProblemId = 'does-not-fit'): Problem => ({
  path,
  id,
  message,
});

/** Records in which nothing was wrong, by their shape: a changed installation shares most of them with the one before. */
const sound = /* @__PURE__ */ new Map<string, WeakSet<object>>();

/** What is wrong with a fact. */
export function factProblems(what: string, fact: unknown, say: Say): undefined {
  const state = isRecord(fact) ? fact.state : undefined;
  const wrong = (key: string, value: unknown) => {
    // a count within a range is taken between its ends, where it need not be whole
    const problem = valueProblem(what, value, false);
    if (problem) say([key], problem, valueProblemId(what, value));
    return problem === undefined;
  };
  if (!isRecord(fact) || !['known', 'between', 'unknown'].includes(state as string))
    return say([], `is ${shown(fact)}; a fact is due: it is known, known within a range, or unknown`, 'wrong-kind');
  const { by, obtain, assumed } = fact;
  for (const [key, text] of [
    ['by', by],
    ['obtain', obtain],
    ['assumed', assumed],
  ] as const)
    if (text !== undefined && typeof text !== 'string') say([key], `is ${shown(text)}; it is text`, 'wrong-kind');
  if (state === 'known') wrong('value', fact.value);
  if (state !== 'between') return undefined;
  const { least, most } = fact;
  if (typeof least !== 'number' || typeof most !== 'number' || own(labels, what))
    return say([], 'is a range; only a quantity can lie between two values', 'wrong-kind');
  if (wrong('least', least) && wrong('most', most) && least > most)
    say([], 'is a range whose ends are the wrong way round', 'wrong-order');
}

/** Whether nothing is said while something is looked through. */
export function cleanly(say: Say, look: (note: Say) => void): boolean {
  let clean = true;
  look((at, message, id) => {
    clean = false;
    return say(at, message, id);
  });
  return clean;
}

/** What is wrong with a record, apart from what it is held against. */
export function recordProblems(shape: string, value: unknown, say: Say): undefined {
  if (!isRecord(value)) return say([], `is ${shown(value)}; ${shape} is due`, 'wrong-kind');
  const known = sound.get(shape) ?? new WeakSet();
  sound.set(shape, known);
  if (known.has(value)) return undefined;
  if (cleanly(say, (note) => problemsOf(shape as Shape, value, note))) known.add(value);
}

function problemsOf(shape: Shape, value: Readonly<Record<string, unknown>>, note: Say): void {
  const plain = (what: string, item: unknown, at: Where) => {
    if (own(shapes, what))
      return recordProblems(what, item, (inner, message, id) => note([...at, ...inner], message, id));
    const problem = valueProblem(what, item);
    if (problem) note(at, problem, valueProblemId(what, item));
  };
  for (const [key, [how, what]] of Object.entries<Field>(shapes[shape])) {
    const item = value[key];
    if (item === undefined) {
      if (!how.endsWith('?')) note([key], 'is missing', 'missing');
    } else if (how.startsWith('fact')) factProblems(what, item, (at, message, id) => note([key, ...at], message, id));
    else if (how.startsWith('plain')) plain(what, item, [key]);
    else if (!Array.isArray(item)) note([key], `is ${shown(item)}; a list is due`, 'wrong-kind');
    else for (let i = 0; i < item.length; i++) plain(what, item[i], [key, i]);
  }
  const denied = deniedIn(value);
  if (denied) note([denied[0]], `says that there is ${denied[1]}, and one is described: one of the two is wrong`);
}

/** How a problem begins that is none of the input: what it asks for is well said, and not covered. */
export const NOT_COVERED = 'not covered: ';

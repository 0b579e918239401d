import type * as z from 'zod';
import { factRegister, fieldOf, placeOf } from '../installation/index.js';
import { type Problem, pathText } from '../units/index.js';
import { problemsOf, valueAt } from './problems.js';

type Path = (string | number)[];

/** What reading a document came to. */
export interface ReadAll<T> {
  /** What was read: of a document with problems, as it would be without them; absent where that cannot be told. */
  readonly data?: T;
  readonly problems: readonly Problem[];
  /** Whether a further problem stands at a place where none was found yet. */
  readonly among: (problem: Problem) => boolean;
}

const ROUNDS = 12;
/** Somebody who has so many problems to mend needs no further ones. */
const ENOUGH = 200;
const within = (path: Problem['path'], of: Problem['path']) => of.every((key, i) => path[i] === key);

/** The field that a problem is of: without what is inside a fact, or the place in a list of plain values. */
function fieldPath(path: Problem['path']): Path {
  const at = [...path];
  while (at.length > 0 && (typeof at.at(-1) === 'number' || !placeOf(pathText(at)))) at.pop();
  return at;
}

/** Something that can stand in a field, so that the rest can be read: nothing is made of it. */
function standIn(path: Path): unknown {
  const id = placeOf(pathText(path))?.id ?? '';
  const [record = '', field = ''] = id.split('.');
  const [how = 'plain', what = ''] = fieldOf(record, field) ?? [];
  if (how.startsWith('fact')) return { unknown: true };
  if (how.endsWith('?')) return undefined;
  if (how === 'list') return [];
  const { example, choices } = factRegister().get(id) ?? {};
  const choice = choices?.find((c) => String(c.value) === example);
  return choice ? choice.value : (example ?? (what === 'yes' ? false : {}));
}

function put(document: unknown, path: Path, value: unknown): void {
  const holder = valueAt(document, path.slice(0, -1));
  const key = path.at(-1);
  if (typeof holder !== 'object' || holder === null || key === undefined) return;
  if (value === undefined) delete (holder as Record<string | number, unknown>)[key];
  else (holder as Record<string | number, unknown>)[key] = value;
}

/**
 * Reads a document with every problem at once. A schema stops at the first layer of problems: what it found is put right
 * in a copy, by something that can stand there, and the copy is read again, until nothing new is found.
 */
export function readAll<T>(schema: z.ZodType<T>, document: unknown): ReadAll<T> {
  const first = schema.safeParse(document);
  if (first.success) return { data: first.data, problems: [], among: () => true };
  const copy: unknown = document === undefined ? undefined : JSON.parse(JSON.stringify(document));
  const problems: Problem[] = [];
  const mended: Path[] = [];
  const among = ({ path }: Problem) => !mended.some((m) => within(path, m));
  let { error } = first;
  for (let round = 0; round < ROUNDS; round++) {
    const fresh = problemsOf(error, copy).flatMap((p, i) => (among(p) ? [{ ...p, issue: error.issues[i] }] : []));
    if (fresh.length === 0 || problems.length + fresh.length > ENOUGH) {
      problems.push(...fresh.map(({ issue: _, ...problem }) => problem));
      break;
    }
    for (const { issue, ...problem } of fresh) {
      problems.push(problem);
      if (issue?.code === 'unrecognized_keys') {
        for (const key of issue.keys) put(copy, [...problem.path, key], undefined);
        continue;
      }
      const at = fieldPath(problem.path);
      mended.push(at.length > 0 ? at : [...problem.path]);
      put(copy, at, standIn(at));
    }
    const again = schema.safeParse(copy);
    if (again.success) return { data: again.data, problems, among };
    error = again.error;
  }
  return { problems, among };
}

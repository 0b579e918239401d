import { invalidInput, type Problem } from '../units/index.js';

/** Name of the form, with its version: what is written once stands in `parts`, and `{ "=": n }` in its places. */
const FORMAT = 'ohmwright-shared/1';
/** What is shorter than its mark and its place among the parts together is written again. */
const SHORT = 24;

type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

type Node = readonly Json[] | { readonly [key: string]: Json };
const isNode = (value: Json): value is Node => typeof value === 'object' && value !== null;
/** A key that would be taken for a mark has one sign more. */
const escaped = (key: string): string => (/^=+$/.test(key) ? `=${key}` : key);
const unescaped = (key: string): string => (/^==+$/.test(key) ? key.slice(1) : key);

const isShareable = (value: Json): boolean => isNode(value) || (typeof value === 'string' && value.length > SHORT);
const textOf = (v: Node, of: (inner: Json) => string, name: (key: string) => string): string =>
  Array.isArray(v)
    ? `[${v.map(of).join()}]`
    : `{${Object.entries(v).map(([k, inner]) => `${JSON.stringify(name(k))}:${of(inner)}`)}}`;

/** Every different list, record and long text of a value, with how often another one holds it. */
interface Met {
  readonly of: Json;
  uses: number;
  text?: string;
}

/**
 * JSON of a plan or of anything else that is plain, in which a part that occurs more than once is written once: the points
 * of a car park that are alike share most of what is said of them.
 * @param value plain data, such as a plan
 * @returns the text, to be read by `readSharedJson`
 * @example
 * ```ts
 * import { readSharedJson, sharedJson } from 'ohmwright/io';
 *
 * const bay = { cable: '6 mm² three-core', length: '12 m', device: 'RCBO 32 A' };
 * const text = sharedJson([bay, bay, bay]);
 * text.length < JSON.stringify([bay, bay, bay]).length; // => true
 * readSharedJson(text); // => [bay, bay, bay]
 * ```
 */
export function sharedJson(value: unknown): string {
  const numbers = new Map<string, number>();
  const met: Met[] = [];
  const places = new Map<Json, number>();
  /** What a value is known by among the others: its text, or the number of one that may be shared. */
  const known = (v: Json): string => {
    if (!isShareable(v)) return JSON.stringify(v);
    const key = isNode(v) ? textOf(v, known, (k) => k) : JSON.stringify(v);
    let n = numbers.get(key);
    if (n === undefined) {
      n = met.push({ of: v, uses: 0 }) - 1;
      numbers.set(key, n);
      if (isNode(v))
        for (const inner of Object.values(v)) if (isShareable(inner)) (met[places.get(inner) as number] as Met).uses++;
    }
    places.set(v, n);
    return `#${n}`;
  };
  const plain = JSON.parse(JSON.stringify(value) ?? 'null') as Json;
  known(plain);
  const parts: string[] = [];
  const written = (v: Json): string =>
    isShareable(v) ? ((met[places.get(v) as number] as Met).text as string) : JSON.stringify(v);
  // what a list or record holds was met before it
  for (const one of met) {
    const text = isNode(one.of) ? textOf(one.of, written, escaped) : JSON.stringify(one.of);
    one.text = one.uses > 1 && text.length > SHORT ? `{"=":${parts.push(text) - 1}}` : text;
  }
  return `{"format":${JSON.stringify(FORMAT)},"parts":[${parts.join()}],"whole":${written(plain)}}`;
}

/**
 * Plain data from the text that `sharedJson` wrote; parts that were written once are one object.
 * @param text the text
 * @returns the data
 * @throws CalculationError `invalid-input` where the text is no JSON, is of another form, or names a part that is not there
 * @example
 * ```ts
 * import { readSharedJson, sharedJson } from 'ohmwright/io';
 *
 * readSharedJson(sharedJson({ supply: ['TN-S', 'TN-S'] })); // => { supply: ['TN-S', 'TN-S'] }
 * ```
 */
export function readSharedJson(text: string): unknown {
  const refuse = (path: Problem['path'], message: string): never => {
    throw invalidInput('the text', [{ path, message }]);
  };
  let read: Json;
  try {
    read = JSON.parse(text) as Json;
  } catch {
    return refuse([], 'is no JSON');
  }
  const { format, parts, whole } = (isNode(read) ? read : {}) as { readonly [key: string]: Json };
  if (format !== FORMAT || !Array.isArray(parts) || whole === undefined)
    return refuse(['format'], `is ${JSON.stringify(format)}; '${FORMAT}' is due, with parts and the whole`);
  const made: Json[] = [];
  const joined = (v: Json, path: Problem['path']): Json => {
    if (!isNode(v)) return v;
    if (Array.isArray(v)) return v.map((inner) => joined(inner as Json, path));
    const entries = Object.entries(v);
    const [first] = entries;
    if (entries.length === 1 && first?.[0] === '=') {
      const part = Number.isInteger(first[1]) ? made[first[1] as number] : undefined;
      return part === undefined ? refuse(path, `names part ${String(first[1])}, which does not stand before it`) : part;
    }
    return Object.fromEntries(entries.map(([k, inner]) => [unescaped(k), joined(inner, path)]));
  };
  for (const [i, part] of (parts as readonly Json[]).entries()) made.push(joined(part, ['parts', i]));
  return joined(whole, ['whole']);
}

import fc from 'fast-check';
import { surveyJsonSchema } from '../../src/io/index.js';
import { arbitraryInstallation } from '../../src/testing/index.js';
import type { Json } from '../support/surveys.js';
import { documentOf } from './document-of.js';
import { type Random, randomOf } from './random.js';

type Object_ = { [key: string]: Json };
type Path = readonly (string | number)[];

/** A word that occurs in no report of its own accord: where it stands, a hostile text has arrived. */
export const MARK = 'zqx';

/** Texts that try to become markup, code, a formula, a terminal command, another direction of writing, or a property. */
export const hostileTexts: readonly string[] = [
  `<script>${MARK}()</script>`,
  `"><img src=x onerror=${MARK}()>`,
  `' onload='${MARK}`,
  `</title><script>${MARK}()</script>`,
  `</style><${MARK}>`,
  `</svg><${MARK}/>`,
  `]]><${MARK}>`,
  `--><${MARK}>`,
  `<!-- ${MARK}`,
  `<${MARK}`,
  `&lt;${MARK}&gt;`,
  `&#60;${MARK}&#62;`,
  `[${MARK}](javascript:${MARK})`,
  `![${MARK}](http://example.invalid/${MARK})`,
  `<http://example.invalid/${MARK}>`,
  `\`${MARK}\``,
  `# ${MARK}`,
  `- ${MARK}`,
  `1. ${MARK}`,
  `> ${MARK}`,
  `=== ${MARK}`,
  `| ${MARK} | ${MARK} |`,
  `\n\n# ${MARK}\n\n<${MARK}>`,
  `    ${MARK}`,
  `***${MARK}***`,
  `[${MARK}]: http://example.invalid`,
  `\u202e${MARK}`,
  `\u0000${MARK}`,
  `\u001b[31m${MARK}`,
  `\ud800${MARK}`,
  `\ufffe${MARK}`,
  `\u2028${MARK}`,
  `=${MARK}()`,
  `\${${MARK}} {{${MARK}}} %s`,
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'hasOwnProperty',
  'valueOf',
  '$& $1 $$',
  '',
  ' ',
  'x'.repeat(500),
];

const names: readonly string[] = [
  'constructor',
  'toString',
  'hasOwnProperty',
  'valueOf',
  'prototype',
  'a-b',
  'a b',
  'A',
];
const factors: readonly number[] = [0, -1, 1e-12, 1e-3, 0.5, 0.9, 0.999, 1.001, 1.1, 2, 10, 1e3, 1e9, 1e300];
const numbers: readonly number[] = [
  0,
  -0,
  1,
  -1,
  2,
  3,
  6,
  10,
  0.5,
  1e-300,
  5e-324,
  1e300,
  Number.MAX_VALUE,
  2 ** 53,
  Number.NaN,
  Number.POSITIVE_INFINITY,
];
const forbidden: readonly string[] = ['__proto__', 'constructor', 'prototype'];

/** Labels that the schema allows under a key, wherever that key occurs. */
const labels: ReadonlyMap<string, readonly Json[]> = (() => {
  const found = new Map<string, Json[]>();
  const allowed = (node: unknown): Json[] => {
    if (typeof node !== 'object' || node === null) return [];
    const { enum: several, const: one, $ref, anyOf, oneOf, items } = node as Record<string, unknown>;
    if (Array.isArray(several)) return several as Json[];
    if (one !== undefined) return [one as Json];
    const inner = [anyOf, oneOf, items].flat().flatMap(allowed);
    if (typeof $ref === 'string') return [...inner, ...allowed(defs[$ref.split('/').at(-1) as string])];
    return inner;
  };
  const schema = surveyJsonSchema();
  const defs = schema.$defs as Record<string, unknown>;
  const visit = (node: unknown): void => {
    if (typeof node !== 'object' || node === null) return;
    const { properties } = node as { properties?: Record<string, unknown> };
    for (const [key, value] of Object.entries(properties ?? {})) {
      const values = allowed(value);
      if (values.length > 0) found.set(key, [...(found.get(key) ?? []), ...values]);
    }
    for (const inner of Object.values(node)) visit(inner);
  };
  visit(schema);
  return found;
})();

/** Every place of a document. */
function places(node: Json, path: Path = []): Path[] {
  const inner = Array.isArray(node)
    ? node.flatMap((v, i) => places(v, [...path, i]))
    : typeof node === 'object' && node !== null
      ? Object.entries(node).flatMap(([k, v]) => places(v, [...path, k]))
      : [];
  return path.length === 0 ? inner : [path, ...inner];
}

const at = (root: Json, path: Path): Json =>
  path.reduce<Json>((node, key) => (node as { [k: string | number]: Json })[key] as Json, root);

/** Sets a place; a key such as `__proto__` becomes an own property, as `JSON.parse` makes it. */
function put(root: Json, path: Path, value: Json): void {
  const last = path.at(-1) as string | number;
  const holder = at(root, path.slice(0, -1)) as object;
  Object.defineProperty(holder, last, { value, writable: true, enumerable: true, configurable: true });
}

function drop(root: Json, path: Path): void {
  const holder = at(root, path.slice(0, -1));
  const last = path.at(-1) as string | number;
  if (Array.isArray(holder)) holder.splice(last as number, 1);
  else delete (holder as Object_)[last as string];
}

/** The key that gives a place its meaning: the last one that is a word and no form of a fact. */
const keyOf = (path: Path): string =>
  String([...path].reverse().find((k) => typeof k === 'string' && !['known', 'between', 'unknown'].includes(k)) ?? '');

const QUANTITY = /^(-?[\d.]+(?:e[-+]?\d+)?)(\s*\D*)$/i;

function scaled(value: Json, by: number): Json | undefined {
  if (typeof value === 'number') return value * by;
  const [, number, unit] = typeof value === 'string' ? (QUANTITY.exec(value) ?? []) : [];
  return number === undefined ? undefined : `${Number(number) * by}${unit}`;
}

/** A value in place of another that leaves a document readable more often than not. */
function gently(value: Json, path: Path, random: Random): Json {
  const key = keyOf(path);
  const known = labels.get(key);
  const text = ['by', 'title', 'reference', 'about', 'what', 'name', 'unknown'].includes(String(path.at(-1)));
  if (typeof value === 'boolean') return !value;
  if (text && typeof value === 'string') return random.pick(hostileTexts);
  if (known && (typeof value === 'string' || typeof value === 'number') && random.chance(0.8))
    return random.pick(known);
  const to = scaled(value, random.pick(factors));
  if (to === undefined) return value;
  if (random.chance(0.15)) return { unknown: random.pick(hostileTexts) || true };
  // ranges are judged at many points: a few are enough
  if (random.chance(0.05)) {
    const other = scaled(value, random.pick([0.5, 0.8, 0.99]));
    return { between: [other as Json, value], by: random.pick(hostileTexts) || 'survey' };
  }
  return to;
}

/** A name changed wherever it stands, so that what refers to it still does. */
function renamed(document: Object_, random: Random): void {
  const ids = places(document).filter((p) => p.at(-1) === 'id' && p.length > 2);
  if (ids.length === 0) return;
  const old = at(document, random.pick(ids));
  const to = random.pick(names);
  for (const path of places(document))
    if (at(document, path) === old && (path.at(-1) === 'id' || path.at(-1) === 'from' || path.includes('controls')))
      put(document, path, to);
}

/** Text of the survey's own, anywhere that it is free. */
function inscribed(document: Object_, random: Random): void {
  const about = document.about;
  if (typeof about !== 'object' || about === null || Array.isArray(about)) return;
  about.title = random.pick(hostileTexts) || 'x';
  about.reference = random.pick(hostileTexts);
  if (random.chance(0.3)) document.demand = { governing: random.pick([...hostileTexts, 'connected-load']) || 'x' };
}

/** Changes that most often make a document unreadable. */
function rough(document: Object_, path: Path, others: readonly Json[], random: Random): void {
  const value = at(document, path);
  const odd: readonly Json[] = [null, true, [], {}, [[]], { known: {} }, { between: [1] }, { unknown: 5 }];
  const changes: readonly (() => void)[] = [
    () => drop(document, path),
    () => put(document, path, random.pick(hostileTexts)),
    () => put(document, path, random.pick(numbers)),
    () => put(document, path, random.pick(odd)),
    () => {
      const object = typeof value === 'object' && value !== null && !Array.isArray(value);
      const holder = object ? path : path.slice(0, -1);
      const key = random.pick(random.chance(0.6) ? forbidden : hostileTexts);
      if (!Array.isArray(at(document, holder))) put(document, [...holder, key], { [MARK]: true });
    },
    () => {
      const holder = at(document, path.slice(0, -1));
      if (Array.isArray(holder)) holder.push(structuredClone(value));
    },
    () => {
      const other = random.pick(others);
      const elsewhere = places(other).filter((p) => keyOf(p) === keyOf(path));
      if (elsewhere.length > 0) put(document, path, structuredClone(at(other, random.pick(elsewhere))));
    },
    () => put(document, path, structuredClone(at(document, random.pick(places(document))))),
    () => {
      let deep: Json = value;
      for (let i = random.below(90); i > 0; i--) deep = random.chance(0.5) ? [deep] : { board: deep };
      put(document, path, deep);
    },
  ];
  random.pick(changes)();
}

/** A document with few charge points: every one that is wanted is designed. */
function trimmed(document: Object_, random: Random): void {
  const { wanted } = document;
  if (!Array.isArray(wanted) || wanted.length < 3 || random.chance(0.02)) return;
  document.wanted = wanted.slice(0, 1 + random.below(2));
  const board = document.board as Object_;
  const control = board.control as Object_ | undefined;
  if (control) control.controls = (document.wanted as Object_[]).map((w) => w.id as string);
}

/** Ranges become known facts: a plan over ranges is judged at many points, so that few cases carry any. */
function narrow(document: Json): void {
  const ranges = places(document).filter((path) => Array.isArray((at(document, path) as Object_ | null)?.between));
  for (const path of ranges) {
    const { between } = at(document, path) as { between: Json[] };
    put(document, path, { known: between.at(-1) as Json, by: 'the larger end' });
  }
}

/** One case of the fuzz: a survey document, made from its number alone. */
export interface FuzzCase {
  /** The document; an own key such as `__proto__` may be among its keys. */
  readonly document: Object_;
  /** What it was made from. */
  readonly from: string;
}

/**
 * The survey document of a number.
 * @param seed seed of the whole
 * @param index number of the case
 * @param surveys documents to start from, by name
 */
export function fuzzCase(seed: number, index: number, surveys: Readonly<Record<string, Json>>): FuzzCase {
  const random = randomOf(Math.imul(seed, 0x9e3779b1) ^ Math.imul(index + 1, 0x85ebca6b));
  const base = random.pick(Object.keys(surveys));
  let document = structuredClone(surveys[base]) as Object_;
  let from = base;
  if (random.chance(0.3)) {
    const [installation] = fc.sample(arbitraryInstallation({ open: random.chance(0.2) }), {
      seed: random.below(2 ** 31),
      numRuns: 1,
    });
    if (installation) document = documentOf(document, installation);
    from = 'random installation';
  }
  trimmed(document, random);
  if (random.chance(0.85)) narrow(document);
  const all = () => places(document);
  if (random.chance(0.3)) inscribed(document, random);
  if (random.chance(0.15)) renamed(document, random);
  for (let n = random.below(5); n > 0; n--) {
    const path = random.pick(all());
    put(document, path, gently(at(document, path), path, random));
  }
  if (random.chance(0.7))
    for (let n = 1 + random.below(2); n > 0 && all().length > 0; n--)
      rough(document, random.pick(all()), Object.values(surveys), random);
  return { document, from };
}

import type { Problem } from '../units/index.js';

const FORBIDDEN = new Set(['__proto__', 'constructor', 'prototype']);
const DEEPEST = 60;
const MOST_NODES = 200_000;

/**
 * Looks for what no document may hold, before any schema sees it: keys that reach a prototype, nesting deeper than 60
 * levels, numbers that JSON does not know, values that are no plain data, and sheer size. Iterative, so that depth
 * cannot overflow the stack.
 */
export function scan(document: unknown): readonly Problem[] {
  const problems: Problem[] = [];
  const queue: { value: unknown; path: readonly (string | number)[] }[] = [{ value: document, path: [] }];
  let nodes = 0;
  while (queue.length > 0 && problems.length < 100) {
    const { value, path } = queue.pop() as (typeof queue)[number];
    if (++nodes > MOST_NODES)
      return [...problems, { path: [], id: 'too-large', message: `holds more than ${MOST_NODES} values` }];
    if (typeof value === 'number' && !Number.isFinite(value))
      problems.push({ path, id: 'not-plain-data', message: `${value} is not a number that a document can hold` });
    if (typeof value === 'function' || typeof value === 'symbol' || typeof value === 'bigint')
      problems.push({ path, id: 'not-plain-data', message: `is a ${typeof value}, not plain data` });
    if (typeof value !== 'object' || value === null) continue;
    if (path.length >= DEEPEST) {
      problems.push({ path, id: 'too-large', message: `is nested deeper than ${DEEPEST} levels` });
      continue;
    }
    if (Array.isArray(value)) {
      for (const [i, inner] of value.entries()) queue.push({ value: inner, path: [...path, i] });
      continue;
    }
    const prototype: unknown = Object.getPrototypeOf(value);
    if (prototype !== Object.prototype && prototype !== null)
      problems.push({ path, id: 'not-plain-data', message: 'is not a plain object' });
    for (const key of Object.getOwnPropertyNames(value)) {
      if (FORBIDDEN.has(key))
        problems.push({ path: [...path, key], id: 'unknown-key', message: 'is a key that no document may use' });
      else queue.push({ value: (value as Record<string, unknown>)[key], path: [...path, key] });
    }
  }
  return problems;
}

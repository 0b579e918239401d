import { surveyDocuments } from '../support/surveys.js';
import { runCase } from './judge.js';
import { fuzzCase } from './mutate.js';

/** What some cases ended in. */
export interface Tally {
  /** How many ended where. */
  readonly ended: Record<string, number>;
  /** Cases that broke a promise: number of the case, and what was broken. */
  readonly breaches: { readonly index: number; readonly what: readonly string[] }[];
}

/** Every how many cases the permitted lengths are worked out too, and every how many all is done twice. */
const LENGTHS = 40;
const TWICE = 20;

/**
 * Runs cases of the fuzz and counts what they end in.
 * @param seed seed of the whole
 * @param from number of the first case
 * @param to number of the case after the last
 */
export function runSlice(seed: number, from: number, to: number): Tally {
  const ended: Record<string, number> = {};
  const breaches: { index: number; what: readonly string[] }[] = [];
  for (let index = from; index < to; index++) {
    const { document } = fuzzCase(seed, index, surveyDocuments);
    const outcome = runCase(document, { lengths: index % LENGTHS === 0, twice: index % TWICE === 0 });
    ended[outcome.ended] = (ended[outcome.ended] ?? 0) + 1;
    if (outcome.breaches.length > 0) breaches.push({ index, what: outcome.breaches });
  }
  return { ended, breaches };
}

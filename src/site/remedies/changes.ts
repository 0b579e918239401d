import { isRecord } from '../../installation/index.js';
import type { Survey } from '../survey.js';

/** A change of a survey: what stands at a path then; nothing where it is left out. @inline */
export interface SurveyChange {
  readonly path: readonly (string | number)[];
  readonly value?: unknown;
}

const same = (a: unknown, b: unknown): boolean => a === b || JSON.stringify(a) === JSON.stringify(b);

function between(a: unknown, b: unknown, path: readonly (string | number)[]): readonly SurveyChange[] {
  if (same(a, b)) return [];
  if (Array.isArray(a) && Array.isArray(b) && a.length === b.length)
    return a.flatMap((x, i) => between(x, b[i], [...path, i]));
  // of a fact the whole is said
  if (isRecord(a) && isRecord(b) && !('state' in a) && !('state' in b))
    return [...new Set([...Object.keys(a), ...Object.keys(b)])].flatMap((key) =>
      between(a[key], b[key], [...path, key]),
    );
  return [b === undefined ? { path } : { path, value: b }];
}

/** What has to be changed in one survey so that it becomes another. */
export const changesBetween = (from: Survey, to: Survey): readonly SurveyChange[] => between(from, to, []);

function changedAt(at: unknown, [key, ...rest]: readonly (string | number)[], change: SurveyChange): unknown {
  if (key === undefined) return change.value;
  if (Array.isArray(at)) return at.map((x, i) => (i === key ? changedAt(x, rest, change) : x));
  const { [key]: old, ...others } = (at ?? {}) as Readonly<Record<string, unknown>>;
  return rest.length === 0 && !('value' in change)
    ? others
    : { ...(at as object), [key]: changedAt(old, rest, change) };
}

/**
 * A survey, or an installation, with changes made, such as those of an offered remedy.
 * @param survey the survey that was planned
 * @param changes `changes` of the offer
 * @returns a new survey; the given one is not changed
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { readSurvey } from 'ohmwright/io';
 * import { withChanges } from 'ohmwright/site';
 *
 * const change = { path: ['about', 'title'], value: 'another' };
 * withChanges(readSurvey(survey), [change]).about.title; // => 'another'
 * ```
 */
export const withChanges = <T extends object>(survey: T, changes: readonly SurveyChange[]): T =>
  changes.reduce((s, change) => changedAt(s, change.path, change) as T, survey);

import type { PublishedCase } from './published.js';

/** The published cases of one file. */
export interface CaseFile {
  /** Path from the root of the project. */
  readonly path: string;
  /** The cases in it. */
  readonly cases: readonly PublishedCase[];
}

/**
 * The definitions that no published case exercises.
 * @param all definitions
 * @param files all files of published cases
 */
export function withoutCase<D extends { readonly id: string }>(
  all: readonly D[],
  files: readonly CaseFile[],
): readonly D[] {
  const exercised = new Set(files.flatMap((f) => f.cases.flatMap((c) => c.exercises)));
  return all.filter((d) => !exercised.has(d.id));
}

/// <reference types="vite/types/importMeta.d.ts" />
import type { CaseFile } from './evidence.js';

/** All files of published cases, in order of their paths. */
export const caseFiles: readonly CaseFile[] = Object.entries(
  import.meta.glob<Pick<CaseFile, 'cases'>>('../**/*.cases.ts', { eager: true }),
)
  .map(([path, { cases }]) => ({ path: path.replace('../', 'tests/'), cases }))
  .sort((a, b) => (a.path < b.path ? -1 : 1));

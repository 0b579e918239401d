/**
 * Records of what the library says of drawn cases: one line a case, with a digest of everything that it says. An
 * unintended change fails; an intended one is looked at and recorded with `npm run generated`. A record says that nothing
 * changed, not that it is right: that is shown by the tests against outside values.
 *
 * With DETAIL=folder each case is written out in full, so that two revisions can be compared by `diff -r`.
 */
import { createHash } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** What is said of one case. */
export interface Said {
  /** What a person sees of it in the record. */
  readonly summary: string;
  /** Everything that is said, as JSON would keep it. */
  readonly all: unknown;
}

/** Numbers to nine figures: the last places are the business of the processor. */
const plain = (_: string, value: unknown): unknown =>
  typeof value === 'number' && Number.isFinite(value) ? Number(value.toPrecision(9)) : value;

/** The text of a record. */
export function recordOf(name: string, cases: readonly Said[]): string {
  const folder = process.env.DETAIL;
  if (folder) mkdirSync(join(folder, name), { recursive: true });
  return cases
    .map(({ summary, all }, i) => {
      const text = JSON.stringify(all, plain, 1);
      if (folder) writeFileSync(join(folder, name, `${i}.json`), text);
      return `${i} ${createHash('sha256').update(text).digest('hex').slice(0, 12)} ${summary}\n`;
    })
    .join('');
}

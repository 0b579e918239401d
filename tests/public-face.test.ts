/** How many names somebody has to look through, and that each has one home. */
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { entryNames } from './support/public-names.js';

const byEntry = entryNames(fileURLToPath(new URL('../', import.meta.url)));
const all = [...byEntry.values()].flat();

test('a name is exported by one entry', () => {
  expect(all.filter((name, i) => all.indexOf(name) < i)).toEqual([]);
});

test('as many as can be looked through', () => {
  expect(byEntry.get('.')?.length).toBeLessThan(200);
  expect(all.length).toBeLessThanOrEqual(600);
  for (const [path, names] of byEntry) expect([path, names.length > 0]).toEqual([path, true]);
});

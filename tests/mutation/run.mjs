/**
 * Mutation testing: changes the code in small ways, one at a time, and counts the changes that no test notices.
 *
 *     npm run mutation -- DATE FOLDER [SHARE] [SEED] [TESTS]     npm run mutation -- 2026-11-25 src/physics 0.2 1 tests/physics
 *
 * The general tool leaves numbers alone; a mutator of ours changes those too. A share of the mutants, drawn by the seed,
 * is tried: all of them take many hours. Asked are all tests, or those of the folder TESTS, which takes minutes where all
 * take hours; the score is then a lower bound. Words for people and tables (see docs/digit-slip.md) are left out.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { Stryker } from '@stryker-mutator/core';
import { writeReport } from './report.mjs';

const [date, folder, share = '1', seed = '1', tests = 'tests'] = process.argv.slice(2);
if (!/^\d{4}-\d{2}-\d{2}$/.test(date ?? '') || !folder)
  throw new Error('usage: npm run mutation -- DATE FOLDER [SHARE] [SEED] [TESTS]');

const home = join(import.meta.dirname, '../../node_modules/@stryker-mutator/instrumenter');
const { allMutators } = await import(pathToFileURL(join(home, 'dist/src/mutators/mutate.js')).href);
const { default: babel } = await import(pathToFileURL(join(home, '../../@babel/core/lib/index.js')).href);
const { types } = babel;

allMutators.push({
  name: 'NumericLiteral',
  *mutate(path) {
    if (!path.isNumericLiteral()) return;
    const { value } = path.node;
    yield types.numericLiteral(value + 1);
    // small whole numbers are indices, counts and signs: a tenth more of one is no code that anyone writes
    if (!Number.isInteger(value) || value > 9) yield types.numericLiteral(value * 1.1);
  },
});

/** A number from 0 to 1 that is the same for the same text. */
function draw(text) {
  let h = 2166136261;
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), 16777619);
  h = Math.imul(h ^ (h >>> 15), 2246822507);
  h = Math.imul(h ^ (h >>> 13), 3266489909);
  return ((h ^ (h >>> 16)) >>> 0) / 4294967296;
}
for (const mutator of allMutators) {
  const whole = mutator.mutate;
  mutator.mutate = function* (...args) {
    let k = 0;
    for (const change of whole.apply(mutator, args)) {
      const { node } = args[0];
      if (draw(`${seed} ${mutator.name} ${node.start} ${node.end} ${k++}`) < Number(share)) yield change;
    }
  };
}

process.env.MUTATION_TESTS = tests; // for the configuration of the tests
const stryker = new Stryker({
  mutate: [`${folder}/**/*.ts`, '!**/index.ts', '!**/tables/**'],
  mutator: { excludedMutations: ['StringLiteral'] },
  testRunner: 'vitest',
  vitest: { configFile: 'tests/mutation/vitest.config.ts', related: true },
  coverageAnalysis: 'perTest',
  ignoreStatic: true,
  concurrency: Number(process.env.CONCURRENCY ?? 2),
  timeoutMS: 120_000,
  dryRunTimeoutMinutes: 20,
  reporters: ['clear-text', 'json'],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false, reportScoreTable: false },
  jsonReporter: { fileName: 'node_modules/.cache/mutation.json' },
  tempDirName: '.stryker-tmp',
  checkers: [],
  disableTypeChecks: false,
});
await stryker.runMutationTest();

/** One line a folder is kept beside the others. */
const { files } = JSON.parse(readFileSync('node_modules/.cache/mutation.json', 'utf8'));
const mutants = Object.values(files).flatMap((f) => f.mutants);
const count = (...states) => mutants.filter((m) => states.includes(m.status)).length;
const record = {
  date,
  share: Number(share),
  seed: Number(seed),
  tests,
  tried: count('Killed', 'Timeout', 'Survived', 'NoCoverage'),
  noticed: count('Killed', 'Timeout'),
  survived: count('Survived'),
  notReached: count('NoCoverage'),
  atLoad: count('Ignored'),
  unnoticed: Object.entries(files).flatMap(([name, { source, mutants }]) =>
    mutants
      .filter((m) => ['Survived', 'NoCoverage'].includes(m.status))
      .map(({ location: { start }, mutatorName, replacement }) => {
        const code = source.split('\n')[start.line - 1].trim().slice(0, 100);
        const as = (replacement ?? '').replace(/\s+/g, ' ').slice(0, 40);
        return { at: `${name}:${start.line}`, change: `${mutatorName}: ${code} => ${as}` };
      }),
  ),
};
const kept = 'tests/mutation/results.json';
const all = { ...JSON.parse(readFileSync(kept, 'utf8')), [folder]: record };
writeFileSync(kept, `${JSON.stringify(Object.fromEntries(Object.entries(all).sort()), null, 2)}\n`);
writeReport();

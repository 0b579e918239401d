// Every property under fresh seeds, which the test run does not draw: npm run hunt -- SEEDS [--date ...] [--minutes 30]
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { setPriority, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';

setPriority(15); // a long run gives way to other work
const root = fileURLToPath(new URL('../../', import.meta.url));
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { date: { type: 'string' }, minutes: { type: 'string' } },
});
const seeds = Number(positionals[0] ?? 200);
const minutes = Number(values.minutes ?? 30);
if (![seeds, minutes].every((n) => Number.isFinite(n) && n > 0))
  throw new Error('SEEDS and --minutes are numbers above 0');

/** Test files that assert properties of what they draw; records are of one seed, and documents draw nothing. */
const files = readdirSync(join(root, 'tests'), { recursive: true, encoding: 'utf8' })
  .filter((f) => f.endsWith('.test.ts') && !/^(recorded|docs|package|generated|fuzz)[\\/]/.test(f))
  .filter((f) => /\bfc\.assert\b/.test(readFileSync(join(root, 'tests', f), 'utf8')))
  .map((f) => join('tests', f));

/** What the record says of runs before: how many seeds each property has seen. */
const line = /^\| `(\S+)` \| +(\d+) \| +(\d+) \| `(\w+)` \|$/;
const digestOf = (file) =>
  createHash('sha256')
    .update(readFileSync(join(root, file)))
    .digest('hex')
    .slice(0, 8);
const before = new Map();
try {
  for (const row of readFileSync(`${root}docs/hunt.md`, 'utf8').split('\n')) {
    const [, file, properties, fewest, digest] = line.exec(row) ?? [];
    // a file that was changed is new
    if (file && files.includes(file) && digest === digestOf(file))
      before.set(file, { properties: Number(properties), fewest: Number(fewest) });
  }
} catch {
  // nothing was hunted yet
}
const seen = new Map(files.map((file) => [file, {}]));
const stateOf = (file) => {
  const all = Object.values(seen.get(file));
  return all.length === 0
    ? (before.get(file) ?? { properties: 0, fewest: 0 })
    : { properties: all.length, fewest: Math.min(...all) };
};

const folder = mkdtempSync(join(tmpdir(), 'hunt-'));
const [log, state] = [join(folder, 'log'), join(folder, 'seen.json')];
const failed = new Map();
const start = performance.now();
const left = () => minutes * 60_000 - (performance.now() - start);
/** Milliseconds that a property has in a pass: cheap ones come to all seeds in the first. */
const passes = [2000, 10_000, 60_000, 600_000];
/** Writes the record, after every file: a run may be broken off. */
function write() {
  const rows = files
    .map((file) => ({ file, ...stateOf(file) }))
    .sort((a, b) => b.fewest - a.fewest || (a.file < b.file ? -1 : 1));
  const sum = (of, what) => of.reduce((n, row) => n + what(row), 0);
  const whole = rows.filter((r) => r.fewest >= seeds);
  if (values.date !== undefined)
    writeFileSync(
      `${root}docs/hunt.md`,
      `${[
        '# Hunt for seeds',
        '',
        'In the test run seeds are fixed, so that it comes to the same each time. Here every property of the test files that assert some is asserted under seeds that the test run does not have, one after the other. The record adds up over runs, and begins anew with a file that was changed: cheap properties come to all seeds at once, those that take seconds for one come further with each run.',
        '',
        `Last run: ${values.date}. Of ${rows.length} files with ${sum(rows, (r) => r.properties)} properties, ${whole.length} with ${sum(whole, (r) => r.properties)} properties have seen ${seeds} seeds each; the others as many as stand here, at least. ${failed.size} failures in that run. Command: \`npm run hunt -- ${seeds} --date ${values.date} --minutes ${minutes}\`.`,
        ...(failed.size > 0 ? ['', ...[...failed.keys()].map((test) => `- failed: ${test}`)] : []),
        '',
        '| file | properties | seeds of each, at least | digest |',
        '| ---- | ---------: | ----------------------: | ------ |',
        ...rows.map((r) => `| \`${r.file}\` | ${r.properties} | ${r.fewest} | \`${digestOf(r.file)}\` |`),
      ].join('\n')}\n`,
    );
}
for (const milliseconds of passes) {
  // those that have seen least come first
  const inTurn = [...files].sort((a, b) => stateOf(a).fewest - stateOf(b).fewest);
  for (const file of inTurn) {
    if (left() <= 0 || stateOf(file).fewest >= seeds) continue;
    writeFileSync(log, '');
    writeFileSync(state, JSON.stringify({ seen: seen.get(file), from: before.get(file)?.fewest ?? 0 }));
    const { stdout } = spawnSync(
      process.execPath,
      ['node_modules/vitest/vitest.mjs', 'run', '--typecheck.enabled=false', '--reporter=json', '--maxWorkers=1', file],
      {
        cwd: root,
        env: {
          ...process.env,
          OHMWRIGHT_HUNT: JSON.stringify({ log, state, most: seeds, milliseconds: Math.min(milliseconds, left()) }),
        },
        encoding: 'utf8',
        maxBuffer: 1e9,
      },
    );
    for (const row of readFileSync(log, 'utf8').split('\n').filter(Boolean)) {
      const { at, seeds: n } = JSON.parse(row);
      seen.get(file)[at] = n;
    }
    for (const { assertionResults } of JSON.parse(stdout.slice(stdout.indexOf('{'))).testResults)
      for (const { fullName, status, failureMessages } of assertionResults)
        if (status === 'failed') failed.set(`${file}: ${fullName}`, failureMessages[0]?.slice(0, 1500));
    const { properties, fewest } = stateOf(file);
    process.stdout.write(`${file}: ${properties} properties, at least ${fewest} seeds each\n`);
    write();
  }
}
rmSync(folder, { recursive: true });
for (const [test, why] of failed) process.stdout.write(`\n${test}\n${why}\n`);
if (failed.size > 0) process.exitCode = 1;
write();

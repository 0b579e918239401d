// Every property under fresh seeds, which the test run does not draw: npm run hunt -- SEEDS [FILE ...] [--date ...] [--minutes 90] [--budget 30]
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
  options: { date: { type: 'string' }, minutes: { type: 'string' }, budget: { type: 'string' } },
});
const [seeds, only] = [Number(positionals[0] ?? 200), positionals.slice(1)];
const minutes = Number(values.minutes ?? 90);
const budget = Number(values.budget ?? 30);
if (![seeds, minutes, budget].every((n) => Number.isFinite(n) && n > 0))
  throw new Error('SEEDS, --minutes and --budget are numbers above 0');

/** Test files that assert properties of what they draw; records are of one seed, and documents draw nothing. */
const files = readdirSync(join(root, 'tests'), { recursive: true, encoding: 'utf8' })
  .filter((f) => f.endsWith('.test.ts') && !/^(recorded|docs|package|generated|fuzz)[\\/]/.test(f))
  .filter((f) => /\bfc\.assert\b/.test(readFileSync(join(root, 'tests', f), 'utf8')))
  .map((f) => join('tests', f));

const digestOf = (file) =>
  createHash('sha256')
    .update(readFileSync(join(root, file)))
    .digest('hex')
    .slice(0, 8);
/** What each property of a file has seen at least, over all runs. */
const seen = new Map(files.map((file) => [file, { properties: 0, seeds: 0, cases: 0 }]));
const row = /^\| `(\S+)` +\| +(\d+) \| +(\d+) \| +(\d+) \| `(\w+)` +\|$/; // laid out or not
let record = '';
try {
  record = readFileSync(`${root}docs/hunt.md`, 'utf8');
} catch {
  // nothing was hunted yet
}
for (const line of record.split('\n')) {
  const [, file, properties, fewest, cases, digest] = row.exec(line) ?? [];
  // a file that was changed begins anew, and one where something failed
  if (seen.has(file) && digest === digestOf(file) && !record.includes(`- failed: ${file}: `))
    seen.set(file, { properties: Number(properties), seeds: Number(fewest), cases: Number(cases) });
}

const folder = mkdtempSync(join(tmpdir(), 'hunt-'));
const log = join(folder, 'log');
const failed = [];
const end = Date.now() + minutes * 60_000;
/** Writes the record, after every file: a run may be broken off. */
function write() {
  if (values.date === undefined) return;
  const rows = files
    .map((file) => ({ file, ...seen.get(file) }))
    .sort((a, b) => b.seeds - a.seeds || (a.file < b.file ? -1 : 1));
  const sum = (of) => of.reduce((n, r) => n + r.properties, 0);
  const whole = rows.filter((r) => r.seeds >= seeds);
  const cases = rows.reduce((n, r) => n + r.properties * r.cases, 0);
  writeFileSync(
    `${root}docs/hunt.md`,
    `${[
      '# Hunt for seeds',
      '',
      `In the test run seeds are fixed, so that it comes to the same each time. Here every property of the test files that assert some is asserted under seeds that the test run does not have, one after the other. Under the first of a run it draws as many cases as in the test run; where ${seeds} seeds of as many would cost more than ${budget} seconds of a processor, each further seed draws fewer, at least five. The record adds up over runs, and begins anew with a file that was changed or in which something failed.`,
      '',
      `Last run: ${values.date}. Of ${rows.length} files with ${sum(rows)} properties, ${whole.length} with ${sum(whole)} properties have seen ${seeds} seeds each; the others as many as stand here, at least. ${cases} cases were drawn in all, at least. ${failed.length} failures in that run. Command: \`npm run hunt -- ${seeds} --date ${values.date} --minutes ${minutes} --budget ${budget}\`.`,
      ...(failed.length > 0 ? ['', ...failed.map(({ test, where }) => `- failed: ${test} (${where})`)] : []),
      '',
      '| file | properties | seeds of each, at least | cases of each, at least | digest |',
      '| ---- | ---------: | ----------------------: | ----------------------: | ------ |',
      ...rows.map((r) => `| \`${r.file}\` | ${r.properties} | ${r.seeds} | ${r.cases} | \`${digestOf(r.file)}\` |`),
    ].join('\n')}\n`,
  );
}
const fail = (test, where, why) => {
  failed.push({ test, where });
  process.stdout.write(`failed: ${test} (${where})\n${why.slice(0, 4000)}\n`);
};
// those that have seen least come first
for (const file of [...files].sort((a, b) => seen.get(a).seeds - seen.get(b).seeds)) {
  if (only.length > 0 && !only.some((part) => file.includes(part))) continue;
  if (Date.now() >= end || seen.get(file).seeds >= seeds) continue;
  const start = performance.now();
  writeFileSync(log, '');
  const { stdout, stderr } = spawnSync(
    process.execPath,
    ['node_modules/vitest/vitest.mjs', 'run', '--typecheck.enabled=false', '--reporter=json', '--maxWorkers=1', file],
    {
      cwd: root,
      env: {
        ...process.env,
        OHMWRIGHT_HUNT: JSON.stringify({ log, before: seen.get(file), most: seeds, budget, until: end }),
      },
      encoding: 'utf8',
      maxBuffer: 1e9,
    },
  );
  const properties = readFileSync(log, 'utf8')
    .split('\n')
    .filter(Boolean)
    .map((line) => JSON.parse(line));
  for (const { at, failures, seeds: n } of properties)
    if (failures[0])
      fail(
        `${file}: ${at}`,
        `seed ${failures[0].seed}, path ${failures[0].path}; ${failures.length} of ${n} seeds`,
        `${failures.map((f) => `seed ${f.seed}, path ${f.path}`).join('; ')}\n${failures[0].why}`,
      );
  const report = stdout.indexOf('{') < 0 ? undefined : JSON.parse(stdout.slice(stdout.indexOf('{')));
  const results = report?.testResults.flatMap((t) => t.assertionResults) ?? [];
  // what fails beside the properties, such as what is counted over all of them
  for (const { fullName, status, failureMessages } of results)
    if (
      status === 'failed' &&
      !properties.some((p) => p.failures.length > 0 && p.at.replaceAll(' > ', ' ').startsWith(fullName))
    )
      fail(`${file}: ${fullName}`, 'beside its properties', failureMessages[0] ?? '');
  if (results.length === 0 || properties.length === 0) fail(`${file}: it`, 'did not come to its properties', stderr);
  else
    seen.set(file, {
      properties: properties.length,
      seeds: Math.min(...properties.map((p) => p.seeds)),
      cases: Math.min(...properties.map((p) => p.cases)),
    });
  const { properties: n, seeds: fewest, cases } = seen.get(file);
  process.stdout.write(
    `${file}: ${n} properties, at least ${fewest} seeds and ${cases} cases each, ${Math.round((performance.now() - start) / 1000)} s\n`,
  );
  write();
}
rmSync(folder, { recursive: true });
if (failed.length > 0) process.exitCode = 1;
write();

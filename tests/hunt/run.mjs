// Every property test under fresh seeds, which the test run does not draw: npm run hunt -- SEEDS [--from 1] [--date ...] [--minutes 30]
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { setPriority } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';

setPriority(15); // a long run gives way to other work
const root = fileURLToPath(new URL('../../', import.meta.url));
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { from: { type: 'string' }, date: { type: 'string' }, minutes: { type: 'string' } },
});
const seeds = Number(positionals[0] ?? 10);
const from = Number(values.from ?? 1);
const minutes = Number(values.minutes ?? 30);
if (![seeds, from, minutes].every((n) => Number.isFinite(n) && n > 0))
  throw new Error('SEEDS, --from and --minutes are numbers above 0');

/** Test files that draw what they test; records are of one seed, and documents draw nothing. */
const files = readdirSync(join(root, 'tests'), { recursive: true, encoding: 'utf8' })
  .filter((f) => f.endsWith('.test.ts') && !/^(recorded|docs|package|generated|trust|fuzz)[\\/]/.test(f))
  .filter((f) => /\bfc\.(assert|check|sample|property)\b|seedOf\(/.test(readFileSync(join(root, 'tests', f), 'utf8')))
  .map((f) => join('tests', f));
const start = performance.now();
const failed = [];
let ran = 0;
for (let seed = from; seed < from + seeds && performance.now() - start < minutes * 60_000; seed++) {
  const { stdout } = spawnSync(
    process.execPath,
    ['node_modules/vitest/vitest.mjs', 'run', '--typecheck.enabled=false', '--reporter=json', ...files],
    { cwd: root, env: { ...process.env, OHMWRIGHT_SEED: String(seed) }, encoding: 'utf8', maxBuffer: 1e9 },
  );
  const report = JSON.parse(stdout.slice(stdout.indexOf('{')));
  const before = failed.length;
  for (const { name, assertionResults } of report.testResults)
    for (const { fullName, status, failureMessages } of assertionResults)
      if (status === 'failed')
        failed.push({ seed, test: `${name.slice(root.length)}: ${fullName}`, why: failureMessages[0]?.slice(0, 1500) });
  ran++;
  process.stdout.write(
    `seed ${seed}: ${report.numPassedTests} passed, ${report.numFailedTests} failed, ${failed.length - before} listed\n`,
  );
}
for (const { seed, test, why } of failed) process.stdout.write(`\nseed ${seed} ${test}\n${why}\n`);
if (failed.length > 0) process.exitCode = 1;
if (values.date !== undefined)
  writeFileSync(
    `${root}docs/hunt.md`,
    `${[
      '# Hunt for seeds',
      '',
      `The ${files.length} test files that draw what they test, each run under seeds that the test run does not have: there seeds are fixed, so that it comes to the same each time. Last run: ${values.date}, seeds ${from} to ${from + ran - 1}${ran < seeds ? ` of the ${seeds} that were asked for: the time ran out` : ''}, ${failed.length} failures. Command: \`npm run hunt -- ${seeds} --from ${from} --date ${values.date}\`.`,
      ...(failed.length > 0 ? ['', ...failed.map(({ seed, test }) => `- seed ${seed}: ${test}`)] : []),
    ].join('\n')}\n`,
  );

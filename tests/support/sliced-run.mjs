// Long runs in slices that can be taken up again: COUNT SEED [--date 2026-11-30] [--minutes 10].
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { setPriority } from 'node:os';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { bundled } from './bundled.mjs';

export const root = fileURLToPath(new URL('../../', import.meta.url));

/**
 * Runs cases slice by slice until all are done or the time is out, and keeps where it stopped.
 * @param name name of the run
 * @param entry the file whose `runSlice(seed, from, to)` gives `{ counts, found }`
 * @param size cases of a slice
 */
export async function slicedRun(name, entry, size) {
  setPriority(15); // a long run gives way to other work
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { date: { type: 'string' }, minutes: { type: 'string' } },
  });
  const [count = 100_000, seed = 1] = positionals.map(Number);
  const minutes = Number(values.minutes ?? 10);
  if (![count, seed, minutes].every((n) => Number.isFinite(n) && n > 0))
    throw new Error('COUNT, SEED and --minutes are numbers above 0');
  if (values.date !== undefined && !/^\d{4}-\d{2}-\d{2}$/.test(values.date))
    throw new Error('--date takes the day of the run, as in 2026-11-30');
  const cache = `${root}node_modules/.cache/${name}/`;
  mkdirSync(cache, { recursive: true });
  const code = await bundled({
    entryPoints: [`${root}${entry}`],
    define: { 'import.meta.url': JSON.stringify(new URL('surveys.ts', import.meta.url).href) },
  });
  const key = createHash('sha256').update(code).digest('hex').slice(0, 16);
  const module = `${cache}slice-${key}.mjs`;
  writeFileSync(module, code);
  const { runSlice } = await import(pathToFileURL(module));
  const state = `${cache}${key}-${seed}.json`;
  let done = { next: 0, counts: {}, found: [] };
  try {
    done = JSON.parse(readFileSync(state, 'utf8'));
  } catch {
    // nothing was run of this code and seed
  }
  const start = performance.now();
  while (done.next < count && performance.now() - start < minutes * 60_000) {
    const to = Math.min(count, done.next + size);
    const { counts, found } = runSlice(seed, done.next, to);
    for (const [what, n] of Object.entries(counts)) done.counts[what] = (done.counts[what] ?? 0) + n;
    done.found.push(...found);
    done.next = to;
    writeFileSync(state, JSON.stringify(done));
  }
  for (const what of done.found.slice(0, 40)) process.stdout.write(`${what}\n`);
  process.stdout.write(`${done.next} of ${count} cases, seed ${seed}: ${done.found.length} found\n`);
  if (done.found.length > 0) process.exitCode = 1;
  const short = done.next < count ? ` of the ${count} that were asked for: the time ran out` : '';
  return { ...done, count, seed, date: values.date, ran: `${done.next} cases${short}` };
}

/** Writes a record where a date is given. */
export function record({ date }, file, lines) {
  if (date === undefined) return;
  writeFileSync(`${root}docs/${file}`, `${lines.join('\n')}\n`);
  execFileSync('npx', ['biome', 'format', '--write', `${root}docs/${file}`], { stdio: 'ignore' });
}

// Random and mutated surveys through reading, planning and reports, in slices that can be taken up again:
//   npm run fuzz -- [COUNT] [SEED] [--date 2026-11-25] [--minutes 10] [--threads 2]
// With a date, docs/fuzz.md is written. A later run of the same code and seed goes on where the last one stopped.
import { createHash } from 'node:crypto';
import { once } from 'node:events';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { setPriority } from 'node:os';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { Worker } from 'node:worker_threads';
import { bundled } from '../support/bundled.mjs';

setPriority(10); // a long run gives way to other work
/** Cases that a thread takes at a time. */
const SLICE = 50;
const root = fileURLToPath(new URL('../../', import.meta.url));
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { date: { type: 'string' }, minutes: { type: 'string' }, threads: { type: 'string' } },
});
const [count = 100_000, seed = 1] = positionals.map(Number);
const minutes = Number(values.minutes ?? 10);
const threads = Number(values.threads ?? 1);
if (![count, seed, minutes, threads].every((n) => Number.isFinite(n) && n > 0))
  throw new Error('COUNT, SEED, --minutes and --threads are numbers above 0');
if (values.date !== undefined && !/^\d{4}-\d{2}-\d{2}$/.test(values.date))
  throw new Error('--date takes the day of the run, as in 2026-11-25');

const cache = `${root}node_modules/.cache/fuzz/`;
mkdirSync(cache, { recursive: true });
const code = await bundled({
  entryPoints: [`${root}tests/fuzz/slice.ts`],
  define: { 'import.meta.url': JSON.stringify(new URL('../support/surveys.ts', import.meta.url).href) },
});
const state = `${cache}${createHash('sha256').update(code).digest('hex').slice(0, 16)}-${seed}.json`;
writeFileSync(`${cache}slice.mjs`, code);
writeFileSync(
  `${cache}worker.mjs`,
  `import { parentPort } from 'node:worker_threads';
import { runSlice } from './slice.mjs';
parentPort.on('message', (slice) => parentPort.postMessage(runSlice(...slice)));`,
);

let done = { next: 0, ended: {}, breaches: [] };
try {
  done = JSON.parse(readFileSync(state, 'utf8'));
} catch {
  // nothing was run of this code and seed
}

const workers = Array.from(
  { length: threads },
  () => new Worker(`${cache}worker.mjs`, { resourceLimits: { maxYoungGenerationSizeMb: 256 } }),
);
const slice = async (worker, from, to) => {
  worker.postMessage([seed, from, to]);
  const [found] = await once(worker, 'message'); // an error of the worker ends it
  return found;
};
const start = performance.now();
let claimed = done.next;
const finished = new Map();
/** Slices differ much in time: each thread takes the next one; what is kept has no hole. */
async function work(worker) {
  while (claimed < count && performance.now() - start < minutes * 60_000) {
    const from = claimed;
    claimed = Math.min(count, from + SLICE);
    finished.set(from, { to: claimed, ...(await slice(worker, from, claimed)) });
    for (let next = finished.get(done.next); next; next = finished.get(done.next)) {
      for (const [name, n] of Object.entries(next.ended)) done.ended[name] = (done.ended[name] ?? 0) + n;
      done.breaches.push(...next.breaches);
      done.next = next.to;
    }
    writeFileSync(state, JSON.stringify(done));
  }
}
await Promise.all(workers.map(work));
await Promise.all(workers.map((worker) => worker.terminate()));

const ran = Object.values(done.ended).reduce((a, b) => a + b, 0);
const say = (line) => process.stdout.write(`${line}\n`);
const rows = Object.entries(done.ended).sort((a, b) => b[1] - a[1]);
for (const { index, what } of done.breaches.slice(0, 40)) say(`case ${index}: ${what.slice(0, 4).join('; ')}`);
for (const [name, n] of rows) say(`${String(n).padStart(8)}  ${name}`);
say(`${ran} of ${count} cases, seed ${seed}: ${done.breaches.length} breaches`);
if (done.breaches.length > 0) process.exitCode = 1;

if (values.date !== undefined) {
  const wide = Math.max(8, ...rows.map(([name]) => name.length));
  const lines = [
    '# Fuzz',
    '',
    `Survey documents are made from a number: the invented surveys of \`docs/examples/surveys\` and random installations of \`ohmwright/testing\`, changed gently (quantities, labels, facts that become ranges or unknown, hostile texts, names) or roughly (what is removed, repeated, nested, put in another place, or named like a prototype). Each goes through \`readSurvey\`, \`planOf\` and the reports as text, Markdown and HTML with pictures. Of every case it is asked that it ends in a typed error whose problems have a path and words, or in a plan whose every number is finite; that no document with a key that reaches a prototype is read and no prototype changes; that the HTML, read by a parser of HTML, holds no element or attribute but the report's own, that the Markdown, read by a parser of Markdown, holds no HTML, link, picture or heading but the report's own, and that every picture is well-formed; that no report holds a control character or says NaN; that the document is left as it was; and, every twentieth time, that plan and reports are the same bytes a second time.`,
    '',
    `Last run: ${values.date}, seed ${seed}, ${ran} cases${ran < count ? ` of the ${count} that were asked for: the time ran out` : ''}, ${done.breaches.length} breaches. Command: \`npm run fuzz -- ${count} ${seed} --date ${values.date}\`, in slices of at most ${minutes} minutes. A few hundred cases run with the tests.`,
    '',
    ...[['ended in', 'cases'], ...rows].map(([name, n]) => `| ${name.padEnd(wide)} | ${String(n).padStart(5)} |`),
  ];
  lines.splice(lines.length - rows.length, 0, `| ${'-'.repeat(wide)} | ----: |`);
  writeFileSync(`${root}docs/fuzz.md`, `${lines.join('\n')}\n`);
}

/**
 * Runs every `bench/**\/*.bench.ts` and prints one table of ratios.
 *
 *     npm run bench                 all
 *     npm run bench -- load faults  files whose path contains one of the words
 *     npm run bench -- --write      all, and the head and the table of docs/performance.md are written anew
 *
 * The ways of a comparison take turns, so that whatever else the machine does slows all of them. Processor time is taken,
 * which a busy machine stretches least. What takes long has fewer turns, so that all of it ends within a quarter of an
 * hour. A ratio is the median of the ratios of the turns; beside it stands the ratio of the least times. Times are the
 * least seen, for orientation only.
 */
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const TURNS = 15;
const LEAST_TURNS = 3; // of what takes long
const COMPARISON_NS = 2e10; // after which no further turn begins
const TURN_NS = 2e7; // shortest turn
const OUT = join(import.meta.dirname, '../node_modules/.cache/bench');

const words = process.argv.slice(2).filter((arg) => !arg.startsWith('--'));
const write = process.argv.includes('--write');
const root = join(import.meta.dirname, '..');
process.chdir(root);

const wallClock = () => Number(process.hrtime.bigint());
const processorTime = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) * 1e3;
};
const median = (numbers) => quantile(numbers, 0.5);
const quantile = (numbers, q) => numbers.toSorted((a, b) => a - b)[Math.round((numbers.length - 1) * q)];

/** Nanoseconds a call, over `calls` calls. */
function turn(way, calls, clock) {
  let last;
  const start = clock();
  for (let call = 0; call < calls; call++) last = way(call);
  const end = clock();
  globalThis.lastResult = last; // what is used cannot be dropped by the engine
  return (end - start) / calls;
}

/** Calls that fill one turn, found by doubling; warms the code up on the way. */
function fill(way, clock) {
  for (let calls = 1; ; calls *= 2) if (turn(way, calls, clock) * calls >= TURN_NS) return calls;
}

function measure({ title, anchor, per = 1, processes = false, ways }) {
  if (!(anchor in ways)) throw new Error(`${title}: no way is called "${anchor}"`);
  const names = Object.keys(ways);
  const clock = processes ? wallClock : processorTime;
  const calls = names.map((name) => fill(ways[name], clock));
  const turns = names.map(() => []);
  const begun = clock();
  for (let t = 0; t < TURNS && (t < LEAST_TURNS || clock() - begun < COMPARISON_NS); t++)
    for (let i = 0; i < names.length; i++) {
      const k = (i + t) % names.length;
      turns[k].push(turn(ways[names[k]], calls[k], clock));
    }
  const anchorTurns = turns[names.indexOf(anchor)];
  return names.map((name, i) => {
    const ratios = turns[i].map((ns, t) => ns / anchorTurns[t]);
    return {
      title,
      name,
      least: Math.min(...turns[i]) / per,
      ofLeast: Math.min(...turns[i]) / Math.min(...anchorTurns),
      ratio: median(ratios),
      low: quantile(ratios, 0.25),
      high: quantile(ratios, 0.75),
      isAnchor: name === anchor,
    };
  });
}

const digits = (x) => (x >= 100 ? x.toFixed(0) : x.toPrecision(3));
const time = (ns) =>
  ns < 1e3
    ? `${digits(ns)} ns`
    : ns < 1e6
      ? `${digits(ns / 1e3)} µs`
      : ns < 1e9
        ? `${digits(ns / 1e6)} ms`
        : `${digits(ns / 1e9)} s`;

function table(rows) {
  const cells = [['what', 'way', 'ratio', 'middle half', 'of the least', 'least time']];
  for (const [i, row] of rows.entries())
    cells.push([
      rows[i - 1]?.title === row.title ? '' : row.title,
      row.name,
      row.isAnchor ? '1 (anchor)' : digits(row.ratio),
      row.isAnchor ? '' : `${digits(row.low)} to ${digits(row.high)}`,
      row.isAnchor ? '' : digits(row.ofLeast),
      time(row.least),
    ]);
  const widths = cells[0].map((_, c) => Math.max(...cells.map((line) => line[c].length)));
  const lines = cells.map((line) => `| ${line.map((cell, c) => cell.padEnd(widths[c])).join(' | ')} |`);
  lines.splice(1, 0, `| ${widths.map((w) => '-'.repeat(w)).join(' | ')} |`);
  return lines.join('\n');
}

const version = (name) => JSON.parse(readFileSync(join(root, 'node_modules', name, 'package.json'), 'utf8')).version;
const about = () => {
  const own = JSON.parse(readFileSync('package.json', 'utf8')).version;
  const others = ['mathjs', 'zod', 'highs'].map((name) => `${name} ${version(name)}`).join(', ');
  return `ohmwright ${own}, Node ${process.versions.node}, ${others}; ${os.cpus().length} × ${os.cpus()[0].model.trim()}.`;
};

const files = readdirSync('bench', { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.bench.ts') && (words.length === 0 || words.some((word) => file.includes(word))))
  .sort();
if (files.length === 0) throw new Error(`no bench file contains ${words.join(' or ')}`);
rmSync(OUT, { recursive: true, force: true });
await build({
  entryPoints: files.map((file) => join('bench', file)),
  outdir: OUT,
  outbase: 'bench',
  outExtension: { '.js': '.mjs' },
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  packages: 'external',
  tsconfig: 'tests/tsconfig.json',
});

const rows = [];
for (const file of files) {
  const { default: comparisons } = await import(pathToFileURL(join(OUT, file.replace(/ts$/, 'mjs'))).href);
  for (const comparison of comparisons) {
    if (process.stderr.isTTY) process.stderr.write(`${comparison.title} ...\n`);
    rows.push(...measure(comparison));
  }
}
const text = `${about()}\n\n${table(rows)}\n`;
console.log(text);
if (write) {
  const intro = `# Performance

Generated by \`npm run bench -- --write\`. Each row is one way of doing the same work; the ratio is its processor time over
that of the anchor in the same run (median of ${TURNS} turns, of what takes long of fewer, at least ${LEAST_TURNS}, with the
middle half of them, then the ratio of the least times). Times are the least seen and depend on the machine.`;
  // what is said of the figures is written by hand, and stays
  const said = readFileSync('docs/performance.md', 'utf8').match(/\n## What the figures do not say[\s\S]*/)?.[0] ?? '';
  writeFileSync('docs/performance.md', `${intro}\n\n${text}${said}`);
}

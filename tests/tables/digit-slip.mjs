// Writes docs/digit-slip.md: npm run digit-slip -- 2026-11-25
// With names of tables, or beginnings of them, in place of the date it prints their scores and writes nothing.
import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { bundled, run } from '../support/bundled.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const [date, ...more] = process.argv.slice(2);
const some = /^[a-z]/.test(date ?? '') ? [date, ...more] : undefined;
if (!some && !/^\d{4}-\d{2}-\d{2}$/.test(date ?? ''))
  throw new Error('give the date of the run, as in: npm run digit-slip -- 2026-11-25');

const contents = "export { everyTable } from './every-table.ts'; export { digitSlipScore } from './guards.ts';";
// the lists beside the guards are read where they lie
const text = (await bundled({ stdin: { contents, resolveDir: import.meta.dirname } })).replaceAll(
  'import.meta.url',
  JSON.stringify(import.meta.url),
);
const { everyTable, digitSlipScore } = await run(text);

const asked = everyTable.filter(({ table }) => !some || some.some((name) => table.id.startsWith(name)));
const scores = asked.map(({ table, guards, sort }) => ({ id: table.id, sort, ...digitSlipScore(table, guards) }));
const share = ({ noticed, slips }) => ((100 * noticed) / slips).toFixed(1);
if (some) {
  for (const s of scores) process.stdout.write(`${s.id}: ${share(s)} % of ${s.slips}\n`);
  process.exit();
}
const totalOf = (list) => list.reduce((a, b) => ({ slips: a.slips + b.slips, noticed: a.noticed + b.noticed }));
const rows = (list) => [
  '| table | slips | noticed, % |',
  '|---|---:|---:|',
  ...list.map((s) => `| ${s.id} | ${s.slips} | ${share(s)} |`),
  `| **all** | ${totalOf(list).slips} | **${share(totalOf(list))}** |`,
];
const figures = scores.filter((s) => s.sort === 'capacity' || s.sort === 'drop');
const factors = scores.filter((s) => s.sort === 'factor');
const others = scores.filter((s) => s.sort === 'other');
const reasons = {
  'site/labour': 'hours of the trade from memory: nothing prints them, and firms set their own',
  'din18015/a1-second-reading':
    'another reading of a graph, of which there is no copy; it has to rise with the number of dwellings',
};
const low = scores.filter((s) => s.noticed / s.slips < 0.9);
const short = scores.filter((s) => s.noticed / s.slips < 0.95);
const lines = [
  '# Digit-slip score',
  '',
  `Each digit of each cell was changed in turn, and it was counted whether the guards of \`tests/tables\` then say anything else than they say of the print; the test compares what they say line by line. Written on ${date} by \`npm run digit-slip -- ${date}\`. Guards are laws of physics and of the print, second copies of small tables, and figures that stood in prints (\`seen-in-print.json\`); generated pages are none. Aim: 95 % of all slips of all tables.`,
  '',
  '## Capacity and drop',
  '',
  ...rows(figures),
  '',
  '## Factors',
  '',
  ...rows(factors),
  '',
  '## All other tables',
  '',
  ...rows(others),
  '',
  `All tables together: ${totalOf(scores).noticed} of ${totalOf(scores).slips} slips, ${share(totalOf(scores))} %.`,
  '',
  '## Below 95 %',
  '',
  ...short.map((s) => `- ${s.id}: ${share(s)} %`),
  '',
  '## Below 90 %',
  '',
  ...(low.length === 0
    ? ['None.']
    : low.map((s) => `- ${s.id}: ${share(s)} %: ${reasons[s.id] ?? 'no reason is given'}`)),
  '',
  '## What is caught, and what cannot be',
  '',
  'A slip anywhere is seen where a figure has an exact law (the power laws of Annex D, the heat balance, C_min U_0 over m I_n, k from its temperatures, 103 as half of C in 4D5), stood in a print that is kept beside the tables, or stands in a second table (columns of BS 7671 that repeat IEC, 4D2B and 4D4B, 4E2B and 4E4B, factors that both publications print). Most of these tables are recalled, and those that repeat one another have one provenance: their agreement shows that nobody mistyped them here, not that the print says so. The second copies of small tables were written from the texts that the tables were taken from: they too find slips of typing alone.',
  '',
  'What is left are last digits in columns that neither have a law nor a copy: C of 4D1A and 4E1A; C and E of 4D4A, 4E4A and 4J4A; the 4F tables; D2 of IEC; r, x and z of large sizes. There the ratio to a neighbouring column runs straight within rounding, about 0.4 % from 25 mm² up, and a drop fits resistance, temperature, phases and the triangle of r, x and z within rounding; a slip of one unit in the third digit is smaller than that. It can be caught by a second, independent copy of the print only.',
];
writeFileSync(`${root}docs/digit-slip.md`, `${lines.join('\n')}\n`);
execFileSync('npx', ['biome', 'check', '--write', `${root}docs/digit-slip.md`], { stdio: 'ignore' });
process.stdout.write(
  `${share(totalOf(figures))} % of ${totalOf(figures).slips} slips in capacity and drop, ${share(totalOf(factors))} % of ${totalOf(factors).slips} in factors, ${share(totalOf(others))} % of ${totalOf(others).slips} in the others\n`,
);

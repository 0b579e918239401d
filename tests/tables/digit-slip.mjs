// Writes docs/digit-slip.md: npm run digit-slip -- 2026-11-25
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('../..', import.meta.url));
const date = process.argv[2];
if (!/^\d{4}-\d{2}-\d{2}$/.test(date ?? ''))
  throw new Error('give the date of the run, as in: npm run digit-slip -- 2026-11-25');

const bundle = await build({
  stdin: {
    contents: "export * from './guarded.ts'; export { digitSlipScore } from './guards.ts';",
    resolveDir: fileURLToPath(new URL('.', import.meta.url)),
  },
  bundle: true,
  format: 'esm',
  write: false,
});
const code = bundle.outputFiles[0].text;
const { guarded, digitSlipScore } = await import(`data:text/javascript;base64,${Buffer.from(code).toString('base64')}`);

const scores = guarded.map(({ table, guards }) => ({ id: table.id, ...digitSlipScore(table, guards) }));
const share = ({ noticed, slips }) => ((100 * noticed) / slips).toFixed(1);
const total = scores.reduce((a, b) => ({ slips: a.slips + b.slips, noticed: a.noticed + b.noticed }));
const low = scores.filter((s) => s.noticed / s.slips < 0.9);
const lines = [
  '# Digit-slip score',
  '',
  `Each digit of each cell of the capacity and drop tables was changed in turn, and the guards of \`tests/tables\` were asked whether they object where they did not object to the print. Written on ${date} by \`npm run digit-slip -- ${date}\`. Aim: 95 % over all tables.`,
  '',
  '| table | slips | noticed, % |',
  '|---|---:|---:|',
  ...scores.map((s) => `| ${s.id} | ${s.slips} | ${share(s)} |`),
  `| **all** | ${total.slips} | **${share(total)}** |`,
  '',
  '## Below 90 %',
  '',
  'Last digits lie inside the bands of smoothness, order and resistance; only an exact law or an independent copy sees them. The power laws of Annex D are recalled, as most tables are, so they find slips of typing, not of memory. Without an exact law: 4D5, 4J4A, the 4F tables, columns C and E of 4D4A and 4E4A, C of 4D1A and 4E1A, D2 of the tables of IEC; B1 and B2 above 120 mm² and D1 of B.52.3 do not follow the law. Drops have resistance, the triangle of r, x and z, and the ratio of phases.',
  '',
  ...low.map((s) => `- ${s.id}: ${share(s)} %`),
];
writeFileSync(`${root}docs/digit-slip.md`, `${lines.join('\n')}\n`);
process.stdout.write(`${share(total)} % of ${total.slips} slips noticed\n`);

// Writes a page for every table to compare with the print, and the tick document: npm run proof-sheets -- FOLDER
import { mkdirSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { bundled, run } from '../support/bundled.mjs';

const folder = resolve(process.argv[2] ?? 'proof-sheets');
const contents = `
export { definitions } from '../../src/verify/definitions.ts';
export { proofSheet, ticksFor } from '../../src/report/proof-sheet.ts';
`;
const { definitions, proofSheet, ticksFor } = await run(
  await bundled({ stdin: { contents, resolveDir: import.meta.dirname } }),
);

// what is recalled most comes first
const known = new Map(ticksFor(definitions.tables).tables.map((t) => [t.table, t]));
const tables = [...definitions.tables].sort((a, b) => known.get(b.id).recalled - known.get(a.id).recalled);
const ticks = ticksFor(tables);
const name = (page, id) => `${String(page).padStart(3, '0')}-${id.replaceAll('/', '-')}.html`;

mkdirSync(folder, { recursive: true });
for (const [i, t] of tables.entries()) writeFileSync(`${folder}/${name(i + 1, t.id)}`, proofSheet(t, { page: i + 1 }));
const row = (t) =>
  `<tr><td>${t.page}</td><td><a href="${name(t.page, t.table)}">${t.title}</a></td><td>${t.document}</td><td>${t.cells}</td><td>${t.recalled}</td></tr>`;
writeFileSync(
  `${folder}/index.html`,
  `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>Proof sheets</title></head><body>
<h1>Proof sheets</h1>
<p>One page a table, what is recalled most first. Compare a page with the print, then set <code>compared</code> of its table in <code>ticks.json</code>; what the print has otherwise goes into <code>corrections</code>.</p>
<table><thead><tr><th>page</th><th>table</th><th>document</th><th>cells</th><th>recalled</th></tr></thead><tbody>
${ticks.tables.map(row).join('\n')}
</tbody></table></body></html>
`,
);
writeFileSync(`${folder}/ticks.json`, `${JSON.stringify(ticks, undefined, 2)}\n`);
process.stdout.write(`${tables.length} pages and ticks.json in ${folder}\n`);

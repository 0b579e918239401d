// The headings of a spreadsheet of brief surveys, with an example row.
// npx ohmwright sheet jobs.csv [--all]
import { writeFileSync } from 'node:fs';
import { briefColumns, csvText } from 'ohmwright/io';

const file = process.argv.slice(2).find((it) => !it.startsWith('--')) ?? 'jobs.csv';
writeFileSync(file, csvText(briefColumns(process.argv.includes('--all') ? 'all' : 'first')));
console.log(`${file}: a row for each job; delete the example row. A cell that is left empty is not known.`);

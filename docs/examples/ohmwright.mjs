#!/usr/bin/env node
// One command for the example scripts: reading, planning, writing.
const scripts = {
  plan: [
    'plan-a-charger.mjs',
    'plan survey.json [folder] [prices.json]   one survey to its reports, a page for each reader',
  ],
  sheet: ['empty-sheet.mjs', 'sheet [jobs.csv] [--all]           an empty spreadsheet of brief surveys'],
  batch: ['batch-to-csv.mjs', 'batch jobs.csv [decisions.csv]     a spreadsheet, or a folder of surveys, to decisions'],
};
const [name = '', ...rest] = process.argv.slice(2);
if (Object.hasOwn(scripts, name)) {
  process.argv.splice(2, process.argv.length, ...rest);
  await import(new URL(`./${scripts[name][0]}`, import.meta.url));
} else {
  const usage = Object.values(scripts).map(([, text]) => `  ${text}\n`);
  process.stderr.write(`npx ohmwright\n${usage.join('')}`);
  process.exitCode = 1;
}

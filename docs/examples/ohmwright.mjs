#!/usr/bin/env node
// One command for the example scripts: reading, planning, writing.
const scripts = {
  plan: [
    'plan-a-charger.mjs',
    'plan survey.json [folder] [prices.json]',
    'one survey to its reports, a page for each reader',
  ],
  sheet: ['empty-sheet.mjs', 'sheet [jobs.csv] [--all]', 'an empty spreadsheet of brief surveys, a row for each job'],
  batch: [
    'batch-to-csv.mjs',
    'batch jobs.csv [decisions.csv]',
    'a spreadsheet, or a folder of surveys, to decisions; with',
    '--defaults FILE      answers that are the same for every job of the firm, and what it fits',
    '--prices FILE        prices of the firm, for a net price',
    '--edition EDITION    edition of the wiring code where a row names none, such as 2018+A2:2022',
    '--assumptions FILE   what is taken of a home that nobody looked at; none takes nothing',
  ],
};
const [name = '', ...rest] = process.argv.slice(2);
if (Object.hasOwn(scripts, name)) {
  process.argv.splice(2, process.argv.length, ...rest);
  await import(new URL(`./${scripts[name][0]}`, import.meta.url));
} else {
  const usage = Object.values(scripts).map(([, call, what, ...options]) =>
    [`  ${call.padEnd(42)}${what}\n`, ...options.map((option) => `      ${option}\n`)].join(''),
  );
  const asked = /^(--)?help$/.test(name);
  const unknown = name === '' || asked ? '' : `There is no command '${name}'.\n`;
  process[asked ? 'stdout' : 'stderr'].write(`${unknown}npx ohmwright COMMAND\n${usage.join('')}`);
  if (!asked) process.exitCode = 1;
}

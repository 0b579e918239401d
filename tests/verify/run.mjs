// Forgeries of sheets of drawn installations: npm run forgeries -- COUNT SEED [--date ...] [--minutes ...]
import { record, slicedRun } from '../support/sliced-run.mjs';

const run = await slicedRun('forgeries', 'tests/verify/forgeries.ts', 25);
record(run, 'forgeries.md', [
  '# Forged sheets',
  '',
  'Sheets of drawn installations are forged by number, 25 times each: one figure, unit, symbol, key or verdict of a line; parts cut out, with the checks that were due in them or without; results turned and the conclusion with them; an alternative borrowed from another check; the conclusion cut away and another written in words. `verifySheet` has to notice, or to say that it takes as stated what was changed, or that the sheet concludes nothing. A result of which it says that it stands aside counts for nothing, and may be cut out.',
  '',
  `Last run: ${run.date}, seed ${run.seed}, ${run.ran}, ${run.found.length} unnoticed. Command: \`npm run forgeries -- ${run.count} ${run.seed} --date ${run.date}\`.`,
  '',
  '| forgery | tried |',
  '| ------- | ----: |',
  ...Object.entries(run.counts)
    .sort((a, b) => b[1] - a[1])
    .map(([name, n]) => `| ${name} | ${n} |`),
  ...(run.found.length > 0 ? ['', ...run.found.map((f) => `- ${f}`)] : []),
]);

// Values inside ranges against what is said over them: npm run ranges -- COUNT SEED [--date ...] [--minutes ...]
import { record, slicedRun } from '../support/sliced-run.mjs';

const run = await slicedRun('ranges', 'tests/ranges/slice.ts', 50);
const { compared = 0, samples = 0, decided = 0 } = run.counts;
record(run, 'ranges.md', [
  '# Ranges',
  '',
  'Houses are drawn from the sound house of the hazard book, the invented surveys with everything that is wanted, and random installations of `ohmwright/testing`. In each up to four facts that are known as numbers, whichever they are, become ranges: from 0.3 to 1 times the value up to 1 to 3 times. The circuit is assessed over them, and at twenty values inside, ends among them. What passes over the ranges must pass at each value, what fails over them must fail at each, check by check and as a whole.',
  '',
  `Last run: ${run.date}, seed ${run.seed}, ${run.ran}: ${compared} were judged (the others were refused: a value that nothing may have), ${decided} of them decided over the whole of their ranges; ${samples} values inside, of which ${run.found.length} were judged otherwise. Command: \`npm run ranges -- ${run.count} ${run.seed} --date ${run.date}\`. Some run with the tests.`,
  ...(run.found.length > 0 ? ['', ...run.found.slice(0, 40).map((f) => `- ${f}`)] : []),
]);

// Facts that nobody knows, and values that are worse, over drawn installations: npm run trust -- COUNT SEED [--date ...] [--minutes ...]
import { record, slicedRun } from '../support/sliced-run.mjs';

const run = await slicedRun('trust', 'tests/trust/slice.ts', 50);
const kinds = ['one fact', 'two facts', 'a worse value'];
record(run, 'trust.md', [
  '# Trust',
  '',
  'Houses are drawn from the sound house of the hazard book, the invented surveys with everything that is wanted, and random installations of `ohmwright/testing` (one and three phases, TN-S, TN-C-S, TT, feeders, parallel cables, cables in the ground, charge points; half of them with circuits that were there before). Circuits are judged, and the supply, and what feeders have to carry. What is designed, permitted, shared, notified and demanded is held to the same by another test (`tests/trust/other-answers.test.ts`). Of each a fact is taken, any of the register and records that may be left out whole: with a value that it may turn out to have, and without it, left out or said to be unknown. What passes without a fact must not fail with a value of it, check by check and as a whole; the same of two facts at once. Of quantities that are worse the larger they are, or the smaller, the worse value must not pass where the better one fails. What a designer chooses is no fact: the arrangement of a charge point, of which another test shows what is taken where it is left open, and of circuits of which nobody says that they were there before the devices, whether they are rings, where they leave, how many cables lie in parallel, and joints within a cable that is new on both sides: they are part of the work. Of a device, or a switch-fuse, and the word that there is none, what is not said is left out with the other, since both together are refused.',
  '',
  `Last run: ${run.date}, seed ${run.seed}, ${run.ran}, ${run.found.length} found to be better. Command: \`npm run trust -- ${run.count} ${run.seed} --date ${run.date}\`. Two thousand run with the tests.`,
  '',
  '| what nobody knows | drawn | of these compared |',
  '| ----------------- | ----: | ----------------: |',
  ...kinds.map((k) => `| ${k} | ${run.counts[`${k}: drawn`] ?? 0} | ${run.counts[`${k}: compared`] ?? 0} |`),
  ...(run.found.length > 0 ? ['', ...run.found.map((f) => `- ${f}`)] : []),
]);

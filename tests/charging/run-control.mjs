// Load control on drawn networks in which something fails: npm run control -- COUNT SEED [--date ...] [--minutes ...]
import { record, slicedRun } from '../support/sliced-run.mjs';

const run = await slicedRun('control', 'tests/charging/control-slice.ts', 3);
const kinds = [...new Set(Object.keys(run.counts).map((k) => k.slice(0, k.lastIndexOf(':'))))];
record(run, 'control.md', [
  '# Load control that fails safe',
  '',
  'Networks of nodes, points and vehicles are drawn and run second by second, with meters that fall silent or stick, clocks that jump either way, stamps from the future, points that lose their link or report nothing, vehicles that ignore their command, and loads that rise. At every node and second: above the limit and the load that nobody controls flows no more than that load rose within the time that is promised (what a vehicle draws that ignores its command while the meter is silent, nobody sees). After the faults sharing is back in the time that is promised, and at constant load the commands come to rest. Where nothing fails and loads rise, the excess, its time at each height and its heat are within the bounds that stand against the gates of a fuse.',
  '',
  `Last run: ${run.date}, seed ${run.seed}, ${run.ran.replace('cases', 'networks')}, ${run.found.length} promises broken. Command: \`npm run control -- ${run.count} ${run.seed} --date ${run.date}\`. One hundred and eighty run with the tests.`,
  '',
  '| networks | drawn | more than the limit for a while | in safe mode for a while |',
  '| -------- | ----: | ------------------------------: | -----------------------: |',
  ...kinds.map(
    (k) =>
      `| ${k} | ${run.counts[`${k}: drawn`] ?? 0} | ${run.counts[`${k}: excess`] ?? 0} | ${run.counts[`${k}: safe`] ?? 0} |`,
  ),
  ...(run.found.length > 0 ? ['', ...run.found.map((f) => `- ${f}`)] : []),
]);

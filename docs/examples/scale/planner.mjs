// node docs/examples/scale/planner.mjs [houses] [threads]: threads 0 stays in this one.
import { Piscina } from 'piscina';
import judgeHouses from './houses.mjs';

const houses = Number(process.argv[2] ?? 1_000_000);
const threads = Number(process.argv[3] ?? 2);
const SHARE = 5_000;

let peak = 0;
const watch = () => {
  peak = Math.max(peak, process.memoryUsage().rss);
};
const total = { pass: 0, fail: 0, 'not-determined': 0, limiterHelps: 0 };
const add = (found) => {
  for (const key of Object.keys(total)) total[key] += found[key];
  watch();
};
function* shares() {
  for (let first = 0; first < houses; first += SHARE) yield { first, count: Math.min(SHARE, houses - first) };
}

const started = performance.now();
if (threads === 0) for (const share of shares()) add(judgeHouses(share));
else {
  const pool = new Piscina({ filename: new URL('./houses.mjs', import.meta.url).href, maxThreads: threads });
  const waiting = new Set();
  for (const share of shares()) {
    // a share goes out only when a thread is nearly free, so that the queue stays short however many houses there are
    if (waiting.size >= 2 * threads) await Promise.race(waiting);
    const task = pool.run(share).then((found) => {
      waiting.delete(task);
      add(found);
    });
    waiting.add(task);
  }
  await Promise.all(waiting);
  await pool.close();
}
const seconds = (performance.now() - started) / 1000;
console.log(
  JSON.stringify({
    houses,
    threads,
    total,
    microsecondsPerHouse: Number(((seconds * 1e6) / houses).toFixed(1)),
    seconds: Number(seconds.toFixed(1)),
    peakMegabytes: Math.round(peak / 2 ** 20),
  }),
);

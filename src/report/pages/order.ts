import { wholeJob } from '../../site/whole-job.js';
import type { Task } from '../../site/work-rules.js';
import { type Block, heading, paragraph, steps } from '../block.js';
import { hoursWords } from '../plan-work.js';
import type { Page } from './parts.js';

/** The work in its order, each task once. */
export function order({ option, words }: Page): readonly Block[] {
  const { installer: w, operator } = words;
  const { route } = option.notification.decision;
  const told = route === 'no-duty' ? [] : [w.operator(operator.answer[route])];
  const { tasks } = wholeJob(option).hours;
  const rank = (t: Task): number => ORDER.indexOf(t);
  const sorted = [...tasks].sort((a, b) => rank(a.task) - rank(b.task));
  const work = [
    ...(route === 'notify-after' ? [] : told),
    ...sorted
      .map(({ task }) => w.tasks[task] ?? w.other(words.said(task, `task:${task}`)))
      .filter((step) => step !== ''),
    ...(option.remedies ?? []).map((r) => w.other(words.said(r.what, `remedy:${r.id}`))),
    ...(route === 'notify-after' ? told : []),
  ];
  return [heading(2, w.order), ...steps([...new Set(work)]), paragraph(w.inAll(hoursWords(option.hours, words)))];
}
/** Tasks in the order in which they are done: common practice, no source. */
const ORDER: readonly Task[] = [
  'attendance at the change of the supply',
  'isolation, tails and protective device',
  'replacement of the tails',
  'new enclosure with main switch',
  'board at the end of a feeder',
  'earthing conductor',
  'main bonding conductor, each',
  'earth electrode with test',
  'surge protection',
  'trench by hand, each m',
  'trench by machine, each m',
  'sand bedding and warning tape, each m',
  'cable laid in a trench, each 10 m',
  'backfill, each m',
  'reinstatement of turf or soil, each m',
  'reinstatement of paving, each m',
  'reinstatement of concrete or asphalt, each m',
  'wall hole and sealing, each',
  'cable, each 10 m clipped',
  'load limiter with its current sensor',
  'sensor cable, each 10 m',
  'fix and connect the point',
  'dead and live tests',
  'settings, handover and certificate',
];

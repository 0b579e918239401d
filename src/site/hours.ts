import { type Gap, knownOf } from '../core/index.js';
import { byCable, type Run } from '../installation/index.js';
import type { ItemFacts } from './item.js';
import { ENCLOSURE_RULE, enclosureNeeded, type WorkFacts } from './survey.js';
import { extentOf, inGround, sensorCable, trenchTasks } from './trench.js';
import type { Estimate, Task, WorkRules } from './work-rules.js';

/** Hours of a task. @inline */
export interface TaskHours extends Estimate {
  readonly task: Task;
  /** How often it occurs, or how many units of it. */
  readonly times: number;
  readonly rule: string;
  /** Facts that are missing; the task is then not counted. */
  readonly gaps?: readonly Gap[];
}

/** Hours in all. @inline */
export interface HoursInAll extends Estimate {
  /** Whether no missing fact leaves something out. */
  readonly complete: boolean;
}

/** Hours of a job: by task, and in all. @inline */
export interface Hours extends HoursInAll {
  readonly tasks: readonly TaskHours[];
}

/** Estimates added up: the least of all, the likely of all, the most of all. */
export function inAll(parts: readonly (Estimate & { readonly complete?: boolean })[]): HoursInAll {
  const sum = (key: 'low' | 'typical' | 'high') => parts.reduce((total, t) => total + t[key], 0);
  return {
    low: sum('low'),
    typical: sum('typical'),
    high: sum('high'),
    complete: parts.every((p) => p.complete !== false),
  };
}

/** A length, or a number of things. */
type Extent = number | { readonly least: number; readonly most: number };

class TaskList {
  readonly tasks: TaskHours[] = [];
  constructor(readonly rules: WorkRules) {}

  /** Of several tasks one is done, and it is not known which: the range spans them all, the likely value is the largest. */
  add(either: Task | readonly Task[], extent: Extent, rule: string): void {
    const choices = typeof either === 'string' ? [either] : either;
    const { least, most } = typeof extent === 'number' ? { least: extent, most: extent } : extent;
    const hours = choices.map((t) => this.rules.hours[t]);
    const typical = Math.max(...hours.map((h) => h.typical));
    this.tasks.push({
      task: choices.find((t) => this.rules.hours[t].typical === typical) as Task,
      times: most,
      low: Math.min(...hours.map((h) => h.low)) * least,
      typical: typical * most,
      high: Math.max(...hours.map((h) => h.high)) * most,
      rule: choices.length > 1 ? `${rule}; not stated which of: ${choices.join(' / ')}` : rule,
    });
  }

  /** A task that waits for a fact. */
  open(task: Task, fact: string, rule: string): void {
    this.tasks.push({ task, times: 0, low: 0, typical: 0, high: 0, rule, gaps: [{ kind: 'fact', fact }] });
  }

  /** A fact decides whether, or how often, the task is done. */
  ifKnown<T>(task: Task, fact: { state: string; value?: T } | undefined, name: string, rule: string): void {
    if (fact?.state === 'known') {
      if (Number(fact.value) > 0) this.add(task, Number(fact.value), rule);
    } else this.open(task, name, rule);
  }

  done(): Hours {
    return { tasks: this.tasks, ...inAll(this.tasks.map((t) => ({ ...t, complete: !t.gaps }))) };
  }
}

/** Travel as the survey states it, with the smallest estimate for setting up; else the estimate for both. */
function travel(list: TaskList, work: WorkFacts): void {
  const task = 'travel and setting up';
  if (work.travelMinutes === undefined) {
    list.add(task, 1, 'once, one visit');
    return;
  }
  const own = work.travelMinutes / 60;
  const { low, typical } = list.rules.hours[task];
  list.tasks.push({
    task,
    times: 1,
    low: own,
    typical: own + low,
    high: own + typical,
    rule: `once, one visit: ${work.travelMinutes} minutes of travel as surveyed, and setting up`,
  });
}

function cableTasks(list: TaskList, run: Run, work: WorkFacts): void {
  const joints = byCable(run).length - 1;
  if (joints > 0) list.add('joint where the cable changes, each', joints, 'one where the cable changes');
  for (const s of run.stretches.filter((one) => one.existing !== true)) {
    const buried = inGround(s);
    const task = buried ? 'cable laid in a trench, each 10 m' : 'cable, each 10 m clipped';
    const extent = extentOf(s);
    const factor = buried ? 1 : (list.rules.containmentFactor[s.containment ?? 'clipped'] ?? 1);
    const rule = `${s.name}: length / 10 m${buried ? '' : ` x ${factor} (${s.containment ?? 'clipped'})`}`;
    if (extent === undefined) list.open(task, `length of ${s.name}`, rule);
    else list.add(task, { least: (extent.least / 10) * factor, most: (extent.most / 10) * factor }, rule);
    if (!buried) continue;
    const deep = knownOf(s.depth);
    const trench = `${s.name}: each metre of trench, ${deep === undefined ? 'its depth not stated' : `${deep} m deep`}`;
    for (const either of trenchTasks(work))
      if (extent === undefined) list.open(either[0] as Task, `length of ${s.name}`, s.name);
      else list.add(either, extent, trench);
  }
}

/** Load limiters, and the cable from the sensor of each. */
function limiterTasks(list: TaskList, run: Run, work: WorkFacts, { limiters }: ItemFacts): void {
  if (limiters.length > 0)
    list.add('load limiter with its current sensor', limiters.length, 'the option rests on a load limiter');
  for (const feeders of limiters) {
    const task = 'sensor cable, each 10 m';
    const { extent, rule } = sensorCable(run, work, feeders);
    if (extent === undefined) list.open(task, 'work.sensorCable', rule);
    else list.add(task, { least: extent.least / 10, most: extent.most / 10 }, `length / 10 m, ${rule}`);
  }
}

/** What occurs once for a job beside survey and travel. */
function jobTasks(list: TaskList, work: WorkFacts, needs: ItemFacts): void {
  list.ifKnown('new enclosure with main switch', enclosureNeeded(work), 'work.newEnclosure', ENCLOSURE_RULE);
  if (work.replaceTails) list.add('replacement of the tails', 1, 'where the tails are replaced');
  if (work.supplyChange) list.add('attendance at the change of the supply', 1, 'the network operator changes it');
  if (needs.electrode) list.add('earth electrode with test', 1, 'the earthing arrangement needs an electrode');
  if (needs.earthingConductor) list.add('earthing conductor', 1, 'the one that is there is too small');
  const bonds = needs.bonding ?? [];
  if (bonds.length > 0) list.add('main bonding conductor, each', bonds.length, `too small: ${bonds.join(', ')}`);
}

/** Hours by task for one charge point circuit; what occurs once for a job goes with its first point. */
export function hoursOf(run: Run, work: WorkFacts, rules: WorkRules, needs: ItemFacts): Hours {
  const list = new TaskList(rules);
  const first = needs.first !== false;
  if (first) list.add('survey and quotation', 1, 'once for the job');
  list.add('notification paperwork', 1, 'one form for each charge point');
  if (first) travel(list, work);
  list.add('isolation, tails and protective device', 1, 'one for each circuit');
  if (!needs.cableKept) cableTasks(list, run, work);
  list.ifKnown('wall hole and sealing, each', work.wallsToDrill, 'work.wallsToDrill', 'one for each wall drilled');
  if (first) jobTasks(list, work, needs);
  if (needs.surgeProtection) list.add('surge protection', 1, 'required and not there');
  limiterTasks(list, run, work, needs);
  list.add('fix and connect the point', 1, 'one for each charge point');
  list.add('dead and live tests', 1, 'one for each circuit');
  list.add('settings, handover and certificate', 1, 'one for each charge point');
  return list.done();
}

/** Hours by task for the ways of a new feeder, with the boards at its end. */
export function feederHoursOf(ways: readonly Run[], work: WorkFacts, rules: WorkRules): Hours {
  const list = new TaskList(rules);
  list.add('isolation, tails and protective device', ways.length, 'one for each circuit');
  for (const way of ways) cableTasks(list, way, work);
  const boards = ways.flatMap((way) => way.feeds.filter((o) => o.kind === 'board'));
  if (boards.length > 0) list.add('board at the end of a feeder', boards.length, 'one for each board');
  list.add('dead and live tests', ways.length, 'one for each circuit');
  return list.done();
}

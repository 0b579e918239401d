import type { Gap } from '../core/index.js';
import type { Run } from '../installation/index.js';
import type { ItemFacts } from './quantities.js';
import type { WorkFacts } from './survey.js';
import type { Task, WorkRules } from './work-rules.js';

/** Hours of a task. @inline */
export interface TaskHours {
  readonly task: Task;
  /** How often it occurs, or how many units of it. */
  readonly times: number;
  /** Low estimate, h. */
  readonly low: number;
  /** Typical estimate, h. */
  readonly typical: number;
  /** High estimate, h. */
  readonly high: number;
  readonly rule: string;
  /** Facts that are missing; the task is then not counted. */
  readonly gaps?: readonly Gap[];
}

/** Hours of a job: by task, and in all. @inline */
export interface Hours {
  readonly tasks: readonly TaskHours[];
  /** Low estimates in all, h. */
  readonly low: number;
  /** Typical estimates in all, h. */
  readonly typical: number;
  /** High estimates in all, h. */
  readonly high: number;
  /** Whether a missing fact leaves something out. */
  readonly complete: boolean;
}

type Add = (task: Task, times: number, rule: string, gaps?: readonly Gap[]) => void;

const adder =
  (tasks: TaskHours[], rules: WorkRules): Add =>
  (task, times, rule, gaps) => {
    const { low, typical, high } = rules.hours[task];
    tasks.push({
      task,
      times,
      low: low * times,
      typical: typical * times,
      high: high * times,
      rule,
      ...(gaps ? { gaps } : {}),
    });
  };

/** Travel as the survey states it, with the smallest estimate for setting up; else the estimate for both. */
function travel(tasks: TaskHours[], work: WorkFacts, rules: WorkRules): void {
  const task = 'travel and setting up';
  if (work.travelMinutes === undefined) {
    adder(tasks, rules)(task, 1, 'once, one visit');
    return;
  }
  const own = work.travelMinutes / 60;
  const { low, typical } = rules.hours[task];
  tasks.push({
    task,
    times: 1,
    low: own,
    typical: own + low,
    high: own + typical,
    rule: `once, one visit: ${work.travelMinutes} minutes of travel as surveyed, and setting up`,
  });
}

function cableTasks(run: Run, rules: WorkRules, add: Add): void {
  for (const s of run.stretches) {
    const f = s.length;
    const factor = rules.containmentFactor[s.containment ?? 'clipped'] ?? 1;
    const rule = `${s.name}: length / 10 m x ${factor} (${s.containment ?? 'clipped'})`;
    if (f.state === 'unknown')
      add('cable, each 10 m clipped', 0, rule, [{ kind: 'fact', fact: `length of ${s.name}` }]);
    else add('cable, each 10 m clipped', ((f.state === 'known' ? f.value : f.most) / 10) * factor, rule);
  }
}

function totals(tasks: readonly TaskHours[]): Hours {
  const sum = (key: 'low' | 'typical' | 'high') => tasks.reduce((total, t) => total + t[key], 0);
  return { tasks, low: sum('low'), typical: sum('typical'), high: sum('high'), complete: tasks.every((t) => !t.gaps) };
}

/** Hours by task for one charge point circuit; what occurs once for a job goes with its first point. */
export function hoursOf(run: Run, work: WorkFacts, rules: WorkRules, needs: ItemFacts): Hours {
  const tasks: TaskHours[] = [];
  const add = adder(tasks, rules);
  const first = needs.first !== false;
  if (first) add('survey and quotation', 1, 'once for the job');
  add('notification paperwork', 1, 'one form for each point');
  if (first) travel(tasks, work, rules);
  add('isolation, tails and protective device', 1, 'one for each circuit');
  cableTasks(run, rules, add);
  const holes = work.wallsToDrill;
  if (holes?.state === 'known' && holes.value > 0)
    add('wall hole and sealing, each', holes.value, 'one for each wall drilled');
  if (holes === undefined || holes.state === 'unknown')
    add('wall hole and sealing, each', 0, 'one for each wall drilled', [{ kind: 'fact', fact: 'work.wallsToDrill' }]);
  if (needs.electrode && first) add('earth electrode with test', 1, 'the earthing arrangement needs an electrode');
  add('fix and connect the point', 1, 'one for each point');
  add('dead and live tests', 1, 'one for each circuit');
  add('settings, handover and certificate', 1, 'one for each point');
  return totals(tasks);
}

/** Hours by task for a new feeder; fixing and wiring the board at its end is not in the table and comes on top. */
export function feederHoursOf(run: Run, rules: WorkRules): Hours {
  const tasks: TaskHours[] = [];
  const add = adder(tasks, rules);
  add('isolation, tails and protective device', 1, 'one for each circuit');
  cableTasks(run, rules, add);
  add('dead and live tests', 1, 'one for each circuit');
  return totals(tasks);
}

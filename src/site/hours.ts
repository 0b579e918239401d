import type { Gap } from '../core/index.js';
import type { Run } from '../installation/index.js';
import type { ItemFacts } from './quantities.js';
import type { WorkFacts } from './survey.js';
import type { Task, WorkRules } from './work-rules.js';

/** Hours of a task. */
export interface TaskHours {
  /** The task. */
  readonly task: Task;
  /** How often it occurs, or how many units of it. */
  readonly times: number;
  /** Low, typical and high estimate, h. */
  readonly low: number;
  readonly typical: number;
  readonly high: number;
  /** The rule behind it. */
  readonly rule: string;
  /** Facts that are missing; the task is then not counted. */
  readonly gaps?: readonly Gap[];
}

/** Hours of a job: by task, and in all. */
export interface Hours {
  /** By task. */
  readonly tasks: readonly TaskHours[];
  /** In all, h. */
  readonly low: number;
  readonly typical: number;
  readonly high: number;
  /** Whether a missing fact leaves something out. */
  readonly complete: boolean;
}

/**
 * Hours by task for one charge point circuit.
 * @param run the designed run
 * @param work facts about the work
 * @param rules hours by task and factors by containment
 * @param needs what else the option needs
 */
export function hoursOf(run: Run, work: WorkFacts, rules: WorkRules, needs: ItemFacts): Hours {
  const tasks: TaskHours[] = [];
  const add = (task: Task, times: number, rule: string, gaps?: readonly Gap[]) => {
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
  add('survey and quotation', 1, 'once');
  add('notification paperwork', 1, 'once');
  add('travel and setting up', 1, 'once, one visit');
  add('isolation, tails and protective device', 1, 'once');
  for (const s of run.stretches) {
    const f = s.length;
    const factor = rules.containmentFactor[s.containment ?? 'clipped'] ?? 1;
    const rule = `${s.name}: length / 10 m x ${factor} (${s.containment ?? 'clipped'})`;
    if (f.state === 'unknown')
      add('cable, each 10 m clipped', 0, rule, [{ kind: 'fact', fact: `length of ${s.name}` }]);
    else add('cable, each 10 m clipped', ((f.state === 'known' ? f.value : f.most) / 10) * factor, rule);
  }
  const holes = work.wallsToDrill;
  if (holes?.state === 'known' && holes.value > 0)
    add('wall hole and sealing, each', holes.value, 'one for each wall drilled');
  if (holes === undefined || holes.state === 'unknown')
    add('wall hole and sealing, each', 0, 'one for each wall drilled', [{ kind: 'fact', fact: 'work.wallsToDrill' }]);
  if (needs.electrode) add('earth electrode with test', 1, 'the earthing arrangement needs an electrode');
  add('fix and connect the point', 1, 'one for each point');
  add('dead and live tests', 1, 'once');
  add('settings, handover and certificate', 1, 'once');
  const sum = (key: 'low' | 'typical' | 'high') => tasks.reduce((total, t) => total + t[key], 0);
  return { tasks, low: sum('low'), typical: sum('typical'), high: sum('high'), complete: tasks.every((t) => !t.gaps) };
}

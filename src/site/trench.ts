import type { Run, Stretch } from '../installation/index.js';
import type { Item } from './item.js';
import type { WorkFacts } from './survey.js';
import type { Task, WorkRules } from './work-rules.js';

/** Whether a trench is dug for a stretch: it is buried, or of a method in the ground, in a duct too. */
export const inGround = ({ containment, method }: Stretch): boolean =>
  containment === 'buried' || (method.state === 'known' && method.value.startsWith('D'));

/** Shortest and longest that a stretch can be, m; undefined where nothing is known of it. */
export const extentOf = ({ length: f }: Pick<Stretch, 'length'>): { least: number; most: number } | undefined =>
  f.state === 'known' ? { least: f.value, most: f.value } : f.state === 'between' ? f : undefined;

/** Length of the cable of a current sensor, m: as stated, else from the board that the limiter acts on along feeders and circuit. */
export function sensorCable(run: Run, work: WorkFacts, feeders: readonly Run[]) {
  if (work.sensorCable) return { extent: extentOf({ length: work.sensorCable }), rule: 'as stated' };
  const parts = [...feeders, run].flatMap((r) => r.stretches.map(extentOf));
  const extent = parts.reduce(
    (sum, p) => (sum && p ? { least: sum.least + p.least, most: sum.most + p.most } : undefined),
    { least: 0, most: 0 },
  );
  return { extent, rule: 'along the circuit from the board of the limiter: its length is not stated' };
}

const diggingTasks = { hand: 'trench by hand, each m', machine: 'trench by machine, each m' } as const;
const surfaceTasks = {
  'turf-or-soil': 'reinstatement of turf or soil, each m',
  paving: 'reinstatement of paving, each m',
  'concrete-or-asphalt': 'reinstatement of concrete or asphalt, each m',
} as const;

/** The task of a choice, and of every choice while it is not known. */
const chosenOf = <K extends string>(
  tasks: Readonly<Record<K, Task>>,
  fact: { state: string; value?: K } | undefined,
) => (fact?.state === 'known' ? [tasks[fact.value as K]] : (Object.values(tasks) as Task[]));

/** What is done for each metre of trench; of several tasks in one entry only one is done, and it is not known which. */
export const trenchTasks = ({ digging, surface }: WorkFacts): readonly (readonly Task[])[] => [
  chosenOf(diggingTasks, digging),
  ['sand bedding and warning tape, each m'],
  ['backfill, each m'],
  chosenOf(surfaceTasks, surface),
];

/** Sand, warning tape and reinstatement for a trench, and a machine where one digs. */
export function trenchItems(s: Stretch, { digging, surface }: WorkFacts, rules: WorkRules): readonly Item[] {
  const most = extentOf(s)?.most;
  const rule = 'length of the trench, a trench for each circuit';
  const lacking = { gaps: [{ kind: 'fact' as const, fact: `length of ${s.name}` }] };
  const along = (key: string, words: string): Item => ({
    key,
    words: `${words}: ${s.name}`,
    unit: 'm',
    rule,
    ...(most === undefined ? lacking : { quantity: Math.ceil(most - 1e-9) }),
  });
  const made = surface?.state === 'known' ? surface.value : undefined;
  return [
    {
      key: 'sand',
      words: `sand for the bedding: ${s.name}`,
      unit: 'm³',
      rule: `${rules.sandPerMetre} m³ for each metre`,
      ...(most === undefined ? lacking : { quantity: Math.ceil(most * rules.sandPerMetre * 10 - 1e-9) / 10 }),
    },
    along('warning-tape', 'warning tape'),
    made
      ? along(`reinstatement:${made}`, `reinstatement of ${made.replaceAll('-', ' ')}`)
      : {
          key: 'reinstatement',
          words: `reinstatement of the surface: ${s.name}`,
          unit: 'm',
          rule,
          gaps: [{ kind: 'fact', fact: 'work.surface', obtain: 'turf or soil, paving, concrete or asphalt' }],
        },
    ...(digging?.state === 'known' && digging.value === 'machine'
      ? [
          {
            key: 'digger',
            words: `mini digger with driver, for the trench: ${s.name}`,
            unit: 'set' as const,
            quantity: 1,
            rule: 'where a machine digs',
          },
        ]
      : []),
  ];
}

import { eachFeeder, workOf } from './alike-plans.js';
import { type Hours, inAll, type TaskHours } from './hours.js';
import type { Item } from './item.js';
import type { OptionPlan } from './plan.js';

/** Equal things added up, in the order in which they come first; what is open stays apart. */
function together<T>(things: readonly T[], key: (thing: T) => string, add: (a: T, b: T) => T): readonly T[] {
  const found = new Map<string, T>();
  for (const thing of things) {
    const before = found.get(key(thing));
    found.set(key(thing), before === undefined ? thing : add(before, thing));
  }
  return [...found.values()];
}

/** What is counted section by section, and ordered as one. */
const bySection = ({ key }: Item): boolean => key.startsWith('fixing:') || key.startsWith('containment:');
const ordered = (i: Item): Item => (bySection(i) ? { ...i, words: i.words.replace(/: .*$/, '') } : i);

/** Material and hours of everything in an option, each item and each task once: charge points, new feeders, remedies. */
export function wholeJob({ points, feeders, remedies = [] }: OptionPlan): {
  readonly items: readonly Item[];
  readonly hours: Hours;
} {
  const parts = [...eachFeeder(feeders), ...workOf(points)];
  const items = together(
    [...parts.flatMap((p) => p.items ?? []), ...remedies.flatMap((r) => r.items)].map(ordered),
    (i) => [i.key, i.words, i.unit, i.quantity === undefined].join('\n'),
    (a, b) => (a.quantity === undefined ? a : { ...a, quantity: a.quantity + (b.quantity ?? 0) }),
  );
  const tasks = together(
    parts.flatMap((p) => p.hours?.tasks ?? []),
    (t) => [t.task, t.gaps === undefined].join('\n'),
    (a, b): TaskHours => ({
      ...a,
      times: a.times + b.times,
      low: a.low + b.low,
      typical: a.typical + b.typical,
      high: a.high + b.high,
    }),
  );
  const done = tasks.map((t) => ({ ...t, complete: !t.gaps }));
  return { items, hours: { tasks, ...inAll([...done, ...remedies.map((r) => r.hours)]) } };
}

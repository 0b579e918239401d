import type { Run } from '../installation/index.js';
import type { Hours } from './hours.js';
import type { Item } from './item.js';
import type { FeederPlan, PointPlan } from './plan.js';

/** Names of the circuits that a plan of a point is for: its own and those of points that are alike. */
export const runsOf = ({ run, alike }: PointPlan): readonly string[] => [
  run.id,
  ...(alike?.points.map((p) => p.run) ?? []),
];

/** Names of the points that it is for. */
export const pointsOfPlan = ({ point, alike }: PointPlan): readonly string[] => [
  point,
  ...(alike?.points.map((p) => p.point) ?? []),
];

/** The circuit of a point that is alike, with what was chosen for the one that stands for it. */
export const decidedAlike = (run: Run, { run: { cable, device } }: PointPlan): Run => ({ ...run, cable, device });

/** The plan of every point on its own: those that are alike with their names, material and hours. */
export const eachPoint = (points: readonly PointPlan[]): readonly PointPlan[] =>
  points.flatMap(({ alike, ...first }): readonly PointPlan[] => [
    first,
    ...(alike?.points.map(
      ({ point, run: id }): PointPlan => ({
        ...first,
        point,
        run: { ...first.run, id, feeds: first.run.feeds.map((o) => (o.kind === 'board' ? o : { ...o, id: point })) },
        items: alike.items,
        hours: alike.hours,
      }),
    ) ?? []),
  ]);

/** Material and hours of every circuit that is installed. */
export const workOf = (
  points: readonly PointPlan[],
): readonly { readonly items: readonly Item[]; readonly hours: Hours }[] =>
  points.flatMap(({ items, hours, alike }) => [
    { items, hours },
    ...(alike?.points.map(() => ({ items: alike.items, hours: alike.hours })) ?? []),
  ]);

/** The plan of every feeder on its own: those that are alike with their names. */
export const eachFeeder = (feeders: readonly FeederPlan[]): readonly FeederPlan[] =>
  feeders.flatMap(({ alike = [], ...first }) => [
    first,
    ...alike.map((run): FeederPlan => ({ ...first, run, demand: { ...first.demand, run } })),
  ]);

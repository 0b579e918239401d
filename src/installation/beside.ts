import { between, endsOf, type Fact, known, unknown } from '../core/index.js';
import { type Amperes, amperes, metres } from '../units/index.js';
import type { Stretch } from './cable.js';
import type { Run } from './tree.js';

/** Two ends of a figure: where it is known, they are the same. */
export type Ends = readonly [least: number, most: number];

/** What is asked for where the length of one of several ways is not known: their shares turn on all lengths. */
const LENGTHS = 'how long each of the ways is: they share by their lengths';

/** The ways of a feeder, each as a run of its own with the cable of the first; one where nothing stands beside it. */
export function waysOf({ beside = [], ...run }: Run): readonly Run[] {
  return [run, ...beside.map((way) => ({ ...run, ...way }))];
}

/** Length of a route, m; undefined where a stretch has none. */
export function lengthOf({ stretches }: Pick<Run, 'stretches'>): Ends | undefined {
  let [least, most] = [0, 0];
  for (const { length } of stretches) {
    const ends = endsOf(length);
    if (!ends || ends[1] <= 0) return undefined;
    least += ends[0];
    most += ends[1];
  }
  return most > 0 ? [Math.max(least, 1e-3), most] : undefined;
}

/** Length of cable with the impedance of several of like cable in parallel, m: it rises with each of them. */
export const inParallel = (lengths: readonly Ends[]): Ends => {
  const at = (end: 0 | 1) => 1 / lengths.reduce((sum, length) => sum + 1 / length[end], 0);
  return [at(0), at(1)];
};

/** Share of the current that each of several ways in like cable takes: the inverse of its length over that of all. */
export const sharesOf = (lengths: readonly Ends[]): readonly Ends[] =>
  lengths.map((own, k) => {
    const others = lengths.filter((_, i) => i !== k);
    const at = (length: number, end: 0 | 1) => 1 / (1 + others.reduce((sum, other) => sum + length / other[end], 0));
    return [at(own[1], 0), at(own[0], 1)];
  });

/** A fact between two ends, or known where they are one. */
export const within = <T extends number>([least, most]: Ends, unit: (n: number) => T, by: string): Fact<T> =>
  least === most ? known(unit(least), by) : between(unit(least), unit(most) as NoInfer<T>, by);

/** The route of a way, as one stretch of so much cable. */
export const asLong = ([first]: readonly Stretch[], length: Ends | undefined, by: string): readonly Stretch[] =>
  first ? [{ ...first, length: length ? within(length, metres, by) : unknown(LENGTHS) }] : [];

/**
 * Ways side by side as one, for whatever lies before or behind them: so much cable of one way as has the impedance of
 * all, and a device of which the rating is what they carry together before the first of their devices does. A run
 * without others is returned as it is.
 */
export function asOneWay(run: Run): Run {
  if (run.beside === undefined || run.beside.length === 0) return run;
  const { beside: _, ...first } = run;
  const ways = waysOf(run);
  const lengths = ways.map(lengthOf);
  const whole = lengths.every((l) => l !== undefined) ? (lengths as readonly Ends[]) : undefined;
  const kinds = new Set(ways.map((w) => JSON.stringify(w.device.kind.state === 'known' ? w.device.kind.value : null)));
  return {
    ...first,
    device: {
      ...first.device,
      kind: kinds.size === 1 ? first.device.kind : unknown('one of several kinds'),
      rating: ratingOfAll(ways, whole),
    },
    stretches: asLong(first.stretches, whole && inParallel(whole), `of ${ways.length} ways in parallel`),
  };
}

/** What all ways carry together when the first of their devices carries its rated current, A. */
function ratingOfAll(ways: readonly Run[], lengths: readonly Ends[] | undefined): Fact<Amperes> {
  const ratings = ways.map((w) => endsOf(w.device.rating));
  const open = ways.find((w) => w.device.rating.state === 'unknown')?.device.rating;
  if (open) return open;
  if (!lengths) return unknown(LENGTHS);
  const shares = sharesOf(lengths);
  const at = (end: 0 | 1) =>
    Math.min(...ratings.map((r, k) => (r?.[end] ?? 0) / (shares[k]?.[end === 0 ? 1 : 0] ?? 1)));
  return within([at(0), at(1)], amperes, `the first of ${ways.length} devices that is full`);
}

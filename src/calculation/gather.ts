import { isMissing, missing } from '../core/index.js';
import type { Evaluate } from './evaluate.js';
import type { How } from './line.js';
import { type List, type Placed, type Thing, thingsOf, valueAt } from './lists.js';
import { isNumeric, joined, leastOf, missingOf, mostOf, plain, type Span, spanOf } from './value.js';

const counted = (
  t: Thing,
  list: List,
  among: ((place: never, here: never) => boolean) | undefined,
): readonly Thing[] => {
  const things = thingsOf(t, list);
  return among ? things.filter((x) => among(x.place as never, t.place as never)) : things;
};
/** Words in the place of a figure say why there is none. */
const hasFigure = (entry: Placed) => (thing: Thing) => typeof valueAt(thing, entry) !== 'string';

export function gathering(how: Extract<How, { kind: 'gather' }>, entry: Placed): Evaluate {
  if (how.how === 'any')
    return (t) => {
      const all = counted(t, entry.list, how.among).map((x) => valueAt(x, entry));
      return all.includes(true) || (all.some(isMissing) ? missingOf(all) : false);
    };
  if (how.how === 'list')
    return (t) => {
      const all = counted(t, entry.list, how.among).map((x) => plain(entry.name, valueAt(x, entry)));
      return all.some(isMissing) ? missingOf(all) : all;
    };
  const { how: put } = how;
  const begin = put === 'sum' ? 0 : put === 'smallest' ? Infinity : -Infinity;
  return (t) => {
    const things = counted(t, entry.list, how.among);
    let least = begin;
    let most = begin;
    let count = 0;
    let gone = false;
    for (const x of things) {
      const v = valueAt(x, entry);
      if (typeof v === 'string') continue; // words in the place of a figure say why there is none
      count++;
      if (!isNumeric(v)) gone = true;
      else {
        const [low, high] = [leastOf(v), mostOf(v)];
        least = put === 'sum' ? least + low : put === 'smallest' ? Math.min(least, low) : Math.max(least, low);
        most = put === 'sum' ? most + high : put === 'smallest' ? Math.min(most, high) : Math.max(most, high);
      }
    }
    if (count === 0)
      return (
        how.empty ??
        (how.how === 'sum'
          ? 0
          : missing({ kind: 'fact', fact: entry.name, obtain: 'there is no part to take it from' }))
      );
    return gone ? missingOf(things.map((x) => valueAt(x, entry))) : spanOf(least, most);
  };
}

export function atWhich(how: Extract<How, { kind: 'at' }>, entry: Placed, take: Placed): Evaluate {
  const larger = how.how === 'largest';
  return (t) => {
    const all = counted(t, entry.list, how.among);
    const [only] = all;
    // of one there is nothing to choose
    if (only && all.length === 1 && isNumeric(valueAt(only, entry))) return valueAt(only, take);
    const things = all.filter(hasFigure(entry));
    const open = things.find((x) => isMissing(valueAt(x, entry)));
    if (open) return valueAt(open, take);
    const best = things.reduce(
      (end, x) =>
        larger
          ? Math.max(end, leastOf(valueAt(x, entry) as number))
          : Math.min(end, mostOf(valueAt(x, entry) as number)),
      larger ? -Infinity : Infinity,
    );
    // over spans several things may be the one
    const may = things.filter((x) => {
      const v = valueAt(x, entry) as number | Span;
      return larger ? mostOf(v) >= best : leastOf(v) <= best;
    });
    const first = may[0];
    if (!first) return missing({ kind: 'fact', fact: entry.name, obtain: 'there is no part to take it from' });
    const plainly = may.every((x) => typeof valueAt(x, entry) === 'number');
    return joined(
      take.name,
      (plainly ? [first] : may).map((x) => valueAt(x, take)),
    );
  };
}

/** The ends of a span, and each step inside it with the nearest numbers on both sides. */
export function endsAndSteps({ least, most }: Span, steps: readonly unknown[]): readonly number[] {
  const at = steps.filter(isNumeric).flatMap((s) => [leastOf(s), mostOf(s)]);
  const ulp = 2 ** -53;
  const both = at.flatMap((x) => [x - x * ulp, x, x + x * ulp > x ? x + x * ulp : x + 2 * x * ulp]);
  return [least, ...both.filter((x) => x > least && x < most), most];
}

/** Makes records whose values are worked out when they are first asked for: of several ways one may be enough. */
export function onDemand<J, R>(
  of: readonly (readonly [name: string, by: J])[],
  give: (thing: Thing, by: J) => R,
): (thing: Thing) => Readonly<Record<string, R>> {
  class Given {
    readonly #thing: Thing;
    readonly #kept: (R | undefined)[];
    constructor(thing: Thing) {
      this.#thing = thing;
      this.#kept = new Array(of.length).fill(undefined);
      Object.defineProperties(this, asked);
    }
    static at(given: Given, i: number, by: J): R {
      given.#kept[i] ??= give(given.#thing, by);
      return given.#kept[i] as R;
    }
  }
  // the same functions for every record, so that all of them have one shape
  const asked = Object.fromEntries(
    of.map(([name, by], i) => [
      name,
      {
        enumerable: true,
        get(this: Given) {
          return Given.at(this, i, by);
        },
      },
    ]),
  );
  return (thing) => new Given(thing) as unknown as Readonly<Record<string, R>>;
}

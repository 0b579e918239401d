import { type Line, lineConductors } from '../installation/index.js';
import { invalidInput, type Problem } from '../units/index.js';

/** A single-phase point or load that may go on another line. @inline */
export interface OnOneLine {
  readonly id: string;
  /** Its current, A, 0 and up. */
  readonly current: number;
  /** The line that it is on now. */
  readonly on: Line;
  /** Lines that it may go on: those of the feeder that it hangs on; all when absent. */
  readonly may?: readonly Line[];
}

/** What is on which line. @inline */
export interface Placement {
  /** The line of each, by name. */
  readonly lines: Readonly<Record<string, Line>>;
  /** Those that are on another line than before. */
  readonly moved: readonly string[];
  /** Current of L1, L2 and L3, A. */
  readonly currents: readonly [number, number, number];
  /** Difference between the most and the least loaded line, A. */
  readonly unbalance: number;
  /** Whether no other placement has a lower most loaded line, nor, with that, a smaller difference. */
  readonly proven: boolean;
}

/** Distinct sums of lines that are followed; beyond them those that are most level are kept, and nothing is proven. */
const MOST_SUMS = 4000;

type Sums = readonly [number, number, number];
interface Way {
  readonly sums: Sums;
  readonly moves: number;
  readonly before?: Way;
  readonly line?: Line;
}

const heaviest = (s: Sums): number => Math.max(...s);
const spread = (s: Sums): number => Math.max(...s) - Math.min(...s);
/** Sums that differ in the last places only are the same. */
const keyOf = (s: Sums): string => s.map((x) => Math.round(x * 1e6)).join(' ');

/** Below zero where the first is the better: a lower most loaded line, then less unbalance, then fewer moves. */
const compare = (a: Way, b: Way): number => {
  const worse = heaviest(a.sums) - heaviest(b.sums);
  if (Math.abs(worse) > 1e-6) return worse;
  const wider = spread(a.sums) - spread(b.sums);
  return Math.abs(wider) > 1e-6 ? wider : a.moves - b.moves;
};

const added = (sums: Sums, line: Line, current: number): Sums => {
  const at = lineConductors.indexOf(line);
  return [sums[0] + (at === 0 ? current : 0), sums[1] + (at === 1 ? current : 0), sums[2] + (at === 2 ? current : 0)];
};

function problemsOf(base: Sums, items: readonly OnOneLine[]): readonly Problem[] {
  const problems: Problem[] = [];
  if (!Array.isArray(base) || base.length !== 3 || !base.every((b) => Number.isFinite(b) && b >= 0))
    problems.push({ path: ['base'], message: 'has three currents of 0 A and up, for L1, L2 and L3' });
  const names = new Set<string>();
  items.forEach(({ id, current, on, may }, i) => {
    const say = (key: string, message: string) => void problems.push({ path: ['items', i, key], message });
    if (names.has(id)) say('id', `'${id}' is used twice; a name may be used once`);
    names.add(id);
    if (!(Number.isFinite(current) && current >= 0)) say('current', 'is a current of 0 A and up');
    if (!lineConductors.includes(on)) say('on', 'is L1, L2 or L3');
    if (may && (may.length === 0 || !may.every((l) => lineConductors.includes(l)))) say('may', 'names L1, L2 or L3');
  });
  return problems;
}

/**
 * Single-phase points and loads on the lines on which the most loaded line is lowest, and with that the unbalance smallest,
 * with the fewest moves. All distinct sums are followed, so that the result is proven up to some thousands of
 * them: any number of points of one current, about a dozen of as many currents. It is never worse than the placement
 * that is given.
 * @param base current of L1, L2 and L3 that stays where it is, A, 0 and up
 * @param items what may be moved, each with its current in A
 * @returns the line of each, what was moved, currents in A
 * @throws CalculationError `invalid-input` with the path of each problem
 * @example
 * ```ts
 * import { placeOnLines } from 'ohmwright/site';
 *
 * const bays = [{ id: 'left', current: 32, on: 'L2' }, { id: 'right', current: 32, on: 'L2' }] as const;
 * const { lines, currents, proven } = placeOnLines([30, 10, 0], bays);
 * lines; // => { left: 'L2', right: 'L3' }
 * currents; // => [30, 42, 32]
 * proven; // => true
 * ```
 */
export function placeOnLines(base: readonly [number, number, number], items: readonly OnOneLine[]): Placement {
  const problems = problemsOf(base, items);
  if (problems.length > 0) throw invalidInput('what is to be placed on lines', problems);
  const given = items.reduce<Way>(
    (way, { current, on }) => ({ sums: added(way.sums, on, current), moves: 0, before: way, line: on }),
    { sums: base, moves: 0 },
  );
  // the large ones first: what is left then levels them out
  const order = items.map((_, i) => i).sort((a, b) => (items[b]?.current ?? 0) - (items[a]?.current ?? 0));
  // each in turn on the least loaded line bounds the best: what is above it leads nowhere
  const inTurn = order.reduce<Way>(
    (way, i) => {
      const { current, may = lineConductors } = items[i] as OnOneLine;
      const at = (line: Line) => way.sums[lineConductors.indexOf(line)] as number;
      const line = [...may].sort((a, b) => at(a) - at(b))[0] as Line;
      return { sums: added(way.sums, line, current), moves: 0 };
    },
    { sums: base, moves: 0 },
  );
  const most = Math.min(heaviest(inTurn.sums), heaviest(given.sums)) + 1e-6;
  let ways: readonly Way[] = [{ sums: base, moves: 0 }];
  let proven = true;
  for (const i of order) {
    const { current, on, may = lineConductors } = items[i] as OnOneLine;
    const next = new Map<string, Way>();
    for (const before of ways)
      for (const line of may) {
        const way: Way = {
          sums: added(before.sums, line, current),
          moves: before.moves + (line === on ? 0 : 1),
          before,
          line,
        };
        if (heaviest(way.sums) > most) continue;
        const key = keyOf(way.sums);
        const same = next.get(key);
        if (!same || way.moves < same.moves) next.set(key, way);
      }
    ways = [...next.values()];
    if (ways.length > MOST_SUMS) {
      proven = false;
      ways = [...ways].sort(compare).slice(0, MOST_SUMS);
    }
  }
  const best = [...ways].sort(compare)[0];
  const stays = best === undefined || compare(given, best) <= 0;
  const lines: Record<string, Line> = {};
  for (const { id, on } of items) lines[id] = on;
  if (!stays) {
    let way: Way | undefined = best;
    for (let k = order.length - 1; way?.line; k--) {
      lines[(items[order[k] as number] as OnOneLine).id] = way.line;
      way = way.before;
    }
  }
  const { sums } = stays ? given : best;
  return {
    lines,
    moved: items.filter(({ id, on }) => lines[id] !== on).map(({ id }) => id),
    currents: [sums[0], sums[1], sums[2]],
    unbalance: spread(sums),
    proven,
  };
}

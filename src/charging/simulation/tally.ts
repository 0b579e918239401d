import { lineConductors } from '../../installation/index.js';
import { amperes, seconds } from '../../units/index.js';
import { neutralOf } from '../network/balance.js';
import { LINE_BIT, type TreeOrder } from '../network/tree-order.js';
import type { NodeOutcome, SimulationSeries } from './outcome.js';

const LINES = [0, 1, 2] as const;

/** Adds up what nodes see, step by step. */
export function tallyOf({ nodes, limit }: TreeOrder, step: number) {
  const size = limit.length;
  const [peak, excess] = [new Float64Array(size).fill(Number.NEGATIVE_INFINITY), new Float64Array(size)];
  const [atLimit, overloaded] = [new Float64Array(size), new Float64Array(size)];
  const [above, longest] = [new Float64Array(size), new Float64Array(size)];
  const neutral = new Float64Array(nodes.length);
  return {
    add(base: Float64Array, charging: Float64Array, time: number): void {
      for (let v = 0; v < neutral.length; v++) {
        const on = (p: number) => base[3 * v + p]! + charging[3 * v + p]!;
        neutral[v] = Math.max(neutral[v]!, neutralOf(on(0), on(1), on(2), nodes[v]!.thirdHarmonic));
      }
      for (let c = 0; c < size; c++) {
        const total = base[c]! + charging[c]!;
        if (total > peak[c]!) peak[c] = total;
        const most = limit[c]!;
        if (total + step <= most + 1e-9) {
          above[c] = 0;
          continue;
        }
        if (total > 0) atLimit[c] = atLimit[c]! + time;
        above[c] = total > Math.max(most, base[c]!) + 1e-9 ? above[c]! + time : 0;
        if (above[c]! > longest[c]!) longest[c] = above[c]!;
        const over = base[c]! - most;
        if (over <= 0) continue;
        overloaded[c] = overloaded[c]! + time;
        if (over > excess[c]!) excess[c] = over;
      }
    },
    outcome: (): NodeOutcome[] =>
      nodes.map(({ id }, v) => {
        const current = (of: Float64Array) =>
          [amperes(of[3 * v]!), amperes(of[3 * v + 1]!), amperes(of[3 * v + 2]!)] as const;
        const time = (of: Float64Array) =>
          [seconds(of[3 * v]!), seconds(of[3 * v + 1]!), seconds(of[3 * v + 2]!)] as const;
        return {
          id,
          peak: current(peak),
          neutral: amperes(neutral[v]!),
          atLimit: time(atLimit),
          overloaded: time(overloaded),
          excess: current(excess),
          longestAbove: time(longest),
        };
      }),
  };
}

/** Keeps currents step by step. */
export function seriesOf(order: TreeOrder) {
  const { nodes, points, mask, wired, limit } = order;
  const minutes: number[] = [];
  const at = () => LINES.map((): number[] => []);
  const byPoint = points.map(at);
  const byNode = nodes.map(at);
  const byLimit = nodes.map(() => LINES.map((): (number | null)[] => []));
  const named = <T>(lists: readonly T[]) => ({ L1: lists[0]!, L2: lists[1]!, L3: lists[2]! });
  return {
    add(now: number, base: Float64Array, x: Float64Array): void {
      minutes.push(now / 60);
      points.forEach((_, i) => {
        for (const p of LINES) byPoint[i]![p]!.push(mask[i]! & LINE_BIT[p] ? x[i]! : 0);
      });
      nodes.forEach((_, v) => {
        for (const p of LINES) {
          byNode[v]![p]!.push(base[3 * v + p]!);
          const most = limit[3 * v + p]!;
          byLimit[v]![p]!.push(most === Number.POSITIVE_INFINITY ? null : most);
        }
      });
    },
    series(): SimulationSeries {
      const inOrder = points.map((_, i) => i).sort((a, b) => order.input[a]! - order.input[b]!);
      return {
        minutes,
        points: inOrder.map((i) => ({
          id: points[i]!.id,
          current: Object.fromEntries(
            LINES.filter((p) => wired[i]! & LINE_BIT[p]).map((p) => [lineConductors[p], byPoint[i]![p]!]),
          ),
        })),
        load: nodes.map(({ id }, v) => ({ id, current: named(byNode[v]!) })),
        limit: nodes.map(({ id }, v) => ({ id, current: named(byLimit[v]!) })),
      };
    },
  };
}

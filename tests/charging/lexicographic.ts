import { expect } from 'vitest';
import type { ChargingNetwork } from '../../src/charging/index.js';
import { rowsOf } from './networks.js';
import { maximum } from './solver.js';

/**
 * Whether currents are the lexicographic maximum of current over weight, judged by a general linear solver. Level by
 * level: no higher level is possible for all that are above those before, and those at the level cannot rise.
 */
export function expectLexicographic(network: ChargingNetwork, x: readonly number[], weight: readonly number[]): void {
  const here = network.points.flatMap((p, i) => (p.connected === false ? [] : [i]));
  const column = new Map(here.map((i, k) => [i, k]));
  const n = here.length;
  const rows = rowsOf(network).map(({ who, sign, room }) => {
    const sum = who.reduce((s, i, j) => s + sign[j]! * x[i]!, 0);
    expect(sum).toBeLessThanOrEqual(room + 1e-7);
    // what is judged is within the limits for the solver too, to which a billionth more is too much
    return { who: who.map((i) => column.get(i)!), by: sign, to: Math.max(room, sum) };
  });
  const level = here.map((i) => x[i]! / weight[i]!);
  const most = here.map((i) => network.points[i]!.most as number);
  const open = new Set(here.keys());
  let floor = new Array<number>(n).fill(0);
  while (open.size > 0) {
    const lowest = Math.min(...[...open].map((k) => level[k]!));
    // the last column is the level
    const best = maximum({
      objective: [...floor.map(() => 0), 1],
      least: [...floor, 0],
      most: [...most, 1e6],
      rows: [...rows, ...[...open].map((k) => ({ who: [k, n], by: [1, -weight[here[k]!]!], from: 0 }))],
    });
    expect(best?.value ?? Number.NaN, 'level').toBeCloseTo(lowest, 6);
    const fixed = [...open].filter((k) => level[k]! <= lowest + 1e-7);
    const before = floor;
    floor = before.map((f, k) => (open.has(k) ? Math.max(f, weight[here[k]!]! * lowest - 1e-9) : f));
    const rise = maximum({
      objective: floor.map((_, k) => (fixed.includes(k) ? 1 / weight[here[k]!]! : 0)),
      least: floor,
      most,
      rows,
    });
    expect(rise?.value ?? Number.NaN, 'those at the level').toBeCloseTo(fixed.length * lowest, 5);
    for (const k of fixed) {
      open.delete(k);
      floor[k] = Math.max(0, x[here[k]!]! - 1e-9);
    }
  }
}

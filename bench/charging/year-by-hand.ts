import type { SimulationInput } from '../../src/charging/index.js';

/** What a year by hand gives: energy and time of each vehicle, and what each line of each node saw. */
export interface Year {
  readonly delivered: Float64Array;
  readonly fullAt: Float64Array;
  readonly waited: Float64Array;
  readonly peak: Float64Array;
  readonly atLimit: Float64Array;
  readonly overloaded: Float64Array;
}

const NAMES = ['L1', 'L2', 'L3'] as const;

/**
 * A year step by step as one writes it for one site: single-phase points in a tree, any current, equal shares, load that
 * changes at one node. Current is shared anew when somebody comes, is full or leaves, or when the load changes.
 */
export function yearByHand({ network, sessions, load, from, to, step, voltage }: SimulationInput): Year {
  const place = new Map(network.nodes.map((node, v) => [node.id, v]));
  const parent = network.nodes.map((node) => (node.parent === undefined ? -1 : place.get(node.parent)!));
  const size = 3 * parent.length;
  const limit = new Float64Array(size).fill(Number.POSITIVE_INFINITY);
  network.nodes.forEach((node, v) => {
    for (let p = 0; p < 3; p++) if (node.limit) limit[3 * v + p] = node.limit[p]!;
  });
  const point = new Map(network.points.map((p, i) => [p.id, i]));
  const way = network.points.map(({ node, lines }) => {
    const cells: number[] = [];
    for (let v = place.get(node)!; v >= 0; v = parent[v]!) cells.push(3 * v + NAMES.indexOf(lines[0]!));
    return cells;
  });
  const most = network.points.map((p) => p.most as number);
  const [profile] = load!;
  const root = 3 * place.get(profile!.node)!;
  const every = Math.round(profile!.every! / step);
  const count = sessions.length;
  const [delivered, fullAt, waited] = [new Float64Array(count), new Float64Array(count), new Float64Array(count)];
  const [peak, atLimit, overloaded] = [
    new Float64Array(size).fill(Number.NEGATIVE_INFINITY),
    new Float64Array(size),
    new Float64Array(size),
  ];
  const queue = [...sessions.keys()].sort((a, b) => sessions[a]!.arrives - sessions[b]!.arrives);
  let here: number[] = [];
  const current = new Float64Array(network.points.length);
  const [base, sum, room, rising] = [0, 0, 0, 0].map(() => new Float64Array(size)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const share = (): void => {
    sum.fill(0);
    rising.fill(0);
    for (let c = 0; c < size; c++) room[c] = Math.max(0, limit[c]! - base[c]!);
    let open = here.map((k) => point.get(sessions[k]!.point)!);
    current.fill(0);
    for (const i of open) for (const c of way[i]!) rising[c] = rising[c]! + 1;
    while (open.length > 0) {
      let level = Number.POSITIVE_INFINITY;
      for (const i of open) level = Math.min(level, most[i]!);
      for (let c = 0; c < size; c++) if (rising[c]! > 0) level = Math.min(level, room[c]! / rising[c]!);
      const full = new Uint8Array(size);
      for (let c = 0; c < size; c++) if (rising[c]! > 0 && room[c]! / rising[c]! <= level + 1e-12) full[c] = 1;
      open = open.filter((i) => {
        if (most[i]! > level + 1e-12 && !way[i]!.some((c) => full[c])) return true;
        current[i] = level;
        for (const c of way[i]!) {
          room[c] = room[c]! - level;
          rising[c] = rising[c]! - 1;
          sum[c] = sum[c]! + level;
        }
        return false;
      });
    }
  };
  const steps = Math.ceil((to - from) / step - 1e-9);
  let [next, changed] = [0, true];
  for (let t = 0; t < steps; t++) {
    const now = from + t * step;
    const end = Math.min(now + step, to);
    if (t % every === 0) {
      for (let p = 0; p < 3; p++) {
        const value = profile!.values[(t / every) % profile!.values.length]![p]!;
        if (value !== base[root + p]) changed = true;
        base[root + p] = value;
      }
    }
    while (next < count && sessions[queue[next]!]!.arrives <= now) {
      here.push(queue[next++]!);
      changed = true;
    }
    for (let k = here.length - 1; k >= 0; k--) {
      const s = here[k]!;
      if (sessions[s]!.leaves > now && fullAt[s] === 0) continue;
      here = here.filter((other) => other !== s);
      changed = true;
    }
    if (changed) share();
    changed = false;
    for (const s of here) {
      const session = sessions[s]!;
      const until = Math.min(end, session.leaves);
      const i = current[point.get(session.point)!]!;
      if (i === 0) {
        waited[s] = waited[s]! + until - now;
        continue;
      }
      const energy = (i * voltage * (until - now)) / 3600;
      const left = session.energy - delivered[s]!;
      if (energy < left * (1 - 1e-12)) delivered[s] = delivered[s]! + energy;
      else {
        delivered[s] = session.energy;
        fullAt[s] = now + (left * 3600) / (i * voltage);
      }
    }
    for (let c = 0; c < size; c++) {
      const total = base[c]! + sum[c]!;
      if (total > peak[c]!) peak[c] = total;
      if (total > 0 && total + 1e-6 > limit[c]! + 1e-9) atLimit[c] = atLimit[c]! + end - now;
      if (base[c]! > limit[c]!) overloaded[c] = overloaded[c]! + end - now;
    }
  }
  return { delivered, fullAt, waited, peak, atLimit, overloaded };
}

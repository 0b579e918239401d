import type { ChargingNetwork } from '../../src/charging/index.js';

/** What filling by hand gives: the same currents, bindings and node currents as `allocate`, and nothing else. */
export interface Filled {
  readonly points: readonly { readonly id: string; readonly current: number; readonly binding: object }[];
  readonly nodes: readonly { readonly id: string; readonly current: readonly number[]; readonly neutral: number }[];
}

const NAMES = ['L1', 'L2', 'L3'] as const;

/**
 * Max-min filling of a tree as one writes it for one site: everybody wants current, weights are equal, nothing is checked,
 * there are no smallest currents, steps or policies. The level rises to the next largest current or full line.
 */
export function byHand(network: ChargingNetwork): Filled {
  const at = new Map(network.nodes.map((node, v) => [node.id, v]));
  const parent = network.nodes.map((node) => (node.parent === undefined ? -1 : at.get(node.parent)!));
  const count = network.nodes.length;
  const load = new Float64Array(3 * count);
  const limit = new Float64Array(3 * count).fill(Number.POSITIVE_INFINITY);
  network.nodes.forEach((node, v) => {
    for (let p = 0; p < 3; p++) {
      if (node.limit) limit[3 * v + p] = node.limit[p]!;
      if (node.load) for (let u = v; u >= 0; u = parent[u]!) load[3 * u + p] = load[3 * u + p]! + node.load[p]!;
    }
  });
  // what each point uses: a line of each node on its way
  const behind: number[][] = Array.from({ length: 3 * count }, () => []);
  const way = network.points.map(({ node, lines }, i) => {
    const cells: number[] = [];
    for (let v = at.get(node)!; v >= 0; v = parent[v]!)
      for (const line of lines) {
        const c = 3 * v + NAMES.indexOf(line);
        cells.push(c);
        behind[c]!.push(i);
      }
    return cells;
  });
  const room = limit.map((value, c) => Math.max(0, value - load[c]!));
  const rising = Float64Array.from(behind, (list) => list.length);
  const x = new Float64Array(way.length).fill(-1);
  const boundBy = new Int32Array(way.length).fill(-1);
  const byMost = [...way.keys()].sort((a, b) => network.points[a]!.most - network.points[b]!.most);
  // a heap of the levels at which lines are full; levels only rise when a point stops
  const heap: { level: number; cell: number }[] = [];
  const push = (level: number, cell: number) => {
    let k = heap.length;
    heap.push({ level, cell });
    while (k > 0 && heap[(k - 1) >> 1]!.level > level) {
      heap[k] = heap[(k - 1) >> 1]!;
      k = (k - 1) >> 1;
    }
    heap[k] = { level, cell };
  };
  const pop = () => {
    const top = heap[0]!;
    const last = heap.pop()!;
    if (heap.length === 0) return top;
    let k = 0;
    for (;;) {
      let child = 2 * k + 1;
      if (child >= heap.length) break;
      if (child + 1 < heap.length && heap[child + 1]!.level < heap[child]!.level) child++;
      if (heap[child]!.level >= last.level) break;
      heap[k] = heap[child]!;
      k = child;
    }
    heap[k] = last;
    return top;
  };
  for (let c = 0; c < room.length; c++) if (rising[c]! > 0 && room[c]! < 1e300) push(room[c]! / rising[c]!, c);
  const stop = (i: number, current: number, cell: number) => {
    x[i] = current;
    boundBy[i] = cell;
    for (const c of way[i]!) {
      room[c] = room[c]! - current;
      rising[c] = rising[c]! - 1;
    }
  };
  for (let next = 0; ; ) {
    while (next < byMost.length && x[byMost[next]!]! >= 0) next++;
    const most = next < byMost.length ? network.points[byMost[next]!]!.most : Number.POSITIVE_INFINITY;
    const full = heap[0]?.level ?? Number.POSITIVE_INFINITY;
    if (most <= full) {
      if (next === byMost.length) break;
      stop(byMost[next]!, most, -1);
      continue;
    }
    const { level, cell } = pop();
    if (rising[cell] === 0) continue;
    const now = room[cell]! / rising[cell]!;
    if (now > level) push(now, cell);
    else for (const i of behind[cell]!) if (x[i]! < 0) stop(i, level, cell);
  }
  const sum = load.slice();
  x.forEach((current, i) => {
    for (const c of way[i]!) sum[c] = sum[c]! + current;
  });
  return {
    points: network.points.map(({ id }, i) => ({
      id,
      current: x[i]!,
      binding:
        boundBy[i]! < 0
          ? { kind: 'own-maximum' }
          : { kind: 'limit', node: network.nodes[Math.floor(boundBy[i]! / 3)]!.id, line: NAMES[boundBy[i]! % 3]! },
    })),
    nodes: network.nodes.map(({ id }, v) => {
      const [a, b, c] = [sum[3 * v]!, sum[3 * v + 1]!, sum[3 * v + 2]!];
      return { id, current: [a, b, c], neutral: Math.sqrt(Math.max(0, a * a + b * b + c * c - a * b - b * c - a * c)) };
    }),
  };
}

import * as highsModule from 'highs';
import { rulingOf } from '../../src/charging/allocation/allocate.js';
import { decide } from '../../src/charging/allocation/decide.js';
import { type AllocationPolicy, allocate, type ChargingNetwork } from '../../src/charging/index.js';
import { momentOf, treeOrder } from '../../src/charging/network/tree-order.js';
import { amperes, type Line } from '../../src/index.js';
import { compare } from '../compare.js';
import { byHand } from './filling-by-hand.js';

const highs = await (highsModule as unknown as { default: () => Promise<import('highs').Highs> }).default();
const LINES: readonly Line[] = ['L1', 'L2', 'L3'];
const three = (a: number) => [amperes(a), amperes(a), amperes(a)] as const;

/** Intake, a board for every 100 points, a row for every 10; every third point is three-phase; limits bind at each level. */
function depot(count: number): ChargingNetwork {
  const boards = Math.max(2, count / 100);
  return {
    nodes: [
      { id: 'intake', limit: three(count * 6.5) },
      ...Array.from({ length: boards }, (_, b) => ({
        id: `b${b}`,
        parent: 'intake',
        limit: three((count / boards) * (6.2 + (b % 7) * 0.4)),
      })),
      ...Array.from({ length: count / 10 }, (_, r) => ({
        id: `r${r}`,
        parent: `b${r % boards}`,
        limit: three(60 + ((r * 7) % 40)),
        load: three((r * 13) % 10),
      })),
    ],
    points: Array.from({ length: count }, (_, i) => ({
      id: `p${i}`,
      node: `r${i % (count / 10)}`,
      lines: [0, 1, 2].slice(0, i % 3 === 0 ? 3 : 1).map((k) => LINES[(k + Math.floor(i / (count / 10))) % 3]!),
      most: amperes([32, 16, 20, 10][(i * 31) % 4]!),
    })),
  };
}

const policy: AllocationPolicy = { rule: 'max-min-amperes' };
const continuous: AllocationPolicy = { ...policy, stage: 'continuous' };
const sizes = [100, 1_000, 10_000] as const;
const depots = new Map(sizes.map((n) => [n, depot(n)]));
const at = (n: number) => depots.get(n as 100)!;
const prepared = (n: number) => {
  const order = treeOrder(at(n));
  return { order, moment: momentOf(order), ruling: rulingOf(policy) };
};
const ready = new Map(sizes.map((n) => [n, prepared(n)]));
const again = (n: number) => {
  const { order, moment, ruling } = ready.get(n as 100)!;
  return decide(order, moment, ruling);
};
const records = (n: number) => at(n).points.map((p, i) => ({ id: p.id, key: Math.sin(i * 12.9898) }));
const sorted = (list: readonly { key: number }[]) => [...list].sort((a, b) => a.key - b.key);

/**
 * The max-min problem by linear programmes: each raises the level of all that are not fixed; those whose rows have a
 * price stand in the way and are fixed. Columns are the points and the level.
 */
function byLinearProgrammes(network: ChargingNetwork, levels = Number.POSITIVE_INFINITY) {
  const parent = new Map(network.nodes.map((n) => [n.id, n.parent]));
  const row = new Map(network.nodes.flatMap((n, v) => LINES.map((l, p) => [`${n.id} ${l}`, 3 * v + p] as const)));
  const who: number[][] = Array.from({ length: row.size }, () => []);
  network.points.forEach((p, i) => {
    for (let v: string | undefined = p.node; v !== undefined; v = parent.get(v))
      for (const line of p.lines) who[row.get(`${v} ${line}`)!]!.push(i);
  });
  const load = new Float64Array(row.size);
  for (const n of network.nodes)
    for (let v: string | undefined = n.id; v !== undefined; v = parent.get(v))
      LINES.forEach((l, p) => {
        load[row.get(`${v} ${l}`)!] = load[row.get(`${v} ${l}`)!]! + (n.load?.[p] ?? 0);
      });
  const n = network.points.length;
  const base = { starts: [0], indices: [] as number[], values: [] as number[], upper: [] as number[] };
  who.forEach((points, r) => {
    base.indices.push(...points);
    base.values.push(...points.map(() => 1));
    base.upper.push(network.nodes[Math.floor(r / 3)]!.limit![r % 3]! - load[r]!);
    base.starts.push(base.indices.length);
  });
  return () => {
    const x = new Float64Array(n).fill(Number.NaN);
    let open = [...network.points.keys()];
    for (let level = 0; open.length > 0 && level < levels; level++) {
      const [starts, indices, values] = [[...base.starts], [...base.indices], [...base.values]];
      for (const i of open) {
        indices.push(i, n);
        values.push(-1, 1);
        starts.push(indices.length);
      }
      const upper = [...base.upper, ...open.map(() => 0)];
      const model = {
        numCols: n + 1,
        numRows: upper.length,
        sense: highs.constants.objectiveSense.maximize,
        colCost: [...x.map(() => 0), 1],
        colLower: [...x.map((v) => (Number.isNaN(v) ? 0 : v)), 0],
        colUpper: [...x.map((v, i) => (Number.isNaN(v) ? network.points[i]!.most : v)), 1000],
        rowLower: upper.map(() => -highs.infinity),
        rowUpper: upper,
        matrix: { format: 'csr' as const, numRows: upper.length, numCols: n + 1, starts, indices, values },
      };
      highs.withModel(model, (m) => {
        m.options.set({ output_flag: false });
        m.run();
        const { colValue, rowDual } = m.getSolution();
        const rest: number[] = [];
        open.forEach((i, k) => {
          if (Math.abs(rowDual[base.upper.length + k]!) > 1e-9) x[i] = colValue[n]! - 1e-9;
          else rest.push(i);
        });
        if (rest.length === open.length) throw new Error('no row has a price');
        open = rest;
      });
    }
    return x;
  };
}

// filling by hand gives the same currents before it is measured, and names a limit that leaves nothing
for (const n of [1_000, 10_000]) {
  const [own, hand] = [allocate(at(n), continuous), byHand(at(n))];
  own.points.forEach((p, i) => {
    const { current, binding } = hand.points[i]!;
    if (
      Math.abs(p.current - current) > 1e-9 ||
      (p.binding.kind === 'own-maximum') !== ('kind' in binding && binding.kind === 'own-maximum')
    )
      throw new Error(`${p.id}: ${p.current} A, by hand ${current} A`);
  });
}
const list = records(10_000);
export default [
  compare('allocation in a three-level tree with three lines', {
    anchor: '100 points',
    ways: {
      '100 points': () => allocate(at(100), policy),
      '1,000 points': () => allocate(at(1_000), policy),
      '10,000 points': () => allocate(at(10_000), policy),
    },
  }),
  ...([1_000, 10_000] as const).map((n) =>
    compare(`allocation of ${n.toLocaleString('en-GB')} points against tree filling by hand`, {
      anchor: 'filling by hand, continuous currents',
      ways: {
        'filling by hand, continuous currents': () => byHand(at(n)),
        'continuous currents': () => allocate(at(n), continuous),
        'whole amperes': () => allocate(at(n), policy),
      },
    }),
  ),
  compare('allocation of 10,000 points against a sort', {
    anchor: '10,000 records sorted',
    ways: {
      '10,000 records sorted': () => sorted(list),
      'currents of a network that is known': () => again(10_000),
      'network checked, currents, and what binds each': () => allocate(at(10_000), policy),
    },
  }),
  compare('1,000 points against a general linear solver', {
    anchor: 'max-min, whole result',
    ways: {
      'max-min, whole result': () => allocate(at(1_000), policy),
      'proportional fairness, whole result': () => allocate(at(1_000), { rule: 'proportional-fairness' }),
      'first level only, by the solver': byLinearProgrammes(at(1_000), 1),
      'max-min, currents only, by the solver': byLinearProgrammes(at(1_000)),
    },
  }),
];

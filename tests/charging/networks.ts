import fc from 'fast-check';
import type { ChargingNetwork, NetworkNode, NetworkPoint, PerLine } from '../../src/charging/index.js';
import { type Amperes, amperes, hasCode, type Line, ratio, seconds } from '../../src/index.js';
import { pathText } from '../../src/units/error.js';

/** A current on each line from plain numbers. */
export const perLine = (a: number, b = a, c = a): PerLine => [amperes(a), amperes(b), amperes(c)];

export const node = (id: string, limit: PerLine | undefined, more: Partial<NetworkNode> = {}): NetworkNode =>
  limit ? { id, limit, ...more } : { id, ...more };

export const point = (id: string, at: string, most = 32, more: Partial<NetworkPoint> = {}): NetworkPoint => ({
  id,
  node: at,
  lines: ['L1'],
  most: amperes(most),
  ...more,
});

const ROTATIONS: readonly (readonly Line[])[] = [
  ['L1'],
  ['L2'],
  ['L3'],
  ['L1', 'L2', 'L3'],
  ['L2', 'L3', 'L1'],
  ['L3', 'L1', 'L2'],
  ['L1', 'L2'],
  ['L2', 'L3'],
];

export interface NetworkShape {
  readonly nodes?: number;
  readonly points?: number;
  /** Whether some nodes limit unbalance. */
  readonly unbalance?: boolean;
  /** Whether some nodes limit the neutral, some of them with third harmonics. */
  readonly neutral?: boolean;
  /** Whether limits, loads and caps are whole amperes. */
  readonly whole?: boolean;
  /** Whether every point is on one line. */
  readonly singlePhase?: boolean;
  /** Whether weights differ. */
  readonly weights?: boolean;
  /** Whether other load may exceed limits. */
  readonly overload?: boolean;
}

/** Random networks of a shape. */
export function networks(shape: NetworkShape = {}): fc.Arbitrary<ChargingNetwork> {
  const { nodes = 5, points = 10, whole = false } = shape;
  const current = (min: number, max: number) =>
    // a double drawn as such is next to nothing or next to the end nearly always: thousandths are what limits look like
    (whole ? fc.integer({ min, max }) : fc.integer({ min: 1000 * min, max: 1000 * max }).map((x) => x / 1000)).map(
      (x) => amperes(x),
    );
  const three = (min: number, max: number) => fc.tuple(current(min, max), current(min, max), current(min, max));
  const nodeAt = (i: number): fc.Arbitrary<NetworkNode> =>
    fc
      .record({
        limit: fc.option(three(0, 120), { nil: undefined, freq: i === 0 ? 1000 : 4 }),
        load: fc.option(three(-20, shape.overload ? 90 : 20), { nil: undefined }),
        unbalance: shape.unbalance ? fc.option(current(0, 40), { nil: undefined }) : fc.constant(undefined),
        neutral: shape.neutral ? fc.option(current(0, 60), { nil: undefined }) : fc.constant(undefined),
        third: shape.neutral
          ? fc.option(fc.constantFrom(ratio(0.1), ratio(0.35)), { nil: undefined })
          : fc.constant(undefined),
        parent: fc.nat({ max: Math.max(0, i - 1) }),
      })
      .map(({ limit, load, unbalance, neutral, third, parent }) => ({
        id: `n${i}`,
        ...(i > 0 ? { parent: `n${parent}` } : {}),
        ...(limit ? { limit } : {}),
        ...(load ? { load } : {}),
        ...(unbalance === undefined ? {} : { unbalance: unbalance as Amperes }),
        ...(neutral === undefined ? {} : { neutralLimit: neutral as Amperes }),
        ...(third === undefined ? {} : { thirdHarmonic: third }),
      }));
  const pointAt = (i: number): fc.Arbitrary<NetworkPoint> =>
    fc
      .record({
        at: fc.nat({ max: nodes - 1 }),
        lines: shape.singlePhase ? fc.constantFrom(...ROTATIONS.slice(0, 3)) : fc.constantFrom(...ROTATIONS),
        most: current(6, 40),
        weight: shape.weights ? fc.integer({ min: 1, max: 40 }).map((k) => ratio(k / 10)) : fc.constant(ratio(1)),
        waitingSince: fc.nat({ max: 5 }).map((s) => seconds(s)),
        fewer: fc.boolean(),
        connected: fc.boolean().map((b) => b),
        priority: fc.integer({ min: 1, max: 3 }),
      })
      .map(({ at, lines, most, weight, waitingSince, fewer, connected, priority }) => ({
        id: `p${i}`,
        node: `n${at}`,
        lines,
        most,
        weight,
        waitingSince,
        priority,
        connected: connected || i % 3 !== 0,
        ...(fewer && lines.length > 1 ? { vehicleLines: 1 as const } : {}),
      }));
  return fc
    .record({ m: fc.integer({ min: 1, max: nodes }), n: fc.integer({ min: 1, max: points }) })
    .chain(({ m, n }) =>
      fc
        .record({
          nodes: fc.tuple(...Array.from({ length: m }, (_, i) => nodeAt(i))),
          points: fc.tuple(...Array.from({ length: n }, (_, i) => pointAt(i))),
        })
        .map(({ nodes: ns, points: ps }) => ({
          nodes: ns,
          points: ps.map((p) => ({ ...p, node: `n${Number(p.node.slice(1)) % m}` })),
        })),
    );
}

/** Lines of a vehicle. */
export const linesOf = (p: NetworkPoint): readonly Line[] => p.lines.slice(0, p.vehicleLines ?? p.lines.length);

/** Names of the nodes from a node to the intake. */
export function way(network: ChargingNetwork, id: string): string[] {
  const at = network.nodes.find((n) => n.id === id);
  return at ? [id, ...(at.parent === undefined ? [] : way(network, at.parent))] : [];
}

/** Rows `sum of currents <= room` of a network, from its definition alone: nothing is shared with the code under test. */
export function rowsOf(
  network: ChargingNetwork,
): { who: number[]; sign: number[]; room: number; kind: 'limit' | 'unbalance' | 'neutral' }[] {
  const rows: { who: number[]; sign: number[]; room: number; kind: 'limit' | 'unbalance' | 'neutral' }[] = [];
  for (const n of network.nodes) {
    const below = network.nodes.filter((other) => way(network, other.id).includes(n.id)).map((other) => other.id);
    const base = [0, 1, 2].map((p) =>
      network.nodes.filter((o) => below.includes(o.id)).reduce((sum, o) => sum + (o.load?.[p] ?? 0), 0),
    );
    const behind = network.points.flatMap((p, i) => (below.includes(p.node) && p.connected !== false ? [i] : []));
    const uses = (i: number, p: number) => linesOf(network.points[i]!).includes(`L${p + 1}` as Line);
    for (let p = 0; p < 3; p++) {
      if (n.limit)
        rows.push({
          kind: 'limit',
          who: behind.filter((i) => uses(i, p)),
          sign: behind.filter((i) => uses(i, p)).map(() => 1),
          room: Math.max(0, n.limit[p]! - base[p]!),
        });
      for (let q = 0; q < 3 && n.unbalance !== undefined; q++) {
        if (q === p) continue;
        const who = behind.filter((i) => uses(i, p) !== uses(i, q));
        rows.push({
          kind: 'unbalance',
          who,
          sign: who.map((i) => (uses(i, p) ? 1 : -1)),
          room: Math.max(0, n.unbalance - (base[p]! - base[q]!)),
        });
      }
    }
    // without third harmonics: the polygon of 24 sides whose corners lie where one line or two alike are loaded
    for (let k = 0; k < 24 && n.neutralLimit !== undefined; k++) {
      const along = [0, 1, 2].map((p) => Math.cos(((2 * k + 1) * Math.PI) / 24 - (2 * Math.PI * p) / 3));
      const sum = (of: readonly number[]) => of.reduce((s, v, p) => s + along[p]! * v, 0);
      const sign = behind.map((i) => sum([0, 1, 2].map((p) => (uses(i, p) ? 1 : 0))));
      const allowed = Math.max(n.neutralLimit, neutralOfLines(base)) * Math.cos(Math.PI / 24);
      rows.push({ kind: 'neutral', who: behind, sign, room: Math.max(0, allowed - sum(base)) });
    }
  }
  return rows;
}

/**
 * Current of a neutral from three line currents at unity power factor: sum of their phasors, and the third harmonics,
 * which are in phase with each other. Nothing is shared with the code under test.
 */
export function neutralOfLines(lines: readonly number[], thirdHarmonic = 0): number {
  const angle = (p: number) => (-2 * Math.PI * p) / 3;
  const real = lines.reduce((sum, i, p) => sum + i * Math.cos(angle(p)), 0);
  const imaginary = lines.reduce((sum, i, p) => sum + i * Math.sin(angle(p)), 0);
  const all = lines.reduce((sum, i) => sum + i, 0);
  return Math.hypot(real, imaginary, thirdHarmonic * Math.max(0, all));
}

/** Every problem of an input that is refused, with its path; nothing when it is taken. */
export const problemsOf = (run: () => unknown): string[] => {
  try {
    run();
  } catch (error) {
    if (hasCode(error, 'invalid-input')) return error.detail.problems.map((p) => `${pathText(p.path)}: ${p.message}`);
    throw error;
  }
  return [];
};

/** A network with a limit at its root, without which no load control is made. */
export const limited = (network: ChargingNetwork): ChargingNetwork => ({
  ...network,
  nodes: network.nodes.map((n) => (n.parent === undefined && !n.limit ? { ...n, limit: [63, 63, 63] as never } : n)),
});

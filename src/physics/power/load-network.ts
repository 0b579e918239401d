import { procedure } from '../../core/index.js';
import { CalculationError, invalidInput, type Problem } from '../../units/index.js';
import { add, type Complex, complex, divide, magnitude, multiply, polar, subtract } from '../complex.js';
import { drawn, loadProblem, type NodeLoad } from '../four-wire-network.js';
import type { Impedance } from '../short-circuit.js';
import { factored, noughts, type Solve } from './linear.js';

/** A source of three equal voltages whose star point is the reference of all potentials. @inline */
export interface NetworkSource {
  readonly node: string;
  /** Voltage line to neutral without load, V. */
  readonly voltage: number;
  /** Impedance of one line up to the node, Ω; none where the voltage of the node itself is held. */
  readonly impedance?: Impedance;
}

/** A cable or a transformer between two nodes. @inline */
export interface NetworkBranch {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  /** Impedance of one line conductor, Ω. */
  readonly line: Impedance;
  /** Impedance of the neutral conductor, Ω; a branch without a neutral has none. */
  readonly neutral?: Impedance;
  /**
   * Of a transformer on a tap: voltage of `from` over that of `to` without load, all referred to one voltage; 1 where it is
   * absent.
   */
  readonly ratio?: number;
}

/** A load from line to neutral at a node. @inline */
export interface PlacedLoad {
  readonly node: string;
  /** Line conductor: 0 for L1, 1 for L2, 2 for L3. */
  readonly line: 0 | 1 | 2;
  readonly load: NodeLoad;
}

/**
 * A four-wire network of any shape: rings, cables and transformers in parallel, several sources. A transformer is its
 * impedance per line; its low side is a star node. What a delta winding makes of unbalanced loads in the grid ahead of it
 * is not in it.
 */
export interface LoadNetwork {
  readonly sources: readonly NetworkSource[];
  readonly branches: readonly NetworkBranch[];
  readonly loads: readonly PlacedLoad[];
  /** Nodes whose neutral is a star point: of transformers. Those of the sources are so anyway. */
  readonly stars?: readonly string[];
}

/** Voltages of a node. @inline */
export interface NodeVoltages {
  readonly node: string;
  /** Line to neutral on L1, L2 and L3, V; to the reference where the node has no neutral. */
  readonly voltages: readonly [number, number, number];
  /** Of the neutral against the reference, V; absent where the node has none. */
  readonly neutral?: number;
}

/** Currents of a branch. @inline */
export interface BranchCurrents {
  readonly name: string;
  /** In L1, L2, L3 and N at its end `to`, A. */
  readonly currents: readonly [number, number, number, number];
}

/** A solved network. @inline */
export interface LoadSolution {
  readonly nodes: readonly NodeVoltages[];
  readonly branches: readonly BranchCurrents[];
  /** Losses of all branches, W. */
  readonly losses: number;
}

const NEUTRAL = 3;
const TOLERANCE = 1e-12;
const MOST_ROUNDS = 500;
const number = (z: Impedance): Complex => complex(z.resistance, z.reactance);

function impedanceProblem(z: Impedance | undefined, path: Problem['path'], absent: boolean): readonly Problem[] {
  if (z === undefined && absent) return [];
  const fits =
    Number.isFinite(z?.resistance) &&
    Number.isFinite(z?.reactance) &&
    (z?.resistance as number) >= 0 &&
    magnitude(number(z as Impedance)) > 0;
  return fits ? [] : [{ path, message: 'must be finite, its resistance from 0 Ω, and not none at all' }];
}

function refuse({ sources, branches, loads, stars = [] }: LoadNetwork): void {
  const problems: Problem[] = [];
  const wrong = (when: boolean, path: Problem['path'], message: string) => {
    if (when) problems.push({ path, message });
  };
  for (const [name, list] of Object.entries({ sources, branches, loads }))
    if (!Array.isArray(list)) throw invalidInput('the network', [{ path: [name], message: 'must be a list' }]);
  wrong(sources.length === 0, ['sources'], 'must be at least one');
  sources.forEach((s, i) => {
    wrong(!(Number.isFinite(s.voltage) && s.voltage > 0), ['sources', i, 'voltage'], 'must be above 0 V');
    problems.push(...impedanceProblem(s.impedance, ['sources', i, 'impedance'], true));
    const twice =
      s.impedance === undefined && sources.some((o, k) => k < i && o.node === s.node && o.impedance === undefined);
    wrong(twice, ['sources', i], 'holds a voltage that another source holds already');
  });
  branches.forEach((b, i) => {
    wrong(
      typeof b.from !== 'string' || typeof b.to !== 'string' || b.from === b.to,
      ['branches', i],
      'must join two nodes',
    );
    problems.push(...impedanceProblem(b.line, ['branches', i, 'line'], false));
    problems.push(...impedanceProblem(b.neutral, ['branches', i, 'neutral'], true));
    wrong(
      b.ratio !== undefined && !(b.ratio > 0.5 && b.ratio < 2),
      ['branches', i, 'ratio'],
      'must be between 0.5 and 2',
    );
  });
  if (problems.length === 0) {
    const reach = (start: readonly string[], through: (b: NetworkBranch) => boolean) => {
      const found = new Set(start);
      for (let before = -1; before < found.size; ) {
        before = found.size;
        for (const b of branches)
          if (through(b) && (found.has(b.from) || found.has(b.to))) {
            found.add(b.from);
            found.add(b.to);
          }
      }
      return found;
    };
    const live = reach(
      sources.map((s) => s.node),
      () => true,
    );
    const neutral = reach([...sources.map((s) => s.node), ...stars], (b) => b.neutral !== undefined);
    for (const [i, b] of branches.entries()) wrong(!live.has(b.from), ['branches', i], 'has no way to a source');
    for (const [i, node] of stars.entries()) wrong(!live.has(node), ['stars', i], `there is no node ${node}`);
    for (const [i, l] of loads.entries()) {
      wrong(!live.has(l?.node), ['loads', i, 'node'], `there is no node ${l?.node}`);
      wrong(live.has(l?.node) && !neutral.has(l.node), ['loads', i, 'node'], `${l?.node} has no neutral`);
      wrong(![0, 1, 2].includes(l?.line), ['loads', i, 'line'], 'must be 0, 1 or 2');
      const said = loadProblem(l?.load);
      wrong(said !== undefined, ['loads', i, 'load'], said as string);
    }
  }
  if (problems.length > 0) throw invalidInput('the network', problems);
}

/** A branch of one conductor: its ends by number, its admittance, and the ratio of a transformer. */
interface Conductor {
  readonly from: number;
  readonly to: number;
  readonly admittance: Complex;
  readonly ratio: number;
}

/** Everything by numbers: conductor k of node i is 4 i + k. */
function laidOut({ sources, branches, loads, stars = [] }: LoadNetwork) {
  const nodes = [...new Set([...sources.map((s) => s.node), ...branches.flatMap((b) => [b.from, b.to])])];
  const place = new Map(nodes.map((n, i) => [n, i]));
  const of = (node: string, k: number) => 4 * (place.get(node) as number) + k;
  const conductors = branches.map((b) =>
    [b.line, b.line, b.line, b.neutral].map(
      (z, k): Conductor | undefined =>
        z && {
          from: of(b.from, k),
          to: of(b.to, k),
          admittance: divide(complex(1), number(z)),
          ratio: k < NEUTRAL ? (b.ratio ?? 1) : 1,
        },
    ),
  );
  const held = new Map<number, Complex>();
  const phasor = (voltage: number, k: number) => polar(voltage, (-2 * Math.PI * k) / 3);
  for (const s of sources) {
    held.set(of(s.node, NEUTRAL), complex(0));
    if (!s.impedance) for (const k of [0, 1, 2]) held.set(of(s.node, k), phasor(s.voltage, k));
  }
  for (const node of stars) held.set(of(node, NEUTRAL), complex(0));
  // a node without a neutral has a potential of its neutral that nothing asks for
  const used = new Set(branches.flatMap((b) => (b.neutral ? [b.from, b.to] : [])));
  const withNeutral = (node: string) => used.has(node) || held.has(of(node, NEUTRAL));
  for (const node of nodes) if (!withNeutral(node)) held.set(of(node, NEUTRAL), complex(0));
  const behind = sources.flatMap((s) =>
    s.impedance
      ? [0, 1, 2].map((k) => ({
          at: of(s.node, k),
          admittance: divide(complex(1), number(s.impedance as Impedance)),
          voltage: phasor(s.voltage, k),
        }))
      : [],
  );
  const placed = loads.map((l) => ({ line: of(l.node, l.line), neutral: of(l.node, NEUTRAL), load: l.load }));
  return { nodes, of, conductors, held, behind, placed, withNeutral, phasor };
}

/**
 * Solves a four-wire network of any shape by nodal analysis, unbalanced, with the impedance of its neutrals: loads as
 * currents that are drawn again at the voltages found, until these stand still to 1e-12 of the source voltage.
 * @param network sources in V, branches in Ω, loads
 * @returns voltages of each node, V, currents of each branch, A, and losses, W
 * @throws CalculationError `invalid-input` for a malformed network; `no-solution` when a load cannot be served
 * @example
 * ```ts
 * import { solveNetwork } from 'ohmwright/power';
 *
 * const cable = { from: 'intake', to: 'board', line: { resistance: 0.02, reactance: 0 }, neutral: { resistance: 0.02, reactance: 0 } };
 * const thick = { ...cable, line: { resistance: 0.01, reactance: 0 }, neutral: { resistance: 0.01, reactance: 0 } };
 * const { branches } = solveNetwork({
 *   sources: [{ node: 'intake', voltage: 230 }],
 *   branches: [
 *     { name: 'thin cable', ...cable },
 *     { name: 'thick cable', ...thick },
 *   ],
 *   loads: [{ node: 'board', line: 0, load: { kind: 'current', current: 90, angle: 0 } }],
 * });
 * branches.map((b) => Math.round(b.currents[0])); // => [30, 60]
 * ```
 */
export function solveNetwork(network: LoadNetwork): LoadSolution {
  refuse(network);
  const { nodes, of, conductors, held, behind, placed, withNeutral, phasor } = laidOut(network);
  const all = Array.from({ length: 4 * nodes.length }, (_, i) => i);
  const open = all.filter((i) => !held.has(i));
  const row = new Map(open.map((i, r) => [i, r]));
  const matrix = noughts(open.length);
  const right = open.map(() => complex(0));
  const stamp = (i: number, j: number, y: Complex) => {
    const r = row.get(i);
    if (r === undefined) return;
    const c = row.get(j);
    const line = matrix[r] as Complex[];
    if (c !== undefined) line[c] = add(line[c] as Complex, y);
    else right[r] = subtract(right[r] as Complex, multiply(y, held.get(j) as Complex));
  };
  const times = (y: Complex, k: number) => complex(y.re * k, y.im * k);
  for (const c of conductors.flat())
    if (c) {
      stamp(c.from, c.from, times(c.admittance, 1 / (c.ratio * c.ratio)));
      stamp(c.from, c.to, times(c.admittance, -1 / c.ratio));
      stamp(c.to, c.from, times(c.admittance, -1 / c.ratio));
      stamp(c.to, c.to, c.admittance);
    }
  for (const b of behind) {
    stamp(b.at, b.at, b.admittance);
    const r = row.get(b.at);
    if (r !== undefined) right[r] = add(right[r] as Complex, multiply(b.admittance, b.voltage));
  }
  for (const { line, neutral, load } of placed)
    if (load.kind === 'impedance') {
      const y = divide(complex(1), complex(load.resistance, load.reactance));
      for (const [i, j] of [
        [line, neutral],
        [neutral, line],
      ] as const) {
        stamp(i, i, y);
        stamp(i, j, times(y, -1));
      }
    }
  const unsolved = (why: string): never => {
    throw new CalculationError('no-solution', why, { method: 'load-network', values: { nodes: nodes.length } });
  };
  const solve: Solve = factored(matrix) ?? unsolved('the network resonates: its equations have no one solution');
  const first = network.sources[0]?.voltage as number;
  let potentials = all.map((i) => held.get(i) ?? (i % 4 === NEUTRAL ? complex(0) : phasor(first, i % 4)));
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const drawnNow = [...right];
    const take = (i: number, c: Complex) => {
      const r = row.get(i);
      if (r !== undefined) drawnNow[r] = subtract(drawnNow[r] as Complex, c);
    };
    for (const { line, neutral, load } of placed) {
      if (load.kind === 'impedance') continue;
      const c = drawn(load, subtract(potentials[line] as Complex, potentials[neutral] as Complex));
      take(line, c);
      take(neutral, times(c, -1));
    }
    const x = solve(drawnNow);
    const next = all.map((i) => held.get(i) ?? (x[row.get(i) as number] as Complex));
    const moved = Math.max(...next.map((v, i) => magnitude(subtract(v, potentials[i] as Complex))));
    potentials = next;
    if (!Number.isFinite(moved)) break;
    if (moved > TOLERANCE * first) continue;
    const through = (c: Conductor) =>
      multiply(subtract(times(potentials[c.from] as Complex, 1 / c.ratio), potentials[c.to] as Complex), c.admittance);
    const flows = conductors.map((list) => list.map((c) => (c ? through(c) : complex(0))));
    return {
      nodes: nodes.map((node) => {
        const n = potentials[of(node, NEUTRAL)] as Complex;
        const to = (k: number) => magnitude(subtract(potentials[of(node, k)] as Complex, n));
        return {
          node,
          voltages: [to(0), to(1), to(2)] as const,
          ...(withNeutral(node) ? { neutral: magnitude(n) } : {}),
        };
      }),
      branches: network.branches.map(({ name }, i) => ({
        name,
        currents: (flows[i] as Complex[]).map(magnitude) as unknown as BranchCurrents['currents'],
      })),
      losses: network.branches.reduce((sum, b, i) => {
        const squares = (flows[i] as Complex[]).map((c) => magnitude(c) ** 2);
        const lines = squares.slice(0, NEUTRAL).reduce((a, c) => a + c, 0);
        return sum + lines * b.line.resistance + (squares[NEUTRAL] as number) * (b.neutral?.resistance ?? 0);
      }, 0),
    };
  }
  return unsolved(`the network has no operating point that is reached from no load: a load cannot be served`);
}

/** What `voltageAtNode` reads: a network, and the place whose voltage is wanted. @inline */
export interface LoadPlace {
  readonly network: LoadNetwork;
  readonly node: string;
  /** Line conductor: 0 for L1, 1 for L2, 2 for L3. */
  readonly line: 0 | 1 | 2;
}

/** Voltage line to neutral at a node of a network of any shape. Kirchhoff's laws. */
export const voltageAtNode = /* @__PURE__ */ procedure({
  id: 'voltage-at-node',
  title: 'Voltage at a node of a network of any shape',
  output: 'pointVoltage',
  method: 'nodal analysis of all conductors, loads drawn again at the voltages found until these stand still',
  source: { document: "Kirchhoff's laws", provenance: 'definition' },
  run: ({ network, node, line }: LoadPlace) => {
    const voltage = solveNetwork(network).nodes.find((n) => n.node === node)?.voltages[line];
    if (voltage !== undefined) return voltage;
    throw invalidInput('the place', [{ path: ['node'], message: `the network has no line ${line} at ${node}` }]);
  },
});

import fc from 'fast-check';
import { lusolve } from 'mathjs';
import type { Impedance, RadialNetwork } from '../../src/physics/index.js';
import type { RadialElement } from '../../src/physics/short-circuit.js';

const z = (resistance: number, reactance: number): Impedance => ({ resistance, reactance });

/** A branch between two nodes by name, with its impedance and, where it is a source, its voltage behind it. */
interface Branch {
  readonly from: string;
  readonly to: string;
  readonly impedance: Impedance;
  readonly emf?: readonly [number, number];
}
/** Current through the branch named last, by modified nodal analysis in real arithmetic of twice the size. */
function solve(branches: readonly Branch[]): number {
  const nodes = [...new Set(branches.flatMap((b) => [b.from, b.to]))].filter((n) => n !== 'ground');
  const n = nodes.length + branches.length;
  const matrix = Array.from({ length: 2 * n }, () => new Array<number>(2 * n).fill(0));
  const right = new Array<number>(2 * n).fill(0);
  const add = (row: number, column: number, re: number, im: number) => {
    const at = (i: number, j: number, v: number) => {
      const line = matrix[i] as number[];
      line[j] = (line[j] as number) + v;
    };
    at(row, column, re);
    at(row, column + n, -im);
    at(row + n, column, im);
    at(row + n, column + n, re);
  };
  branches.forEach((b, k) => {
    const column = nodes.length + k;
    for (const [name, sign] of [
      [b.from, 1],
      [b.to, -1],
    ] as const) {
      const i = nodes.indexOf(name);
      if (i < 0) continue;
      add(i, column, sign, 0); // Kirchhoff at the node
      add(column, i, sign, 0); // voltage along the branch
    }
    add(column, column, -b.impedance.resistance, -b.impedance.reactance);
    right[column] = -(b.emf?.[0] ?? 0);
    right[column + n] = -(b.emf?.[1] ?? 0);
  });
  const x = (lusolve(matrix, right) as unknown as number[][]).map((v) => v[0] as number);
  const last = nodes.length + branches.length - 1;
  return Math.hypot(x[last] as number, x[last + n] as number);
}
const phases = ['a', 'b', 'c'] as const;
function network(elements: readonly RadialElement[], u: number): Branch[] {
  const emf = (k: number) => [u * Math.cos((-2 * Math.PI * k) / 3), u * Math.sin((-2 * Math.PI * k) / 3)] as const;
  const out: Branch[] = [];
  const [source, ...runs] = elements as [RadialElement, ...RadialElement[]];
  phases.forEach((p, k) => {
    out.push({ from: 'star', to: `${p}0`, impedance: source.line, emf: emf(k) });
  });
  out.push({ from: 'star', to: 'ground', impedance: z(1e-9, 0) });
  runs.forEach((e, i) => {
    const before = (p: string) => (i === 0 && (p === 'n' || p === 'e') ? 'star' : `${p}${i}`);
    for (const p of phases) out.push({ from: before(p), to: `${p}${i + 1}`, impedance: e.line });
    out.push({ from: before('n'), to: `n${i + 1}`, impedance: e.neutral as Impedance });
    out.push({ from: before('e'), to: `e${i + 1}`, impedance: e.protective as Impedance });
    // a load that is switched off, and a tap that leads nowhere, change nothing
    out.push({ from: `a${i + 1}`, to: `tap${i}`, impedance: e.line });
  });
  return out;
}
const impedance = fc.record({
  resistance: fc.double({ min: 1e-3, max: 2, noNaN: true }),
  reactance: fc.double({ min: 0, max: 0.5, noNaN: true }),
});
const element = fc.record({ name: fc.constant('run'), line: impedance, neutral: impedance, protective: impedance });
const source = fc.record({ name: fc.constant('source'), line: impedance });
const bolted = z(1e-12, 0);

/** Random radial networks at 400 V. */
export const radialNetworks: fc.Arbitrary<RadialNetwork> = fc
  .tuple(source, fc.array(element, { minLength: 1, maxLength: 3 }), fc.double({ min: 0.9, max: 1.1, noNaN: true }))
  .map(([first, runs, voltageFactor]) => ({
    lineVoltage: 400,
    voltageFactor,
    elements: [{ ...first, neutral: z(0, 0), protective: z(0, 0) }, ...runs],
  }));

/**
 * The faults at the end of a network, by Kirchhoff's laws for every node and branch.
 * @param radial the network
 */
export function faultsByKirchhoff({ elements, lineVoltage, voltageFactor }: RadialNetwork) {
  const base = network(elements, ((voltageFactor as number) * (lineVoltage as number)) / Math.sqrt(3));
  const end = elements.length - 1;
  const at = (from: string, to: string) => solve([...base, { from, to, impedance: bolted }]);
  const star = ['b', 'c', 'a'].map((p) => ({ from: `${p}${end}`, to: 'bolt', impedance: bolted }));
  return {
    lineNeutral: at(`a${end}`, `n${end}`),
    lineEarth: at(`a${end}`, `e${end}`),
    lineLine: at(`a${end}`, `b${end}`),
    threePhase: solve([...base, ...star]),
  };
}

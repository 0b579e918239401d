import { procedure } from '../../core/index.js';
import { CalculationError, invalidInput, ohms, type Problem } from '../../units/index.js';
import { add, type Complex, complex, divide, magnitude, multiply, subtract } from '../complex.js';
import { equivalentFrequencyPeakFactorOf } from '../meshed-peak.js';
import type { Impedance } from '../short-circuit.js';
import { factored, noughts } from './linear.js';

/** The node behind all sources: the star points of grid and motors. */
const SOURCE = 'source';

/** A branch between two nodes: a cable, a transformer, or from the node `source` a grid or a motor. @inline */
export interface FaultBranch {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  /** Impedance per line conductor, referred to the voltage of the fault, Ω. */
  readonly impedance: Impedance;
}

/**
 * A network of any shape for fault currents by an equivalent source at the fault. The node `source` stands behind grids
 * and motors.
 */
export interface FaultNetwork {
  /** Nominal voltage between lines, V. */
  readonly lineVoltage: number;
  /** Voltage factor c. */
  readonly voltageFactor: number;
  /** Branches of the positive sequence, which stand for the negative too: far from generators. */
  readonly branches: readonly FaultBranch[];
  /**
   * Branches of the zero sequence, for faults to earth: a transformer with a delta on its high side is one from `source` to
   * the node of its low side.
   */
  readonly zero?: readonly FaultBranch[];
}

/** A place in a network for faults. @inline */
export interface FaultPlace {
  readonly network: FaultNetwork;
  /** Node of the fault. */
  readonly node: string;
}

function branchProblems(branches: readonly FaultBranch[], at: string): readonly Problem[] {
  if (!Array.isArray(branches) || branches.length === 0)
    return [{ path: [at], message: 'must be at least one branch' }];
  return branches.flatMap((b: FaultBranch, i) => {
    const { resistance, reactance } = b?.impedance ?? {};
    const fits =
      Number.isFinite(resistance) &&
      Number.isFinite(reactance) &&
      (resistance as number) >= 0 &&
      Math.hypot(resistance as number, reactance as number) > 0;
    return [
      ...(fits
        ? []
        : [{ path: [at, i, 'impedance'], message: 'must be finite, its resistance from 0 Ω, and not none at all' }]),
      ...(typeof b?.from === 'string' && typeof b.to === 'string' && b.from !== b.to
        ? []
        : [{ path: [at, i], message: 'must join two nodes' }]),
    ];
  });
}

function refuse({ network, node }: FaultPlace, toEarth = false): void {
  const { lineVoltage, voltageFactor, branches, zero } = network ?? {};
  const problems: Problem[] = [...branchProblems(branches, 'branches'), ...(zero ? branchProblems(zero, 'zero') : [])];
  if (!(Number.isFinite(lineVoltage) && lineVoltage > 0))
    problems.push({ path: ['lineVoltage'], message: 'must be above 0 V' });
  if (!(voltageFactor > 0 && voltageFactor <= 1.2))
    problems.push({ path: ['voltageFactor'], message: 'must be above 0 and at most 1.2' });
  if (problems.length === 0)
    for (const [name, list] of Object.entries(toEarth ? { branches, zero } : { branches }))
      if (list && (node === SOURCE || !list.some((b) => b.from === node || b.to === node)))
        problems.push({ path: ['node'], message: `no branch of ${name} leads to ${node}` });
  if (problems.length > 0) throw invalidInput('the network', problems);
}

/** Nodes with a way to the source; what hangs on nothing takes no part. */
function joined(branches: readonly FaultBranch[]): readonly string[] {
  const found = new Set([SOURCE]);
  for (let before = 0; before < found.size; ) {
    before = found.size;
    for (const b of branches) {
      if (found.has(b.from)) found.add(b.to);
      if (found.has(b.to)) found.add(b.from);
    }
  }
  found.delete(SOURCE);
  return [...found];
}

/** Voltages of all nodes when one ampere flows in at one: that of the node itself is its impedance. */
function unit(branches: readonly FaultBranch[], node: string, frequency: number): ReadonlyMap<string, Complex> {
  const nodes = joined(branches);
  const place = new Map(nodes.map((n, i) => [n, i]));
  const none = (): never => {
    throw new CalculationError('no-solution', `no source feeds ${node}, or the network resonates`, {
      method: 'meshed short circuit',
      values: {},
    });
  };
  if (!place.has(node)) return none();
  const matrix = noughts(nodes.length);
  const stamp = (i: number | undefined, j: number | undefined, y: Complex) => {
    if (i !== undefined && j !== undefined) {
      const row = matrix[i] as Complex[];
      row[j] = add(row[j] as Complex, y);
    }
  };
  for (const b of branches) {
    const y = divide(complex(1), complex(b.impedance.resistance, frequency * b.impedance.reactance));
    const [i, j] = [place.get(b.from), place.get(b.to)];
    stamp(i, i, y);
    stamp(j, j, y);
    stamp(i, j, complex(-y.re, -y.im));
    stamp(j, i, complex(-y.re, -y.im));
  }
  const solve = factored(matrix) ?? none();
  const x = solve(nodes.map((n) => complex(n === node ? 1 : 0)));
  return new Map<string, Complex>([...nodes.map((n, i) => [n, x[i] as Complex] as const), [SOURCE, complex(0)]]);
}

const at = (branches: readonly FaultBranch[], node: string, frequency = 1) =>
  unit(branches, node, frequency).get(node) as Complex;

/** c U_n/√3 over an impedance. */
const current = ({ lineVoltage, voltageFactor }: FaultNetwork, z: Complex) =>
  (voltageFactor * lineVoltage) / Math.sqrt(3) / magnitude(z);

/**
 * Impedance of the positive sequence at a node of a network of any shape.
 * @param place network and node
 * @param frequency share of the nominal frequency, above 0 to 1: 0.4 for the peak current by method (c)
 * @returns resistance and reactance, Ω; the reactance at that frequency
 * @throws CalculationError `invalid-input` with the path of each problem, `no-solution` where no source feeds the node
 * @example
 * ```ts
 * import { impedanceAt } from 'ohmwright/power';
 *
 * const cable = { from: 'a', to: 'b', impedance: { resistance: 0.02, reactance: 0.01 } };
 * const network = {
 *   lineVoltage: 400,
 *   voltageFactor: 1.05,
 *   branches: [
 *     { name: 'grid', from: 'source', to: 'a', impedance: { resistance: 0.005, reactance: 0.02 } },
 *     { name: 'first', ...cable },
 *     { name: 'second', ...cable },
 *   ],
 * };
 * impedanceAt({ network, node: 'b' }); // => { resistance: 0.015, reactance: 0.025 }
 * ```
 */
export function impedanceAt(place: FaultPlace, frequency = 1): Impedance {
  refuse(place);
  if (!(frequency > 0 && frequency <= 1))
    throw invalidInput('the frequency', [{ path: ['frequency'], message: 'must be above 0 and at most 1' }]);
  const z = at(place.network.branches, place.node, frequency);
  return { resistance: z.re, reactance: z.im };
}

/** What a branch carries to a fault. @inline */
export interface FaultContribution {
  readonly name: string;
  /** Current in the branch at a three-phase fault, A. */
  readonly current: number;
}

/**
 * What each branch of a network carries to a three-phase fault: of the grid, of each transformer, cable and motor.
 * @param place network and node of the fault
 * @returns the current of each branch, A
 * @throws CalculationError `invalid-input` with the path of each problem, `no-solution` where no source feeds the node
 * @example
 * ```ts
 * import { faultContributions } from 'ohmwright/power';
 *
 * const network = {
 *   lineVoltage: 400,
 *   voltageFactor: 1,
 *   branches: [
 *     { name: 'grid', from: 'source', to: 'board', impedance: { resistance: 0, reactance: 0.01 } },
 *     { name: 'motors', from: 'source', to: 'board', impedance: { resistance: 0, reactance: 0.19 } },
 *   ],
 * };
 * faultContributions({ network, node: 'board' }).map((c) => Math.round(c.current)); // => [23094, 1215]
 * ```
 */
export function faultContributions(place: FaultPlace): readonly FaultContribution[] {
  refuse(place);
  const { network, node } = place;
  const voltages = unit(network.branches, node, 1);
  const fault = current(network, voltages.get(node) as Complex);
  return network.branches.map(({ name, from, to, impedance }) => {
    const [u, v] = [voltages.get(from), voltages.get(to)];
    const through = u && v ? divide(subtract(u, v), complex(impedance.resistance, impedance.reactance)) : complex(0);
    return { name, current: fault * magnitude(through) };
  });
}

const method = 'impedance at the place of the fault by nodal analysis of the whole network; c U_n/√3 over its size';
const source = {
  document: 'IEC 60909-0',
  clause: 'equivalent voltage source at the fault',
  provenance: 'memory',
} as const;

/** Three-phase fault current in a network of any shape. IEC 60909-0, equivalent voltage source at the fault. */
export const meshedThreePhaseFault = /* @__PURE__ */ procedure({
  id: 'meshed-three-phase-fault',
  title: 'Three-phase fault current in a network of any shape',
  output: 'faultCurrent',
  method,
  source,
  run: (place: FaultPlace) => {
    refuse(place);
    return current(place.network, at(place.network.branches, place.node));
  },
});

/** Line-to-line fault current in a network of any shape, far from generators. IEC 60909-0, equivalent voltage source at the fault. */
export const meshedLineLineFault = /* @__PURE__ */ procedure({
  id: 'meshed-line-line-fault',
  title: 'Line-to-line fault current in a network of any shape',
  output: 'faultCurrent',
  method: '√3/2 of the three-phase fault current',
  source,
  run: (place: FaultPlace) => (Math.sqrt(3) / 2) * meshedThreePhaseFault(place),
});

/** Line-to-earth fault current in a network of any shape. IEC 60909-0, equivalent voltage source at the fault. */
export const meshedLineEarthFault = /* @__PURE__ */ procedure({
  id: 'meshed-line-earth-fault',
  title: 'Line-to-earth fault current in a network of any shape',
  output: 'faultCurrent',
  method: '√3 c U_n over twice the impedance of the positive sequence and that of the zero sequence',
  source,
  run: (place: FaultPlace) => {
    refuse(place, true);
    const { network, node } = place;
    if (!network.zero)
      throw invalidInput('the network', [{ path: ['zero'], message: 'is needed for a fault to earth' }]);
    const z = add(multiply(complex(2), at(network.branches, node)), at(network.zero, node));
    return 3 * current(network, z);
  },
});

/** Peak of the three-phase fault current in a network of any shape, by method (c). IEC 60909-0, peak current in meshed networks. */
export const meshedPeakCurrent = /* @__PURE__ */ procedure({
  id: 'meshed-peak-current',
  title: 'Peak of the three-phase fault current in a network of any shape',
  output: 'peakCurrent',
  method: 'factor from the impedance at 0.4 of the nominal frequency, √2 and the three-phase fault current',
  source: { document: 'IEC 60909-0', clause: 'peak current, meshed networks, method (c)', provenance: 'memory' },
  run: (place: FaultPlace) => {
    const { resistance, reactance } = impedanceAt(place, 0.4);
    const factor = equivalentFrequencyPeakFactorOf({ resistance: ohms(resistance), reactance: ohms(reactance) });
    return factor * Math.SQRT2 * meshedThreePhaseFault(place);
  },
});

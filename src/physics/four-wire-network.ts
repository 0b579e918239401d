import { procedure } from '../core/index.js';
import { CalculationError, invalidInput, type Problem } from '../units/index.js';
import { add, type Complex, complex, conjugate, divide, magnitude, multiply, polar, subtract } from './complex.js';

/** A load on one line conductor of a node. @inline */
export type NodeLoad =
  | {
      /** Holds its current, A, at an angle behind its own voltage, radians. */
      readonly kind: 'current';
      readonly current: number;
      readonly angle: number;
    }
  | {
      /** Holds its power, W and var. */
      readonly kind: 'power';
      readonly active: number;
      readonly reactive: number;
    }
  | {
      /** An impedance to neutral, Ω. */
      readonly kind: 'impedance';
      readonly resistance: number;
      readonly reactance: number;
    };

/** A section of a radial four-wire network and the loads at its far end. @inline */
export interface FourWireSection {
  /** FourWireSection that it hangs on, by its place in the list; -1 for the source. Earlier in the list than this one. */
  readonly parent: number;
  /** Impedance of one line conductor, Ω. */
  readonly line: readonly [resistance: number, reactance: number];
  /** Impedance of the neutral conductor, Ω. */
  readonly neutral: readonly [resistance: number, reactance: number];
  /** Loads at the far end on L1, L2, L3. */
  readonly loads: readonly [NodeLoad | null, NodeLoad | null, NodeLoad | null];
}

/** A radial four-wire network fed by a symmetrical source. */
export interface FourWireNetwork {
  /** Voltage of the source line to neutral, V. */
  readonly sourceVoltage: number;
  /** Sections, parents first. */
  readonly sections: readonly FourWireSection[];
}

/** Voltages and currents of a solved network. @inline */
export interface FourWireSolution {
  /** Voltage line to neutral at the far end of each section, V. */
  readonly voltages: readonly (readonly [number, number, number])[];
  /** Voltage of the neutral at the far end of each section against the source's neutral, V. */
  readonly neutralVoltages: readonly number[];
  /** Currents of L1, L2, L3 and N in each section, A. */
  readonly currents: readonly (readonly [number, number, number, number])[];
  /** Sweeps that it took. */
  readonly sweeps: number;
}

const TOLERANCE = 1e-13;
const MOST_SWEEPS = 500;

const finite = (...all: readonly unknown[]): boolean => all.every(Number.isFinite);

/** @internal What is wrong with a load, in words. */
export function loadProblem(load: NodeLoad): string | undefined {
  switch (load?.kind) {
    case 'current':
      return finite(load.current, load.angle) && load.current >= 0 ? undefined : 'must draw a finite current from 0 A';
    case 'power':
      return finite(load.active, load.reactive) ? undefined : 'must have a finite power';
    case 'impedance':
      return finite(load.resistance, load.reactance) &&
        load.resistance >= 0 &&
        (load.resistance > 0 || load.reactance !== 0)
        ? undefined
        : 'must have a finite impedance, its resistance from 0 Ω, and not none at all';
    default:
      return 'must be a current, a power or an impedance';
  }
}

function check(network: FourWireNetwork): void {
  const problems: Problem[] = [];
  if (!(Number.isFinite(network?.sourceVoltage) && network.sourceVoltage > 0))
    problems.push({ path: ['sourceVoltage'], message: 'must be above 0 V' });
  if (!Array.isArray(network?.sections)) problems.push({ path: ['sections'], message: 'must be a list' });
  else
    network.sections.forEach((s: FourWireSection, i) => {
      if (!Number.isInteger(s?.parent) || s.parent < -1 || s.parent >= i)
        problems.push({ path: ['sections', i, 'parent'], message: 'must be -1 or the place of an earlier section' });
      for (const part of ['line', 'neutral'] as const) {
        const z: unknown = s?.[part];
        if (!Array.isArray(z) || z.length !== 2 || !finite(...z) || z[0] < 0)
          problems.push({ path: ['sections', i, part], message: 'must be finite, its resistance from 0 Ω' });
      }
      if (!Array.isArray(s?.loads) || s.loads.length !== 3)
        problems.push({ path: ['sections', i, 'loads'], message: 'must be three, for L1, L2 and L3' });
      else
        for (const [k, load] of s.loads.entries()) {
          const wrong = load === null ? undefined : loadProblem(load);
          if (wrong) problems.push({ path: ['sections', i, 'loads', k], message: wrong });
        }
    });
  if (problems.length > 0) throw invalidInput('the network', problems);
}

/** @internal Current that a load draws at a voltage line to neutral. */
export function drawn(load: NodeLoad, voltage: Complex): Complex {
  switch (load.kind) {
    case 'current': {
      const size = magnitude(voltage);
      return multiply(divide(voltage, complex(size)), polar(load.current, -load.angle));
    }
    case 'power':
      return conjugate(divide(complex(load.active, load.reactive), voltage));
    case 'impedance':
      return divide(voltage, complex(load.resistance, load.reactance));
    default: {
      const never: never = load;
      return never;
    }
  }
}

/**
 * Solves a radial four-wire network, unbalanced, with the impedance of its neutral: currents are summed towards the
 * source, voltages outwards, until they stand still to 1e-13 of the source voltage.
 * @param network source voltage in V, sections with impedances in Ω and loads
 * @returns voltages and currents, V and A
 * @throws CalculationError `invalid-input` for a malformed network; `no-solution` when a load cannot be served
 * @example
 * ```ts
 * import { solveRadial } from 'ohmwright/physics';
 *
 * const load = { kind: 'impedance', resistance: 23, reactance: 0 } as const;
 * const { neutralVoltages } = solveRadial({
 *   sourceVoltage: 230,
 *   sections: [{ parent: -1, line: [0.1, 0], neutral: [0.1, 0], loads: [load, null, null] }],
 * });
 * neutralVoltages[0]; // ≈ 0.99
 * ```
 */
export function solveRadial(network: FourWireNetwork): FourWireSolution {
  check(network);
  const { sections, sourceVoltage } = network;
  const source = [0, 1, 2].map((k) => polar(sourceVoltage, (-2 * Math.PI * k) / 3)) as [Complex, Complex, Complex];
  const ground = complex(0);
  // per section: potentials of L1, L2, L3 and N against the neutral of the source
  let ends: Complex[][] = sections.map(() => [...source, ground]);
  let flows: Complex[][] = [];
  for (let sweep = 1; sweep <= MOST_SWEEPS; sweep++) {
    flows = sections.map((s, i) => {
      const at = ends[i] as Complex[];
      const lines = s.loads.map((load, k) =>
        load ? drawn(load, subtract(at[k] as Complex, at[3] as Complex)) : ground,
      );
      const back = lines.reduce((sum, c) => subtract(sum, c), ground);
      return [...lines, back];
    });
    for (let i = sections.length - 1; i >= 0; i--) {
      const parent = (sections[i] as FourWireSection).parent;
      if (parent >= 0)
        flows[parent] = (flows[parent] as Complex[]).map((c, k) => add(c, (flows[i] as Complex[])[k] as Complex));
    }
    let moved = 0;
    const next: Complex[][] = [];
    sections.forEach((s, i) => {
      const from = s.parent < 0 ? [...source, ground] : (next[s.parent] as Complex[]);
      const flow = flows[i] as Complex[];
      next[i] = from.map((v, k) => {
        const [r, x] = k < 3 ? s.line : s.neutral;
        return subtract(v, multiply(complex(r, x), flow[k] as Complex));
      });
      for (let k = 0; k < 4; k++)
        moved = Math.max(
          moved,
          magnitude(subtract((next[i] as Complex[])[k] as Complex, (ends[i] as Complex[])[k] as Complex)),
        );
    });
    ends = next;
    if (!Number.isFinite(moved)) break;
    if (moved <= TOLERANCE * sourceVoltage) return solution(ends, flows, sweep);
  }
  throw new CalculationError(
    'no-solution',
    `the network has no operating point that is reached from no load in ${MOST_SWEEPS} sweeps: a load cannot be served`,
    {
      method: 'radial-network',
      values: { sourceVoltage, sections: sections.length },
    },
  );
}

const solution = (ends: readonly Complex[][], flows: readonly Complex[][], sweeps: number): FourWireSolution => ({
  voltages: ends.map(
    (e) => [0, 1, 2].map((k) => magnitude(subtract(e[k] as Complex, e[3] as Complex))) as [number, number, number],
  ),
  neutralVoltages: ends.map((e) => magnitude(e[3] as Complex)),
  currents: flows.map((f) => f.map(magnitude) as [number, number, number, number]),
  sweeps,
});

/** What `voltageInNetwork` reads: a network, and the place whose voltage is wanted. @inline */
export interface NetworkPlace {
  readonly network: FourWireNetwork;
  /** Place of the section in the list. */
  readonly section: number;
  /** Line conductor: 0 for L1, 1 for L2, 2 for L3. */
  readonly line: 0 | 1 | 2;
}

/** Voltage line to neutral at a place of a radial four-wire network. Kirchhoff's laws. */
export const voltageInNetwork = /* @__PURE__ */ procedure({
  id: 'voltage-in-network',
  title: 'Voltage at a place of a radial four-wire network',
  output: 'pointVoltage',
  method:
    'currents summed towards the source, voltages outwards, until they stand still to 1e-13 of the source voltage',
  source: { document: "Kirchhoff's laws", provenance: 'definition' },
  run: ({ network, section, line }: NetworkPlace) => {
    const voltage = solveRadial(network).voltages[section]?.[line];
    if (voltage !== undefined) return voltage;
    throw invalidInput('the place', [
      { path: ['section'], message: `the network has no line ${line} at section ${section}` },
    ]);
  },
});

import { procedure } from '../core/index.js';
import { CalculationError, invalidInput, type Problem } from '../units/index.js';
import { type Complex, complex, conjugate, divide, magnitude, multiply, polar, subtract } from './complex.js';

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
  // in pairs of real and imaginary part, per section those of L1, L2, L3 and N: potentials against the neutral of the source
  const source = new Float64Array(8);
  for (let k = 0; k < 3; k++) put(source, 2 * k, polar(sourceVoltage, (-2 * Math.PI * k) / 3));
  let ends = new Float64Array(8 * sections.length);
  for (let i = 0; i < sections.length; i++) ends.set(source, 8 * i);
  let next = new Float64Array(ends.length);
  const flows = new Float64Array(ends.length);
  for (let sweep = 1; sweep <= MOST_SWEEPS; sweep++) {
    sumFlows(sections, ends, flows);
    let moved = 0;
    for (const [i, { parent, line, neutral }] of sections.entries()) {
      const from = parent < 0 ? source : next;
      const above = parent < 0 ? 0 : 8 * parent;
      for (let k = 0; k < 8; k += 2) {
        const [r, x] = k < 6 ? line : neutral;
        const at = 8 * i + k;
        const re = flows[at] as number;
        const im = flows[at + 1] as number;
        next[at] = (from[above + k] as number) - (r * re - x * im);
        next[at + 1] = (from[above + k + 1] as number) - (r * im + x * re);
        const dRe = (next[at] as number) - (ends[at] as number);
        const dIm = (next[at + 1] as number) - (ends[at + 1] as number);
        moved = Math.max(moved, dRe * dRe + dIm * dIm);
      }
    }
    [ends, next] = [next, ends];
    if (!Number.isFinite(moved)) break;
    if (Math.sqrt(moved) <= TOLERANCE * sourceVoltage) return solution(ends, flows, sweep);
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

const put = (into: Float64Array, at: number, { re, im }: Complex): void => {
  into[at] = re;
  into[at + 1] = im;
};

/** Currents of L1, L2, L3 and N in each section at the potentials of its end, those of the sections behind it included. */
function sumFlows(sections: readonly FourWireSection[], ends: Float64Array, flows: Float64Array): void {
  for (const [i, { loads }] of sections.entries()) {
    const at = 8 * i;
    const neutral = complex(ends[at + 6] as number, ends[at + 7]);
    let back = complex(0);
    for (let k = 0; k < 3; k++) {
      const load = loads[k];
      const current = load
        ? drawn(load, subtract(complex(ends[at + 2 * k] as number, ends[at + 2 * k + 1]), neutral))
        : complex(0);
      put(flows, at + 2 * k, current);
      back = subtract(back, current);
    }
    put(flows, at + 6, back);
  }
  for (let i = sections.length - 1; i >= 0; i--) {
    const { parent } = sections[i] as FourWireSection;
    if (parent < 0) continue;
    for (let k = 0; k < 8; k++)
      flows[8 * parent + k] = (flows[8 * parent + k] as number) + (flows[8 * i + k] as number);
  }
}

function solution(ends: Float64Array, flows: Float64Array, sweeps: number): FourWireSolution {
  const places = Array.from({ length: ends.length / 8 }, (_, i) => 8 * i);
  const size = (of: Float64Array, at: number) => Math.hypot(of[at] as number, of[at + 1] as number);
  return {
    voltages: places.map(
      (at) =>
        [0, 2, 4].map((k) =>
          Math.hypot(
            (ends[at + k] as number) - (ends[at + 6] as number),
            (ends[at + k + 1] as number) - (ends[at + 7] as number),
          ),
        ) as [number, number, number],
    ),
    neutralVoltages: places.map((at) => size(ends, at + 6)),
    currents: places.map((at) => [0, 2, 4, 6].map((k) => size(flows, at + k)) as [number, number, number, number]),
    sweeps,
  };
}

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

import { multiplied, procedure } from '../../core/index.js';
import { invalidInput, type Problem } from '../../units/index.js';
import { add, type Complex, complex, magnitude, multiply, polar } from '../complex.js';

/** Three voltages or currents by size, in one unit. */
export type Three = readonly [number, number, number];

function refuse(three: Three): void {
  const fits =
    Array.isArray(three) &&
    three.length === 3 &&
    three.every((v) => Number.isFinite(v) && v >= 0) &&
    three.some((v) => v > 0);
  if (!fits) throw invalidInput('three sizes', [{ path: [], message: 'must be three numbers from 0, not all 0' }]);
}

/** Unbalance of three voltages between lines: the largest deviation from their mean. NEMA MG 1. */
export const unbalanceByMean = /* @__PURE__ */ procedure({
  id: 'unbalance-by-mean',
  title: 'Unbalance: largest deviation from the mean',
  output: 'voltageUnbalance',
  method: 'largest deviation of the three from their mean, over the mean',
  source: { document: 'NEMA MG 1', clause: 'unbalanced voltages', provenance: 'one-source' },
  run: (three: Three) => {
    refuse(three);
    const mean = (three[0] + three[1] + three[2]) / 3;
    return Math.max(...three.map((v) => Math.abs(v - mean))) / mean;
  },
});

/** Unbalance of three voltages between lines: negative over positive sequence, from their sizes alone. IEC 61000-4-30. */
export const unbalanceOfLineVoltages = /* @__PURE__ */ procedure({
  id: 'unbalance-of-line-voltages',
  title: 'Unbalance: negative over positive sequence, from the voltages between lines',
  output: 'voltageUnbalance',
  method:
    'the three close to a triangle: root of (1 - √(3 - 6 β)) over (1 + √(3 - 6 β)), β the sum of the fourth powers over the square of the sum of the squares',
  source: { document: 'IEC 61000-4-30', clause: 'supply voltage unbalance', provenance: 'memory' },
  run: (three: Three) => {
    refuse(three);
    const [a, b, c] = three;
    if (a > b + c || b > a + c || c > a + b)
      throw invalidInput('three voltages between lines', [{ path: [], message: 'do not close to a triangle' }]);
    const squares = three.map((v) => v * v);
    const all = squares.reduce((s, v) => s + v, 0);
    const beta = squares.reduce((s, v) => s + v * v, 0) / (all * all);
    // rounding may leave a hair below a third
    const root = Math.sqrt(Math.max(0, 3 - 6 * beta));
    return Math.sqrt(Math.max(0, 1 - root) / (1 + root));
  },
});

/** A phasor. @inline */
export interface Phasor {
  /** Size, in any unit, 0 and up. */
  readonly size: number;
  /** Angle, degrees. */
  readonly angle: number;
}

/** Sizes of the symmetrical components of three phasors, in their unit. @inline */
export interface SymmetricalComponents {
  readonly zero: number;
  readonly positive: number;
  readonly negative: number;
}

/**
 * Symmetrical components of three voltages or currents.
 * @param three phasors of L1, L2 and L3
 * @returns sizes of zero, positive and negative sequence, in the unit of the phasors
 * @throws CalculationError `invalid-input` with everything that is wrong
 * @example
 * ```ts
 * import { symmetricalComponents } from 'ohmwright/power';
 *
 * const { zero, positive, negative } = symmetricalComponents([
 *   { size: 32, angle: 0 },
 *   { size: 0, angle: 0 },
 *   { size: 0, angle: 0 },
 * ]);
 * [zero, positive, negative].map((v) => Math.round(100 * v) / 100); // => [10.67, 10.67, 10.67]
 * ```
 */
export function symmetricalComponents(three: readonly [Phasor, Phasor, Phasor]): SymmetricalComponents {
  const problems: Problem[] = (Array.isArray(three) ? three : []).flatMap(({ size, angle }: Phasor, i) =>
    Number.isFinite(size) && size >= 0 && Number.isFinite(angle)
      ? []
      : [{ path: [i], message: 'must have a size from 0 and an angle' }],
  );
  if (!Array.isArray(three) || three.length !== 3) problems.push({ path: [], message: 'must be three phasors' });
  if (problems.length > 0) throw invalidInput('three phasors', problems);
  const phasors = three.map(({ size, angle }) => polar(size, (angle * Math.PI) / 180));
  const of = (turn: number) => {
    const each = phasors.map((p, i) => multiply(p, polar(1, (2 * Math.PI * turn * i) / 3)));
    return magnitude(each.reduce<Complex>(add, complex(0))) / 3;
  };
  return { zero: of(0), positive: of(1), negative: of(-1) };
}

/** Unbalance of three phasors: negative over positive sequence. IEC 60034-26. */
export const unbalanceOfPhasors = /* @__PURE__ */ procedure({
  id: 'unbalance-of-phasors',
  title: 'Unbalance: negative over positive sequence',
  output: 'voltageUnbalance',
  method: 'symmetrical components of the three phasors',
  source: { document: 'IEC 60034-26', clause: 'voltage unbalance factor', provenance: 'memory' },
  run: (three: readonly [Phasor, Phasor, Phasor]) => {
    const { positive, negative } = symmetricalComponents(three);
    return negative / positive;
  },
});

/**
 * Unbalance of the voltage by a single-phase load behind a fault level, between two lines or from a line to neutral alike.
 * Symmetrical components.
 */
export const unbalanceOfSingleLoad = /* @__PURE__ */ multiplied({
  id: 'unbalance-of-single-load',
  title: 'Unbalance of the voltage by a single-phase load behind a fault level',
  times: ['singlePhaseLoad'],
  over: ['faultPower'],
  output: 'voltageUnbalance',
  source: {
    document: 'Symmetrical components',
    provenance: 'derived',
    note: 'the reactance of the supply alone; what the neutral drops is left out',
  },
});

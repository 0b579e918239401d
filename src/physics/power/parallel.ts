import { procedure } from '../../core/index.js';
import {
  invalidInput,
  type Problem,
  type Ratio,
  ratio,
  type VoltAmperes,
  voltAmperes,
  type Watts,
} from '../../units/index.js';
import { add, type Complex, complex, divide, magnitude } from '../complex.js';

/** A transformer that works in parallel with others of the same voltages and vector group. */
export interface ParallelTransformer {
  /** Rated power, VA. */
  readonly rating: VoltAmperes;
  /** Impedance voltage u_k, 1. */
  readonly impedanceVoltage: Ratio;
  /** Loss at rated current, W; without it all are taken as of the same ratio of resistance to reactance. */
  readonly loss?: Watts;
}

/** What one of several transformers in parallel carries. @inline */
export interface ParallelShare {
  /** Load, VA. */
  readonly load: VoltAmperes;
  /** Load over its rated power, 1. */
  readonly loadShare: Ratio;
}

function refuse(units: readonly ParallelTransformer[], load = 1): void {
  const problems: Problem[] = [];
  if (!Array.isArray(units) || units.length === 0)
    problems.push({ path: [], message: 'must be at least one transformer' });
  else
    units.forEach((t: ParallelTransformer, i) => {
      const positive = (name: 'rating' | 'impedanceVoltage') => {
        if (!(Number.isFinite(t?.[name]) && t[name] > 0))
          problems.push({ path: [i, name], message: 'must be above 0' });
      };
      positive('rating');
      positive('impedanceVoltage');
      if (t?.loss !== undefined && !(t.loss >= 0 && t.loss / t.rating <= t.impedanceVoltage))
        problems.push({
          path: [i, 'loss'],
          message: 'must be from 0 W to the impedance voltage times the rated power',
        });
    });
  if (!(Number.isFinite(load) && load >= 0)) problems.push({ path: ['load'], message: 'must be from 0 VA' });
  if (problems.length > 0) throw invalidInput('transformers in parallel', problems);
}

/** Rated power over impedance voltage: the admittance, as far as shares are concerned. */
function admittance({ rating, impedanceVoltage, loss }: ParallelTransformer, all: boolean): Complex {
  if (!all || loss === undefined) return complex(rating / impedanceVoltage);
  const resistive = loss / rating;
  return divide(complex(rating), complex(resistive, Math.sqrt(impedanceVoltage ** 2 - resistive ** 2)));
}

/**
 * How transformers in parallel of unlike rated power and impedance voltage share a load. With the losses of all of them
 * the angles of their impedances are in it: the shares then add up to a little more than the load.
 * @param units the transformers, all on the same tap
 * @param load what they carry together, VA, 0 and up
 * @returns what each carries, VA
 * @throws CalculationError `invalid-input` with everything that is wrong
 * @example
 * ```ts
 * import { kilovoltAmperes, percent } from 'ohmwright';
 * import { parallelShares } from 'ohmwright/power';
 *
 * const shares = parallelShares(
 *   [
 *     { rating: kilovoltAmperes(1000), impedanceVoltage: percent(5) },
 *     { rating: kilovoltAmperes(1500), impedanceVoltage: percent(8) },
 *   ],
 *   kilovoltAmperes(1937.5),
 * );
 * shares.map((s) => Math.round(s.load / 100) / 10); // => [1000, 937.5]
 * ```
 */
export function parallelShares(units: readonly ParallelTransformer[], load: VoltAmperes): readonly ParallelShare[] {
  refuse(units, load);
  const angles = units.every((t) => t.loss !== undefined);
  const each = units.map((t) => admittance(t, angles));
  const all = magnitude(each.reduce(add));
  return each.map((y, i) => {
    const part = (load * magnitude(y)) / all;
    return { load: voltAmperes(part), loadShare: ratio(part / (units[i] as ParallelTransformer).rating) };
  });
}

/** Largest load that transformers in parallel carry without one being overloaded. IEC 60076-8. */
export const largestParallelLoad = /* @__PURE__ */ procedure({
  id: 'largest-parallel-load',
  title: 'Largest load of transformers in parallel',
  output: 'parallelLoad',
  method: 'shares by rated power over impedance voltage; the transformer that is full first sets the load',
  source: { document: 'IEC 60076-8', clause: 'parallel operation', provenance: 'memory' },
  run: (units: readonly ParallelTransformer[]) => {
    const one = parallelShares(units, voltAmperes(1));
    return 1 / Math.max(...one.map((s) => s.loadShare));
  },
});

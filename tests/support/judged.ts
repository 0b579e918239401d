import { Writer } from '../../src/calculation/index.js';
import type { Aspect, CircuitCase, CircuitFigures, WiringCode } from '../../src/codes/wiring-code.js';
import type { CheckResult, Sheet } from '../../src/core/index.js';

/** The results of one group of checks of a code for one circuit, written on a sheet where there is one. */
export function judged(code: WiringCode, group: Aspect, circuit: CircuitCase, sheet?: Sheet): readonly CheckResult[] {
  const calculation = code.calculator.of(circuit);
  const results = calculation.results(group);
  sheet?.listed((next, place) => new Writer(calculation).group(group, next, place));
  return results;
}

/** Figures of a circuit by name. */
export const figuresOf = (code: WiringCode, circuit: CircuitCase): CircuitFigures =>
  code.figures(code.calculator.of(circuit));

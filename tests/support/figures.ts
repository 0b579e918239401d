import { type Calculator, thingsBelow, valueAt } from '../../src/calculation/index.js';
import { bs7671 } from '../../src/codes/bs7671/index.js';
import type { CircuitCase } from '../../src/codes/wiring-code.js';

/** A figure of a circuit by BS 7671: of the circuit itself, or of each thing of a list below, `list/entry`. */
export function figures(circuit: CircuitCase, of: string): readonly unknown[] {
  const calculator = bs7671('2018+A2:2022').calculator as Calculator;
  const calculation = calculator.of(circuit);
  const [name, scope] = of.split('/').reverse() as [string, string | undefined];
  if (scope === undefined) return [calculation.figure(name)];
  const list = calculator.lists.lists.get(scope);
  const placed = list?.byName.get(name);
  if (!list || !placed) throw new Error(`the contents list has no ${of}`);
  return thingsBelow(calculation.circuit, list).map((t) => valueAt(t, placed));
}

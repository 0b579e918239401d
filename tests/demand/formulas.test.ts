/** Each formula's printed expression, evaluated with units by an independent library, gives what its code gives. */
import fc from 'fast-check';
import { all, create, type Unit } from 'mathjs';
import { expect, test } from 'vitest';
import * as bs7671 from '../../src/codes/bs7671/demand.js';
import * as demand from '../../src/demand/definitions.js';
import * as guidance from '../../src/guidance/definitions.js';
import { evaluate, type Formula, termOf } from '../../src/index.js';
import * as networks from '../../src/networks/definitions.js';

const math = create(all as NonNullable<typeof all>);
const isFormula = (x: unknown): x is Formula => typeof x === 'function' && (x as { kind?: string }).kind === 'formula';
const formulas: readonly Formula[] = (
  Object.values({ ...demand, ...bs7671, ...guidance, ...networks }) as readonly unknown[]
).filter(isFormula);
const unitOf = (name: string) => termOf(name)?.unit ?? '1';
const withUnit = (value: number, unit: string) => (unit === '1' ? value : math.unit(value, unit));

test('there are formulas', () => expect(formulas.length).toBeGreaterThanOrEqual(16));

test.each(formulas.map((f) => [f.id, f] as const))('%s', (_, f) => {
  const inputs = f.inputs.map((name) => {
    const term = termOf(name);
    const own = (f.valid as Readonly<Record<string, { readonly above?: number }>> | undefined)?.[name]?.above;
    const least = own !== undefined ? own + 1e-3 : (term?.least ?? (term?.above ?? 0) + 1e-3);
    return fc.double({ min: least, max: term?.most ?? least + 5000, noNaN: true });
  });
  fc.assert(
    fc.property(fc.tuple(...inputs), (numbers) => {
      const values = Object.fromEntries(f.inputs.map((name, i) => [name, numbers[i] as number]));
      const ours = (f as unknown as (v: object) => number)(values);
      fc.pre(!(termOf(f.output)?.least === 0 && ours < 0));
      // largestAndShare: the largest is one of all
      if ('largestCurrent' in values) fc.pre((values.largestCurrent as number) <= (values.allCurrents as number));
      const scope = {
        ...Object.fromEntries(Object.entries(f.constants ?? {}).map(([k, [v, u]]) => [k, withUnit(v, u)])),
        ...Object.fromEntries(f.inputs.map((name) => [name, withUnit(values[name] as number, unitOf(name))])),
      };
      const found = math.evaluate(f.expression, scope) as number | Unit;
      const theirs = typeof found === 'number' ? found : found.toNumber(unitOf(f.output));
      const scale = Math.max(1, ...numbers);
      expect(Math.abs(theirs - ours)).toBeLessThanOrEqual(1e-9 * Math.max(scale, Math.abs(ours)));
      expect(evaluate(f, values as never)).toBe(ours);
    }),
    { numRuns: 200 },
  );
});

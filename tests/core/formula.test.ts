import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hasCode, type Name, termOf } from '../../src/index.js';
import { arbitraryQuantity } from '../../src/testing/index.js';
import { definitions } from '../../src/verify/definitions.js';

const { formulas } = definitions;
const byId = formulas.map((f) => [f.id, f] as const);

/** The quantity that an error of a plain call names. */
function named(call: () => unknown): string | undefined {
  try {
    const y = call();
    expect(Number.isFinite(y)).toBe(true);
  } catch (error) {
    if (hasCode(error, 'out-of-range')) return error.detail.quantity;
    expect(hasCode(error, 'no-solution') || hasCode(error, 'not-converged'), String(error)).toBe(true);
  }
  return undefined;
}

describe.each(byId)('%s called plainly', (_, f) => {
  const call = f as (values: object) => number;
  const values = (seed: number) =>
    fc.sample(fc.record(Object.fromEntries(f.inputs.map((n) => [n, arbitraryQuantity(n as Name)]))), {
      seed,
      numRuns: 20,
    });

  test('gives a finite number, or an error that names an input or the output', () => {
    for (const v of values(1)) expect([undefined, ...f.inputs, f.output]).toContain(named(() => call(v)));
  });
  test('names an input that is left out, or no finite number, wherever the result would be none', () => {
    for (const v of values(2).slice(0, 3))
      for (const name of f.inputs)
        for (const odd of [undefined, Number.NaN]) {
          const told = named(() => call({ ...v, [name]: odd }));
          // a branch that is not taken may never read it
          if (told !== undefined) expect([name, f.output]).toContain(told);
        }
  });
  test('its result may be below zero where its role may, and is refused there otherwise', () => {
    const term = termOf(f.output);
    const positive = (term?.least ?? term?.above ?? -1) >= 0;
    expect(f.signed === true).toBe(!positive);
  });
});

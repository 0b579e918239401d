/** What the claims of a documented example mean. */
import { expect } from 'vitest';

/** Numbers are rounded to ten significant digits before they are compared, at any depth. */
const rounded = (value: unknown): unknown => {
  if (typeof value === 'number') return Number(value.toPrecision(10));
  if (Array.isArray(value)) return value.map(rounded);
  if (value !== null && typeof value === 'object' && Object.getPrototypeOf(value) === Object.prototype)
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, rounded(inner)]));
  return value;
};

/** `expr; // => value` */
export function equal(actual: unknown, expected: unknown): void {
  expect(rounded(actual)).toEqual(rounded(expected));
}

/** `expr; // ≈ 1.087` */
export function near(actual: unknown, shown: string): void {
  expect(Number(actual).toFixed(shown.split('.')[1]?.length ?? 0)).toBe(shown);
}

/** `expr; // throws code` */
export async function throws(run: () => unknown, code: string): Promise<void> {
  let thrown: unknown;
  try {
    await run();
  } catch (error) {
    thrown = error;
  }
  expect(thrown, 'nothing was thrown').toBeInstanceOf(Error);
  expect((thrown as { code?: string }).code ?? (thrown as Error).name).toBe(code);
}

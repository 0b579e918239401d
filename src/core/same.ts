/**
 * Whether two plain values are equal as JSON, whatever the order of their keys; absent and undefined are the same.
 */
export function same(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const [x, y] = [a, b] as Readonly<Record<string, unknown>>[] as [Record<string, unknown>, Record<string, unknown>];
  const keys = new Set([...Object.keys(x), ...Object.keys(y)]);
  for (const key of keys) if (!same(x[key], y[key])) return false;
  return true;
}

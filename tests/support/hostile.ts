/** What a caller without a compiler may hand over: some of it refuses to be made a text, a number, or to be looked into. */
export const hostileValues: readonly unknown[] = [
  { toString: true },
  [{ toString: 1 }],
  Object.create(null),
  Symbol('x'),
  () => 1,
  10n,
  null,
  { state: 'known', value: { toString: 1 } },
  { state: { toString: 1 } },
];

type Path = readonly (string | number)[];

/** Every place of plain data, as keys from its root. */
export function placesOf(value: unknown, at: Path = []): readonly Path[] {
  if (typeof value !== 'object' || value === null) return [at];
  return [at, ...Object.entries(value).flatMap(([key, inner]) => placesOf(inner, [...at, key]))].filter(
    (path) => path.length > 0,
  );
}

/** The data with something else at one place. */
export function put<T>(data: T, [key, ...rest]: Path, value: unknown): T {
  if (key === undefined) return value as T;
  const copy = (Array.isArray(data) ? [...data] : { ...data }) as Record<string | number, unknown>;
  copy[key] = put(copy[key], rest, value);
  return copy as T;
}

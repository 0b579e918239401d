/** A name without the number at its end, and that number; of a name without one the whole, and none. */
const parted = (name: string): readonly [stem: string, number: number | undefined] => {
  const [, stem = name, digits] = /^(.*?)(\d{1,6})?$/s.exec(name) ?? [];
  return [stem, digits === undefined ? undefined : Number(digits)];
};

/** Names that only differ in a number together, by its size, each kind where the first of it stands. */
export function kindsOfNames(names: readonly string[]): readonly (readonly string[])[] {
  const kinds = new Map<string, string[]>();
  for (const name of names) {
    const [stem, number] = parted(name);
    const key = number === undefined ? name : `${stem}#`;
    kinds.set(key, [...(kinds.get(key) ?? []), name]);
  }
  return [...kinds.values()].map((kind) => kind.sort((a, b) => (parted(a)[1] ?? 0) - (parted(b)[1] ?? 0)));
}

/** Names in short: bay 1, 4, 7. */
export const namesInShort = (names: readonly string[]): readonly string[] =>
  kindsOfNames(names).map((kind) => {
    const [stem, number] = parted(kind[0] ?? '');
    // of row 1.1 and row 1.2 no one would read 1.1, 2
    return number === undefined || kind.length === 1 || !stem.endsWith(' ')
      ? kind.join(', ')
      : `${stem}${kind.map((name) => parted(name)[1]).join(', ')}`;
  });

/** Names in their order, those that only differ in a number which counts on together: bay 1, bay 2, bay 3. */
export function runsOfNames(names: readonly string[]): readonly (readonly string[])[] {
  const runs: { stem: string; last: number; names: string[] }[] = [];
  for (const name of names) {
    const [stem, number = Number.NaN] = parted(name);
    const before = runs.at(-1);
    if (before && before.stem === stem && before.last + 1 === number) {
      before.last++;
      before.names.push(name);
    } else runs.push({ stem, last: number, names: [name] });
  }
  return runs.map((r) => r.names);
}

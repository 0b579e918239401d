/** Names in their order, those that only differ in a number which counts on together: bay 1, bay 2, bay 3. */
export function runsOfNames(names: readonly string[]): readonly (readonly string[])[] {
  const runs: { stem: string; last: number; names: string[] }[] = [];
  for (const name of names) {
    const [, stem = name, digits = ''] = /^(.*?)(\d{1,6})?$/s.exec(name) ?? [];
    const before = runs.at(-1);
    if (before && digits !== '' && before.stem === stem && before.last + 1 === Number(digits)) {
      before.last++;
      before.names.push(name);
    } else runs.push({ stem, last: digits === '' ? Number.NaN : Number(digits), names: [name] });
  }
  return runs.map((r) => r.names);
}

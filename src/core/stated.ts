/** The members of an object that are stated: one that is undefined is absent, as exact optional properties ask. */
export function stated<T extends object>(members: T): { readonly [K in keyof T]?: Exclude<T[K], undefined> } {
  const kept: { [K in keyof T]?: Exclude<T[K], undefined> } = {};
  for (const key in members) {
    const member = members[key];
    if (member !== undefined) kept[key] = member as Exclude<T[typeof key], undefined>;
  }
  return kept;
}

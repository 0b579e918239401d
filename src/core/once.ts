/** What is worked out when it is first asked for, and kept. */
export function once<T>(give: () => T): () => T {
  let kept: { readonly value: T } | undefined;
  return () => {
    kept ??= { value: give() };
    return kept.value;
  };
}

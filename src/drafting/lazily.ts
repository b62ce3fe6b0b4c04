/** What is found when it is first asked for, and is the same from then on. */
export function lazily<T>(find: () => T): () => T {
  let found: { readonly it: T } | null = null;
  return () => {
    found ??= { it: find() };
    return found.it;
  };
}

/** Lessons in the order of the course. */
export function inOrder<T extends { readonly data: { readonly order: number } }>(lessons: readonly T[]): readonly T[] {
  return [...lessons].sort((a, b) => a.data.order - b.data.order);
}

/** The choice of every sheet. */
export const ALL = 'all';

/** The choice of one student's sheet. Whoever gave neither name nor number has an empty key, and is still one student. */
export function choiceOf(key: string): string {
  return `student ${key}`;
}

/** The lines whose sheets are chosen. */
export function chosen<L extends { readonly key: string }>(lines: readonly L[], choice: string): readonly L[] {
  return choice === ALL ? lines : lines.filter(({ key }) => choiceOf(key) === choice);
}

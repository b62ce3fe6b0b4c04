import { nearestSpelling } from '../drafting/spelling.ts';

/** Something an author of lessons has to mend. It stops the build, and says what to write instead. */
export class AuthoringError extends Error {
  override readonly name = 'AuthoringError';
}

/** What a component names in a lesson, for the error when there is no such thing. */
export interface Naming {
  /** `<Term of="…">`, as the author writes it. */
  readonly written: string;
  /** Where such things are kept. */
  readonly kept: string;
}

/** The entry of this id; an authoring error with the nearest spelling, or all there are, when there is none. */
export function lookUp<T>(known: ReadonlyMap<string, T>, id: string, { written, kept }: Naming): T {
  const found = known.get(id);
  if (found !== undefined) return found;
  const meant = nearestSpelling(id, known.keys());
  const hint = meant === null ? `There are: ${[...known.keys()].join(', ')}.` : `Did you mean “${meant}”?`;
  throw new AuthoringError(`${written} names “${id}”, and there is no such entry in ${kept}. ${hint}`);
}

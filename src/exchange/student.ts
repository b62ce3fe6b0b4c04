/** Who hands in. */
export interface Student {
  /** The name, as the student wrote it; may be empty. */
  readonly student: string;
  /** The number a school may have given; may be empty. */
  readonly number: string;
}

/**
 * By what a student is known among others, the same however the name was typed: the number, or the name where there is
 * none, without regard to capitals, to spaces, or to how accents and wide letters were entered (Unicode form NFKC).
 */
export function studentKey({ student, number }: Student): string {
  const tidy = (text: string): string => text.normalize('NFKC').trim().replaceAll(/\s+/g, ' ').toLowerCase();
  return tidy(number) === '' ? tidy(student) : `#${tidy(number)}`;
}

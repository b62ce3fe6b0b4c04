/** Who hands in. */
export interface Student {
  /** The name, as the student wrote it; may be empty. */
  readonly student: string;
  /** The number a school may have given; may be empty. */
  readonly number: string;
}

/** Longest name and longest number of a student, in characters. */
export const NAME_LENGTH = 200;
export const NUMBER_LENGTH = 40;

/**
 * A student as a file takes one: what is pasted from a list may hold tabs and go on for lines, and a file with these would be
 * refused. Spaces at the ends stay, which may be on the way to a second name.
 */
export function writtenStudent({ student, number }: Student): Student {
  return { student: seenLine(student).slice(0, NAME_LENGTH), number: seenLine(number).slice(0, NUMBER_LENGTH) };
}

function seenLine(text: string): string {
  return text.replaceAll(/\p{Cc}/gu, ' ');
}

/**
 * By what a student is known among others, the same however the name was typed: the number, or the name where there is
 * none, without regard to capitals, to spaces, or to how accents and wide letters were entered (Unicode form NFKC).
 */
export function studentKey({ student, number }: Student): string {
  const tidy = (text: string): string => text.normalize('NFKC').trim().replaceAll(/\s+/g, ' ').toLowerCase();
  return tidy(number) === '' ? tidy(student) : `#${tidy(number)}`;
}

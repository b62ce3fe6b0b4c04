import type { BookLine } from '../../../exchange/class/gradebook.ts';
import type { Sound } from '../intake/taken.ts';
import type { TheClass } from '../the-class.ts';

/** What the next student of a gradebook handed in for the same exercise, and counts; undefined where there is no next. */
export function nextPiece(
  lines: readonly Pick<BookLine, 'key'>[],
  { pieceOf }: Pick<TheClass, 'pieceOf'>,
  { kept: { student, exercise } }: Pick<Sound, 'kept'>,
): Sound | undefined {
  const here = lines.findIndex(({ key }) => key === student);
  // Is the student not in the gradebook?
  if (here < 0) return undefined;
  return lines
    .slice(here + 1)
    .map(({ key }) => pieceOf(key, exercise))
    .find((piece) => piece !== undefined);
}

import { latestOf } from '../../../exchange/class/class-work.ts';
import { studentKey } from '../../../exchange/student.ts';
import { filed, filedText } from '../filed.ts';
import type { Held } from '../intake/piles.ts';
import type { Work } from './keeper.ts';
import type { Summary } from './shelf.ts';

/** Whether nothing lies on the desk that would be worth keeping. */
export function isBare(held: Held): boolean {
  return isWorkless(held) && held.notes.list === '';
}

/** Whether there is nothing of which a gradebook comes: a class list may lie there all the same. */
export function isWorkless({ set, taken, waiting, notes }: Held): boolean {
  return set === null && taken.length + waiting.length + notes.students.size === 0;
}

/** Whether what is told of kept work is of none: a class list stays when the desk is cleared. */
export function isListAlone(summary: Summary | null): boolean {
  return summary !== null && summary.title === '' && summary.students + summary.pieces === 0;
}

/** All that lies on the desk, to be kept; null where it is more than a marking file holds. */
export function workOf(held: Held, saved: string): Work | null {
  const text = filedText(held, saved);
  if (text === null) return null;
  const { work } = filed(held, saved);
  const pieces = work.map(({ handIn }) => ({
    student: studentKey(handIn),
    exercise: handIn.exercise,
    saved: handIn.saved,
  }));
  const students = new Set(pieces.map(({ student }) => student)).size;
  // As the gradebook counts: what a later piece took the place of is not counted again.
  return { text, summary: { title: held.set?.title ?? '', students, pieces: latestOf(pieces).length, saved } };
}

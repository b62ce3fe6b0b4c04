import { latestOf } from '../../../exchange/class/class-work.ts';
import { studentKey } from '../../../exchange/student.ts';
import { filed, filedText } from '../filed.ts';
import type { Held } from '../intake/piles.ts';
import type { Work } from './keeper.ts';

/** Whether nothing lies on the desk that would be worth keeping. */
export function isBare({ set, taken, waiting, notes }: Held): boolean {
  return set === null && taken.length + waiting.length + notes.students.size + notes.list.length === 0;
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

import type { Student } from '../../exchange/student.ts';
import type { Say } from '../../table/say.ts';
import { spelled } from '../../words/unseen.ts';

/** A student as the desk shows one: by name, or that there is none; with the number, where there is one. */
export function studentName({ student, number }: Student, say: Say): string {
  const name = student.trim() === '' ? say('mark.nobody') : spelled(student);
  return number.trim() === '' ? name : `${name} (${spelled(number)})`;
}

import type { Student } from '../../exchange/student.ts';
import type { Say } from '../../table/say.ts';
import { spelled } from '../../words/unseen.ts';

/** A student's name alone as the desk shows it, or that there is none. */
export function nameAlone({ student }: Pick<Student, 'student'>, say: Say): string {
  return student.trim() === '' ? say('mark.nobody') : spelled(student);
}

/** A student as the desk shows one: by name, or that there is none; with the number, where there is one. */
export function studentName(who: Student, say: Say): string {
  const name = nameAlone(who, say);
  return who.number.trim() === '' ? name : `${name} (${spelled(who.number)})`;
}

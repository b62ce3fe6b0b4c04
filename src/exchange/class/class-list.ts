import { NAME_LENGTH, NUMBER_LENGTH, type Student, studentKey, writtenStudent } from '../student.ts';

/** Longest class list, in characters: a thousand students with room to spare. */
export const LIST_LENGTH = 40_000;

/** A number behind a name, or before it: something with a digit in it, with a comma, a semicolon or a space between. */
const BEHIND = /^(.*?)[\s,;]+([^\s,;]*\d[^\s,;]*)$/;
const BEFORE = /^([^\s,;]*\d[^\s,;]*)[\s,;]+(.*)$/;

/** Of a line no more is looked at than a name and a number have room for: a hostile one is to take no longer. */
const LINE_LENGTH = NAME_LENGTH + NUMBER_LENGTH;

/** The students of a class list as a teacher writes or pastes it: one a line, a name, a number or both; each once. */
export function readClassList(text: string): readonly Student[] {
  const students = text.split('\n').flatMap((line) =>
    studentOn(
      line
        .slice(0, LINE_LENGTH)
        .trim()
        .replace(/[\s,;]+$/, ''),
    ),
  );
  return [...new Map(students.map((one) => [studentKey(one), one])).values()];
}

function studentOn(line: string): readonly Student[] {
  if (line === '') return [];
  const behind = BEHIND.exec(line);
  if (behind) return [writtenStudent({ student: behind[1] ?? '', number: behind[2] ?? '' })];
  const before = BEFORE.exec(line);
  if (before) return [writtenStudent({ student: before[2] ?? '', number: before[1] ?? '' })];
  return [
    writtenStudent(/\d/.test(line) && !/\s/.test(line) ? { student: '', number: line } : { student: line, number: '' }),
  ];
}

/**
 * The students of one list who are not among others. Numbers tell where both have one; where one of the two has none, the name
 * does: a class list may be written without numbers, and a student forget it.
 */
export function notAmong<S extends Student>(students: readonly S[], others: readonly Student[]): readonly S[] {
  const numbers = new Set(others.filter(hasNumber).map(studentKey));
  const names = new Set(others.map(nameKey));
  const unnumbered = new Set(others.filter((one) => !hasNumber(one)).map(nameKey));
  return students.filter((one) => {
    if (!hasNumber(one)) return !names.has(nameKey(one));
    return !numbers.has(studentKey(one)) && (one.student.trim() === '' || !unnumbered.has(nameKey(one)));
  });
}

function hasNumber({ number }: Student): boolean {
  return number.trim() !== '';
}

function nameKey({ student }: Student): string {
  return studentKey({ student, number: '' });
}

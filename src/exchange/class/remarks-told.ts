import { type Message, message } from '../../words/message.ts';
import type { Remark } from '../remarks.ts';
import { studentKey } from '../student.ts';
import type { BookLine, Entry } from './gradebook.ts';

/**
 * The remarks on a piece of work as a teacher is told them, who has the class at hand: of a figure that was dealt to another,
 * to whom. It is for the teacher alone: what a student gets back names nobody else.
 */
export function remarksTold(entry: Entry, lines: readonly BookLine[]): readonly Message[] {
  return entry.remarks.map((remark) => (remark === 'other-figure' ? figureTold(entry, lines) : told(remark)));
}

/** A remark by itself, which tells of nobody but the student. */
export function told(remark: Remark): Message {
  return message(`remark.${remark}`);
}

function figureTold(entry: Entry, lines: readonly BookLine[]): Message {
  const { figureOf, student } = entry;
  // Is it the figure of nobody in particular?
  if (figureOf === null) return told('other-figure');
  // Was it begun by the same student, before the number was written?
  if (figureOf === studentKey({ student, number: '' })) return message('remark.figure-unnumbered');
  const owner = lines.find(({ key }) => key === figureOf);
  // Is it somebody's who handed in nothing?
  if (owner === undefined) return told('other-figure');
  const { student: name, number } = owner;
  return name.trim() === '' ? message('remark.figure-of-number', { number }) : message('remark.figure-of', { name });
}

import type { Name } from '../drafting/step.ts';
import { begunText } from '../exchange/beginning.ts';
import { freeHandOf } from '../exchange/class/alike/free-hand.ts';
import { type ClassWork, classWorkOf } from '../exchange/class/class-work.ts';
import { type Entry, entryOf } from '../exchange/class/gradebook.ts';
import { type UnreadPiece, unreadPiece } from '../exchange/class/unread.ts';
import type { Marking } from '../exchange/mark-work.ts';
import { readSet, type SetReading } from '../exchange/read-set.ts';
import { refusalOf } from '../exchange/refusal.ts';
import { remarksByItself } from '../exchange/remarks.ts';
import { saysSet } from '../exchange/says-set.ts';
import type { Student } from '../exchange/student.ts';
import { type Whole, wholeOf } from '../exchange/whole.ts';
import { setMark } from '../exchange/write-set.ts';
import { type Message, message } from '../words/message.ts';
import { say } from '../words/say.ts';
import { spelled } from '../words/unseen.ts';
import { exerciseNames } from './exercises.ts';
import { gradePiece, type Marked } from './grade-piece.ts';
import { workLines } from './grade-table.ts';
import type { Work } from './work.ts';

/** A table for people, a JSON line for programs, or nothing but what is made of all of it: the report on the class, the gradebook. */
export type Form = 'table' | 'json' | 'summary' | 'csv';

/** How marked work is told. */
export interface Manner {
  readonly by: Omit<Marking, 'load'>;
  readonly form: Form;
}

/** A piece of work of an exercise that there is none of. */
export interface Strange {
  readonly where: string;
  readonly exercise: Name;
}

/** What is said of one piece of work: whole lines for standard output and standard error. */
export interface Told {
  readonly out: string;
  readonly err: string;
  readonly outcome: 'marked' | 'refused' | 'noted';
  /** Where it was found and the exercise that it names, where the course has none of that name: such a set brings many. */
  readonly strange: Strange | null;
  /** What the report on the class keeps of it, and the gradebook: nothing where there is none to be made. */
  readonly kept: readonly ClassWork[];
  readonly entries: readonly Entry[];
  /** What the gradebook keeps of work that could not be read. */
  readonly unread: readonly UnreadPiece[];
  /** And of work that could, to know what it is the whole of. */
  readonly wholes: readonly Whole[];
}

const nothing = { strange: null, kept: [], entries: [], unread: [], wholes: [] } as const;

const reader = { language: 'en', unit: 'in' } as const;

/** Marks one piece of work and puts it into words. */
export function tell(piece: Work, { by, form }: Manner): Told {
  const note = noteOn(piece, by);
  if (note !== null) return aside(piece, say(note, reader), 'noted');
  const result = resultOf(piece, by);
  if (!result.ok) {
    const { reason, strange } = result;
    return { ...lost(piece, reason), strange: strange === null ? null : { where: piece.where, exercise: strange } };
  }
  // The table says it under the name.
  const err = form === 'table' ? '' : lossIn(piece, result.row);
  const silent = { out: '', err, outcome: 'marked' } as const;
  if (form === 'summary') return { ...silent, ...nothing, kept: [classWorkOf(result.row, freeHandOf(result.work))] };
  if (form === 'csv')
    return { ...silent, ...nothing, entries: [entryOf(result.row)], wholes: [wholeOf(result.work.handIn)] };
  // In JSON, too, what is spelled stays what it was.
  const out = form === 'table' ? workLines(result.row, result.notMade) : `${spelled(JSON.stringify(result.row))}\n`;
  return { out, err, outcome: 'marked', ...nothing };
}

/** Of a name that was read with letters lost, a word on standard error: a row of JSON has no room for it. */
function lossIn({ where }: Work, row: Student): string {
  const lost = remarksByItself(row).map((remark) => say(message(`remark.${remark}`), reader));
  return lost.map((said) => `${spelled(where)}: ${spelled(row.student)}: ${said}\n`).join('');
}

/** What is said of a piece over which the marking itself broke down. */
export function refused(piece: Work, why: Error): Told {
  return lost(piece, say(message('command.stumbled', { why: why.message }), reader));
}

/** A piece of which nothing comes but the word that it was there. */
function lost(piece: Work, why: string): Told {
  const unread = unreadPiece(piece.where, 'text' in piece ? begunText(piece.text) : '');
  return { ...aside(piece, why, 'refused'), unread: [unread] };
}

/** What is said beside the work, in one line for standard error. */
function aside({ where }: Work, said: string, outcome: 'noted' | 'refused'): Told {
  return { out: '', err: `${spelled(where)}: ${spelled(said)}\n`, outcome, ...nothing };
}

/** What is no work and no fault: a note on what was found, or a problem set among the work. */
function noteOn(piece: Work, by: Manner['by']): Message | null {
  if ('note' in piece) return piece.note;
  const read = setIn(piece);
  if (!read?.ok) return null;
  const title = { title: read.set.title };
  if (by.set === null) return message('command.set-met', title);
  return message(setMark(by.set).id === setMark(read.set).id ? 'command.set-met-own' : 'command.set-met-other', title);
}

function setIn(piece: Work): SetReading | null {
  return 'text' in piece && saysSet(piece.text) ? readSet(piece.text, exerciseNames()) : null;
}

function resultOf(piece: Work, by: Manner['by']): Marked {
  const read = setIn(piece);
  const refusal = (reason: string): Marked => ({ ok: false, reason, strange: null });
  if (read?.ok === false) return refusal(say(refusalOf(read.faults), reader).replace(/\s*\n\s*/g, ' '));
  if ('text' in piece) return gradePiece(piece, by);
  return refusal(say('note' in piece ? piece.note : piece.refused, reader));
}

import type { AlikeDrafts } from '../../../exchange/class/alike/alike-drafts.ts';
import type { Counts } from '../../../exchange/class/counting.ts';
import type { Entry, Gradebook } from '../../../exchange/class/gradebook.ts';
import { inOwnTime } from '../../../exchange/class/own-time.ts';
import { remarksTold } from '../../../exchange/class/remarks-told.ts';
import { since } from '../../../exchange/class/since.ts';
import type { ProblemSet } from '../../../exchange/set.ts';
import { studentKey } from '../../../exchange/student.ts';
import { type Message, message } from '../../../words/message.ts';
import { momentText } from '../../../words/moment.ts';
import { spelled } from '../../../words/unseen.ts';
import type { Sound } from '../intake/taken.ts';
import type { TheClass } from '../the-class.ts';

/** What is at hand to say what is out of the ordinary with a piece that lies open. */
export interface About {
  readonly book: Pick<Gradebook, 'lines'>;
  readonly work: Pick<TheClass, 'pieceOf' | 'others' | 'whoIs'>;
  /** Which of several attempts counts. */
  readonly counts: Counts;
  readonly set: ProblemSet | null;
  /** Drafts of the class to be asked about. */
  readonly alike: readonly AlikeDrafts[];
  /** In which dates are written, a BCP 47 tag. */
  readonly language: string;
}

/** No more of those whose drafts are alike are named. */
const NAMED = 6;

/**
 * Everything that is to be said of one piece of work beside its marks: what the gradebook remarks on it, whether another one
 * of the student's counts, what could not be read, and whose draft is alike to it.
 */
export function pieceRemarks(piece: Sound, about: About): readonly Message[] {
  const { book, work, alike, counts } = about;
  return [
    ...onSet(piece.entry, about),
    ...onVersions(piece, work, counts),
    ...onUnread(piece, book),
    ...onAlike(piece, work, alike),
  ];
}

/** What the gradebook remarks; of the day and of the checks, what the set says, or what the teacher gave this student. */
function onSet(entry: Entry, { book, set, language }: About): readonly Message[] {
  const key = studentKey(entry);
  const until = book.lines.find((line) => line.key === key)?.until ?? null;
  const given = until === null ? [] : [message('mark.until', { until: momentText(until, language) })];
  const told = remarksTold(inOwnTime(entry, until), book.lines).map((remark) => onRemark(remark, set, until, language));
  return [...given, ...told];
}

function onRemark(told: Message, set: ProblemSet | null, until: string | null, language: string): Message {
  const key = 'key' in told ? told.key : null;
  if (key === 'remark.late' && set?.due) {
    const isLonger = until !== null && Date.parse(until) > Date.parse(set.due);
    return message('remark.late-due', { due: momentText(isLonger ? until : set.due, language) });
  }
  if (key === 'remark.checks-over' && set?.checks) return message('remark.checks-most', { most: set.checks });
  return told;
}

/** Which of several pieces counts; of the last, what was made of another chance. */
function onVersions(piece: Sound, { pieceOf, others }: About['work'], counts: Counts): readonly Message[] {
  const { student, exercise } = piece.kept;
  const counted = pieceOf(student, exercise) === piece;
  if (!counted) return [message(counts === 'last' ? 'remark.not-last' : 'remark.not-best')];
  const beside = others.filter(({ kept }) => kept.student === student && kept.exercise === exercise);
  const last = beside.at(-1);
  if (last === undefined) return [];
  if (counts === 'best') return [message('remark.best', { beside: beside.length })];
  return [message('remark.last', { before: beside.length }), ...onAttempts(last, piece)];
}

/** What the student made of another chance. */
function onAttempts(before: Sound, now: Sound): readonly Message[] {
  const { mended, spoilt, still } = since(before.kept, now.kept);
  return [
    ...(mended.length === 0 ? [] : [message('remark.since-mended', { targets: { namedAll: mended } })]),
    ...(spoilt.length === 0 ? [] : [message('remark.since-spoilt', { targets: { namedAll: spoilt } })]),
    ...(still.length === 0 ? [] : [message('remark.since-still', { targets: { namedAll: still } })]),
  ];
}

/** What of the student's could not be read, and may belong to this exercise. */
function onUnread({ kept }: Sound, { lines }: About['book']): readonly Message[] {
  const unread = lines.find(({ key }) => key === kept.student)?.unread ?? [];
  const own = unread.filter(({ exercise }) => exercise === null || exercise === kept.exercise);
  const files = [...new Set(own.map(({ file }) => file))];
  return files.map((file) => message('remark.unread-file', { file: spelled(file) }));
}

/** Whose draft is alike to it; an earlier piece was not looked at. */
function onAlike(piece: Sound, { pieceOf, whoIs }: About['work'], alike: readonly AlikeDrafts[]): readonly Message[] {
  const { student, exercise } = piece.kept;
  if (pieceOf(student, exercise) !== piece) return [];
  const found = alike.filter((one) => one.exercise === exercise && one.students.some(({ key }) => key === student));
  return found.map(({ students, numbers }) => {
    const others = students.filter(({ key }) => key !== student).map(({ key }) => whoIs(key));
    if (others.length > NAMED) return message('remark.alike-many', { count: others.length, numbers });
    const names = others.map((who) => spelled(who.student.trim() === '' ? who.number : who.student));
    return message('remark.alike', { names: { listed: names }, numbers });
  });
}

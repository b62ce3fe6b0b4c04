import type { AlikeDrafts } from '../../../exchange/class/alike/alike-drafts.ts';
import type { Entry, Gradebook } from '../../../exchange/class/gradebook.ts';
import { remarksTold } from '../../../exchange/class/remarks-told.ts';
import { since } from '../../../exchange/class/since.ts';
import type { ProblemSet } from '../../../exchange/set.ts';
import { type Message, message } from '../../../words/message.ts';
import { spelled } from '../../../words/unseen.ts';
import { momentText } from '../../setting/date-time.ts';
import type { Sound } from '../intake/taken.ts';
import type { TheClass } from '../the-class.ts';

/** What is at hand to say what is out of the ordinary with a piece that lies open. */
export interface About {
  readonly book: Pick<Gradebook, 'lines'>;
  readonly work: Pick<TheClass, 'pieceOf' | 'earlier' | 'whoIs'>;
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
  const { book, work, alike } = about;
  return [
    ...onSet(piece.entry, about),
    ...onVersions(piece, work),
    ...onUnread(piece, book),
    ...onAlike(piece, work, alike),
  ];
}

/** What the gradebook remarks; of the day and of the checks, what the set says. */
function onSet(entry: Entry, { book, set, language }: About): readonly Message[] {
  return remarksTold(entry, book.lines).map((told) => {
    const key = 'key' in told ? told.key : null;
    if (key === 'remark.late' && set?.due) return message('remark.late-due', { due: momentText(set.due, language) });
    if (key === 'remark.checks-over' && set?.checks) return message('remark.checks-most', { most: set.checks });
    return told;
  });
}

/** Which of several pieces counts. */
function onVersions(piece: Sound, { pieceOf, earlier }: About['work']): readonly Message[] {
  const { student, exercise } = piece.kept;
  if (pieceOf(student, exercise) !== piece) return [message('remark.not-last')];
  const before = earlier.filter(({ kept }) => kept.student === student && kept.exercise === exercise);
  const last = before.at(-1);
  return last === undefined ? [] : [message('remark.last', { before: before.length }), ...onAttempts(last, piece)];
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

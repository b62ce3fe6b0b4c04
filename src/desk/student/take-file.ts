import type { Name } from '../../drafting/step.ts';
import type { HandIn } from '../../exchange/hand-in.ts';
import { draftKey } from '../../exchange/notes/draft-key.ts';
import { isWhole } from '../../exchange/pieces.ts';
import { readHandIn } from '../../exchange/read-hand-in.ts';
import { readSet } from '../../exchange/read-set.ts';
import { refusalOf } from '../../exchange/refusal.ts';
import { saysSet } from '../../exchange/says-set.ts';
import type { SetMark } from '../../exchange/set.ts';
import { type Student, studentKey } from '../../exchange/student.ts';
import { setMark } from '../../exchange/write-set.ts';
import { local } from '../../table/store/own-storage.ts';
import { keyOf, printRecord } from '../../table/store/record.ts';
import { type Message, message } from '../../words/message.ts';
import type { Work } from './use-work.ts';
import { progressOf } from './working-on.ts';

/** What came of a file that a student opened. */
export interface FileTaken {
  readonly says: Message;
  /** Lays the drafts here again whose place those of the file took; null where they took nobody's. */
  readonly putBack: (() => void) | null;
}

/** Takes up a file a student opens: a set, or a hand-in of the set that is open. */
export function takeFile(text: string, exercises: readonly Name[], work: Work): FileTaken {
  if (saysSet(text)) {
    const read = readSet(text, exercises);
    if (!read.ok) return failed(refusalOf(read.faults));
    work.open(read.set);
    return only(message('work.opened-set', { title: read.set.title }));
  }
  return takeHandIn(text, work);
}

function takeHandIn(text: string, work: Work): FileTaken {
  const mark = work.set === null ? null : setMark(work.set);
  const handIns: HandIn[] = [];
  for (const piece of isWhole(text) ? [text] : text.split('\n').filter((one) => one.trim() !== '')) {
    const read = readHandIn(piece);
    if (!read.ok) return failed(refusalOf(read.faults));
    if (mark === null || read.handIn.set?.id !== mark.id)
      return only(message('work.other-set', { title: read.handIn.set?.title ?? '' }));
    handIns.push(read.handIn);
  }
  return mark === null || handIns.length === 0 ? failed(message('files.empty')) : layDown(handIns, mark, work);
}

function layDown(handIns: readonly HandIn[], mark: SetMark, { student, setStudent, look, noteKept }: Work): FileTaken {
  const keys = [...new Set(handIns.map(({ exercise }) => keyOf(exercise, mark)))];
  const before = keys.map((key) => ({ key, text: local.read(key) }));
  const over = handIns.filter((handIn) => isOther(handIn, mark)).length;
  for (const handIn of handIns)
    noteKept(
      local.write(keyOf(handIn.exercise, mark), printRecord({ handIn, upTo: handIn.steps.length, checked: false })),
    );
  takeName(handIns, student, setStudent);
  look();
  const count = handIns.length;
  if (over === 0) return only(message('work.opened-hand-in', { count }));
  const putBack = (): void => {
    for (const { key, text } of before) if (text !== null) noteKept(local.write(key, text));
    look();
  };
  return { says: message('work.opened-over', { count, over }), putBack };
}

/** Whether another draft lies in the place of this one, or something that cannot be read: the student's only copy, perhaps. */
function isOther(handIn: HandIn, mark: SetMark): boolean {
  const lying = progressOf(local, handIn.exercise, mark);
  if (lying.state !== 'begun') return lying.state === 'damaged';
  const [one, other] = [handIn, lying.handIn].map((draft) => draftKey({ ...draft, student: '', number: '' }));
  return one !== other;
}

/** On a machine where no one has written a name, the work tells whose it is; a name that is written stays. */
function takeName(handIns: readonly HandIn[], written: Student, setStudent: Work['setStudent']): void {
  const named = handIns.find((handIn) => studentKey(handIn) !== '');
  if (named && studentKey(written) === '') setStudent({ student: named.student, number: named.number });
}

function failed(why: Message): FileTaken {
  return only(message('desk.open-failed', { why: { said: why } }));
}

function only(says: Message): FileTaken {
  return { says, putBack: null };
}

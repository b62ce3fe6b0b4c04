import type { Name } from '../../drafting/step.ts';
import type { HandIn } from '../../exchange/hand-in.ts';
import { readHandIn } from '../../exchange/read-hand-in.ts';
import { readSet } from '../../exchange/read-set.ts';
import { refusalOf } from '../../exchange/refusal.ts';
import { saysSet } from '../../exchange/says-set.ts';
import { type Student, studentKey } from '../../exchange/student.ts';
import { setMark } from '../../exchange/write-set.ts';
import { local } from '../../table/store/own-storage.ts';
import { keyOf, printRecord } from '../../table/store/record.ts';
import { type Message, message } from '../../words/message.ts';
import type { Work } from './use-work.ts';

/** Takes up a file a student opens: a set, or a hand-in of the set that is open. Says what came of it. */
export function takeFile(text: string, exercises: readonly Name[], work: Work): Message {
  if (saysSet(text)) {
    const read = readSet(text, exercises);
    if (!read.ok) return failed(refusalOf(read.faults));
    work.open(read.set);
    return message('work.opened-set', { title: read.set.title });
  }
  return takeHandIn(text, work);
}

function takeHandIn(text: string, { set, look, student, setStudent }: Work): Message {
  const mark = set === null ? null : setMark(set);
  const handIns: HandIn[] = [];
  for (const line of text.split('\n').filter((one) => one.trim() !== '')) {
    const read = readHandIn(line);
    if (!read.ok) return failed(refusalOf(read.faults));
    if (mark === null || read.handIn.set?.id !== mark.id)
      return message('work.other-set', { title: read.handIn.set?.title ?? '' });
    handIns.push(read.handIn);
  }
  for (const handIn of handIns)
    local.write(keyOf(handIn.exercise, mark), printRecord({ handIn, upTo: handIn.steps.length, checked: false }));
  takeName(handIns, student, setStudent);
  look();
  return message('work.opened-hand-in', { count: handIns.length });
}

/** On a machine where no one has written a name, the work tells whose it is; a name that is written stays. */
function takeName(handIns: readonly HandIn[], written: Student, setStudent: Work['setStudent']): void {
  const named = handIns.find((handIn) => studentKey(handIn) !== '');
  if (named && studentKey(written) === '') setStudent({ student: named.student, number: named.number });
}

function failed(why: Message): Message {
  return message('desk.open-failed', { why: { said: why } });
}

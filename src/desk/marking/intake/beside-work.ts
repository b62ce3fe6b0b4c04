import { MARKING_FORMAT } from '../../../exchange/marking-file/marking-file.ts';
import { readMarking } from '../../../exchange/marking-file/read-marking.ts';
import { readSet } from '../../../exchange/read-set.ts';
import { refusalOf } from '../../../exchange/refusal.ts';
import { SET_LENGTH, saysSet } from '../../../exchange/says-set.ts';
import type { Message } from '../../../words/message.ts';
import { refusedAt } from './refused.ts';
import type { Dropped, Intake } from './taken.ts';

/** What lies among hand-ins and is none: a set, or a marking file with its set. Null for any other file. */
export async function besideWork(file: Dropped, exercises: readonly string[]): Promise<readonly Intake[] | null> {
  const marking = await markingIn(file, exercises);
  if (marking !== null) return marking;
  return file.size <= SET_LENGTH ? await setIn(file, exercises) : null;
}

/** What a file gives; null where the system would not let it be read. */
export async function givenBy(read: () => Promise<string>): Promise<string | null> {
  try {
    return await read();
  } catch {
    return null;
  }
}

/** A marking file says what it is at its very beginning: it may be too large to be parsed to find out. */
const SAYS_MARKING = new RegExp(`^\\uFEFF?\\s*\\{\\s*"format"\\s*:\\s*"${MARKING_FORMAT}"`);

async function markingIn(file: Dropped, exercises: readonly string[]): Promise<readonly Intake[] | null> {
  const head = await givenBy(file.head);
  if (head === null || !SAYS_MARKING.test(head)) return null;
  const text = await givenBy(file.text);
  if (text === null) return null;
  const read = readMarking(text, exercises);
  if (!read.ok) return refused(file, refusalOf(read.faults));
  const { set } = read.file;
  return [...(set === null ? [] : [{ kind: 'set', set } as const]), { kind: 'marking', file: read.file }];
}

async function setIn(file: Dropped, exercises: readonly string[]): Promise<readonly Intake[] | null> {
  const text = await givenBy(file.text);
  if (text === null || !saysSet(text)) return null;
  const read = readSet(text, exercises);
  return read.ok ? [{ kind: 'set', set: read.set }] : refused(file, refusalOf(read.faults));
}

function refused({ name }: Dropped, why: Message): readonly Intake[] {
  return [{ kind: 'taken', taken: refusedAt(name, why) }];
}

import { fileNameOf } from '../../exchange/file-name.ts';
import type { HandIn } from '../../exchange/hand-in.ts';
import { orderFrom } from '../../exchange/order-from.ts';
import { readHandIn } from '../../exchange/read-hand-in.ts';
import { refusalOf } from '../../exchange/refusal.ts';
import type { Exercise } from '../../grader/exercise.ts';
import { type Message, message } from '../../words/message.ts';

export type Opened = { readonly ok: true; readonly handIn: HandIn } | { readonly ok: false; readonly message: Message };

/** Reads a draft file for this exercise, or says why it cannot be opened here. */
export function openDraft(text: string, exercise: Exercise): Opened {
  const read = readHandIn(text);
  if (!read.ok) return { ok: false, message: message('table.open-failed', { why: { said: refusalOf(read.faults) } }) };
  const { handIn } = read;
  if (handIn.exercise !== exercise.id)
    return { ok: false, message: message('table.open-other', { exercise: { named: handIn.exercise } }) };
  const order = orderFrom(handIn, exercise);
  return order.ok
    ? { ok: true, handIn }
    : { ok: false, message: message('table.open-failed', { why: { said: refusalOf(order.faults) } }) };
}

/** A name for the file that says whose and what it is. */
export function fileName(handIn: HandIn, suffix: string): string {
  return fileNameOf([handIn.student, handIn.exercise], suffix);
}

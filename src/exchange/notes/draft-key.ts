import type { HandIn } from '../hand-in.ts';
import { studentKey } from '../student.ts';
import { handInJson } from '../write-hand-in.ts';

/**
 * By what a draft is known: whose it is, its exercise, the order and the steps. When it was saved and how often it was
 * checked do not belong to it, so that a draft handed in again unchanged keeps what a teacher wrote on it.
 */
export function draftKey(handIn: HandIn): string {
  return remembered(drafts, handIn, () => {
    const { exercise, order, steps } = handIn;
    return JSON.stringify([studentKey(handIn), exercise, order.figure, order.style, order.house, steps]);
  });
}

/** A hand-in as one line, which is also by what it is known itself. */
export function handInLine(handIn: HandIn): string {
  return remembered(lines, handIn, () => JSON.stringify(handInJson(handIn)));
}

// A hand-in is never changed in place, and a class is written down again and again.
const drafts = new WeakMap<HandIn, string>();
const lines = new WeakMap<HandIn, string>();

function remembered(known: WeakMap<HandIn, string>, handIn: HandIn, make: () => string): string {
  const text = known.get(handIn) ?? make();
  known.set(handIn, text);
  return text;
}

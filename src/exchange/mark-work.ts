import type { Exercise } from '../grader/exercise.ts';
import { gradeDraft } from '../grader/grade.ts';
import type { Order } from '../grader/order.ts';
import type { Grade } from '../grader/result.ts';
import type { Strictness } from '../grader/tolerance.ts';
import { type Message, message } from '../words/message.ts';
import type { HandIn } from './hand-in.ts';
import { orderFrom } from './order-from.ts';
import { readHandIn } from './read-hand-in.ts';
import { refusalOf } from './refusal.ts';
import { type Remark, remarksOn } from './remarks.ts';
import type { ProblemSet } from './set.ts';

/** By what hand-ins are marked. */
export interface Marking {
  /** The exercise of this name, or why there is none that can be marked. */
  readonly load: (name: string) => Exercise | Message;
  /** The set they should be of; null where any work is marked by itself. */
  readonly set: ProblemSet | null;
  /** Counts instead of the set's and of the hand-in's own; null where theirs do. */
  readonly strictness: Strictness | null;
}

/** A piece of work that was marked, and everything it was marked from. */
export interface MarkedWork {
  readonly ok: true;
  readonly handIn: HandIn;
  readonly exercise: Exercise;
  readonly order: Order;
  readonly grade: Grade;
  /** Empty outside a set. */
  readonly remarks: readonly Remark[];
}

/** A piece that was marked, or why it was not; `handIn` is what could be read all the same. */
export type WorkMarking =
  | MarkedWork
  | { readonly ok: false; readonly message: Message; readonly handIn: HandIn | null };

/** Reads one hand-in and marks it: the same on the desk and at the command line. Never throws on what it is given. */
export function markWork(text: string, marking: Marking): WorkMarking {
  return unlessStumbled(null, () => {
    const read = readHandIn(text);
    return read.ok ? markHandIn(read.handIn, marking) : { ok: false, message: refusalOf(read.faults), handIn: null };
  });
}

/** Marks a hand-in that was read. Never throws on what it is given. */
export function markHandIn(handIn: HandIn, marking: Marking): WorkMarking {
  return unlessStumbled(handIn, () => marked(handIn, marking));
}

function unlessStumbled(handIn: HandIn | null, mark: () => WorkMarking): WorkMarking {
  try {
    return mark();
  } catch (error) {
    // One piece of work that the grader stumbles over must not stop the others.
    const why = error instanceof Error ? error.message : String(error);
    return { ok: false, message: message('command.stumbled', { why }), handIn };
  }
}

function marked(handIn: HandIn, { load, set, strictness }: Marking): WorkMarking {
  const exercise = load(handIn.exercise);
  if (!('checks' in exercise)) return { ok: false, message: exercise, handIn };
  const made = orderFrom(handIn, exercise);
  if (!made.ok) return { ok: false, message: refusalOf(made.faults), handIn };
  const { order } = made;
  const grade = gradeDraft(exercise, order, handIn.steps, strictness ?? set?.strictness ?? handIn.strictness);
  return { ok: true, handIn, exercise, order, grade, remarks: set === null ? [] : remarksOn(handIn, exercise, set) };
}

import { NO_NOTES, type Notes } from '../../exchange/notes/notes.ts';
import type { ProblemSet } from '../../exchange/set.ts';
import { handInJson, writeHandIn } from '../../exchange/write-hand-in.ts';
import { setMark } from '../../exchange/write-set.ts';
import { message } from '../../words/message.ts';
import type { Intake, Taken } from './intake.ts';

/** What lies on the marking desk. */
export interface Held {
  readonly set: ProblemSet | null;
  /** Everything taken in so far, in the order it was found; no piece twice. */
  readonly taken: readonly Taken[];
  /** How many pieces were laid down again that lay there already. */
  readonly again: number;
  /** What the teacher wrote. */
  readonly notes: Notes;
}

export const NOTHING: Held = { set: null, taken: [], again: 0, notes: NO_NOTES };

/** What lies there after some more was taken in. */
export function added(held: Held, answer: readonly Intake[]): Held {
  const sets = answer.flatMap((one) => (one.kind === 'set' ? [one.set] : []));
  const found = answer.flatMap((one) => (one.kind === 'taken' ? [one.taken] : []));
  const known = new Set(held.taken.map(identityOf));
  const fresh = found.filter((one) => {
    const identity = identityOf(one);
    if (known.has(identity)) return false;
    known.add(identity);
    return true;
  });
  return {
    ...held,
    set: sets.at(-1) ?? held.set,
    taken: [...held.taken, ...fresh],
    again: held.again + found.length - fresh.length,
  };
}

/** The same piece, wherever it was found; what could not be read is known by where it lay. */
function identityOf(taken: Taken): string {
  return taken.ok ? JSON.stringify(handInJson(taken.handIn)) : taken.where;
}

/** Whether the set has become another, so that what lies there has to be marked again. */
export function isOther(before: ProblemSet | null, now: ProblemSet | null): boolean {
  return (before && setMark(before).id) !== (now && setMark(now).id);
}

/** The work that lies there, each piece as a file again, and what is left on the desk meanwhile: what could not be read. */
export function takenUp(held: Held): {
  readonly left: Held;
  readonly pieces: readonly { readonly name: string; readonly text: string }[];
} {
  const { taken } = held;
  const pieces = taken.flatMap((one) => (one.ok ? [{ name: one.row.file, text: writeHandIn(one.handIn) }] : []));
  return { left: { ...held, taken: taken.filter(({ ok }) => !ok) }, pieces };
}

/** Files that were laid down and not marked to their end, as pieces that are told. */
export function stopped(names: readonly string[]): readonly Taken[] {
  return names.map((where) => ({ ok: false, where, message: message('mark.stopped') }));
}

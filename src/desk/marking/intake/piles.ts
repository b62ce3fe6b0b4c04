import { beginningOf } from '../../../exchange/beginning.ts';
import type { MarkingFile } from '../../../exchange/marking-file/marking-file.ts';
import { handInLine } from '../../../exchange/notes/draft-key.ts';
import { mergedNotes } from '../../../exchange/notes/merge-notes.ts';
import { NO_NOTES, type Notes } from '../../../exchange/notes/notes.ts';
import type { ProblemSet } from '../../../exchange/set.ts';
import { studentKey } from '../../../exchange/student.ts';
import { isWholeOf } from '../../../exchange/whole.ts';
import { setMark } from '../../../exchange/write-set.ts';
import { message } from '../../../words/message.ts';
import { type Refused, refusedAt, refusedBefore } from './refused.ts';
import type { Intake, Laid, Taken } from './taken.ts';

/** What lies on the marking desk. */
export interface Held {
  readonly set: ProblemSet | null;
  /** Everything taken in so far, in the order it was found; no piece twice. */
  readonly taken: readonly Taken[];
  /** Pieces that were read and wait to be marked. They lie on the desk all the same: stopping or leaving loses none. */
  readonly waiting: readonly Laid[];
  /** How many pieces were laid down again that lay there already. */
  readonly again: number;
  /** What the teacher wrote. */
  readonly notes: Notes;
  /** On how many drafts a marking file said something else than what was written here. */
  readonly clashes: number;
  /** Where something lay that could not be read, and was told of before the pile under way was laid down. */
  readonly told: ReadonlySet<string>;
}

export const NOTHING: Held = {
  ...{ set: null, taken: [], waiting: [], again: 0 },
  ...{ notes: NO_NOTES, clashes: 0, told: new Set() },
};

/** What lies there as another pile is begun. */
export function begunOn(held: Held): Held {
  return { ...held, told: new Set(held.taken.filter(isUnread).map(({ where }) => where)) };
}

/** What lies there after some more was taken in. */
export function added(held: Held, answer: readonly Intake[]): Held {
  const sets = answer.flatMap((one) => (one.kind === 'set' ? [one.set] : []));
  const found = answer.flatMap((one) => (one.kind === 'taken' ? [one.taken] : []));
  const lying = new Map(held.taken.map((one) => [identityOf(one), one]));
  let again = 0;
  for (const one of found) {
    const identity = identityOf(one);
    const before = lying.get(identity);
    // What could not be marked before, and can be now, takes its own place.
    if (before === undefined || (one.ok && !before.ok)) lying.set(identity, one);
    else again += 1;
  }
  return {
    ...held,
    set: sets.at(-1) ?? held.set,
    taken: withoutGood([...lying.values()], cameNow(found, held), held.told),
    waiting: held.waiting.filter(({ handIn }) => !lying.has(handInLine(handIn))),
    again: held.again + again,
  };
}

type Sound = Extract<Taken, { readonly ok: true }>;

/** What was laid down, and not only marked again. */
function cameNow(found: readonly Taken[], { waiting, told }: Held): readonly Sound[] {
  // Is there anything it could make good?
  if (told.size === 0) return [];
  const lay = new Set(waiting.map(({ handIn }) => handInLine(handIn)));
  return found.flatMap((one) => (one.ok && !lay.has(handInLine(one.handIn)) ? [one] : []));
}

function withoutGood(taken: readonly Taken[], came: readonly Sound[], told: ReadonlySet<string>): readonly Taken[] {
  if (came.length === 0) return taken;
  return taken.filter((one) => !(isUnread(one) && told.has(one.where) && came.some((whole) => isGood(one, whole))));
}

/** Whether nothing of it could be read: it is kept by where it lay. */
function isUnread(taken: Taken): taken is Refused {
  return !taken.ok && taken.handIn === null;
}

/**
 * Whether what could not be read is made good by what came later: the whole of it, or what stands now at its place and is
 * nobody else's. Another draft of the same student could be an earlier one, and the one that counts would be forgotten.
 */
function isGood({ where, begun }: Refused, { handIn, row }: Sound): boolean {
  const beginning = beginningOf(begun);
  const isOfOther = beginning !== null && studentKey(beginning) !== studentKey(handIn);
  return isWholeOf(handIn, begun) || (!isOfOther && (row.file === where || row.file.startsWith(`${where}:`)));
}

/** What lies there without what could not be read at a place: the teacher needs to be told of it no more. */
export function leftOut(held: Held, where: string): Held {
  return { ...held, taken: held.taken.filter((one) => !(isUnread(one) && one.where === where)) };
}

/** The same piece, wherever it was found; what could not be read is known by where it lay. */
function identityOf(taken: Taken): string {
  if (taken.ok) return handInLine(taken.handIn);
  return taken.handIn === null ? taken.where : handInLine(taken.handIn);
}

/** What lies there with a marking file opened on it, and the pieces of it that are to be marked. */
export function opened(held: Held, file: MarkingFile): { readonly held: Held; readonly pieces: readonly Laid[] } {
  const lying = new Set([...held.taken.map(identityOf), ...held.waiting.map(({ handIn }) => handInLine(handIn))]);
  const pieces = file.work.filter(({ handIn }) => !lying.has(handInLine(handIn)));
  const unread = file.unread.map(refusedBefore);
  const { notes, clashes } = mergedNotes(held.notes, file);
  const now = added(
    held,
    unread.map((taken) => ({ kind: 'taken', taken })),
  );
  return {
    held: {
      ...now,
      waiting: [...now.waiting, ...pieces],
      // What could not be read then is told again, and not counted as laid down twice.
      again: held.again + file.work.length - pieces.length,
      notes,
      clashes: held.clashes + clashes,
      told: new Set([...held.told, ...unread.map(({ where }) => where).filter((where) => !lying.has(where))]),
    },
    pieces,
  };
}

/** Whether a piece was marked by another set than lies on the desk, so that it has to be marked again. */
export function byOtherSet({ set }: Held): (taken: Taken) => boolean {
  const id = set === null ? null : setMark(set).id;
  return (one) => one.ok && (one.row.inSet?.id ?? null) !== id;
}

/** The work of these pieces waits to be marked again; what is left meanwhile is the rest. */
export function takenUp(
  held: Held,
  which: (taken: Taken) => boolean,
): { readonly held: Held; readonly pieces: readonly Laid[] } {
  const pieces = held.taken.flatMap((one): readonly Laid[] =>
    one.handIn !== null && which(one) ? [{ found: one.ok ? one.row.file : one.where, handIn: one.handIn }] : [],
  );
  const taken = held.taken.filter((one) => one.handIn === null || !which(one));
  return { held: { ...held, taken, waiting: [...held.waiting, ...pieces] }, pieces };
}

/** Marking was stopped: files that were not marked to their end are told, and pieces that waited stay, not marked. */
export function stopped(held: Held, names: readonly string[]): Held {
  const files = names.map((where) => refusedAt(where, message('mark.stopped')));
  const pieces = held.waiting.map(({ found, handIn }) => ({
    ...refusedAt(found, message('mark.stopped-piece')),
    handIn,
  }));
  return added(
    { ...held, waiting: [] },
    [...files, ...pieces].map((taken) => ({ kind: 'taken', taken })),
  );
}

import { useMemo } from 'preact/hooks';
import { readClassList } from '../../exchange/class/class-list.ts';
import { type Entry, type Gradebook, gradebookOf } from '../../exchange/class/gradebook.ts';
import { draftKey } from '../../exchange/notes/draft-key.ts';
import { type LooseNote, looseNotes, type NotedPiece } from '../../exchange/notes/loose-notes.ts';
import { notedEntry } from '../../exchange/notes/noted-marks.ts';
import { type Notes, ownTimes, UNTOUCHED } from '../../exchange/notes/notes.ts';
import { type ClassInHand, useClass } from './class/use-class.ts';
import { unreadAmong } from './intake/refused.ts';
import type { Sound, Taken } from './intake/taken.ts';
import { theClass } from './the-class.ts';
import type { MarkingDesk } from './use-marking-desk.ts';

/** What is made of the work on the desk. */
export interface MarkedDesk {
  readonly sound: readonly Sound[];
  /** With the teacher's marks in it. */
  readonly book: Gradebook;
  /** What the teacher wrote that belongs to nothing that counts. */
  readonly loose: readonly LooseNote[];
  readonly inHand: ClassInHand;
}

/** `exercises` is where they lie, whole, from the page's own address. */
export function useMarked({ held, progress }: MarkingDesk, exercises: string): MarkedDesk {
  const { set, taken, notes } = held;
  const sound = useMemo(() => taken.filter((one): one is Sound => one.ok), [taken]);
  const book = useMemo(
    () =>
      gradebookOf(
        sound.map((one) => entryWith(one, notes)),
        set,
        {
          ...{ unread: unreadAmong(taken), list: readClassList(notes.list) },
          ...{ until: ownTimes(notes), counts: notes.counts },
        },
      ),
    [sound, taken, set, notes],
  );
  // Where the last counts, no mark of the teacher's makes it another.
  const given = notes.counts === 'last' ? null : notes.pieces;
  // biome-ignore lint/correctness/useExhaustiveDependencies: of what the teacher wrote, what can change it.
  const work = useMemo(
    () => theClass(sound, { counts: notes.counts, earned: (one) => entryWith(one, notes).marks }),
    [sound, notes.counts, given],
  );
  // While more is coming in, what a note belongs to may still come.
  const loose = useMemo(() => (progress ? [] : looseNotes(taken.flatMap(notedPiece), notes)), [taken, notes, progress]);
  return { sound, book, loose, inHand: useClass(sound, work, exercises) };
}

/** The gradebook's entry of a piece, with the teacher's marks. */
function entryWith({ entry, row, handIn }: Sound, { pieces }: Notes): Entry {
  return notedEntry(entry, row, pieces.get(draftKey(handIn)) ?? UNTOUCHED);
}

function notedPiece(taken: Taken): readonly NotedPiece[] {
  if (taken.ok) return [{ handIn: taken.handIn, checks: taken.row.checks }];
  return taken.handIn === null ? [] : [{ handIn: taken.handIn, checks: null }];
}

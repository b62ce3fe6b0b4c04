import type { VNode } from 'preact';
import { useState } from 'preact/hooks';
import { latestOf } from '../../exchange/class/class-work.ts';
import type { Gradebook } from '../../exchange/class/gradebook.ts';
import { draftKey } from '../../exchange/notes/draft-key.ts';
import { type Notes, UNTOUCHED, withPiece, withStudent } from '../../exchange/notes/notes.ts';
import type { ProblemSet } from '../../exchange/set.ts';
import { studentKey } from '../../exchange/student.ts';
import type { Say } from '../../table/say.ts';
import { BookTable } from './BookTable.tsx';
import type { Taken } from './intake.ts';
import { type PieceInHand, PieceView } from './PieceView.tsx';
import { useExercises } from './use-exercises.ts';

/** A piece of work that was read and marked. */
export type Sound = Extract<Taken, { readonly ok: true }>;

interface BookProps {
  readonly book: Gradebook;
  readonly sound: readonly Sound[];
  readonly set: ProblemSet | null;
  readonly titles: ReadonlyMap<string, string>;
  readonly notes: Notes;
  /** Changes what the teacher wrote, as it is by then. */
  readonly onWrite: (change: (now: Notes) => Notes) => void;
  /** Where the exercises lie, whole, from the page's own address. */
  readonly exercises: string;
  readonly say: Say;
}

/** The gradebook, and under it the piece of work that lies open. */
export function Book({ book, sound, set, titles, notes, onWrite, exercises, say }: BookProps): VNode {
  const { known, missing, want } = useExercises(exercises);
  const [open, setOpen] = useState<Opened | null>(null);
  const piece = open && lastOf(sound, open);
  const exercise = piece && known?.[piece.row.exercise];
  const close = (): void => {
    setOpen(null);
    if (open) focusCell(open);
  };
  return (
    <>
      <BookTable
        book={book}
        titles={titles}
        say={say}
        onOpen={(student, name) => {
          setOpen({ student, exercise: name });
          return want();
        }}
      />
      {open && missing ? <p class="trouble">{say('mark.no-exercises')}</p> : null}
      {open && piece && exercise ? (
        <PieceView
          key={`${open.student}/${open.exercise}`}
          handIn={piece.handIn}
          row={piece.row}
          exercise={exercise}
          set={set}
          piece={inHand(piece, notes, onWrite)}
          say={say}
          onClose={close}
        />
      ) : null}
    </>
  );
}

/** What the teacher wrote on a piece of work and to its student. */
function inHand({ handIn }: Sound, notes: Notes, onWrite: BookProps['onWrite']): PieceInHand {
  const key = draftKey(handIn);
  const { student, number } = handIn;
  return {
    notes: notes.pieces.get(key) ?? UNTOUCHED,
    write: (change) => onWrite((now) => withPiece(now, key, change)),
    toStudent: notes.students.get(studentKey(handIn))?.comment ?? '',
    writeToStudent: (comment) => onWrite((now) => withStudent(now, { student, number, comment })),
  };
}

/** Whose work on which exercise lies open. */
interface Opened {
  readonly student: string;
  readonly exercise: string;
}

/** Of a student's work on an exercise, the piece that counts. */
function lastOf(sound: readonly Sound[], { student, exercise }: Opened): Sound | undefined {
  const own = sound.filter(({ row }) => row.exercise === exercise && studentKey(row) === student);
  const [counts] = latestOf(own.map((one) => ({ student, exercise, saved: one.row.saved, one })));
  return counts?.one;
}

function focusCell({ student, exercise }: Opened): void {
  const cells = document.querySelectorAll<HTMLElement>('[data-cell]');
  [...cells].find(({ dataset }) => dataset['cell'] === `${student}/${exercise}`)?.focus();
}

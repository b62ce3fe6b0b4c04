import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import { alikeDrafts } from '../../../exchange/class/alike/alike-drafts.ts';
import type { Gradebook } from '../../../exchange/class/gradebook.ts';
import { draftKey, handInLine } from '../../../exchange/notes/draft-key.ts';
import { type Notes, UNTOUCHED, withPiece, withStudent } from '../../../exchange/notes/notes.ts';
import type { ProblemSet } from '../../../exchange/set.ts';
import { studentKey } from '../../../exchange/student.ts';
import type { Exercise } from '../../../grader/exercise.ts';
import type { Say } from '../../../table/say.ts';
import type { ClassInHand } from '../class/use-class.ts';
import type { Sound } from '../intake/taken.ts';
import { NextPiece } from '../piece/NextPiece.tsx';
import { nextPiece } from '../piece/next-piece.ts';
import { type PieceInHand, PieceView } from '../piece/PieceView.tsx';
import { pieceRemarks } from '../piece/piece-remarks.ts';
import type { TheClass } from '../the-class.ts';
import { BookTable } from './BookTable.tsx';
import { Absent, ClassList } from './ClassList.tsx';
import { EarlierWork, Versions } from './EarlierWork.tsx';
import { MoreTime } from './MoreTime.tsx';

interface BookProps {
  readonly book: Gradebook;
  readonly inHand: ClassInHand;
  readonly set: ProblemSet | null;
  readonly titles: ReadonlyMap<string, string>;
  readonly notes: Notes;
  /** Changes what the teacher wrote, as it is by then. */
  readonly onWrite: (change: (now: Notes) => Notes) => void;
  /** Opens the feedback sheet of a student, known by a key. */
  readonly onSheet: (student: string) => void;
  readonly say: Say;
}

/** The gradebook, and under it the piece of work that lies open. */
export function Book(props: BookProps): VNode {
  const { book, inHand, notes, titles, onWrite, say } = props;
  const { work, exercises } = inHand;
  const { piece, open } = inHand.opened;
  const exercise = piece && exercises.known?.[piece.row.exercise];
  return (
    <>
      <BookTable
        book={book}
        titles={titles}
        say={say}
        onOpen={(student, name) => {
          const counts = work.pieceOf(student, name);
          if (counts) open(counts);
        }}
      />
      <ClassList notes={notes} awake={true} onWrite={onWrite} say={say} />
      <Absent book={book} list={notes.list} say={say} />
      {props.set?.due ? <MoreTime lines={book.lines} due={props.set.due} onWrite={onWrite} say={say} /> : null}
      <EarlierWork
        others={work.others}
        counts={notes.counts}
        onCounts={(counts) => onWrite((now) => ({ ...now, counts }))}
        titles={titles}
        say={say}
        onOpen={open}
      />
      {piece && exercises.missing ? <p class="trouble">{say('mark.no-exercises')}</p> : null}
      {piece && exercise ? <OpenPiece {...props} piece={piece} exercise={exercise} /> : null}
    </>
  );
}

interface OpenPieceProps extends BookProps {
  readonly piece: Sound;
  readonly exercise: Exercise;
}

/** The piece that lies open, with the others of its student's and the way to the next student. Escape closes it from anywhere in it. */
function OpenPiece({ piece, exercise, book, inHand, set, notes, onWrite, onSheet, say }: OpenPieceProps): VNode {
  const { work, opened } = inHand;
  const { open, close } = opened;
  const { student } = piece.kept;
  const next = nextPiece(book.lines, work, piece);
  const alike = useMemo(() => alikeDrafts(work.counted.map(({ kept }) => kept)), [work]);
  const { language } = say.reader;
  return (
    <section
      class="piece-open"
      aria-labelledby="piece-title"
      onKeyDown={(event) => {
        if (event.key === 'Escape') close();
      }}
    >
      <Versions
        versions={versionsOf(work, piece)}
        open={piece}
        counts={work.pieceOf(student, piece.row.exercise)}
        say={say}
        onOpen={open}
      />
      <PieceView
        key={handInLine(piece.handIn)}
        handIn={piece.handIn}
        row={piece.row}
        exercise={exercise}
        set={set}
        piece={pieceInHand(piece, notes, onWrite)}
        remarks={pieceRemarks(piece, { book, work, counts: notes.counts, set, alike, language })}
        say={say}
        onSheet={() => onSheet(student)}
        onClose={close}
      />
      {next ? <NextPiece next={next} say={say} onOpen={open} /> : null}
    </section>
  );
}

/** What the student of a piece handed in for its exercise, the one that counts last. */
function versionsOf({ others, pieceOf }: TheClass, { kept }: Sound): readonly Sound[] {
  const before = others.filter((one) => one.kept.student === kept.student && one.kept.exercise === kept.exercise);
  const counts = pieceOf(kept.student, kept.exercise);
  return counts ? [...before, counts] : before;
}

/** What the teacher wrote on a piece of work and to its student. */
function pieceInHand({ handIn }: Sound, notes: Notes, onWrite: BookProps['onWrite']): PieceInHand {
  const key = draftKey(handIn);
  const { student, number } = handIn;
  return {
    notes: notes.pieces.get(key) ?? UNTOUCHED,
    write: (change) => onWrite((now) => withPiece(now, key, change)),
    toStudent: notes.students.get(studentKey(handIn))?.comment ?? '',
    writeToStudent: (comment) => onWrite((now) => withStudent(now, { student, number }, { comment })),
  };
}

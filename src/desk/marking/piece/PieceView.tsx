import type { VNode } from 'preact';
import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Name } from '../../../drafting/step.ts';
import type { WorkRow } from '../../../exchange/grade-row.ts';
import type { HandIn } from '../../../exchange/hand-in.ts';
import { type MarkedWork, markWork } from '../../../exchange/mark-work.ts';
import { ownTotal, targetMarks } from '../../../exchange/notes/noted-marks.ts';
import { type OwnMark, type PieceNotes, withMark } from '../../../exchange/notes/notes.ts';
import type { ProblemSet } from '../../../exchange/set.ts';
import { scaledMarks } from '../../../exchange/set-marks.ts';
import { writeHandIn } from '../../../exchange/write-hand-in.ts';
import type { Exercise } from '../../../grader/exercise.ts';
import type { Say } from '../../../table/say.ts';
import type { Message } from '../../../words/message.ts';
import { momentText } from '../../../words/moment.ts';
import { spelled } from '../../../words/unseen.ts';
import { nameAlone } from '../student-name.ts';
import { tidyMarks } from '../tidy-marks.ts';
import { CommentBox } from './CommentBox.tsx';
import { othersWords } from './others-words.ts';
import { PieceDraft } from './PieceDraft.tsx';
import { Remarks } from './Remarks.tsx';
import { TargetNote } from './TargetNote.tsx';

interface PieceViewProps {
  readonly handIn: HandIn;
  readonly row: WorkRow;
  readonly exercise: Exercise;
  readonly set: ProblemSet | null;
  readonly piece: PieceInHand;
  /** What is out of the ordinary with it. */
  readonly remarks: readonly Message[];
  readonly say: Say;
  /** Opens the feedback sheet of its student. */
  readonly onSheet: () => void;
  readonly onClose: () => void;
}

/** What a teacher wrote on the piece and to its student, and how more is written. */
export interface PieceInHand {
  readonly notes: PieceNotes;
  readonly write: (change: (now: PieceNotes) => PieceNotes) => void;
  readonly toStudent: string;
  readonly writeToStudent: (comment: string) => void;
}

/** One piece of work: the draft with the red pencil on it, its working, what is said of it, its marks and comments. */
export function PieceView(props: PieceViewProps): VNode {
  const { handIn, row, exercise, set, piece, remarks, say, onSheet, onClose } = props;
  const marked = useMemo(
    () => markWork(writeHandIn(handIn), { load: () => exercise, set, strictness: null }),
    [handIn, exercise, set],
  );
  const student = nameAlone(row, say);
  return (
    <div class="piece">
      <PieceHead student={student} title={exercise.title} say={say} onSheet={onSheet} onClose={onClose} />
      <p class="small">{howItCame(row, say)}</p>
      <Remarks remarks={remarks} say={say} />
      <OwnTotal row={row} piece={piece} say={say} />
      {marked.ok ? (
        <div class="piece-draft">
          <PieceDraft marked={marked} say={say} />
          <PieceNotesView marked={marked} row={row} piece={piece} say={say} />
        </div>
      ) : (
        <p class="trouble">{say.message(marked.message)}</p>
      )}
      <Comments piece={piece} student={student} say={say} />
    </div>
  );
}

interface PieceHeadProps extends Pick<PieceViewProps, 'say' | 'onSheet' | 'onClose'> {
  readonly student: string;
  readonly title: string;
}

/** Whose work it is, which has the focus as it is opened, the way to the sheet, and out. */
function PieceHead({ student, title, say, onSheet, onClose }: PieceHeadProps): VNode {
  const head = useRef<HTMLHeadingElement>(null);
  // At the top of the window, where most of the piece is seen: a focus by itself goes to the middle.
  useLayoutEffect(() => {
    head.current?.focus({ preventScroll: true });
    head.current?.closest('.piece-open')?.scrollIntoView({ block: 'start' });
  }, []);
  return (
    <header class="piece-head">
      <h2 id="piece-title" tabIndex={-1} ref={head}>
        {say('mark.piece', { student, title })}
      </h2>
      <span class="piece-head-ends">
        <button
          type="button"
          class="button"
          data-do="piece-sheet"
          aria-label={say('feedback.one-of', { student })}
          onClick={onSheet}
        >
          {say('feedback.one')}
        </button>
        <button type="button" class="button" data-do="close-piece" onClick={onClose}>
          {say('mark.close')}
        </button>
      </span>
    </header>
  );
}

/** What the teacher writes of this work, and to its student on everything. */
function Comments({
  piece,
  student,
  say,
}: Pick<PieceViewProps, 'piece' | 'say'> & { readonly student: string }): VNode {
  return (
    <div class="piece-comments">
      <CommentBox
        says={say('mark.comment-piece')}
        name="comment-piece"
        comment={piece.notes.comment}
        onWrite={(comment) => piece.write((now) => ({ ...now, comment }))}
      />
      <CommentBox
        says={say('mark.comment-student', { student })}
        name="comment-student"
        comment={piece.toStudent}
        onWrite={piece.writeToStudent}
      />
    </div>
  );
}

/** The problems of the draft, and what is said of each target with its marks. */
function PieceNotesView({ marked, row, piece, say }: NotesViewProps): VNode {
  const { problems, reports } = marked.grade;
  const marks = new Map(targetMarks(row.checks, piece.notes).map((one) => [one.target, one]));
  const others = othersWords(marked.grade, say);
  const [said, setSaid] = useState<string | null>(null);
  const give = (target: Name, mark: OwnMark | null): void => {
    piece.write((now) => withMark(now, target, mark));
    setSaid(say(mark === null ? 'mark.own-taken-back' : 'mark.own-given', { target: { named: target } }));
  };
  return (
    <div class="piece-notes">
      {problems.map((problem) => (
        <p key={say.message(problem)} class="trouble">
          {spelled(say.message(problem))}
        </p>
      ))}
      {reports.map((report) => (
        <TargetNote
          key={report.target}
          report={report}
          marks={marks.get(report.target) ?? null}
          say={say}
          onMark={(mark) => give(report.target, mark)}
        />
      ))}
      {others === null ? null : <p class="piece-others">{spelled(others)}</p>}
      <p class="unseen" role="status">
        {said}
      </p>
    </div>
  );
}

interface NotesViewProps extends Pick<PieceViewProps, 'row' | 'piece' | 'say'> {
  readonly marked: MarkedWork;
}

/** What counts where the teacher changed a mark, in the scale in which the gradebook counts. */
function OwnTotal({ row, piece, say }: Pick<PieceViewProps, 'row' | 'piece' | 'say'>): VNode | null {
  const total = ownTotal(row.checks, piece.notes);
  if (total === null) return null;
  const counted = row.inSet ?? row;
  const marks = row.inSet === null ? total : scaledMarks({ marks: total, of: row.of }, row.inSet.of);
  const values = { marks: tidyMarks(marks), of: tidyMarks(counted.of), grader: tidyMarks(counted.marks) };
  return <p class="own-total">{say('mark.own-total', values)}</p>;
}

/** Marks, when it was drawn and saved, and what help it had. */
function howItCame({ marks, of, inSet, saved, checked, hints, shown }: WorkRow, say: Say): string {
  const counted = inSet ?? { marks, of };
  const taken = Object.values(hints).reduce<number>((sum, tier) => sum + tier, 0);
  const when = saved === null ? say('mark.no-date') : momentText(saved, say.reader.language);
  return say('mark.came', {
    marks: tidyMarks(counted.marks),
    of: counted.of,
    when,
    checked,
    hints: taken,
    shown: shown.length,
  });
}

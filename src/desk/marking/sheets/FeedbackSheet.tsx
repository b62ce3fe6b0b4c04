import type { VNode } from 'preact';
import type { BookLine, Entry } from '../../../exchange/class/gradebook.ts';
import { markHandIn } from '../../../exchange/mark-work.ts';
import { draftKey } from '../../../exchange/notes/draft-key.ts';
import { type Notes, UNTOUCHED } from '../../../exchange/notes/notes.ts';
import type { ProblemSet } from '../../../exchange/set.ts';
import type { Exercise } from '../../../grader/exercise.ts';
import { type Say, sayFor } from '../../../table/say.ts';
import { momentText } from '../../../words/moment.ts';
import { spelled } from '../../../words/unseen.ts';
import { nameAlone } from '../student-name.ts';
import { tidyMarks } from '../tidy-marks.ts';
import { Comment } from './Comment.tsx';
import { FeedbackPiece } from './FeedbackPiece.tsx';
import { type RightShown, rightShown } from './paper.ts';
import type { ExerciseWork } from './student-work.ts';

/** Everything that the sheets of a class have in common. */
export interface ClassSheets {
  readonly set: ProblemSet | null;
  /** What everything of the set is worth together. */
  readonly of: number;
  readonly titles: ReadonlyMap<string, string>;
  readonly exercises: Readonly<Record<string, Exercise>>;
  readonly notes: Notes;
  readonly say: Say;
}

interface FeedbackSheetProps {
  readonly line: BookLine;
  readonly work: readonly ExerciseWork[];
  /** The sheet's place among all, which keeps its drawings apart from theirs. */
  readonly place: number;
  readonly sheets: ClassSheets;
}

/** The sheet one student gets back. */
export function FeedbackSheet({ line, work, place, sheets }: FeedbackSheetProps): VNode {
  const { set, say, notes } = sheets;
  // Without a set nobody was asked for what others did.
  const own = [...line.entries.values()].reduce((sum, entry) => sum + entry.of, 0);
  const of = set === null ? own : sheets.of;
  const name = nameAlone(line, say);
  const right = rightShown(work);
  return (
    <article class="feedback">
      <header class="feedback-head">
        <h3>{name}</h3>
        {line.number === '' ? null : <span>{say('feedback.number', { number: spelled(line.number) })}</span>}
        <span class="feedback-total">{say('feedback.total', { marks: tidyMarks(line.marks), of: tidyMarks(of) })}</span>
      </header>
      {set === null ? null : (
        <p>
          {spelled(set.title)}
          {set.due === null ? null : `. ${dueWords(set.due, line, say)}`}
        </p>
      )}
      {line.unread.length === 0 ? null : <p>{say('feedback.unread', { count: line.unread.length })}</p>}
      <Comment comment={notes.students.get(line.key)?.comment ?? ''} say={say} />
      {work.map((one, index) => (
        <Piece
          key={one.exercise}
          work={one}
          none={say(
            line.unread.some(({ exercise }) => exercise === one.exercise) ? 'feedback.not-read' : 'feedback.nothing',
          )}
          name={name}
          right={right}
          id={`feedback-${place}-${index}`}
          sheets={sheets}
        />
      ))}
    </article>
  );
}

/** To when the work was to be handed in, by the set or by what was given to this student. */
function dueWords(due: string, { until }: BookLine, say: Say): string {
  const { language } = say.reader;
  return until === null
    ? say('feedback.due', { due: momentText(due, language) })
    : say('feedback.due-own', { due: momentText(due, language), until: momentText(until, language) });
}

interface PieceProps {
  readonly work: ExerciseWork;
  /** What is said where there is no work. */
  readonly none: string;
  /** Stands at every exercise on paper: pages of one sheet may fall apart. */
  readonly name: string;
  readonly right: RightShown;
  readonly id: string;
  readonly sheets: ClassSheets;
}

function Piece({ work: { exercise, counted }, none, name, right, id, sheets }: PieceProps): VNode {
  const { titles, say } = sheets;
  return (
    <section class="feedback-piece">
      <h4 class="feedback-exercise">
        {titles.get(exercise) ?? exercise}{' '}
        {counted === null ? null : (
          <span class="feedback-total">
            {say('feedback.total', { marks: tidyMarks(counted.entry.marks), of: tidyMarks(counted.entry.of) })}
          </span>
        )}
      </h4>
      {counted === null ? (
        <p>{none}</p>
      ) : (
        <>
          <p class="small">
            <span class="feedback-again">{name}. </span>
            {howItCame(counted.entry, say)}
          </p>
          <MarkedPiece counted={counted} right={right} id={id} sheets={sheets} />
        </>
      )}
    </section>
  );
}

/** When it was saved, what is not as the set has it, and whose marks count. */
function howItCame({ saved, remarks, grader }: Entry, say: Say): string {
  return [
    ...(saved === null ? [] : [say('feedback.saved', { saved: momentText(saved, say.reader.language) })]),
    ...(remarks.length === 0
      ? []
      : [say('feedback.remarks', { remarks: remarks.map((remark) => say(`remark.${remark}`)).join('; ') })]),
    ...(grader === undefined ? [] : [say('feedback.counts', { grader: tidyMarks(grader) })]),
  ].join(' ');
}

interface MarkedPieceProps {
  readonly counted: NonNullable<ExerciseWork['counted']>;
  readonly right: RightShown;
  readonly id: string;
  readonly sheets: ClassSheets;
}

/** The piece, marked again for what is said of it, in the unit in which its student is spoken to. */
function MarkedPiece({ counted: { piece }, right, id, sheets }: MarkedPieceProps): VNode | null {
  const { set, exercises, notes, say } = sheets;
  const { handIn, row } = piece;
  const exercise = exercises[handIn.exercise];
  if (!exercise) return null;
  const marked = markHandIn(handIn, { load: () => exercise, set, strictness: null });
  const own = sayFor({ ...say.reader, unit: handIn.unit });
  if (!marked.ok) return <p>{own.message(marked.message)}</p>;
  const written = notes.pieces.get(draftKey(handIn)) ?? UNTOUCHED;
  return <FeedbackPiece marked={marked} row={row} notes={written} right={right} id={id} say={own} />;
}

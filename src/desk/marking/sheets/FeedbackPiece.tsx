import type { VNode } from 'preact';
import type { WorkRow } from '../../../exchange/grade-row.ts';
import type { MarkedWork } from '../../../exchange/mark-work.ts';
import type { PieceNotes } from '../../../exchange/notes/notes.ts';
import { Said } from '../../../table/parts/Said.tsx';
import type { Say } from '../../../table/say.ts';
import { spelled, spelledLines } from '../../../words/unseen.ts';
import { markedDrawing } from '../piece/marked-drawing.ts';
import { othersWords } from '../piece/others-words.ts';
import { tidyMarks } from '../tidy-marks.ts';
import { Comment } from './Comment.tsx';
import { FEEDBACK_ASPECT, FeedbackDrawing } from './FeedbackDrawing.tsx';
import type { RightShown } from './paper.ts';
import { type ToldTarget, toldOf } from './told.ts';

interface FeedbackPieceProps {
  readonly marked: MarkedWork;
  readonly row: WorkRow;
  readonly notes: PieceNotes;
  /** What is shown of it where everything is right. */
  readonly right: RightShown;
  /** Unique on the page. */
  readonly id: string;
  readonly say: Say;
}

/** One piece of work on the sheet: the drawing with the red pencil, what went right, what is off, marks by hand, the comment. */
export function FeedbackPiece({ marked, row, notes, right, id, say }: FeedbackPieceProps): VNode {
  const { grade } = marked;
  const drawing = markedDrawing(marked, say.reader.unit, undefined, FEEDBACK_ASPECT);
  const told = toldOf(grade, row.checks, notes);
  const { tried, held } = grade.otherFigures;
  const isRight = told.notes.length + grade.problems.length === 0;
  // Such a piece takes half the width of a sheet, beside another one.
  const saysLittle = isRight && held === tried && notes.comment === '';
  return (
    <div class="feedback-work" data-says={saysLittle ? 'little' : 'more'}>
      {'message' in drawing || (saysLittle && right === 'told') ? null : (
        <FeedbackDrawing drawing={drawing} size={isRight ? 'right' : 'off'} id={id} say={say} />
      )}
      <div class="feedback-words">
        {told.right.length === 0 ? null : <p class="feedback-right">{rightWords(told, grade.reports.length, say)}</p>}
        {grade.problems.map((problem) => (
          <p key={say.message(problem)}>{spelled(say.message(problem))}</p>
        ))}
        {told.notes.map((one) => (
          <Note key={one.report.target} told={one} say={say} />
        ))}
        {held < tried ? <p>{othersWords(grade, say)}</p> : null}
        <Comment comment={notes.comment} say={say} />
      </div>
    </div>
  );
}

function rightWords({ right }: ReturnType<typeof toldOf>, of: number, say: Say): string {
  return right.length === of ? say('feedback.all-right') : say('feedback.right', { targets: { namedAll: right } });
}

function Note({ told: { report, marks }, say }: { readonly told: ToldTarget; readonly say: Say }): VNode {
  const { target, verdict } = report;
  const own = marks?.own ?? null;
  return (
    <div class="feedback-note">
      <h4>
        {say('table.label', { name: { named: target } })}{' '}
        <span class="piece-status">{say('verdict.word', { verdict })}</span>
      </h4>
      <Said report={report} say={say} />
      {marks === null || own === null ? null : (
        <p class="feedback-hand">
          {say('feedback.changed', {
            ...{ grader: tidyMarks(marks.grader), of: tidyMarks(marks.of) },
            ...{ own: tidyMarks(own.marks), reason: spelledLines(own.reason) },
          })}
        </p>
      )}
    </div>
  );
}

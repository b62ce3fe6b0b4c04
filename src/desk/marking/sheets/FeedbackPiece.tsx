import type { VNode } from 'preact';
import type { WorkRow } from '../../../exchange/grade-row.ts';
import type { MarkedWork } from '../../../exchange/mark-work.ts';
import type { PieceNotes } from '../../../exchange/notes/notes.ts';
import { heightOf, widthOf } from '../../../table/drawing/box.ts';
import type { Drawing } from '../../../table/drawing/drawing.ts';
import { SheetDrawing } from '../../../table/drawing/SheetDrawing.tsx';
import { Said } from '../../../table/parts/Said.tsx';
import type { Say } from '../../../table/say.ts';
import { spelled, spelledLines } from '../../../words/unseen.ts';
import { markedDrawing } from '../piece/marked-drawing.ts';
import { othersWords } from '../piece/others-words.ts';
import { tidyMarks } from '../tidy-marks.ts';
import { Comment } from './Comment.tsx';
import { type ToldTarget, toldOf } from './told.ts';

interface FeedbackPieceProps {
  readonly marked: MarkedWork;
  readonly row: WorkRow;
  readonly notes: PieceNotes;
  /** Unique on the page. */
  readonly id: string;
  readonly say: Say;
}

/** How wide a drawing is on the sheet, mm, as the style sheet has it. */
const WIDTH = 80;

/** Two drawings that are no higher, mm, go on one page with what is said of them. */
const HIGHEST = 98;

/** What of a sheet is drawn: no higher than that, and so wide that words find room beside its lines. */
export const FEEDBACK_ASPECT = WIDTH / HIGHEST;

/** CSS pixels a millimetre of paper. */
const PIXELS = 96 / 25.4;

/** One piece of work on the sheet: the drawing with the red pencil, what went right, what is off, marks by hand, the comment. */
export function FeedbackPiece({ marked, row, notes, id, say }: FeedbackPieceProps): VNode {
  const { grade } = marked;
  const drawing = markedDrawing(marked, say.reader.unit, undefined, FEEDBACK_ASPECT);
  const told = toldOf(grade, row.checks, notes);
  const { tried, held } = grade.otherFigures;
  return (
    <div class="feedback-work">
      {'message' in drawing ? null : <Sheet drawing={drawing} id={id} say={say} />}
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

function Sheet({ drawing, id, say }: { readonly drawing: Drawing; readonly id: string; readonly say: Say }): VNode {
  // Words are seated for just that width, on the screen too.
  const high = WIDTH * PIXELS * (heightOf(drawing.box) / widthOf(drawing.box));
  return (
    <div class="feedback-drawing">
      <SheetDrawing drawing={drawing} reader={say.reader} id={id} heights={[high, high]} />
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

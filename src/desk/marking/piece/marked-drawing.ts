import { replay } from '../../../drafting/replay.ts';
import type { MarkedWork } from '../../../exchange/mark-work.ts';
import { layOut } from '../../../grader/lay-out.ts';
import { heightOf, widthOf, withAspect } from '../../../table/drawing/box.ts';
import type { Drawing } from '../../../table/drawing/drawing.ts';
import { pictureOf } from '../../../table/model/picture.ts';
import { noPencil, redPencil } from '../../../table/model/red-pencil.ts';
import { homeOf, shownOn } from '../../../table/model/sheet-box.ts';
import type { Message } from '../../../words/message.ts';
import type { Unit } from '../../../words/unit.ts';

/**
 * A marked draft as a drawing, after its first `upTo` steps; the red pencil comes when all of them are there. Where its
 * order cannot be laid on the table, why not. A sheet that is narrower to its height than `aspect` shows more on both sides:
 * room for words.
 */
export function markedDrawing(
  { exercise, order, grade, handIn: { steps } }: MarkedWork,
  unit: Unit,
  upTo = steps.length,
  aspect = 0,
): Drawing | { readonly message: Message } {
  const laid = layOut(exercise, order);
  if (!laid.ok) return { message: laid.message };
  const { learner } = laid;
  const whole = replay(learner, steps);
  const home = homeOf(learner, whole, shownOn(exercise.shows, learner));
  const targets = new Set(grade.checks.map(({ target }) => target));
  return pictureOf({
    sheet: upTo === steps.length ? whole : replay(learner, steps.slice(0, upTo)),
    givens: learner,
    shows: exercise.shows,
    box: withAspect(home, Math.max(aspect, widthOf(home) / heightOf(home))),
    unit,
    red: upTo === steps.length ? redPencil(grade.checks, targets) : noPencil,
    right: [],
  });
}

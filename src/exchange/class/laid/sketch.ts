import { replay } from '../../../drafting/replay.ts';
import type { Name } from '../../../drafting/step.ts';
import type { Figure } from '../../../garment/figure.ts';
import { judgeDraft } from '../../../grader/judge-draft.ts';
import { layOut } from '../../../grader/lay-out.ts';
import { referenceOn } from '../../../grader/standing.ts';
import type { MarkedWork } from '../../mark-work.ts';
import { footingOf } from './footing.ts';
import { type Stray, strayOf } from './stray.ts';

/** As much of a draft as can be laid over another figure's sheet. */
export interface Sketch {
  /** On whom it was drafted. */
  readonly figure: Figure;
  /** Target to how the answer strays; without those that were not made, have no place on a sheet, or run across the right one. */
  readonly strays: Readonly<Record<Name, Stray>>;
}

/**
 * How every answer of a draft strays from the right one. Right is what the marks go by: the reference with the student's
 * earlier answers pinned, so that an early slip shows once.
 */
export function sketchOf({ exercise, order, handIn, grade }: Omit<MarkedWork, 'ok' | 'remarks'>): Sketch {
  const laid = layOut(exercise, order);
  if (!laid.ok) return { figure: order.figure, strays: {} };
  const { givens, learner } = laid;
  const ruler = { exercise, givens, strictness: grade.strictness };
  const judged = judgeDraft(ruler, replay(learner, handIn.steps), handIn.steps);
  const own = referenceOn(exercise, givens);
  const strays = judged.flatMap(({ target, answer, right, reference }): [Name, Stray][] => {
    if (right === null || answer.found !== 'right-kind') return [];
    const footing = footingOf({ exercise, target: target.name, right, reference, own });
    const stray = footing && strayOf(answer.shape, footing);
    return stray ? [[target.name, stray]] : [];
  });
  return { figure: order.figure, strays: Object.fromEntries(strays) };
}

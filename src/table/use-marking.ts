import { useState } from 'preact/hooks';
import type { Name, Step } from '../drafting/step.ts';
import type { Feedback } from '../exchange/set.ts';
import type { Exercise } from '../grader/exercise.ts';
import { gradeDraft } from '../grader/grade.ts';
import type { Order } from '../grader/order.ts';
import type { Grade } from '../grader/result.ts';
import type { Setting } from './model/setting.ts';
import { feedbackIn, type SetInHand } from './set-in-hand.ts';
import { keepMarks } from './store/marks.ts';

/** The draft as it was marked. */
export interface Marked {
  readonly grade: Grade;
  readonly steps: readonly Step[];
  readonly setting: Setting;
  /** Whether it was checked just now, and not before the page was left. */
  readonly isNew: boolean;
}

export interface Marking {
  readonly marked: Marked | null;
  /** What of the marks is told. */
  readonly feedback: Feedback;
  /** Whether the learner asked to see where things should be. */
  readonly showsRight: boolean;
  readonly check: (steps: readonly Step[]) => Grade;
  /** Lays the notes of an earlier check under the draft again. It counts for no check: nothing is told that was not. */
  readonly recall: (steps: readonly Step[], order: Order, setting: Setting) => void;
  readonly showRight: (shows: boolean) => void;
  readonly rubOut: () => void;
}

/** What lies on the table to be marked: the order, what it was laid by, and how many steps are drawn for it. */
interface OnTable {
  readonly order: Order;
  readonly setting: Setting;
  readonly drawn: number;
}

/**
 * The red pencil: marks the draft when asked, and keeps its marks until they are rubbed out. They are those of one order:
 * on another they are not shown, nor on a sheet that was cleared. The best marks stay for the contents page; those of a set are for the teacher to give.
 */
export function useMarking(exercise: Exercise, { order, setting, drawn }: OnTable, inSet: SetInHand | null): Marking {
  const [marked, setMarked] = useState<Marked | null>(null);
  const [showsRight, setShowsRight] = useState(false);
  const put = (now: Marked | null): void => {
    setMarked(now);
    setShowsRight(false);
  };
  return {
    marked: marked?.setting === setting && (drawn > 0 || marked.steps.length === 0) ? marked : null,
    feedback: feedbackIn(inSet),
    showsRight,
    check: (steps) => {
      const grade = gradeDraft(exercise, order, steps, setting.strictness);
      if (inSet === null) keepMarks(exercise.id, grade);
      put({ grade, steps, setting, isNew: true });
      return grade;
    },
    recall: (steps, lain, by) =>
      put({ grade: gradeDraft(exercise, lain, steps, by.strictness), steps, setting: by, isNew: false }),
    showRight: setShowsRight,
    rubOut: () => put(null),
  };
}

/** The targets that were answered rightly, or those that were not. */
export function targetsBy({ reports }: Grade, right: 'right' | 'wrong'): readonly Name[] {
  return reports.filter(({ status }) => (status === 'within') === (right === 'right')).map(({ target }) => target);
}

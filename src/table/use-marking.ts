import { useState } from 'preact/hooks';
import type { Name, Step } from '../drafting/step.ts';
import type { Exercise } from '../grader/exercise.ts';
import { gradeDraft } from '../grader/grade.ts';
import type { Order } from '../grader/order.ts';
import type { Grade } from '../grader/result.ts';
import type { Strictness } from '../grader/tolerance.ts';
import { keepMarks } from './store/marks.ts';

/** The draft as it was marked. */
export interface Marked {
  readonly grade: Grade;
  readonly steps: readonly Step[];
  readonly order: Order;
}

export interface Marking {
  readonly marked: Marked | null;
  /** Whether the learner asked to see where things should be. */
  readonly showsRight: boolean;
  readonly check: (steps: readonly Step[]) => Grade;
  readonly showRight: (shows: boolean) => void;
  readonly rubOut: () => void;
}

/** The red pencil: marks the draft when asked, and keeps its marks until they are rubbed out. The best marks stay for the contents page. */
export function useMarking(exercise: Exercise, order: Order, strictness: Strictness): Marking {
  const [marked, setMarked] = useState<Marked | null>(null);
  const [showsRight, setShowsRight] = useState(false);
  const put = (now: Marked | null): void => {
    setMarked(now);
    setShowsRight(false);
  };
  return {
    marked,
    showsRight,
    check: (steps) => {
      const grade = gradeDraft(exercise, order, steps, strictness);
      keepMarks(exercise.id, grade);
      put({ grade, steps, order });
      return grade;
    },
    showRight: setShowsRight,
    rubOut: () => put(null),
  };
}

/** The targets that were answered rightly. */
export function rightTargets(grade: Grade): readonly Name[] {
  return targetsBy(grade, true);
}

/** The targets that were not. */
export function wrongTargets(grade: Grade): readonly Name[] {
  return targetsBy(grade, false);
}

function targetsBy({ reports }: Grade, right: boolean): readonly Name[] {
  return reports.filter(({ status }) => (status === 'within') === right).map(({ target }) => target);
}

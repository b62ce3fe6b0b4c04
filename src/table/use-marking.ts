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
  readonly check: (steps: readonly Step[]) => Marked;
  readonly rubOut: () => void;
}

/** The red pencil: marks the draft when asked, and keeps its marks until they are rubbed out. The best marks stay for the contents page. */
export function useMarking(exercise: Exercise, order: Order, strictness: Strictness): Marking {
  const [marked, setMarked] = useState<Marked | null>(null);
  return {
    marked,
    check: (steps) => {
      const made = { grade: gradeDraft(exercise, order, steps, strictness), steps, order };
      keepMarks(exercise.id, made.grade);
      setMarked(made);
      return made;
    },
    rubOut: () => setMarked(null),
  };
}

/** The targets that were answered rightly, and the rest, as the marker reports them. */
export function rightTargets(grade: Grade): readonly Name[] {
  return grade.reports.filter(({ status }) => status === 'within').map(({ target }) => target);
}

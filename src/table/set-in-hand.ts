import type { Feedback, ProblemSet, SetMark } from '../exchange/set.ts';
import { setOrder } from '../exchange/set-order.ts';
import type { Student } from '../exchange/student.ts';
import type { Exercise } from '../grader/exercise.ts';
import type { About } from './model/about.ts';
import { settingOf, startSetting } from './model/setting.ts';

/** A problem set whose exercise lies on the table, and who does it. */
export interface SetInHand {
  readonly set: ProblemSet;
  readonly mark: SetMark;
  readonly student: Student;
}

/** A draft not begun: on the exercise's own order, or on the one the set deals this student. `seed` decides a sampled figure outside a set. */
export function freshAbout(exercise: Exercise, inSet: SetInHand | null, seed: string): About {
  const setting = inSet
    ? settingOf(setOrder(inSet.set, exercise, inSet.student), inSet.set.strictness, exercise)
    : startSetting(exercise, seed);
  const { student, number } = inSet?.student ?? { student: '', number: '' };
  return { setting, student, number, shown: [], hints: {}, checks: 0, begun: null };
}

/** What a check may tell: everything, outside a set. */
export function feedbackIn(inSet: SetInHand | null): Feedback {
  return inSet?.set.feedback ?? 'place';
}

/** How often a draft that was checked so often may be checked again; null for as often as one likes. */
export function checksLeft(inSet: SetInHand | null, checks: number): number | null {
  const allowed = inSet?.set.checks ?? null;
  return allowed === null ? null : Math.max(0, allowed - checks);
}

import { replay } from '../../src/drafting/replay.ts';
import type { Shape } from '../../src/drafting/shape.ts';
import type { Givens, Sheet } from '../../src/drafting/sheet.ts';
import type { Check, Exercise } from '../../src/grader/exercise.ts';
import { type JudgedCheck, judge } from '../../src/grader/judge.ts';
import type { Subject } from '../../src/grader/measures/reading.ts';
import type { Strictness } from '../../src/grader/tolerance.ts';

/** How a check stands when a sheet is judged; throws where the exercise has no such check. */
export function standingOf(
  exercise: Exercise,
  givens: Givens,
  sheet: Sheet,
  check: Check,
  strictness: Strictness,
): JudgedCheck {
  const target = judge(exercise, givens, sheet, strictness).find((one) => one.target.name === check.target);
  const own = target?.checks.find((one) => one.check === check);
  if (own === undefined) throw new Error(`${exercise.id} does not check the ${check.measure} of ${check.target}`);
  return own;
}

/** A check's subject with the reference's own answer; throws where the reference makes none. */
export function rightSubject(exercise: Exercise, givens: Givens, check: Check): Subject {
  const reference = replay(givens, exercise.reference);
  const right = reference.shapes.get(reference.answers.get(check.target) ?? '');
  if (right === undefined) throw new Error(`the reference of ${exercise.id} does not make its ${check.target}`);
  return { answer: right, right, reference };
}

/** The reference with one target's answer replaced. */
export function withAnswer(exercise: Exercise, givens: Givens, target: string, answer: Shape | null): Sheet {
  if (answer === null) throw new Error(`no way to move the ${target} of ${exercise.id}`);
  return replay(givens, exercise.reference, new Map([[target, answer]]));
}

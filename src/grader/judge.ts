import { evaluate } from '../drafting/expression.ts';
import type { Givens, Sheet } from '../drafting/sheet.ts';
import { type Answer, answerTo } from './answer.ts';
import { type Bounds, boundsOf, offOf, statusOf } from './bounds.ts';
import type { Check, Exercise, Target } from './exercise.ts';
import type { Reading } from './measures/reading.ts';
import { takeReading } from './measures/take.ts';
import type { Status } from './result.ts';
import { groundUnder, type Standing } from './standing.ts';
import { type Strictness, toleranceOf } from './tolerance.ts';
import { unitOf } from './unit.ts';

/** One check as it stands: the reading, or why there is none. */
export interface JudgedCheck {
  readonly check: Check;
  readonly reading: Reading | null;
  readonly bounds: Bounds;
  readonly off: number | null;
  readonly tolerance: number;
  readonly status: Status;
}

/** One target judged from where the learner really stood. */
export interface JudgedTarget extends Standing {
  readonly target: Target;
  readonly answer: Answer;
  readonly checks: readonly JudgedCheck[];
}

/** Judges every target of a sheet in order: the reference is replayed with the learner's earlier targets pinned in place of its own. */
export function judge(
  exercise: Exercise,
  givens: Givens,
  student: Sheet,
  strictness: Strictness,
): readonly JudgedTarget[] {
  const ground = groundUnder(exercise, givens);
  return exercise.targets.map((target) => {
    const answer = answerTo(target, student);
    const standing = ground.standingFor(target.name);
    const checks = exercise.checks
      .filter((check) => check.target === target.name)
      .map((check) => judgeCheck(check, answer, standing, givens, strictness));
    if (answer.found === 'right-kind') ground.pin(target.name, answer.shape);
    return { target, answer, checks, ...standing };
  });
}

function judgeCheck(
  check: Check,
  answer: Answer,
  standing: Standing,
  givens: Givens,
  strictness: Strictness,
): JudgedCheck {
  const bounds = boundsOf(check, (text) => lengthFrom(text, givens));
  const reading =
    answer.found === 'right-kind' && standing.right !== null
      ? takeReading(check, { answer: answer.shape, right: standing.right, reference: standing.reference })
      : null;
  const tolerance = toleranceOf(check.tolerance, strictness, unitOf(check.measure));
  const off = reading === null ? null : offOf(reading, bounds);
  // An answer of the right kind that cannot be read is as far off as can be, not absent.
  const status = off === null ? (answer.found === 'right-kind' ? 'beyond' : 'missing') : statusOf(off, tolerance);
  return { check, reading, bounds, off, tolerance, status };
}

function lengthFrom(text: string, givens: Givens): number | null {
  const result = evaluate(text, givens.measures);
  return result.ok ? result.quantity.value : null;
}

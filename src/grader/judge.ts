import { evaluate } from '../drafting/expression.ts';
import { replay } from '../drafting/replay.ts';
import type { Shape } from '../drafting/shape.ts';
import type { Givens, Pins, Sheet } from '../drafting/sheet.ts';
import type { Name } from '../drafting/step.ts';
import { type Answer, answerTo } from './answer.ts';
import { type Bounds, boundsOf, offOf, statusOf } from './bounds.ts';
import type { Check, Exercise, Target } from './exercise.ts';
import { shapeNamed } from './measures/lookup.ts';
import type { Reading } from './measures/reading.ts';
import { takeReading } from './measures/take.ts';
import type { Status } from './result.ts';
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
export interface JudgedTarget {
  readonly target: Target;
  readonly answer: Answer;
  /** The right shape, given the learner's earlier targets; null when even the reference cannot make it. */
  readonly right: Shape | null;
  /** The reference's sheet with the learner's earlier targets pinned. */
  readonly reference: Sheet;
  /** The earlier targets that were pinned. */
  readonly pins: Pins;
  readonly checks: readonly JudgedCheck[];
}

/** Judges every target of a sheet in order: the reference is replayed with the learner's earlier targets pinned in place of its own. */
export function judge(
  exercise: Exercise,
  givens: Givens,
  student: Sheet,
  strictness: Strictness,
): readonly JudgedTarget[] {
  const pins = new Map<Name, Shape>();
  return exercise.targets.map((target) => {
    const answer = answerTo(target, student);
    const standing = standingFor(exercise, givens, target.name, new Map(pins));
    const checks = exercise.checks
      .filter((check) => check.target === target.name)
      .map((check) => judgeCheck(check, answer, standing, givens, strictness));
    if (answer.found === 'right-kind') pins.set(target.name, answer.shape);
    return { target, answer, checks, ...standing };
  });
}

interface Standing {
  readonly right: Shape | null;
  readonly reference: Sheet;
  readonly pins: Pins;
}

/** The reference from where the learner stood; from its own ground where the learner's earlier answers leave it nothing to stand on. */
function standingFor(exercise: Exercise, givens: Givens, target: Name, pins: Pins): Standing {
  const reference = replay(givens, exercise.reference, pins);
  const right = shapeNamed(reference, target);
  if (right !== null || pins.size === 0) return { right, reference, pins };
  return standingFor(exercise, givens, target, new Map());
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

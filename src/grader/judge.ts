import { evaluate } from '../drafting/expression.ts';
import type { Givens, Sheet } from '../drafting/sheet.ts';
import type { Name } from '../drafting/step.ts';
import { type Answer, answerTo } from './answer.ts';
import { holdsAtAGlance } from './at-a-glance.ts';
import { type Bounds, boundsOf, holding, offOf, shareOf, statusOf } from './bounds.ts';
import { checksOf } from './checks-of.ts';
import type { Check, Exercise, Target } from './exercise.ts';
import type { Reading } from './measures/reading.ts';
import { takeReading } from './measures/take.ts';
import type { Status } from './result.ts';
import { holdsOfItself } from './same-as-right.ts';
import { type Footing, type Ground, groundUnder, type Standing } from './standing.ts';
import { type MeasureUnit, type Strictness, toleranceOf } from './tolerance.ts';
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
  /** Where it was judged again, so that a slip made before it is charged once: how. Null where it was judged as all are. */
  readonly again: Again | null;
}

/**
 * How a target is judged again: from what an earlier target that is off was made from too, or apart from earlier targets that
 * are off, as if those had been right.
 */
export type Again = { readonly by: 'shared'; readonly slip: Name } | { readonly by: 'apart' };

/** Judges every target of a sheet in order: the reference is replayed with the learner's earlier targets pinned in place of its own. */
export function judge(
  exercise: Exercise,
  givens: Givens,
  student: Sheet,
  strictness: Strictness,
): readonly JudgedTarget[] {
  const bench: Bench = { exercise, givens, strictness, ground: groundUnder(exercise, givens) };
  return exercise.targets.map((target) => {
    const judged = judgedOn(bench, target, student);
    if (judged.answer.found === 'right-kind') bench.ground.pin(target.name, judged.answer.shape);
    return judged;
  });
}

/** Judges one target as `judge` does, and takes no more readings than it needs; null where the exercise has no such target. */
export function judgeTarget(
  exercise: Exercise,
  givens: Givens,
  student: Sheet,
  strictness: Strictness,
  name: Name,
): JudgedTarget | null {
  const ground = groundUnder(exercise, givens);
  for (const target of exercise.targets) {
    if (target.name === name) return judgedOn({ exercise, givens, strictness, ground }, target, student);
    const answer = answerTo(target, student);
    ground.footingFor(target.name);
    if (answer.found === 'right-kind') ground.pin(target.name, answer.shape);
  }
  return null;
}

/** What a target is judged with. */
interface Bench extends Ruler {
  readonly ground: Ground;
}

function judgedOn({ ground, ...ruler }: Bench, target: Target, student: Sheet): JudgedTarget {
  return judgeAnswer(ruler, target, answerTo(target, student), ground.standingFor(target.name));
}

/** What an answer is held against, whoever's it is and wherever they stood. */
export interface Ruler {
  readonly exercise: Exercise;
  readonly givens: Givens;
  readonly strictness: Strictness;
}

/** Judges an answer as one to this target, from this standing. */
export function judgeAnswer(
  ruler: Ruler,
  target: Target,
  answer: Answer,
  standing: Standing,
  again: Again | null = null,
): JudgedTarget {
  const checks = checksOf(ruler.exercise, target.name).map((check) => judgeCheck(check, answer, standing, ruler));
  return { target, answer, checks, again, ...standing };
}

/** Whether an answer is right: as `judgeAnswer` finds, but no further than the first check that does not hold. */
export function isRightAnswer(ruler: Ruler, target: Target, answer: Answer, footing: Footing): boolean {
  const itself = answer.found === 'right-kind' && answer.shape === footing.right ? answer.shape : null;
  return checksOf(ruler.exercise, target.name).every(
    (check) =>
      (itself !== null && holdsOfItself(check, itself, footing.reference)) || holds(check, answer, footing, ruler),
  );
}

/** Whether one check holds: as `judgeCheck` finds. */
function holds(check: Check, answer: Answer, footing: Footing, ruler: Ruler): boolean {
  if (answer.found !== 'right-kind' || footing.right === null) return false;
  const stated = boundsFor(check, ruler);
  const tolerance = toleranceOf(check.tolerance, ruler.strictness, unitOf(check.measure));
  if (holdsAtAGlance(check, answer.shape, footing.right, stated, tolerance)) return true;
  const reading = takeReading(check, { answer: answer.shape, right: footing.right, reference: footing.reference });
  if (reading === null) return false;
  return statusOf(offOf(reading, holding(stated, reading.expected)), tolerance) === 'within';
}

/** Whether every check of a target holds. */
export function isRight({ checks }: JudgedTarget): boolean {
  return checks.every(({ status }) => status === 'within');
}

/** The marks that a target earns. */
export function marksOf({ checks }: JudgedTarget): number {
  return checks.reduce((sum, { check, status }) => sum + check.marks * shareOf(status), 0);
}

function judgeCheck(check: Check, answer: Answer, footing: Footing, ruler: Ruler): JudgedCheck {
  const stated = boundsFor(check, ruler);
  const reading =
    answer.found === 'right-kind' && footing.right !== null
      ? takeReading(check, { answer: answer.shape, right: footing.right, reference: footing.reference })
      : null;
  const tolerance = toleranceOf(check.tolerance, ruler.strictness, unitOf(check.measure));
  const bounds = reading === null ? stated : holding(stated, reading.expected);
  const off = reading === null ? null : offOf(reading, bounds);
  // An answer of the right kind that cannot be read is as far off as can be, not absent.
  const status = off === null ? (answer.found === 'right-kind' ? 'beyond' : 'missing') : statusOf(off, tolerance);
  return { check, reading, bounds, off, tolerance, status };
}

function boundsFor(check: Check, { givens }: Ruler): Bounds {
  return boundsOf(check, (text) => amountFrom(text, givens, unitOf(check.measure)));
}

/** What an expression comes to, in the unit of a reading. */
function amountFrom(text: string, givens: Givens, unit: MeasureUnit): number | null {
  const result = evaluate(text, givens.measures);
  if (!result.ok) return null;
  const { value } = result.quantity;
  return unit === 'mm' ? value : (value * 180) / Math.PI;
}

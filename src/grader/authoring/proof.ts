import { replay } from '../../drafting/replay.ts';
import type { Givens } from '../../drafting/sheet.ts';
import type { Step } from '../../drafting/step.ts';
import { people } from '../../garment/people.ts';
import { message } from '../../words/message.ts';
import type { Exercise, Misreading } from '../exercise.ts';
import { type JudgedTarget, judgeTarget } from '../judge.ts';
import { layOut } from '../lay-out.ts';
import { misread } from '../misreading.ts';
import type { Order } from '../order.ts';
import { otherOrders } from '../other-orders.ts';
import type { Fault, Place } from '../reading/fault.ts';
import { givenGroundFaults } from './given-faults.ts';
import { problemFault } from './reference-faults.ts';

/** How many other orders a misreading is tried on, besides the invented people's. */
const TRIED = 12;

/**
 * Replays the reference and every misreading on the invented people and on other orders: the reference has to hold on
 * all of them, and a misreading has to come out wrong on all of them, at the most lenient strictness.
 */
export function proofFaults(exercise: Exercise, order: Order): readonly Fault[] {
  const orders = [...people.map(({ figure }) => ({ ...order, figure })), ...otherOrders(exercise, order, TRIED)];
  const ungiven = givenGroundFaults(exercise, orders);
  if (ungiven.length > 0) return ungiven;
  const tables = orders.flatMap((one) => {
    const dealt = layOut(exercise, one);
    return dealt.ok ? [dealt.givens] : [];
  });
  const broken = tables.flatMap((givens) => replay(givens, exercise.reference).problems).slice(0, 1);
  if (broken.length > 0) return broken.map((problem) => problemFault(problem, ['reference']));
  return exercise.misreadings.flatMap((misreading, index) => {
    const fault = firstFault(exercise, misreading, tables);
    return fault === null ? [] : [{ ...fault, at: ['misreadings', index, ...fault.at] }];
  });
}

/** The first order's on which the misreading is no use; its place is within the misreading. */
function firstFault(exercise: Exercise, misreading: Misreading, tables: readonly Givens[]): Fault | null {
  for (const givens of tables) {
    const fault = misreadingFault(exercise, misreading, givens);
    if (fault !== null) return fault;
  }
  return null;
}

function misreadingFault(exercise: Exercise, misreading: Misreading, givens: Givens): Fault | null {
  const steps = misread(exercise.reference, misreading);
  const sheet = replay(givens, steps);
  const { target } = misreading;
  const judged = judgeTarget(exercise, givens, sheet, 'learner', target);
  if (judged === null || judged.answer.found !== 'right-kind') {
    const [problem] = sheet.problems;
    const why = problem?.message ?? message('author.no-why');
    const at = problem === undefined ? [] : placeOf(steps[problem.step], problem.field, misreading);
    return { at, message: message('author.misreading-empty', { target, why: { sentence: why } }) };
  }
  if (judged.checks.some(({ status }) => status !== 'within')) return null;
  return { at: [], message: message('author.misreading-right', { target, ...worstOf(judged) }) };
}

/** Where a step of the wrong way stands in the misreading; empty for a step of the reference. */
function placeOf(step: Step | undefined, field: string | null, { first = [], instead }: Misreading): Place {
  const lists = { first, instead } as const;
  for (const list of ['first', 'instead'] as const) {
    const index = lists[list].findIndex((one) => one.name === step?.name);
    if (index >= 0) return field === null ? [list, index] : [list, index, field];
  }
  return [];
}

/** The check that comes nearest to being off. */
function worstOf({ checks }: JudgedTarget) {
  const share = ({ off, tolerance }: (typeof checks)[number]): number => (off ?? 0) / tolerance;
  const worst = checks.reduce((one, other) => (share(other) > share(one) ? other : one));
  const unit = worst.reading?.unit ?? 'mm';
  const shown = (value: number) => (unit === 'mm' ? { mm: value } : { radians: (value * Math.PI) / 180 });
  return { measure: worst.check.measure, off: shown(worst.off ?? 0), tolerance: shown(worst.tolerance) };
}

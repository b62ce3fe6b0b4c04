import { replay } from '../../drafting/replay.ts';
import type { Givens } from '../../drafting/sheet.ts';
import { people } from '../../garment/people.ts';
import { type Message, message } from '../../words/message.ts';
import type { Exercise, Misreading } from '../exercise.ts';
import { type JudgedTarget, judgeTarget } from '../judge.ts';
import { layOut } from '../lay-out.ts';
import { misread } from '../misreading.ts';
import type { Order } from '../order.ts';
import { otherOrders } from '../other-orders.ts';
import type { Fault } from '../reading/fault.ts';
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
    return fault === null ? [] : [{ at: ['misreadings', index], message: fault }];
  });
}

function firstFault(exercise: Exercise, misreading: Misreading, tables: readonly Givens[]): Message | null {
  for (const givens of tables) {
    const fault = misreadingFault(exercise, misreading, givens);
    if (fault !== null) return fault;
  }
  return null;
}

function misreadingFault(exercise: Exercise, misreading: Misreading, givens: Givens): Message | null {
  const steps = misread(exercise.reference, misreading);
  const sheet = replay(givens, steps);
  const { target } = misreading;
  const judged = judgeTarget(exercise, givens, sheet, 'learner', target);
  if (judged === null || judged.answer.found !== 'right-kind') {
    const why = sheet.problems[0]?.message ?? message('author.no-why');
    return message('author.misreading-empty', { target, why: { said: why } });
  }
  if (judged.checks.some(({ status }) => status !== 'within')) return null;
  return message('author.misreading-right', { target, ...worstOf(judged) });
}

/** The check that comes nearest to being off. */
function worstOf({ checks }: JudgedTarget) {
  const share = ({ off, tolerance }: (typeof checks)[number]): number => (off ?? 0) / tolerance;
  const worst = checks.reduce((one, other) => (share(other) > share(one) ? other : one));
  const unit = worst.reading?.unit ?? 'mm';
  const shown = (value: number) => (unit === 'mm' ? { mm: value } : { radians: (value * Math.PI) / 180 });
  return { measure: worst.check.measure, off: shown(worst.off ?? 0), tolerance: shown(worst.tolerance) };
}

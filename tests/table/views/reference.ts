import { loadExercise } from '../../../src/cli/exercises.ts';
import { replay } from '../../../src/drafting/replay.ts';
import type { Sheet } from '../../../src/drafting/sheet.ts';
import type { Step } from '../../../src/drafting/step.ts';
import { usualWorn, type WornPlan } from '../../../src/garment/collar/worn-plan.ts';
import { layOut } from '../../../src/grader/lay-out.ts';
import { orderFor } from '../../../src/grader/order-for.ts';

/** An exercise's reference on a figure, some of its steps changed, and what turns over on it. */
export function referenceOf(
  id: string,
  change: (step: Step) => Step = (step) => step,
  house: Readonly<Record<string, string>> = {},
): { readonly sheet: Sheet; readonly plan: WornPlan } {
  const exercise = loadExercise(id);
  const order = orderFor(exercise, 'first');
  const laid = layOut(exercise, { ...order, house: { ...order.house, ...house } });
  if (!laid.ok) throw new Error(`The order of ${id} cannot be laid.`);
  return { sheet: replay(laid.givens, exercise.reference.map(change)), plan: exercise.worn ?? usualWorn };
}

/** The collar swung by a part of what its reference says; the wrong way where that is negative. */
export function swungBy(part: number): (step: Step) => Step {
  return (step) =>
    step.verb === 'swing' && step.name === 'back-line' && 'by' in step
      ? { ...step, by: `swing-by * ${Math.abs(part)}`, turn: part < 0 ? 'anticlockwise' : 'clockwise' }
      : step;
}

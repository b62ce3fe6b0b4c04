import { describe, expect, test } from 'vitest';
import { ancestorsOf } from '../../src/drafting/dependencies.ts';
import { renamed } from '../../src/drafting/references.ts';
import type { Name, Step } from '../../src/drafting/step.ts';
import { houseRules } from '../../src/garment/house-rules.ts';
import type { Exercise } from '../../src/grader/exercise.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { layOut } from '../../src/grader/lay-out.ts';
import type { Order } from '../../src/grader/order.ts';
import { orderFor } from '../../src/grader/order-for.ts';
import { otherOrders } from '../../src/grader/other-orders.ts';
import { toleranceOf } from '../../src/grader/tolerance.ts';
import { appliedSteps } from './applied-steps.ts';
import { exercises } from './tables.ts';

/** What a measure comes to on an order, mm. */
function valueOn(exercise: Exercise, order: Order, name: Name): number {
  const dealt = layOut(exercise, order);
  return (dealt.ok && dealt.givens.measures.get(name)?.value) || 0;
}

/** The names an exercise's reference may lay off: the style's, and what the house rules make of them. */
function namesOf(exercise: Exercise): readonly Name[] {
  return [...Object.keys(exercise.style), ...houseRules.map(({ makes }) => makes)];
}

/** Whether a house rule makes the one of the other and changes nothing. */
function isSame(exercise: Exercise, order: Order, one: Name, other: Name): boolean {
  return [order, ...otherOrders(exercise, order)].every(
    (each) => valueOn(exercise, each, one) === valueOn(exercise, each, other),
  );
}

/** The reference with one name put for another; null where no target hangs on it. */
function misnamed({ reference }: Exercise, from: Name, to: Name): readonly Step[] | null {
  const needed = new Set(
    reference.filter(({ answers }) => answers !== undefined).flatMap(({ name }) => [name, ...steps(reference, name)]),
  );
  const swapped = reference.map((step) => renamed(step as Step & Record<string, unknown>, from, to) as Step);
  const isSwapped = (step: Step, index: number): boolean => JSON.stringify(step) !== JSON.stringify(reference[index]);
  return swapped.some((step, index) => isSwapped(step, index) && needed.has(step.name)) ? swapped : null;
}

const steps = (reference: readonly Step[], name: Name): readonly Name[] =>
  ancestorsOf(reference, name).map((index) => reference[index]?.name ?? '');

describe.each(exercises.map((exercise) => [exercise.id, exercise] as const))('%s', (_id, exercise) => {
  const order = orderFor(exercise, 'wrong name');
  const style = Object.keys(exercise.style);
  const tolerance = toleranceOf('mark', 'learner', 'mm');

  test.skipIf(style.length < 2)(
    'any two of its measures part by more than a learner’s tolerance on some other order',
    () => {
      const others = otherOrders(exercise, order);
      const together = style.flatMap((one, i) => style.slice(i + 1).map((other) => [one, other] as const));
      const alike = together.filter(([one, other]) =>
        others.every((each) => Math.abs(valueOn(exercise, each, one) - valueOn(exercise, each, other)) <= tolerance),
      );
      expect(alike).toEqual([]);
    },
  );

  test('one measure’s name in place of another’s does not both score full marks and hold', () => {
    const passed = namesOf(exercise).flatMap((from) =>
      style
        .filter((to) => to !== from && !isSame(exercise, order, from, to))
        .filter((to) => {
          const draft = misnamed(exercise, from, to);
          if (draft === null) return false;
          const { marks, of, otherFigures } = gradeDraft(
            exercise,
            order,
            appliedSteps(draft, exercise, order),
            'workroom',
          );
          return marks === of && otherFigures.held === otherFigures.tried;
        })
        .map((to) => `${to} for ${from}`),
    );
    expect(passed).toEqual([]);
  });
});

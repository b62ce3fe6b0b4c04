import { describe, expect, test } from 'vitest';
import type { Step } from '../../src/drafting/step.ts';
import type { Figure } from '../../src/garment/figure.ts';
import type { Exercise } from '../../src/grader/exercise.ts';
import { costsOf, judgedOn, rightDraft, slipsIn } from './one-slip.ts';
import { exercises, invented, sampled } from './tables.ts';

const [figure = never(), ...others] = [...invented.slice(0, 1), ...sampled.slice(0, 2)];

/** A gorge laid off upward doubles the neck seam back on itself: the turn is in the edge, whatever it was drawn from. */
const DOUBLED_BACK = /^gorge-corner goes up: collar-neck-edge 2\//;

/** Every slip that costs more than so large a share of a target's marks besides those of the first one, with what it costs there. */
function chargedTwice(exercise: Exercise, on: Figure, right: readonly Step[], spare = 0): readonly string[] {
  const twice = slipsIn(right).flatMap(({ step, what, steps }) => {
    const [, ...more] = costsOf(judgedOn(exercise, on, steps) ?? []);
    return more
      .filter(({ lost, of }) => lost > spare * of)
      .map(({ target, lost, of }) => `${step} ${what}: ${target} ${lost}/${of}`);
  });
  return twice.filter((one) => !DOUBLED_BACK.test(one));
}

/**
 * The neck edge as a learner draws it: cut from the curve that the centre back was squared to. The reference draws that curve
 * anew from whatever centre back there is.
 */
function asDrawn(steps: readonly Step[]): readonly Step[] {
  return steps.map((step): Step => {
    if (step.verb !== 'seam' || step.name !== 'collar-neck-edge') return step;
    const [, ...rest] = step.run;
    return { ...step, run: [{ along: 'back-edge', from: 'collar-back', to: 'neck-point' }, ...rest] };
  });
}

const drawnAnew = exercises.filter(({ reference }) => reference.some(({ name }) => name === 'true-back'));

describe('one slip, with everything after it rightly drawn from there, costs the marks of one target', () => {
  test.each(exercises.map((exercise) => [exercise.id, exercise] as const))('in %s', (_, exercise) => {
    for (const on of [figure, ...others]) expect(chargedTwice(exercise, on, rightDraft(exercise, on))).toEqual([]);
  });

  test.each(drawnAnew.map((exercise) => [exercise.id, exercise] as const))(
    'in %s, where one curve serves for the centre back and the neck edge, but for a fifth where the edge is bent out of all shape',
    (_, exercise) => {
      const right = asDrawn(rightDraft(exercise, figure));
      expect(costsOf(judgedOn(exercise, figure, right) ?? never())).toEqual([]);
      expect(chargedTwice(exercise, figure, right, 1 / 5)).toEqual([]);
    },
  );

  test('in a collar whose gorge was ruled from the neck point, though the gorge itself is not asked for', () => {
    const exercise = exercises.find(({ id }) => id === 'collar-single') ?? never();
    const steps = rightDraft(exercise, figure).map((step) =>
      step.name === 'gorge' ? ({ ...step, from: 'neck-point' } as Step) : step,
    );
    expect(costsOf(judgedOn(exercise, figure, steps) ?? never())).toEqual([{ target: 'lapel-point', lost: 2, of: 4 }]);
  });
});

describe('an answer that lies where it should, though one before it does not', () => {
  test('earns its marks', () => {
    const exercise = exercises.find(({ id }) => id === 'break-point') ?? never();
    const right = rightDraft(exercise, figure);
    const steps = right.flatMap((step): Step[] =>
      step.name === 'overlap-edge'
        ? [
            { ...step, distance: 'overlap + 2 cm' } as Step,
            { ...step, name: 'right-edge', answers: undefined } as never,
          ]
        : [step.name === 'break-point' ? ({ ...step, one: 'right-edge' } as Step) : step],
    );
    const told = steps.map((step) =>
      Object.fromEntries(Object.entries(step).filter(([, value]) => value !== undefined)),
    );
    const lost = costsOf(judgedOn(exercise, figure, told as unknown as readonly Step[]) ?? never());
    expect(lost.map(({ target }) => target)).toEqual(['overlap-edge']);
  });
});

function never(): never {
  throw new Error('not there');
}

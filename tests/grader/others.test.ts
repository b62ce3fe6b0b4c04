import { describe, expect, test } from 'vitest';
import { evaluate, hasNumberOnly } from '../../src/drafting/expression.ts';
import { replay } from '../../src/drafting/replay.ts';
import type { Givens } from '../../src/drafting/sheet.ts';
import type { Step } from '../../src/drafting/step.ts';
import { people } from '../../src/garment/people.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { stepFields } from '../../src/grader/step-fields.ts';
import { say } from '../../src/words/say.ts';
import { appliedSteps } from './applied-steps.ts';
import { exercises, orderOn, tableFor } from './tables.ts';

/** The steps with every expression typed as the number it comes to on this table, to a hundredth of a mm; lengths that were taped are typed too. */
function typed(steps: readonly Step[], givens: Givens): readonly Step[] {
  const { measures } = replay(givens, steps);
  return steps.map((step) => {
    const numbers = stepFields(step).flatMap(({ field, text }) => {
      const value = evaluate(text, measures);
      return value.ok && value.quantity.dimension === 'length'
        ? [[field, `${value.quantity.value.toFixed(2)} mm`]]
        : [];
    });
    return { ...step, ...Object.fromEntries(numbers) } as Step;
  });
}

/** The steps with every point marked by eye where it lies on this table. */
function byEye(steps: readonly Step[], givens: Givens): readonly Step[] {
  const { shapes } = replay(givens, steps);
  return steps.map((step) => {
    const shape = shapes.get(step.name);
    if (shape?.kind !== 'point') return step;
    const { name, answers } = step;
    const pencil = { verb: 'pencil' as const, name, at: [shape.point.x, shape.point.y] as const };
    return answers === undefined ? pencil : { ...pencil, answers };
  });
}

const reader = { language: 'en', unit: 'cm' } as const;

describe.each(exercises.map((exercise) => [exercise.id, exercise] as const))('%s', (_id, exercise) => {
  const [, long, small, sloping] = people.map(({ figure }) => orderOn(exercise, figure));
  if (long === undefined || small === undefined || sloping === undefined) throw new Error('too few people');

  test('a draft made with names and squares holds on other figures', () => {
    const grade = gradeDraft(exercise, long, appliedSteps(exercise.reference, exercise, long), 'workroom');
    expect(grade.marks).toBe(grade.of);
    expect(grade.otherFigures).toEqual({ tried: 6, held: 6, letGo: [] });
  });

  const laysOffByName = exercise.reference.some((step) => stepFields(step).some(({ text }) => !hasNumberOnly(text)));

  // Where nothing is laid off by name, as where a lapel is only folded over, there is no name to type a number for.
  test.skipIf(!laysOffByName)(
    'the same draft with typed numbers scores full here, lets go on other figures, and the step is named',
    () => {
      const steps = typed(exercise.reference, tableFor(exercise, small));
      const grade = gradeDraft(exercise, small, steps, 'workroom');
      expect(grade.marks).toBe(grade.of);
      expect(grade.otherFigures.held).toBeLessThan(grade.otherFigures.tried);
      for (const { step, message } of grade.otherFigures.letGo) {
        expect(stepFields(steps[step] as Step).some(({ text }) => text.endsWith(' mm'))).toBe(true);
        expect(say(message, reader)).toContain(`step ${step + 1}`);
      }
      expect(grade.otherFigures.letGo.length).toBeGreaterThan(0);
    },
  );

  test('the same draft with its marks made by eye lets go where a target hangs on a mark, and the mark is named', () => {
    const steps = byEye(appliedSteps(exercise.reference, exercise, sloping), tableFor(exercise, sloping));
    const grade = gradeDraft(exercise, sloping, steps, 'workroom');
    expect(grade.marks).toBe(grade.of);
    const marked = exercise.targets.filter(({ makes }) => makes === 'point').map(({ name }) => name);
    const letGo = new Map(grade.otherFigures.letGo.map((one) => [one.target, steps[one.step]?.verb]));
    for (const target of marked) expect(letGo.get(target)).toBe('pencil');
  });
});

import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { Step } from '../../src/drafting/step.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { orderFor } from '../../src/grader/order-for.ts';
import { say } from '../../src/words/say.ts';

const roll = loadExercise('roll-line');
const reader = { language: 'en', unit: 'cm' } as const;

function without(target: string, steps = roll.reference): readonly Step[] {
  return steps.map((step) => {
    if (step.answers !== target) return step;
    const { answers: _, ...rest } = step;
    return rest as Step;
  });
}

function saidOf(target: string, steps: readonly Step[]): string {
  const { reports } = gradeDraft(roll, orderFor(roll, 'Ilse'), steps, 'workroom');
  const report = reports.find((one) => one.target === target);
  return `${report?.status}: ${report?.sentences.map((sentence) => say(sentence, reader)).join(' ')}`;
}

describe('an answer that is drawn and not pointed out', () => {
  test('earns nothing, and is told as what it is: nothing has to be drawn again', () => {
    expect(saidOf('overlap-edge', without('overlap-edge'))).toBe(
      'missing: Step 1 makes a right overlap edge, but is not pointed out as it. Say of step 1 that it is your overlap edge; nothing need be drawn again.',
    );
    expect(saidOf('roll-line', without('roll-line'))).toContain('Step 5 makes a right roll line');
  });

  test('is none where it is not right, nor where it answers something else', () => {
    const wide = roll.reference.map((step) =>
      step.name === 'overlap-edge' ? ({ ...step, distance: 'overlap + 2 cm' } as Step) : step,
    );
    expect(saidOf('overlap-edge', without('overlap-edge', wide))).toContain('Nothing on the sheet is pointed out');
    const taken = roll.reference.map((step) =>
      step.answers === 'overlap-edge' ? ({ ...step, answers: 'roll-line' } as Step) : step,
    );
    expect(saidOf('overlap-edge', taken)).toContain('Nothing on the sheet is pointed out');
  });

  test('is judged from where the student stood', () => {
    const high = roll.reference.map((step) =>
      step.name === 'break-level' ? ({ ...step, distance: 'break-rise + 2 cm' } as Step) : step,
    );
    expect(saidOf('roll-line', without('roll-line', high))).toContain('Step 5 makes a right roll line');
  });
});

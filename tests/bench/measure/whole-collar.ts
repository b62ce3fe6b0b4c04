import { loadExercise } from '../../../src/cli/exercises.ts';
import type { HalfStep } from '../../../src/drafting/form.ts';
import { renamed } from '../../../src/drafting/references.ts';
import type { Step } from '../../../src/drafting/step.ts';
import { handInJson } from '../../../src/exchange/write-hand-in.ts';
import { misread } from '../../../src/grader/misreading.ts';

/** The exercise whose drafts are whole collars. */
export const wholeCollar = loadExercise('collar-single');

/** The line on which a whole collar is handed in, on a figure of its own for every seed. */
export function collarLine(seed: string, steps: readonly Step[]): string {
  return JSON.stringify(
    handInJson({
      student: `Student ${seed}`,
      number: seed,
      set: null,
      exercise: wholeCollar.id,
      order: { figure: { sampled: 'anyone', seed }, style: {}, house: {} },
      strictness: 'workroom',
      unit: 'cm',
      steps,
      shown: [],
      hints: {},
      checks: 1,
      begun: null,
      saved: null,
    }),
  );
}

/** A draft with a misreading, another one for each number. */
export function misreadSteps(number: number): readonly Step[] {
  const misreading = wholeCollar.misreadings[number % wholeCollar.misreadings.length];
  if (misreading === undefined) throw new Error('The whole collar has no misreading.');
  return misread(wholeCollar.reference, misreading);
}

/** The same draft with the first line laid off a little further, by as much as no other number has: whatever hangs on it was never drawn before. */
export function drawnOtherwise(steps: readonly Step[], number: number): readonly Step[] {
  const first = steps.find((step) => 'distance' in step);
  return steps.map((step) =>
    step === first && 'distance' in step ? { ...step, distance: `${step.distance} + ${(number + 1) / 1000} mm` } : step,
  );
}

/** The same draft with everything it makes called by names that no other draft has. */
export function inOwnWords(steps: readonly Step[], seed: string): readonly Step[] {
  return steps.reduce<readonly Step[]>((all, { name }) => {
    const own = `${name}-${seed}`;
    return all.map((step) => {
      const written = renamed(step as unknown as HalfStep, name, own);
      return (step.name === name ? { ...written, name: own } : written) as unknown as Step;
    });
  }, steps);
}

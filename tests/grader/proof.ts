import { replay } from '../../src/drafting/replay.ts';
import type { Step } from '../../src/drafting/step.ts';
import type { Figure } from '../../src/garment/figure.ts';
import type { Exercise, Misreading } from '../../src/grader/exercise.ts';
import { judge, judgeTarget } from '../../src/grader/judge.ts';
import { misread, misreadingOf } from '../../src/grader/misreading.ts';
import type { Strictness } from '../../src/grader/tolerance.ts';
import { orderOn, tableFor } from './tables.ts';

/** What of the reference is not right on a figure: nothing, if all is well. */
export function faultsOn(exercise: Exercise, figure: Figure, house: Exercise['house']): readonly string[] {
  const givens = tableFor(exercise, orderOn(exercise, figure, house));
  const sheet = replay(givens, exercise.reference);
  const judged = judge(exercise, givens, sheet, 'sample-room');
  return [
    ...sheet.problems.map(({ name }) => `${name} cannot be carried out`),
    ...judged.flatMap(({ target, checks }) =>
      checks.filter(({ off }) => off === null || off > 1e-6).map(({ check }) => `${target.name} ${check.measure}`),
    ),
  ];
}

/** The misreadings of an exercise that are not named on a figure. Under another house rule than the exercise's own, one may happen to be right. */
export function unnamedOn(
  exercise: Exercise,
  figure: Figure,
  house: Exercise['house'],
  grades: readonly Strictness[],
): readonly string[] {
  const givens = tableFor(exercise, orderOn(exercise, figure, house));
  return exercise.misreadings.flatMap((misreading) => {
    const student = replay(givens, misreadSteps(exercise, misreading));
    return grades.flatMap((strictness) => {
      const judged = judgeTarget(exercise, givens, student, strictness, misreading.target);
      if (judged === null) return [`${misreading.id} has no target`];
      if (house !== exercise.house && judged.checks.every(({ status }) => status === 'within')) return [];
      const named = misreadingOf(exercise, givens, judged);
      return named?.id === misreading.id ? [] : [`${misreading.id} (${strictness}) named ${named?.id ?? 'nothing'}`];
    });
  });
}

const known = new WeakMap<Misreading, readonly Step[]>();

/** The draft of somebody who goes this wrong way, as far as it is looked at: the same steps for every figure, which are made ready once. */
function misreadSteps({ reference }: Exercise, misreading: Misreading): readonly Step[] {
  const steps = known.get(misreading) ?? upTo(misreading.target, misread(reference, misreading));
  known.set(misreading, steps);
  return steps;
}

/** A draft as far as the step that answers a target: what comes after it is not looked at when the target is judged. */
function upTo(target: string, steps: readonly Step[]): readonly Step[] {
  return steps.slice(0, steps.findLastIndex(({ answers }) => answers === target) + 1);
}

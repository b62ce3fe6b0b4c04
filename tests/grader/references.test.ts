import { describe, expect, test } from 'vitest';
import { replay } from '../../src/drafting/replay.ts';
import type { Figure } from '../../src/garment/figure.ts';
import { houseRules } from '../../src/garment/house-rules.ts';
import type { Exercise } from '../../src/grader/exercise.ts';
import { judge } from '../../src/grader/judge.ts';
import { misread, misreadingOf } from '../../src/grader/misreading.ts';
import { type Strictness, strictnessFactor } from '../../src/grader/tolerance.ts';
import { bodiesAtHand, exercises, invented, measuredBodies, orderOn, sampled, tableFor } from './tables.ts';

const strictnesses = Object.keys(strictnessFactor) as readonly Strictness[];

/** Every way of choosing the house rules that an exercise has in force and whose inputs it gives. */
function houses(exercise: Exercise): readonly Readonly<Record<string, string>>[] {
  return Object.keys(exercise.house)
    .reduce<readonly Readonly<Record<string, string>>[]>(
      (sofar, name) => {
        const choices = houseRules.find((rule) => rule.name === name)?.choices ?? [];
        const possible = choices.filter(({ uses }) => uses.every((measure) => measure in exercise.style));
        return sofar.flatMap((house) => possible.map((choice) => ({ ...house, [name]: choice.name })));
      },
      [{}],
    )
    .map((house) =>
      Object.entries(house).every(([name, choice]) => exercise.house[name] === choice) ? exercise.house : house,
    );
}

/** What of the reference is not right on a figure: nothing, if all is well. */
function faultsOn(exercise: Exercise, figure: Figure, house: Exercise['house']): readonly string[] {
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
function unnamedOn(
  exercise: Exercise,
  figure: Figure,
  house: Exercise['house'],
  grades: readonly Strictness[],
): readonly string[] {
  const givens = tableFor(exercise, orderOn(exercise, figure, house));
  return exercise.misreadings.flatMap((misreading) => {
    const student = replay(givens, misread(exercise.reference, misreading));
    return grades.flatMap((strictness) => {
      const judged = judge(exercise, givens, student, strictness).find(
        ({ target }) => target.name === misreading.target,
      );
      if (judged === undefined) return [`${misreading.id} has no target`];
      if (house !== exercise.house && judged.checks.every(({ status }) => status === 'within')) return [];
      const named = misreadingOf(exercise, givens, judged);
      return named?.id === misreading.id ? [] : [`${misreading.id} (${strictness}) named ${named?.id ?? 'nothing'}`];
    });
  });
}

describe.each(exercises.map((exercise) => [exercise.id, exercise] as const))('%s', (_, exercise) => {
  describe.each(houses(exercise).map((house) => [JSON.stringify(house), house] as const))(
    'house %s',
    (_rules, house) => {
      test('the reference has every check right on the invented and the sampled figures', () => {
        const faults = [...invented, ...sampled].flatMap((figure) => faultsOn(exercise, figure, house));
        expect(faults).toEqual([]);
      });

      test('every misreading is named at every strictness on the invented and the sampled figures', () => {
        const unnamed = [...invented, ...sampled].flatMap((figure) => unnamedOn(exercise, figure, house, strictnesses));
        expect([...new Set(unnamed)]).toEqual([]);
      });
    },
  );

  test.skipIf(!bodiesAtHand)(
    'reference and misreadings hold on all measured bodies (Gordon et al. 2014; skipped where the data set is not at hand)',
    () => {
      const bodies = measuredBodies();
      expect(bodies).toHaveLength(6068);
      const faults = new Set<string>();
      for (const figure of bodies) {
        for (const fault of faultsOn(exercise, figure, exercise.house)) faults.add(fault);
        // The learner's strictness has the widest tolerances, in which a misreading is hardest to tell from the right answer.
        for (const fault of unnamedOn(exercise, figure, exercise.house, ['learner'])) faults.add(fault);
      }
      expect([...faults]).toEqual([]);
    },
  );
});

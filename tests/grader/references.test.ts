import { describe, expect, test } from 'vitest';
import { houseRules } from '../../src/garment/house-rules.ts';
import type { Exercise } from '../../src/grader/exercise.ts';
import { type Strictness, strictnessFactor } from '../../src/grader/tolerance.ts';
import { faultsOn, unnamedOn } from './proof.ts';
import { exercises, invented, sampled } from './tables.ts';

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
});

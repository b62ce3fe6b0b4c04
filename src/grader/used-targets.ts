import { ancestorsOf } from '../drafting/dependencies.ts';
import type { Name } from '../drafting/step.ts';
import type { Exercise } from './exercise.ts';

const found = new WeakMap<Exercise, ReadonlyMap<Name, ReadonlySet<Name>>>();

/** The targets on which the reference builds this one; none where it builds on what is given alone. */
export function usedTargets(exercise: Exercise, target: Name): ReadonlySet<Name> {
  const known = found.get(exercise) ?? usedByEach(exercise);
  found.set(exercise, known);
  return known.get(target) ?? new Set();
}

function usedByEach({ targets, reference }: Exercise): ReadonlyMap<Name, ReadonlySet<Name>> {
  return new Map(
    targets.map(({ name: target }): [Name, ReadonlySet<Name>] => {
      const answering = reference.find(({ answers }) => answers === target);
      const makers = answering === undefined ? [] : ancestorsOf(reference, answering.name);
      const answered = makers.flatMap((index) => reference[index]?.answers ?? []);
      return [target, new Set(answered.filter((name) => name !== target))];
    }),
  );
}

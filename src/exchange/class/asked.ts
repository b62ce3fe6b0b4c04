import type { Name } from '../../drafting/step.ts';
import type { ProblemSet } from '../set.ts';

/** What a class was asked: a set, or null where any work is marked by itself. */
export type Asked = Pick<ProblemSet, 'exercises'> | null;

/** Whether work is on an exercise that the class was asked. */
export function isAsked({ exercise }: { readonly exercise: Name }, set: Asked): boolean {
  return set === null || set.exercises.some((one) => one.exercise === exercise);
}

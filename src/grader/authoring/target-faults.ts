import { ancestorsOf } from '../../drafting/dependencies.ts';
import type { Step } from '../../drafting/step.ts';
import { message } from '../../words/message.ts';
import type { Exercise } from '../exercise.ts';
import type { Fault } from '../reading/fault.ts';
import { isStrange } from '../reading/strange-keys.ts';
import { unknownName } from '../reading/unknown.ts';

/** Targets that cannot be called so, that are named twice, that no check looks at, that the reference does not answer, or that stand in the wrong order. */
export function targetFaults(exercise: Exercise): readonly Fault[] {
  const names = exercise.targets.map(({ name }) => name);
  return [
    ...names.flatMap((name, index) => faultsOfTarget(exercise, name, index)),
    ...exercise.reference.flatMap((step, index) => strayAnswer(step, ['reference', index, 'answers'], names)),
  ];
}

function faultsOfTarget(exercise: Exercise, name: string, index: number): readonly Fault[] {
  const at = ['targets', index, 'name'];
  const names = exercise.targets.map((target) => target.name);
  const answering = exercise.reference.flatMap((step, position) => (step.answers === name ? [{ step, position }] : []));
  // Can it be called so?
  if (isStrange(name)) return [{ at, message: message('author.name-strange', { name }) }];
  // Is it the only one of its name?
  if (names.indexOf(name) !== index) return [{ at, message: message('author.target-twice', { name }) }];
  const unchecked = exercise.checks.every(({ target }) => target !== name);
  const faults: Fault[] = unchecked ? [{ at, message: message('author.target-unchecked', { name }) }] : [];
  const [first, second] = answering;
  // Does just one step answer it?
  if (first === undefined) return [...faults, { at, message: message('author.target-unanswered', { name }) }];
  if (second !== undefined) {
    const twice = message('author.answered-twice', { name });
    return [...faults, { at: ['reference', second.position, 'answers'], message: twice }];
  }
  // Do the targets it is made from stand before it?
  const used = ancestorsOf(exercise.reference, first.step.name).map((one) => exercise.reference[one]?.answers);
  const later = used.find((other) => other !== undefined && names.indexOf(other) > index);
  return later === undefined ? faults : [...faults, { at, message: message('author.target-early', { name, later }) }];
}

/** An `answers` that names no target of the exercise. */
export function strayAnswer(step: Step, at: Fault['at'], names: readonly string[]): readonly Fault[] {
  if (step.answers === undefined || names.includes(step.answers)) return [];
  return [{ at, message: unknownName('what.target', step.answers, names) }];
}

import { nearestSpelling } from '../../drafting/spelling.ts';
import type { Step } from '../../drafting/step.ts';
import { message } from '../../words/message.ts';
import type { Exercise, Misreading } from '../exercise.ts';
import type { Fault } from '../reading/fault.ts';
import { isStrange } from '../reading/strange-keys.ts';
import { unknownName } from '../reading/unknown.ts';
import { strayAnswer } from './target-faults.ts';

/** Misreadings of targets that are not there, and steps that do not fit into the reference. */
export function misreadingFaults(exercise: Exercise): readonly Fault[] {
  return exercise.misreadings.flatMap((misreading, index) => faultsOf(exercise, misreading, index));
}

function faultsOf(exercise: Exercise, misreading: Misreading, index: number): readonly Fault[] {
  const at = ['misreadings', index];
  const targets = exercise.targets.map(({ name }) => name);
  const faults: Fault[] = [];
  if (isStrange(misreading.id)) {
    faults.push({ at: [...at, 'id'], message: message('author.name-strange', { name: misreading.id }) });
  }
  // Is it the only one of its name?
  if (exercise.misreadings.findIndex(({ id }) => id === misreading.id) !== index) {
    faults.push({ at: [...at, 'id'], message: message('author.misreading-twice', { id: misreading.id }) });
  }
  if (!targets.includes(misreading.target)) {
    faults.push({ at: [...at, 'target'], message: unknownName('what.target', misreading.target, targets) });
  }
  // Does it replace anything?
  if (misreading.instead.length === 0) {
    faults.push({ at: [...at, 'instead'], message: message('author.misreading-nothing') });
  }
  const instead = misreading.instead.flatMap((step, position) =>
    replacedFaults(exercise, step, [...at, 'instead', position]),
  );
  const first = (misreading.first ?? []).flatMap((step, position) =>
    newFaults(exercise, step, [...at, 'first', position]),
  );
  return [...faults, ...instead, ...first];
}

/** A step that takes the place of another has to be named as it is, and to answer what it answers. */
function replacedFaults(exercise: Exercise, step: Step, at: Fault['at']): readonly Fault[] {
  const replaced = exercise.reference.find(({ name }) => name === step.name);
  if (replaced === undefined) {
    const known = exercise.reference.map(({ name }) => name);
    const why = unknownName('what.reference-step', step.name, known);
    const isNew = nearestSpelling(step.name, known) === null;
    return [{ at: [...at, 'name'], message: isNew ? message('author.misreading-new', { why: { said: why } }) : why }];
  }
  if (replaced.answers === step.answers) return [];
  const targets = exercise.targets.map(({ name }) => name);
  // What is wrong with the reference's own answer is told of the reference.
  if (replaced.answers === undefined) return unanswering(exercise, step, at);
  if (!targets.includes(replaced.answers)) return [];
  const values = { name: step.name, target: replaced.answers };
  return [{ at, message: message('author.misreading-answers', values) }];
}

/** An answer on a step whose place in the reference answers nothing; where no step there answers that target, this is told of the target. */
function unanswering(exercise: Exercise, step: Step, at: Fault['at']): readonly Fault[] {
  const answered = exercise.reference.some(({ answers }) => answers === step.answers);
  if (!answered)
    return strayAnswer(
      step,
      [...at, 'answers'],
      exercise.targets.map(({ name }) => name),
    );
  return [{ at: [...at, 'answers'], message: message('author.misreading-extra', { name: step.name }) }];
}

/** A step put in before has to have a name of its own. */
function newFaults(exercise: Exercise, step: Step, at: Fault['at']): readonly Fault[] {
  const taken = exercise.reference.some(({ name }) => name === step.name);
  return taken ? [{ at: [...at, 'name'], message: message('author.misreading-taken', { name: step.name }) }] : [];
}

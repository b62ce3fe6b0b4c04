import type { Problem, Sheet } from '../../drafting/sheet.ts';
import { message } from '../../words/message.ts';
import { answerTo } from '../answer.ts';
import type { Check, Exercise } from '../exercise.ts';
import { takeReading } from '../measures/take.ts';
import type { Fault, Place } from '../reading/fault.ts';
import { eitherKind } from './kind.ts';

/** Steps of the reference that cannot be carried out on the exercise's own order, and answers of another kind than their target makes. */
export function referenceFaults(exercise: Exercise, reference: Sheet): readonly Fault[] {
  const kinds = exercise.targets.flatMap((target, index): readonly Fault[] => {
    const answer = answerTo(target, reference);
    if (answer.found !== 'wrong-kind') return [];
    const values = { found: { said: eitherKind([answer.kind]) }, wanted: { said: eitherKind([target.makes]) } };
    const said = message('author.target-kind', { name: target.name, ...values });
    return [{ at: ['targets', index, 'makes'], message: said }];
  });
  return [...reference.problems.map((problem) => problemFault(problem, ['reference'])), ...kinds];
}

/** A problem of a replay, at its step and field. */
export function problemFault({ step, field, message: why }: Problem, list: Place): Fault {
  const at = field === null ? [...list, step] : [...list, step, field];
  return { at, message: message('author.reference-problem', { why: { said: why } }) };
}

/** Checks that cannot be read even on the reference, although everything they name is there. */
export function unreadChecks(exercise: Exercise, reference: Sheet): readonly Fault[] {
  return exercise.checks.flatMap((check, index) =>
    isRead(check, exercise, reference) ? [] : [{ at: ['checks', index], message: message('author.check-unread') }],
  );
}

function isRead(check: Check, exercise: Exercise, reference: Sheet): boolean {
  const target = exercise.targets.find(({ name }) => name === check.target);
  const answer = target === undefined ? null : answerTo(target, reference);
  if (answer?.found !== 'right-kind') return false;
  return takeReading(check, { answer: answer.shape, right: answer.shape, reference }) !== null;
}

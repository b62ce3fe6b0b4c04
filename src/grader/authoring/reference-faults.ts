import type { Problem, Sheet } from '../../drafting/sheet.ts';
import { houseRules } from '../../garment/house-rules.ts';
import { styleMeasures } from '../../garment/style-measures.ts';
import { type Message, message } from '../../words/message.ts';
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
  return [...ownProblems(reference.problems).map((problem) => problemFault(problem, ['reference'])), ...kinds];
}

/** Problems without those of steps that only lack what another step did not make. */
function ownProblems(problems: readonly Problem[]): readonly Problem[] {
  return problems.filter(({ message: said }) => !('key' in said && said.key === 'problem.not-there'));
}

/** A problem of a replay, at its step and field. */
export function problemFault({ step, field, message: why }: Problem, list: Place): Fault {
  const at = field === null ? [...list, step] : [...list, step, field];
  return { at, message: message('author.reference-problem', { why: { sentence: unstated(why) ?? why } }) };
}

/** What to say of a measure that there is and that the order does not state, or has no rule for: no other name was meant. */
function unstated(why: Message): Message | null {
  if (!('key' in why) || !(why.key === 'expression.unknown' || why.key === 'expression.unknown-meant')) return null;
  const name = String(why.values['name']);
  if (styleMeasures.some((measure) => measure.name === name)) return message('author.unstated', { name });
  const rule = houseRules.find(({ makes }) => makes === name);
  return rule === undefined ? null : message('author.rule-unstated', { name, rule: rule.name });
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

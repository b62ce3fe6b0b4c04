import { ancestorsOf } from '../drafting/dependencies.ts';
import { evaluate, hasNumberOnly } from '../drafting/expression.ts';
import { DRAFT_WORK } from '../drafting/limits.ts';
import { isName } from '../drafting/name.ts';
import type { Name, Step } from '../drafting/step.ts';
import { type Message, message } from '../words/message.ts';
import { isAlike } from './alike.ts';
import { applied } from './applied.ts';
import type { Laid } from './lay-out.ts';
import type { LetGo } from './result.ts';
import { stepFields } from './step-fields.ts';
import { asked, lostOn, type Trial } from './trial.ts';

/**
 * The step at which a target lets go: among the steps it is made from, the first mark made by eye or number typed that
 * the reference does not also have. A typed number is tried out as each measure it equals on this figure, and the one
 * that makes the target hold on the other figures is named.
 */
export function letGoAt(target: Name, trial: Trial, tables: readonly Laid[]): readonly LetGo[] {
  const answering = trial.steps.findLast((step) => step.answers === target);
  if (answering === undefined) return [];
  const makers = [...ancestorsOf(trial.steps, answering.name), trial.steps.indexOf(answering)];
  const order = [...new Set(makers)].sort((a, b) => a - b);
  const suspects = order.flatMap((index) => suspectAt(index, trial));
  const cured = cureAmong(suspects, target, trial, tables);
  const found = cured ?? suspects.at(0);
  const step = found?.step ?? trial.steps.indexOf(answering);
  const name = trial.steps[step]?.name ?? answering.name;
  return [{ target, step, name, message: reason(found ?? null, { step: step + 1, name, target }) }];
}

/** A step that may be what lets go: a mark made by eye, or a field with a typed number. */
interface Suspect {
  readonly step: number;
  readonly field: string | null;
  readonly typed: string;
  readonly instead: string | null;
}

function suspectAt(index: number, trial: Trial): readonly Suspect[] {
  const step = trial.steps[index];
  if (step === undefined) return [];
  if (step.verb === 'pencil') return [{ step: index, field: null, typed: '', instead: null }];
  return stepFields(step)
    .filter(({ text }) => hasNumberOnly(text) && !alsoInReference(text, trial))
    .map(({ field, text }) => ({ step: index, field, typed: text, instead: null }));
}

/** A number that the reference itself lays off is no slip. */
function alsoInReference(text: string, trial: Trial): boolean {
  const value = evaluate(text, trial.learner.measures);
  return trial.exercise.reference.some((step) =>
    stepFields(step).some((field) => {
      if (!hasNumberOnly(field.text)) return false;
      const theirs = evaluate(field.text, trial.learner.measures);
      return value.ok && theirs.ok && Math.abs(value.quantity.value - theirs.quantity.value) < 1e-9;
    }),
  );
}

/** No more cures than this are tried for one target: a draft that needs more is told where it lets go, and not with what to mend it. */
const CURES = 40;

/** The first suspect that a measure cures, with the measure; null where none does, or none was found with work that is worth it. */
function cureAmong(suspects: readonly Suspect[], target: Name, trial: Trial, tables: readonly Laid[]): Suspect | null {
  let left = Math.min(CURES, Math.floor(DRAFT_WORK / (trial.work * tables.length)));
  for (const suspect of suspects) {
    if (suspect.field === null) continue;
    for (const instead of measuresLike(suspect.typed, target, trial)) {
      if (left === 0) return null;
      left -= 1;
      if (holdsWith({ ...suspect, instead }, target, trial, tables)) return { ...suspect, instead };
    }
  }
  return null;
}

/** Whether the target holds on every table with the measure in place of the typed number. */
function holdsWith(
  { step: at, field, instead }: Suspect,
  target: Name,
  trial: Trial,
  tables: readonly Laid[],
): boolean {
  const steps = trial.steps.map((step, index) =>
    index === at ? ({ ...step, [field as string]: instead } as Step) : step,
  );
  const question = asked(trial, new Set([target]));
  return tables.every((table) => lostOn(table, question, steps).length === 0);
}

/** Measures, and simple sums of them, that equal a typed number on this figure: what the reference uses for the target first, single names before sums. */
function measuresLike(typed: string, target: Name, { exercise, order, learner }: Trial): readonly string[] {
  const value = evaluate(typed, learner.measures);
  if (!value.ok) return [];
  const wanted = value.quantity;
  const names = [...learner.measures]
    .filter(([, { dimension }]) => dimension === wanted.dimension)
    .map(([name]) => name);
  const answering = exercise.reference.filter(({ answers }) => answers === target);
  const used = answering.flatMap((step) => stepFields(step).map(({ text }) => applied(text, exercise, order)));
  const tries = [
    ...used,
    ...names,
    ...names.flatMap((name) => [`${name} / 2`, `${name} * 2`, `${name} - 1/4 in`, `${name} / 2 + 1/4 in`]),
    ...names.flatMap((one) =>
      names.filter((other) => other !== one).flatMap((other) => [`${one} + ${other}`, `${one} - ${other}`]),
    ),
  ];
  return tries.filter((text) => {
    const theirs = evaluate(text, learner.measures);
    return theirs.ok && isAlike(theirs.quantity, wanted);
  });
}

function reason(suspect: Suspect | null, where: { step: number; name: Name; target: Name }): Message {
  const { step } = where;
  const name = { named: where.name };
  const target = { named: where.target };
  if (suspect === null) return message('grader.lets-go', { step, name, target });
  if (suspect.field === null) return message('grader.lets-go-by-eye', { step, name, target });
  const { typed, instead } = suspect;
  return instead === null
    ? message('grader.lets-go-number', { step, target, typed })
    : message('grader.lets-go-number-named', {
        step,
        target,
        typed,
        instead: isName(instead) ? { named: instead } : instead,
      });
}

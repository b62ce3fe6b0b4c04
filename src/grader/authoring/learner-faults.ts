import { ancestorsOf, namesUsedBy } from '../../drafting/dependencies.ts';
import { evaluate, hasNumberOnly } from '../../drafting/expression.ts';
import type { Quantity } from '../../drafting/quantity.ts';
import type { Givens } from '../../drafting/sheet.ts';
import type { Name, Step } from '../../drafting/step.ts';
import { houseRules } from '../../garment/house-rules.ts';
import { message } from '../../words/message.ts';
import type { Exercise } from '../exercise.ts';
import type { Fault } from '../reading/fault.ts';
import { stepFields } from '../step-fields.ts';

/**
 * What a learner could not do after the reference, though the reference itself can be drawn: build on what does not lie on
 * the table, write a measure by a rule that is not in force, make a mark by eye that is right on every figure, or type a
 * number that is right on every order. Only the steps are looked at from which targets are made.
 */
export function learnerFaults(exercise: Exercise, givens: Givens): readonly Fault[] {
  const { reference } = exercise;
  const answering = reference.filter(({ answers }) => answers !== undefined);
  const needed = new Set(answering.flatMap(({ name }) => ancestorsOf(reference, name)));
  return [...needed]
    .sort((a, b) => a - b)
    .flatMap((index) => {
      const step = reference[index] as Step;
      const at = ['reference', index];
      if (step.verb === 'pencil') return [{ at, message: message('author.by-eye') }];
      return [
        ...unshown(exercise, givens, step, at),
        ...unruled(exercise, step, at),
        ...typed(exercise, givens, step, at),
      ];
    });
}

/** Of the block; what an exercise draws besides may serve its reference out of sight, where a learner goes another way. */
function unshown({ shows, given = [] }: Exercise, { shapes }: Givens, step: Step, at: Fault['at']): readonly Fault[] {
  const drawn = given.map(({ name }) => name);
  return namesUsedBy(step)
    .filter((name) => shapes.has(name) && !drawn.includes(name) && !shows.includes(name))
    .map((name) => ({ at, message: message('author.unshown', { name }) }));
}

function unruled({ house }: Exercise, step: Step, at: Fault['at']): readonly Fault[] {
  const used = namesUsedBy(step);
  return houseRules
    .filter(({ name, makes }) => used.includes(makes) && !(name in house))
    .map(({ name, makes }) => ({ at, message: message('author.rule-unstated', { name: makes, rule: name }) }));
}

/** How near a typed number comes to a measure to be suspected of standing for it, mm: an inch measure typed in whole millimetres. */
const ALIKE = 0.6;

/** A typed length that is what a measure of the order comes to which the exercise states and its steps never use. */
function typed(exercise: Exercise, { measures }: Givens, step: Step, at: Fault['at']): readonly Fault[] {
  const idle = idleMeasures(exercise);
  return stepFields(step).flatMap(({ field, text }) => {
    if (!hasNumberOnly(text)) return [];
    const worked = evaluate(text, measures);
    const name = worked.ok ? idle.find((one) => isAlike(measures.get(one), worked.quantity)) : undefined;
    return name === undefined ? [] : [{ at: [...at, field], message: message('author.typed', { text, name }) }];
  });
}

function idleMeasures({ style, house, given = [], reference }: Exercise): readonly Name[] {
  const used = new Set([...given, ...reference].flatMap(namesUsedBy));
  const byRule = houseRules.flatMap(({ name, choices }) => choices.find((one) => one.name === house[name])?.uses ?? []);
  return Object.keys(style).filter((name) => !used.has(name) && !byRule.includes(name));
}

function isAlike(measure: Quantity | undefined, typedAs: Quantity): boolean {
  return measure?.dimension === typedAs.dimension && Math.abs(measure.value - typedAs.value) <= ALIKE;
}

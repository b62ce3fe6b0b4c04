import type { Construction } from '../drafting/construction.ts';
import type { HalfStep } from '../drafting/form.ts';
import { knownStep } from '../drafting/known-step.ts';
import { knownIn, type Plan, planOn, type Thing } from '../drafting/plan.ts';
import { planDraft, plannedSteps } from '../drafting/planned.ts';
import type { Name, Step } from '../drafting/step.ts';
import type { Exercise } from './exercise.ts';

/** The places of those steps of a draft that its reference does not have, whatever the draft calls its things. */
export function stepsOfOnesOwn(steps: readonly Step[], exercise: Exercise): readonly number[] {
  const deeds = deedsOf(exercise);
  const called = new Map<Name, Thing>();
  const own: number[] = [];
  for (const [index, step] of steps.entries()) {
    const { construction, name, answers } = knownStep(step as unknown as HalfStep);
    const same = construction === null ? undefined : sameDeed(construction, called, deeds);
    if (same === undefined) own.push(index);
    // What goes on from another answer to a target goes on as the reference does from its own.
    const standsFor = same ?? (answers === null ? undefined : deeds.answering.get(answers));
    if (standsFor !== undefined) called.set(name, standsFor);
  }
  return own;
}

/** What the reference does. */
interface Deeds {
  readonly plan: Plan;
  /** What it makes, by what it calls it. */
  readonly made: ReadonlyMap<Name, Thing>;
  /** Its answers, by their targets. */
  readonly answering: ReadonlyMap<Name, Thing>;
}

/** What the reference makes that a step makes from the same things, if any: what the learner calls nothing goes by its own name. */
function sameDeed({ making, uses }: Construction, called: ReadonlyMap<Name, Thing>, { plan, made }: Deeds) {
  const from: Thing[] = [];
  for (const name of uses) {
    const thing = called.get(name) ?? made.get(name) ?? plan.givens.get(name);
    if (thing === undefined) return undefined;
    from.push(thing);
  }
  return knownIn(plan, making, from);
}

const known = new WeakMap<Exercise, Deeds>();

function deedsOf(exercise: Exercise): Deeds {
  const before = known.get(exercise);
  if (before !== undefined) return before;
  const plan = planOn(null);
  const { things, answers } = planDraft(plan, plannedSteps(exercise.reference) ?? []);
  const answering = [...answers].flatMap(([target, name]): [Name, Thing][] => {
    const thing = things.get(name);
    return thing === undefined ? [] : [[target, thing]];
  });
  const deeds = { plan, made: things, answering: new Map(answering) };
  known.set(exercise, deeds);
  return deeds;
}

import { gistOf } from '../../drafting/gist.ts';
import { type Plan, planOn, type Thing } from '../../drafting/plan.ts';
import { planDraft, plannedSteps } from '../../drafting/planned.ts';
import type { Name, Step } from '../../drafting/step.ts';
import type { Exercise } from '../exercise.ts';
import { hiddenFrom } from '../lay-out.ts';
import { type Ground, groundHolding, type ReferencePlan, referencePlan } from './reference-plan.ts';

/** A draft planned for all tables, beside the reference that it is judged by. Drafts of one gist have one plan. */
export interface DraftPlan {
  readonly reference: ReferencePlan;
  readonly plan: Plan;
  /** What each step makes. */
  readonly made: readonly Thing[];
  /** What answers a target. */
  readonly answers: ReadonlyMap<Name, Thing>;
  /** The reference with none of the draft's answers held yet. */
  readonly held: Held;
}

/** The reference with answers of a draft held in place of its own. */
export interface Held {
  readonly ground: Ground;
  /** The same with one more held: for the same answer to the same target the same object. */
  readonly holding: (target: Name, answer: Thing) => Held;
}

const plans = new WeakMap<Exercise, Map<number, DraftPlan | null>>();

/** Of so many gists the plans are kept, and then all are let go. */
const KEPT = 100;

/** A draft planned, once for all figures and for all drafts of its gist; null where it cannot be, and has to be replayed on each. */
export function draftPlan(exercise: Exercise, steps: readonly Step[]): DraftPlan | null {
  const gist = gistOf(steps);
  if (gist === null) return null;
  const here = plans.get(exercise) ?? new Map<number, DraftPlan | null>();
  plans.set(exercise, here);
  const known = here.get(gist.number);
  if (known !== undefined) return known;
  if (here.size >= KEPT) here.clear();
  const draft = planAfresh(exercise, steps);
  here.set(gist.number, draft);
  return draft;
}

function planAfresh(exercise: Exercise, steps: readonly Step[]): DraftPlan | null {
  const reference = referencePlan(exercise);
  const planned = plannedSteps(steps);
  if (reference === null || planned === null) return null;
  // What the learner does not get lies on the marker's table.
  const hidden = hiddenFrom(exercise);
  if (planned.some(({ uses }) => uses.some((name) => hidden.includes(name)))) return null;
  const plan = planOn(reference.plan);
  const { things, answers } = planDraft(plan, planned);
  return {
    reference,
    plan,
    made: planned.map(({ name }) => things.get(name) as Thing),
    answers: new Map([...answers].map(([target, name]): [Name, Thing] => [target, things.get(name) as Thing])),
    held: heldWith(reference, plan, new Map()),
  };
}

function heldWith(reference: ReferencePlan, plan: Plan, pins: ReadonlyMap<Name, Thing>): Held {
  const further: { readonly target: Name; readonly answer: Thing; readonly held: Held }[] = [];
  return {
    ground: groundHolding(reference, plan, pins),
    holding: (target, answer) => {
      const known = further.find((one) => one.target === target && one.answer === answer);
      if (known !== undefined) return known.held;
      const held = heldWith(reference, plan, new Map(pins).set(target, answer));
      further.push({ target, answer, held });
      return held;
    },
  };
}

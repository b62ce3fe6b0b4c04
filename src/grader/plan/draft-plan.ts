import { type Plan, planOn, type Thing } from '../../drafting/plan.ts';
import { type PlannedDraft, planDraft, plannedSteps } from '../../drafting/planned.ts';
import type { Name, Step } from '../../drafting/step.ts';
import type { Exercise } from '../exercise.ts';
import { hiddenFrom } from '../lay-out.ts';
import { type Ground, groundHolding, type ReferencePlan, referencePlan } from './reference-plan.ts';

/** A draft planned for all tables, beside the reference that it is judged by. */
export interface DraftPlan extends PlannedDraft {
  readonly reference: ReferencePlan;
  readonly plan: Plan;
  /** The reference with these things held in place of its own answers, as it was planned before where it was. */
  readonly groundHolding: (pins: ReadonlyMap<Name, Thing>) => Ground;
}

/** Of each draft, what it was planned for last. */
const plans = new WeakMap<readonly Step[], { readonly exercise: Exercise; readonly draft: DraftPlan | null }>();

/** A draft planned, once for all figures; null where it cannot be, and has to be replayed on each. */
export function draftPlan(exercise: Exercise, steps: readonly Step[]): DraftPlan | null {
  const known = plans.get(steps);
  if (known?.exercise === exercise) return known.draft;
  const draft = planAfresh(exercise, steps);
  plans.set(steps, { exercise, draft });
  return draft;
}

function planAfresh(exercise: Exercise, steps: readonly Step[]): DraftPlan | null {
  const reference = referencePlan(exercise);
  const planned = plannedSteps(steps);
  if (reference === null || planned === null) return null;
  const plan = planOn(reference.plan);
  const draft = planDraft(plan, planned);
  // What the learner does not get lies on the marker's table.
  const hidden = hiddenFrom(exercise);
  if (planned.some(({ uses }) => uses.some((name) => hidden.includes(name)))) return null;
  const grounds = new Map<string, Ground>();
  return {
    ...draft,
    reference,
    plan,
    groundHolding: (pins) => {
      const key = [...pins].map(([target, { at }]) => `${target} ${at}`).join();
      const ground = grounds.get(key) ?? groundHolding(reference, plan, pins);
      grounds.set(key, ground);
      return ground;
    },
  };
}

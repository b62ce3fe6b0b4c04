import { knownStep } from '../../drafting/known-step.ts';
import { givenIn, madeIn, type Plan, planOn, type Thing } from '../../drafting/plan.ts';
import { type PlannedStep, planDraft, plannedSteps } from '../../drafting/planned.ts';
import type { ShapeKind } from '../../drafting/shape.ts';
import type { Name } from '../../drafting/step.ts';
import type { Exercise } from '../exercise.ts';

/** The reference of an exercise on a plan, for all tables. */
export interface ReferencePlan {
  readonly plan: Plan;
  readonly steps: readonly PlannedStep[];
  /** What each step uses. */
  readonly uses: readonly (readonly Use[])[];
  /** The place of a step by its name. */
  readonly places: ReadonlyMap<Name, number>;
  /** What answers a target, by name. */
  readonly answers: ReadonlyMap<Name, Name>;
  /** What its steps make of themselves. */
  readonly own: Ground;
}

/** What a step uses: what an earlier one makes, by its place, or what is given. */
type Use = number | Thing;

/** What each step of the reference makes, or what is held in its place. */
export type Ground = readonly Thing[];

const plans = new WeakMap<Exercise, ReferencePlan | null>();

/** The reference planned, once for an exercise; null where it cannot be, and has to be replayed. */
export function referencePlan(exercise: Exercise): ReferencePlan | null {
  const known = plans.get(exercise);
  if (known !== undefined) return known;
  const planned = planReference(exercise);
  plans.set(exercise, planned);
  return planned;
}

function planReference(exercise: Exercise): ReferencePlan | null {
  const steps = plannedSteps(exercise.reference);
  if (steps === null || !mayAllBeHeld(steps, exercise)) return null;
  const plan = planOn(null);
  const { things, answers } = planDraft(plan, steps);
  const places = new Map(steps.map(({ name }, at) => [name, at]));
  const usedAt = (name: Name, at: number): Use => {
    const place = places.get(name);
    return place !== undefined && place < at ? place : givenIn(plan, name);
  };
  return {
    plan,
    steps,
    uses: steps.map(({ uses }, at) => uses.map((name) => usedAt(name, at))),
    places,
    answers,
    own: steps.map(({ name }) => things.get(name) as Thing),
  };
}

/** Whether what is held in place of a step that answers a target is always of the kind the step makes. */
export function mayAllBeHeld(steps: readonly PlannedStep[], { targets }: Exercise): boolean {
  const makes = new Map(targets.map((target) => [target.name, target.makes]));
  return steps.every((step) => mayBeHeld(step, makes));
}

function mayBeHeld({ answers, step }: PlannedStep, makes: ReadonlyMap<Name, ShapeKind>): boolean {
  const wanted = answers === null ? undefined : makes.get(answers);
  const own = knownStep(step).form?.makes;
  return wanted === undefined || own === wanted || own === 'same';
}

/** The reference with things held in place of its own answers to targets: what hangs on none of them stays as it is. */
export function groundHolding(reference: ReferencePlan, plan: Plan, pins: ReadonlyMap<Name, Thing>): Ground {
  const { steps, uses, own } = reference;
  const ground: Thing[] = [];
  for (let at = 0; at < steps.length; at++) {
    const step = steps[at] as PlannedStep;
    const used = uses[at] as readonly Use[];
    const pin = step.answers === null ? undefined : pins.get(step.answers);
    ground.push(
      pin ?? (isMoved(used, ground, own) ? madeIn(plan, step, thingsUsed(used, ground)) : (own[at] as Thing)),
    );
  }
  return ground;
}

function isMoved(used: readonly Use[], ground: Ground, own: Ground): boolean {
  for (const one of used) if (typeof one === 'number' && ground[one] !== own[one]) return true;
  return false;
}

function thingsUsed(used: readonly Use[], ground: Ground): readonly Thing[] {
  return used.map((one) => (typeof one === 'number' ? (ground[one] as Thing) : one));
}

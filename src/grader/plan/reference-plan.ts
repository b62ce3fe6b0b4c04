import { givenIn, madeIn, type Plan, planOn, type Thing } from '../../drafting/plan.ts';
import { type PlannedStep, planDraft, plannedSteps } from '../../drafting/planned.ts';
import type { ShapeKind } from '../../drafting/shape.ts';
import type { Name } from '../../drafting/step.ts';
import type { Exercise } from '../exercise.ts';
import { hiddenFrom } from '../lay-out.ts';

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
  /** What each step makes of itself. */
  readonly own: readonly Thing[];
  /** The measures that lie on the marker's table, and not on the learner's. */
  readonly hidden: readonly Name[];
}

/** What a step uses: what an earlier one makes, by its place, or what is given. */
type Use = number | Thing;

/** What a step of the reference makes, by its place, or what is held in its stead. */
export type Ground = (place: number) => Thing;

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
    uses: steps.map(({ construction }, at) => construction.uses.map((name) => usedAt(name, at))),
    places,
    answers,
    own: steps.map(({ name }) => things.get(name) as Thing),
    hidden: hiddenFrom(exercise),
  };
}

/** Whether what is held in place of a step that answers a target is always of the kind the step makes. */
export function mayAllBeHeld(steps: readonly PlannedStep[], { targets }: Exercise): boolean {
  const makes = new Map(targets.map((target) => [target.name, target.makes]));
  return steps.every((step) => mayBeHeld(step, makes));
}

function mayBeHeld({ answers, form }: PlannedStep, makes: ReadonlyMap<Name, ShapeKind>): boolean {
  const wanted = answers === null ? undefined : makes.get(answers);
  const own = form?.makes;
  return wanted === undefined || own === wanted || own === 'same';
}

const nothing: ReadonlyMap<Name, Thing> = new Map();

/**
 * The reference with things held in place of its own answers to targets, and others, by the names of its steps, in place of what
 * answers none; each step is looked at when it is asked for: what hangs on none of them stays as it is.
 */
export function groundHolding(
  reference: ReferencePlan,
  plan: Plan,
  pins: ReadonlyMap<Name, Thing>,
  stoodOn: ReadonlyMap<Name, Thing> = nothing,
): Ground {
  const { steps, uses, own } = reference;
  const found: Thing[] = [];
  const thingAt: Ground = (place) => {
    const known = found[place];
    if (known !== undefined) return known;
    const step = steps[place] as PlannedStep;
    const pin = step.answers === null ? stoodOn.get(step.name) : pins.get(step.answers);
    const thing = pin ?? madeAt(place, step);
    found[place] = thing;
    return thing;
  };
  const madeAt = (place: number, step: PlannedStep): Thing => {
    const used = uses[place] as readonly Use[];
    const isMoved = used.some((one) => typeof one === 'number' && thingAt(one) !== own[one]);
    if (!isMoved) return own[place] as Thing;
    return madeIn(
      plan,
      step.construction.making,
      used.map((one) => (typeof one === 'number' ? thingAt(one) : one)),
    );
  };
  return thingAt;
}

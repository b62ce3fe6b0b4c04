import { gistOf } from '../../drafting/gist.ts';
import { type Plan, planOn, type Thing } from '../../drafting/plan.ts';
import { type PlannedDraft, type PlannedStep, planDraft, plannedSteps } from '../../drafting/planned.ts';
import type { Name, Step } from '../../drafting/step.ts';
import type { Exercise, Target } from '../exercise.ts';
import type { Laid } from '../lay-out.ts';
import { type ReferencePlan, referencePlan } from './reference-plan.ts';
import { type Answering, firstStand, type Stand } from './stands.ts';

/** A draft planned for all tables, beside the reference that it is judged by. Drafts of one gist have one plan, from the second on. */
export interface DraftPlan extends Answering {
  /** What each step makes. */
  readonly made: readonly Thing[];
  /** Where it stands when it comes to the first target; null where that cannot be told. */
  readonly first: Stand | null;
  /** Which of the targets asked for it was found to lose on a table, by what was asked. */
  readonly lost: Map<Laid, Map<string, readonly Name[]>>;
}

/** A draft by what it does, and what it calls the things it makes. */
interface Drafted {
  readonly plan: DraftPlan;
  readonly named: ReadonlyMap<Name, Thing>;
}

/** What was planned for an exercise. */
interface Plans {
  readonly drafts: WeakMap<readonly Step[], Drafted | null>;
  readonly byGist: Map<string, DraftPlan>;
  /** The gists that came once: most of what one learner does nobody else does, and its plan is not kept. */
  readonly once: Set<string>;
}

const plans = new WeakMap<Exercise, Plans>();

/** Of so many gists the plans are kept, and then all are let go; and so many are known to have come once. */
const KEPT = 100;
const ONCE = 1000;

/**
 * A draft planned, once for all figures and for all drafts of its gist. Null where it cannot be, and has to be replayed on each; and on
 * a table where something is called as the draft calls a thing of its own.
 */
export function draftPlan(exercise: Exercise, steps: readonly Step[], { learner }: Laid): DraftPlan | null {
  const draft = drafted(exercise, steps);
  if (draft === null) return null;
  for (const given of [learner.shapes, learner.measures])
    for (const name of given.keys()) if (draft.named.has(name)) return null;
  return draft.plan;
}

function drafted(exercise: Exercise, steps: readonly Step[]): Drafted | null {
  const here = plans.get(exercise) ?? { drafts: new WeakMap(), byGist: new Map(), once: new Set() };
  plans.set(exercise, here);
  const known = here.drafts.get(steps);
  if (known !== undefined) return known;
  const draft = planAfresh(exercise, steps, here);
  here.drafts.set(steps, draft);
  return draft;
}

function planAfresh(exercise: Exercise, steps: readonly Step[], here: Plans): Drafted | null {
  const reference = referencePlan(exercise);
  const planned = plannedSteps(steps);
  if (reference === null || planned === null || usesHidden(planned, reference)) return null;
  const plan = planOn(reference.plan);
  const draft = planDraft(plan, planned);
  const gist = gistOf(plan, draft);
  if (gist === null) return null;
  const known = here.byGist.get(gist);
  if (known !== undefined) return { plan: known, named: draft.things };
  const first = planOf(reference, plan, draft, exercise.targets);
  keep(gist, first, here);
  return { plan: first, named: draft.things };
}

function keep(gist: string, plan: DraftPlan, { byGist, once }: Plans): void {
  if (once.delete(gist)) {
    if (byGist.size >= KEPT) byGist.clear();
    byGist.set(gist, plan);
    return;
  }
  if (once.size >= ONCE) once.clear();
  once.add(gist);
}

/** What the learner does not get lies on the marker's table. */
function usesHidden(steps: readonly PlannedStep[], { hidden }: ReferencePlan): boolean {
  return hidden.length > 0 && steps.some(({ construction }) => construction.uses.some((name) => hidden.includes(name)));
}

function planOf(
  reference: ReferencePlan,
  plan: Plan,
  { things, answers }: PlannedDraft,
  targets: readonly Target[],
): DraftPlan {
  const named = [...answers].map(([target, name]): [Name, Thing] => [target, things.get(name) as Thing]);
  const answering = { reference, plan, answers: new Map(named) };
  return {
    ...answering,
    made: [...things.values()],
    first: firstStand(targets, answering),
    lost: new Map(),
  };
}

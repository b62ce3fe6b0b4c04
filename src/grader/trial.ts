import { gistOf, namesGiven } from '../drafting/gist.ts';
import { DRAFT_WORK } from '../drafting/limits.ts';
import { replay } from '../drafting/replay.ts';
import type { Givens } from '../drafting/sheet.ts';
import type { Name, Step } from '../drafting/step.ts';
import { metered } from '../geometry/work.ts';
import type { Exercise } from './exercise.ts';
import { isRight, type JudgedTarget } from './judge.ts';
import type { Laid } from './lay-out.ts';
import { lostTargets, replayedTrial } from './lost.ts';
import type { Order } from './order.ts';
import { draftPlan } from './plan/draft-plan.ts';
import { plannedTrial } from './plan/planned-trial.ts';
import type { Strictness } from './tolerance.ts';

/** A draft as it stands on its own order. */
export interface Trial {
  readonly exercise: Exercise;
  readonly order: Order;
  /** What the learner has on the table. */
  readonly learner: Givens;
  readonly steps: readonly Step[];
  readonly strictness: Strictness;
  readonly judged: readonly JudgedTarget[];
  /** What drawing it took, in the units of `geometry/work.ts`. */
  readonly work: number;
}

/** Targets with every check within its tolerance; without those that were judged again, for there is only one figure on which their slip is known. */
export function rightTargets(judged: readonly JudgedTarget[]): ReadonlySet<Name> {
  return new Set(judged.filter((one) => isRight(one) && one.again === null).map(({ target }) => target.name));
}

/** The targets, right on the draft's own order, that are not right on this one. What drafts of this gist lost here before is not found out again. */
export function lostOn(laid: Laid, trial: Trial, steps: readonly Step[], right: ReadonlySet<Name>): readonly Name[] {
  const gist = gistOf(steps);
  if (gist === null || namesGiven(gist, laid.learner)) return lostAsReplayed(laid, trial, steps, right);
  const here = lostBefore.get(laid) ?? new Map<string, readonly Name[]>();
  lostBefore.set(laid, here);
  const key = `${gist.number} ${trial.strictness} ${trial.exercise.targets.map(({ name }) => (right.has(name) ? 1 : 0)).join('')}`;
  const known = here.get(key) ?? lostAsPlanned(laid, trial, steps, right) ?? lostAsReplayed(laid, trial, steps, right);
  if (here.size > KEPT) here.clear();
  here.set(key, known);
  return known;
}

/** The same from the draft's plan; null where it has none, or asks for more work than a draft that is worth planning. */
function lostAsPlanned(
  laid: Laid,
  { exercise, strictness, work }: Trial,
  steps: readonly Step[],
  right: ReadonlySet<Name>,
): readonly Name[] | null {
  const plan = work > LITTLE ? null : draftPlan(exercise, steps);
  if (plan === null) return null;
  const ruler = { exercise, givens: laid.givens, strictness };
  const tried = metered(LITTLE, () => {
    const planned = plannedTrial(exercise, plan, laid);
    return planned && lostTargets(ruler, planned, right);
  });
  return tried.done ? tried.value : null;
}

/** So little work that no step of the draft is given up for it. */
const LITTLE = DRAFT_WORK / 10;

/** The same from the draft replayed on the table. */
function lostAsReplayed(
  laid: Laid,
  { exercise, strictness }: Trial,
  steps: readonly Step[],
  right: ReadonlySet<Name>,
): readonly Name[] {
  const ruler = { exercise, givens: laid.givens, strictness };
  return lostTargets(ruler, replayedTrial(ruler, replay(laid.learner, steps)), right);
}

/** A table is laid for one exercise. */
const lostBefore = new WeakMap<Laid, Map<string, readonly Name[]>>();

/** Of so many drafts it is kept, and then all is let go. */
const KEPT = 500;

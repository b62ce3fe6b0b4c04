import { DRAFT_WORK } from '../drafting/limits.ts';
import { replay } from '../drafting/replay.ts';
import type { Givens } from '../drafting/sheet.ts';
import type { Name, Step } from '../drafting/step.ts';
import { metered } from '../geometry/work.ts';
import type { Exercise } from './exercise.ts';
import { isRight, type JudgedTarget } from './judge.ts';
import type { Laid } from './lay-out.ts';
import { lostTargets } from './lost.ts';
import type { Order } from './order.ts';
import { type DraftPlan, draftPlan } from './plan/draft-plan.ts';
import { lostByPlan } from './plan/planned-trial.ts';
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

/** What is asked of a draft on another order. */
export interface Asked {
  readonly trial: Trial;
  /** The targets, right on the draft's own order, of which it is asked whether they are right there too. */
  readonly targets: ReadonlySet<Name>;
  /** Another text for everything else that may be asked of one draft. */
  readonly text: string;
}

export function asked(trial: Trial, targets: ReadonlySet<Name>): Asked {
  return { trial, targets, text: [trial.strictness, ...targets].join(' ') };
}

/** The targets asked for that are not right on this order. What drafts that do the same lost here before is not found out again. */
export function lostOn(laid: Laid, question: Asked, steps: readonly Step[]): readonly Name[] {
  const plan = draftPlan(question.trial.exercise, steps, laid);
  if (plan === null) return lostAsReplayed(laid, question, steps);
  const here = plan.lost.get(laid) ?? new Map<string, readonly Name[]>();
  if (plan.lost.size > KEPT) plan.lost.clear();
  plan.lost.set(laid, here);
  const known = here.get(question.text) ?? lostAsPlanned(laid, question, plan) ?? lostAsReplayed(laid, question, steps);
  here.set(question.text, known);
  return known;
}

/** On so many tables it is kept what a plan lost, and then all is let go. */
const KEPT = 50;

/** The same from the draft's plan; null where it asks for more work than a draft that is worth planning. */
function lostAsPlanned(laid: Laid, { trial, targets }: Asked, plan: DraftPlan): readonly Name[] | null {
  const { exercise, strictness, work } = trial;
  if (work > LITTLE) return null;
  const ruler = { exercise, givens: laid.givens, strictness };
  const tried = metered(LITTLE, () => lostByPlan(ruler, plan, targets));
  return tried.done ? tried.value : null;
}

/** So little work that no step of the draft is given up for it. */
const LITTLE = DRAFT_WORK / 10;

/** The same from the draft replayed on the table. */
function lostAsReplayed(laid: Laid, { trial, targets }: Asked, steps: readonly Step[]): readonly Name[] {
  const { exercise, strictness } = trial;
  const ruler = { exercise, givens: laid.givens, strictness };
  return lostTargets(ruler, replay(laid.learner, steps), targets);
}

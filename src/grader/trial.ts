import { replay } from '../drafting/replay.ts';
import type { Givens } from '../drafting/sheet.ts';
import type { Name, Step } from '../drafting/step.ts';
import type { Exercise } from './exercise.ts';
import { isRight, type JudgedTarget, lostTargets } from './judge.ts';
import type { Laid } from './lay-out.ts';
import type { Order } from './order.ts';
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

/** Targets with every check within its tolerance. */
export function rightTargets(judged: readonly JudgedTarget[]): ReadonlySet<Name> {
  return new Set(judged.filter(isRight).map(({ target }) => target.name));
}

/** The targets, right on the draft's own order, that are not right on this one. */
export function lostOn(
  { givens, learner }: Laid,
  trial: Trial,
  steps: readonly Step[],
  right: ReadonlySet<Name>,
): readonly Name[] {
  return lostTargets(trial.exercise, givens, replay(learner, steps), trial.strictness, right);
}

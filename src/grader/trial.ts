import { type Gist, gistOf } from '../drafting/gist.ts';
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

/** The targets, right on the draft's own order, that are not right on this one. What drafts of this gist lost here before is not found out again. */
export function lostOn(laid: Laid, trial: Trial, steps: readonly Step[], right: ReadonlySet<Name>): readonly Name[] {
  const gist = gistOf(steps);
  const lost = (): readonly Name[] =>
    lostTargets(trial.exercise, laid.givens, replay(laid.learner, steps), trial.strictness, right);
  if (gist === null || namesGiven(gist, laid)) return lost();
  const here = lostBefore.get(laid) ?? new Map<string, readonly Name[]>();
  lostBefore.set(laid, here);
  const key = `${gist.number} ${trial.strictness} ${trial.exercise.targets.map(({ name }) => (right.has(name) ? 1 : 0)).join('')}`;
  const known = here.get(key) ?? lost();
  if (here.size > KEPT) here.clear();
  here.set(key, known);
  return known;
}

/** A table is laid for one exercise. */
const lostBefore = new WeakMap<Laid, Map<string, readonly Name[]>>();

/** Of so many drafts it is kept, and then all is let go. */
const KEPT = 500;

/** Whether a draft calls something as a thing is called that lies there already. */
function namesGiven({ names }: Gist, { learner }: Laid): boolean {
  for (const given of [learner.shapes, learner.measures])
    for (const name of given.keys()) if (names.has(name)) return true;
  return false;
}

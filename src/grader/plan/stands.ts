import type { Making } from '../../drafting/construction.ts';
import { lazily } from '../../drafting/lazily.ts';
import { madeIn, type Plan, type Thing } from '../../drafting/plan.ts';
import type { Shape } from '../../drafting/shape.ts';
import type { Name } from '../../drafting/step.ts';
import { straightened } from '../answer.ts';
import type { Target } from '../exercise.ts';
import { type Ground, groundHolding, type ReferencePlan } from './reference-plan.ts';

/** Where a planned draft stands when it comes to a target: the same on every table where the same answers before can be made. */
export interface Stand {
  readonly target: Target;
  /** What answers the target; null where nothing does. */
  readonly answer: Thing | null;
  /** What the reference makes there. */
  readonly right: Thing;
  /** The reference with the answers before held in place of its own; null where that leaves it as it is of itself. */
  readonly ground: Ground | null;
  /** Where it stands next, this answer held; null behind the last target. */
  readonly answered: () => Stand | null;
  /** The same with nothing held here. */
  readonly unanswered: () => Stand | null;
}

/** What a draft answers on a plan that goes on from the reference's. */
export interface Answering {
  readonly reference: ReferencePlan;
  readonly plan: Plan;
  readonly answers: ReadonlyMap<Name, Thing>;
}

/** Where a draft stands at the first target; null where there is none, or the reference calls an answer otherwise than its target. */
export function firstStand(targets: readonly Target[], answering: Answering): Stand | null {
  const { places, answers } = answering.reference;
  const isCalledSo = ({ name }: Target): boolean => places.has(name) && answers.get(name) === name;
  return targets.every(isCalledSo) ? standAt(0, targets, answering, new Map(), null) : null;
}

function standAt(
  at: number,
  targets: readonly Target[],
  answering: Answering,
  held: ReadonlyMap<Name, Thing>,
  ground: Ground | null,
): Stand | null {
  const target = targets[at];
  if (target === undefined) return null;
  const { reference, plan } = answering;
  const place = reference.places.get(target.name) as number;
  const right = ground === null ? (reference.own[place] as Thing) : ground(place);
  const answer = answerTo(target, answering);
  const standHolding = (pins: ReadonlyMap<Name, Thing>): Stand | null => {
    // Where it is what the reference makes there, holding it leaves everything as it is.
    const next = answer === right ? ground : groundHolding(reference, plan, pins);
    return standAt(at + 1, targets, answering, pins, next);
  };
  return {
    target,
    answer,
    right,
    ground,
    answered: lazily(() => (answer === null ? null : standHolding(new Map(held).set(target.name, answer)))),
    unanswered: lazily(() => standAt(at + 1, targets, answering, held, ground)),
  };
}

/** What answers a target: a straight seam serves as a line. */
function answerTo({ name, makes }: Target, { answers, plan }: Answering): Thing | null {
  const made = answers.get(name);
  if (made === undefined) return null;
  const isSeam = made.given === null && made.making.makes === 'curve';
  return makes === 'line' && isSeam ? madeIn(plan, straightening, [made]) : made;
}

const straightening: Making = {
  number: 0,
  pattern: 'straightened',
  makes: 'line',
  make: ([seam]) => straightened(seam as Shape),
};

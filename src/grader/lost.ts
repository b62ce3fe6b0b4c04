import { replay } from '../drafting/replay.ts';
import { sameShape } from '../drafting/same-shape.ts';
import type { Shape } from '../drafting/shape.ts';
import type { Sheet } from '../drafting/sheet.ts';
import type { Name } from '../drafting/step.ts';
import { type Answer, answerTo } from './answer.ts';
import type { Target } from './exercise.ts';
import { isRightAnswer, type Ruler } from './judge.ts';
import type { Named } from './measures/lookup.ts';
import { ownAnswerHolds } from './own-answers.ts';
import { referenceOn } from './reference-on.ts';
import { type Footing, groundOn } from './standing.ts';

/** A draft as it is tried on another figure, target after target. */
export interface Tried {
  /** The reference with none of the learner's answers held. */
  readonly own: Named;
  readonly answerTo: (target: Target) => Answer;
  readonly footingFor: (target: Target) => Footing;
  /** Holds the learner's answer in place of the reference's own. */
  readonly keep: (target: Target, answer: Shape) => void;
}

/** Those of some targets that are not right on a figure, judged as `judge` does: the others are stood on, and no reading is taken of them. */
export function lostTargets(ruler: Ruler, tried: Tried, among: ReadonlySet<Name>): readonly Name[] {
  const { exercise, strictness } = ruler;
  const { own } = tried;
  const lost = new Set<Name>();
  const left = new Set(among);
  for (const target of exercise.targets) {
    // What comes after the last of them is not looked at.
    if (left.size === 0) break;
    const answer = tried.answerTo(target);
    const footing = tried.footingFor(target);
    const holds = (): boolean => isRightAnswer(ruler, target, answer, footing);
    const isOwn =
      footing.reference === own &&
      answer.found === 'right-kind' &&
      footing.right !== null &&
      sameShape(answer.shape, footing.right);
    if (left.delete(target.name) && !(isOwn ? ownAnswerHolds(own, target.name, strictness, holds) : holds()))
      lost.add(target.name);
    if (answer.found === 'right-kind') tried.keep(target, answer.shape);
  }
  return [...among].filter((target) => lost.has(target));
}

/** A draft that was replayed on the other figure. */
export function replayedTrial({ exercise, givens }: Ruler, student: Sheet): Tried {
  const own = referenceOn(exercise, givens);
  const ground = groundOn(own, (pins) => replay(givens, exercise.reference, pins));
  return {
    own,
    answerTo: (target) => answerTo(target, student),
    footingFor: ({ name }) => ground.footingFor(name),
    keep: ({ name }, answer) => ground.pin(name, answer),
  };
}

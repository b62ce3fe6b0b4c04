import { replay } from '../drafting/replay.ts';
import { sameShape } from '../drafting/same-shape.ts';
import type { Sheet } from '../drafting/sheet.ts';
import type { Name } from '../drafting/step.ts';
import { answerTo } from './answer.ts';
import { isRightAnswer, type Ruler } from './judge.ts';
import { ownAnswerHolds } from './own-answers.ts';
import { referenceOn } from './reference-on.ts';
import { groundOn } from './standing.ts';

/** Those of some targets that are not right on the sheet that a draft makes of a table, judged as `judge` does: the others are stood on, and no reading is taken of them. */
export function lostTargets(ruler: Ruler, student: Sheet, among: ReadonlySet<Name>): readonly Name[] {
  const { exercise, givens, strictness } = ruler;
  const own = referenceOn(exercise, givens);
  const ground = groundOn(own, (pins) => replay(givens, exercise.reference, pins));
  const lost = new Set<Name>();
  const left = new Set(among);
  for (const target of exercise.targets) {
    // What comes after the last of them is not looked at.
    if (left.size === 0) break;
    const answer = answerTo(target, student);
    const footing = ground.footingFor(target.name);
    const holds = (): boolean => isRightAnswer(ruler, target, answer, footing);
    const isOwn =
      footing.reference === own &&
      answer.found === 'right-kind' &&
      footing.right !== null &&
      sameShape(answer.shape, footing.right);
    if (left.delete(target.name) && !(isOwn ? ownAnswerHolds(own, target.name, strictness, holds) : holds()))
      lost.add(target.name);
    if (answer.found === 'right-kind') ground.pin(target.name, answer.shape);
  }
  return [...among].filter((target) => lost.has(target));
}

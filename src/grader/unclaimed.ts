import type { Sheet } from '../drafting/sheet.ts';
import type { Step } from '../drafting/step.ts';
import { answerTo } from './answer.ts';
import { isRightAnswer, type JudgedTarget, type Ruler } from './judge.ts';

/** So many steps are looked at, the last ones: no draft of a learner's has more, and a hostile one is to take no longer. */
const LOOKED_AT = 60;

/**
 * The step, from 0, that makes a right answer to a target for which nothing is pointed out; null where there is none. Whoever
 * has drawn it is not to be told to draw it. What answers another target is that one's.
 */
export function unclaimedFor(ruler: Ruler, judged: JudgedTarget, steps: readonly Step[], sheet: Sheet): number | null {
  const { target, answer } = judged;
  if (answer.found !== 'nothing') return null;
  const right = steps.findLastIndex((step, at) => {
    if (step.answers !== undefined || at < steps.length - LOOKED_AT) return false;
    const claimed = answerTo(target, { ...sheet, answers: new Map([[target.name, step.name]]) });
    return claimed.found === 'right-kind' && isRightAnswer(ruler, target, claimed, judged);
  });
  return right < 0 ? null : right;
}

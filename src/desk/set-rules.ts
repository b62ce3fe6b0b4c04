import type { ProblemSet } from '../exchange/set.ts';
import { type Strictness, toleranceOf } from '../grader/tolerance.ts';
import { type Message, message } from '../words/message.ts';

/** How the work of a set is done and marked, a sentence each: what a student may know before the first line is drawn. */
export function setRules({
  checks,
  feedback,
  hints,
  strictness,
}: Pick<ProblemSet, 'checks' | 'feedback' | 'hints' | 'strictness'>): readonly Message[] {
  return [
    checks === null ? message('work.rule-checks-any') : message('work.rule-checks', { checks }),
    message(`work.rule-${feedback}`),
    message(hints ? 'work.rule-hints' : 'work.rule-no-hints'),
    message('desk.tolerances', tolerancesOf(strictness)),
  ];
}

/** What the strictness allows, mm and degrees. */
export function tolerancesOf(strictness: Strictness): { mark: number; seam: number; angle: number } {
  return {
    mark: toleranceOf('mark', strictness, 'mm'),
    seam: toleranceOf('seam', strictness, 'mm'),
    angle: toleranceOf('square', strictness, 'deg'),
  };
}

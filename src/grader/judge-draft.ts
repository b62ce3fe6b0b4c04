import type { Step } from '../drafting/step.ts';
import type { Drawn } from './drawn.ts';
import { type JudgedTarget, judge, type Ruler } from './judge.ts';
import { judgedAgain } from './once.ts';

/** Judges every target of a draft, so that a slip costs its own marks and what was rightly built on it, or beside it, earns its own. */
export function judgeDraft(ruler: Ruler, sheet: Drawn['sheet'], steps: readonly Step[]): readonly JudgedTarget[] {
  const { exercise, givens, strictness } = ruler;
  return judgedAgain(ruler, judge(exercise, givens, sheet, strictness), { steps, sheet });
}

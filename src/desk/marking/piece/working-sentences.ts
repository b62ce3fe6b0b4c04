import { replay } from '../../../drafting/replay.ts';
import { sentenceOf } from '../../../drafting/sentence.ts';
import type { MarkedWork } from '../../../exchange/mark-work.ts';
import { layOut } from '../../../grader/lay-out.ts';
import type { Reader } from '../../../words/say.ts';

/**
 * The steps of a marked draft as drafting instructions. What is named in them is said with what it comes to on the student's
 * figure, as it was at the student's table; without that where the order cannot be laid.
 */
export function workingSentences({ exercise, order, handIn }: MarkedWork, reader: Reader): readonly string[] {
  const laid = layOut(exercise, order);
  const measures = laid.ok ? replay(laid.learner, handIn.steps).measures : undefined;
  return handIn.steps.map((step) => sentenceOf(step, reader, measures));
}

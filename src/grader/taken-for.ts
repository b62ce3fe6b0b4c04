import type { Name } from '../drafting/step.ts';
import { message } from '../words/message.ts';
import { advice } from './advice.ts';
import type { Bench, Slip } from './bench.ts';
import { isRightAnswer, type JudgedTarget } from './judge.ts';
import { type Named, shapeNamed } from './measures/lookup.ts';
import { referenceHolding } from './plan/reference-ground.ts';

/** Two answers of the same kind, each right for the other's target. */
export function exchanged(bench: Bench, judged: JudgedTarget): Slip | null {
  const other = othersRightFor(bench, judged).find((one) => isRightFor(judged, bench, one));
  return other === undefined ? null : { id: idOf(other), says: [message('grader.exchanged', names(judged, other))] };
}

/** An answer that is right for another target of the same kind. */
export function takenFor(bench: Bench, judged: JudgedTarget): Slip | null {
  const [other] = othersRightFor(bench, judged);
  if (other === undefined) return null;
  const said = message('grader.taken-for', names(judged, other));
  return { id: idOf(other), says: [said, ...advice(judged, bench.givens)] };
}

function idOf({ target }: JudgedTarget): string {
  return `taken-for-${target.name}`;
}

function names(judged: JudgedTarget, other: JudgedTarget) {
  return { target: { named: judged.target.name }, other: { named: other.target.name } };
}

/** The other targets that an answer is right for. */
function othersRightFor(bench: Bench, judged: JudgedTarget): readonly JudgedTarget[] {
  return bench.judged.filter((one) => one !== judged && isRightFor(one, bench, judged));
}

/** Whether an answer is right for another target, as the learner stood before it was given. */
function isRightFor({ target }: JudgedTarget, bench: Bench, judged: JudgedTarget): boolean {
  const { answer } = judged;
  if (target.makes !== judged.target.makes || answer.found !== 'right-kind') return false;
  const reference = groundWithout(target.name, bench, judged);
  const right = shapeNamed(reference, target.name);
  return right !== null && isRightAnswer(bench, target, answer, { right, reference });
}

/** The reference as an answer was judged by, without the learner's own answer to one of the targets before it. */
function groundWithout(target: Name, { givens, exercise }: Bench, { pins, reference }: JudgedTarget): Named {
  if (!pins.has(target)) return reference;
  return referenceHolding(exercise, givens, new Map([...pins].filter(([name]) => name !== target)));
}

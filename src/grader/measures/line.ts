import { crossLines, footOn, type Line, lineAlong } from '../../geometry/line.ts';
import { distance, type Point, quarterTurn, subtract } from '../../geometry/point.ts';
import type { LineCheck } from '../exercise.ts';
import { runsAcross } from './across.ts';
import { pointNamed } from './lookup.ts';
import type { Take } from './reading.ts';

/** Two straight lines part furthest at an end of the span, so the ends are all that need be read. */
export const takeLine: Take<LineCheck> = (check, { answer, right, reference }) => {
  if (answer.kind !== 'line' || right.kind !== 'line' || runsAcross(answer.line, right.line)) return null;
  const ends = check.between.map((name) => {
    const end = pointNamed(reference, name);
    return end === null ? null : strayAt(right.line, answer.line, end, name);
  });
  const [first, second] = ends;
  if (!first || !second) return null;
  const worst = second.stray > first.stray ? second : first;
  return {
    measured: worst.stray,
    expected: 0,
    unit: 'mm',
    displacement: subtract(worst.on, worst.foot),
    spot: worst.name,
    arrow: { from: worst.on, to: worst.foot },
  };
};

/** How far the answer is from the right line, measured square to the right line at the foot of `end`. */
function strayAt(right: Line, answer: Line, end: Point, name: string) {
  const foot = footOn(right, end);
  const square = lineAlong(foot, quarterTurn(right.direction));
  const on = square === null ? null : crossLines(square, answer);
  return on === null ? null : { name, foot, on, stray: distance(foot, on) };
}

import type { Shape } from '../../drafting/shape.ts';
import { endOf, reversePath, startOf } from '../../geometry/path.ts';
import { distance } from '../../geometry/point.ts';

/** The answer drawn the way the right one is: a curve may be drawn from either end, and its starts and sides are read by the right one's. */
export function facing(answer: Shape, right: Shape): Shape {
  if (answer.kind !== 'curve' || right.kind !== 'curve') return answer;
  const [start, end] = [startOf(answer.path), endOf(answer.path)];
  const [first, last] = [startOf(right.path), endOf(right.path)];
  const along = distance(start, first) + distance(end, last);
  const against = distance(end, first) + distance(start, last);
  return against < along ? { kind: 'curve', path: reversePath(answer.path) } : answer;
}

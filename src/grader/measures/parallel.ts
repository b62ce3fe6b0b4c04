import { crossLines, footOn, type Line, squareTo } from '../../geometry/line.ts';
import { dot, type Point, scale, subtract } from '../../geometry/point.ts';
import type { ParallelCheck } from '../exercise.ts';
import { lineNamed, outwardNormal, pointNamed } from './lookup.ts';
import type { Take } from './reading.ts';

export const takeParallel: Take<ParallelCheck> = (check, { answer, right, reference }) => {
  const from = lineNamed(reference, check.from);
  const at = pointNamed(reference, check.at);
  if (answer.kind !== 'line' || right.kind !== 'line' || from === null || at === null) return null;
  const foot = footOn(from, at);
  const drawn = metSquare(from, foot, answer.line);
  const wanted = metSquare(from, foot, right.line);
  if (drawn === null || wanted === null) return null;
  const normal = outwardNormal(from);
  const measured = dot(normal, subtract(drawn, foot));
  const expected = dot(normal, subtract(wanted, foot));
  return {
    measured,
    expected,
    unit: 'mm',
    displacement: scale(normal, measured - expected),
    spot: null,
    arrow: { from: drawn, to: wanted },
  };
};

/** Where the square from the foot meets the other line; null when they run parallel. */
function metSquare(from: Line, foot: Point, other: Line): Point | null {
  return crossLines(squareTo(from, foot), other);
}

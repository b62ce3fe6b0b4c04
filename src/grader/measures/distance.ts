import type { Line } from '../../geometry/line.ts';
import { add, distance, dot, norm, type Point, scale, subtract } from '../../geometry/point.ts';
import type { DistanceCheck } from '../exercise.ts';
import { outwardNormal, shapeNamed } from './lookup.ts';
import type { Take } from './reading.ts';

/**
 * The distance is signed, so that as far off on the wrong side is not right: from a line positive to the right or up, from a
 * point positive on the side of it where the right mark lies.
 */
export const takeDistance: Take<DistanceCheck> = (check, { answer, right, reference }) => {
  const from = shapeNamed(reference, check.from);
  if (answer.kind !== 'point' || right.kind !== 'point' || from === null) return null;
  if (from.kind === 'line') return fromLine(from.line, answer.point, right.point);
  if (from.kind === 'point') return fromPoint(from.point, answer.point, right.point);
  return null;
};

function fromLine(line: Line, answer: Point, right: Point) {
  const normal = outwardNormal(line);
  const measured = dot(normal, subtract(answer, line.through));
  const expected = dot(normal, subtract(right, line.through));
  const displacement = scale(normal, measured - expected);
  return {
    measured,
    expected,
    unit: 'mm' as const,
    displacement,
    spot: null,
    arrow: { from: answer, to: subtract(answer, displacement) },
  };
}

function fromPoint(centre: Point, answer: Point, right: Point) {
  const reach = subtract(answer, centre);
  const isBehind = dot(reach, subtract(right, centre)) < 0;
  const measured = isBehind ? -norm(reach) : norm(reach);
  const expected = distance(right, centre);
  const displacement = measured === 0 ? null : scale(reach, (measured - expected) / measured);
  return {
    measured,
    expected,
    unit: 'mm' as const,
    displacement,
    spot: null,
    arrow: displacement === null ? null : { from: answer, to: add(answer, scale(displacement, -1)) },
  };
}

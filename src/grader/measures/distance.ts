import type { Line } from '../../geometry/line.ts';
import { add, distance, dot, type Point, scale, subtract } from '../../geometry/point.ts';
import type { DistanceCheck } from '../exercise.ts';
import { outwardNormal, shapeNamed } from './lookup.ts';
import type { Take } from './reading.ts';

/** From a line the distance is signed, positive to the right or up; from a point it is plain. */
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
  const measured = distance(answer, centre);
  const expected = distance(right, centre);
  const displacement = measured === 0 ? null : scale(subtract(answer, centre), (measured - expected) / measured);
  return {
    measured,
    expected,
    unit: 'mm' as const,
    displacement,
    spot: null,
    arrow: displacement === null ? null : { from: answer, to: add(answer, scale(displacement, -1)) },
  };
}

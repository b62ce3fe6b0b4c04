import type { Shape } from '../../drafting/shape.ts';
import { lengthOf } from '../../geometry/length.ts';
import { angleFrom, type Line } from '../../geometry/line.ts';
import { directionAtStation, pointAtStation } from '../../geometry/station.ts';
import type { SquarenessCheck } from '../exercise.ts';
import { lineNamed } from './lookup.ts';
import type { Take } from './reading.ts';

const DEGREES = 180 / Math.PI;

/** The angle as undirected lines, 0 to 180 degrees anticlockwise from the named line; read as the right angle plus what it is off, at most 90 either way. */
export const takeSquareness: Take<SquarenessCheck> = (check, { answer, right, reference }) => {
  const to = lineNamed(reference, check.to);
  const drawn = straightOf(answer, check.end);
  const wanted = answer === right ? drawn : straightOf(right, check.end);
  if (to === null || drawn === null || wanted === null) return null;
  const expected = (angleFrom(to, wanted) * DEGREES + 180) % 180;
  return {
    measured: expected + angleFrom(wanted, drawn) * DEGREES,
    expected,
    unit: 'deg',
    displacement: null,
    spot: null,
    arrow: null,
  };
};

/** A line as it is; a curve by its direction at an end. */
function straightOf(shape: Shape, end: 'start' | 'end' = 'start'): Line | null {
  if (shape.kind === 'line') return shape.line;
  if (shape.kind !== 'curve') return null;
  const station = end === 'start' ? 0 : lengthOf(shape.path);
  const through = pointAtStation(shape.path, station);
  const direction = directionAtStation(shape.path, station);
  return through === null || direction === null ? null : { through, direction };
}

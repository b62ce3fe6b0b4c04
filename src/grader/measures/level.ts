import type { Shape } from '../../drafting/shape.ts';
import { crossLines } from '../../geometry/line.ts';
import { type Point, point, subtract } from '../../geometry/point.ts';
import type { LevelCheck } from '../exercise.ts';
import { runsAcross } from './across.ts';
import type { Take } from './reading.ts';

export const takeLevel: Take<LevelCheck> = (_check, { answer, right }) => {
  if (answer.kind === 'line' && right.kind === 'line' && runsAcross(answer.line, right.line)) return null;
  const drawn = heightOf(answer);
  const wanted = heightOf(right);
  if (drawn === null || wanted === null) return null;
  const to = point(drawn.x, wanted.y);
  return {
    measured: drawn.y,
    expected: wanted.y,
    unit: 'mm',
    displacement: subtract(drawn, to),
    spot: null,
    arrow: { from: drawn, to },
  };
};

/** A point as it is; a line where it meets the centre front, x = 0; an upright line has no height. */
function heightOf(shape: Shape): Point | null {
  if (shape.kind === 'point') return shape.point;
  if (shape.kind !== 'line') return null;
  return crossLines(shape.line, { through: point(0, 0), direction: point(0, 1) });
}

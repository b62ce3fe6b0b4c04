import type { Shape } from '../../drafting/shape.ts';
import type { Name } from '../../drafting/step.ts';
import type { Path } from '../../geometry/cubic.ts';
import { lengthOf } from '../../geometry/length.ts';
import { nearestOn, nearestPoint } from '../../geometry/nearest.ts';
import { endOf, startOf } from '../../geometry/path.ts';
import { distance, type Point, subtract } from '../../geometry/point.ts';
import type { AngleCheck, LengthCheck, ThroughCheck, WalkCheck } from '../exercise.ts';
import { type Named, pointNamed, shapeNamed } from './lookup.ts';
import { plainReading, type Take } from './reading.ts';

function lengthOfShape(shape: Shape | null): number | null {
  if (shape === null) return null;
  if (shape.kind === 'length') return shape.length;
  return shape.kind === 'curve' ? lengthOf(shape.path) : null;
}

export const takeLength: Take<LengthCheck> = (_check, { answer, right }) => {
  const measured = lengthOfShape(answer);
  const expected = lengthOfShape(right);
  return measured === null || expected === null ? null : plainReading(measured, expected);
};

export const takeAngle: Take<AngleCheck> = (_check, { answer, right }) => {
  if (answer.kind !== 'angle' || right.kind !== 'angle') return null;
  return plainReading((answer.angle * 180) / Math.PI, (right.angle * 180) / Math.PI, 'deg');
};

export const takeWalk: Take<WalkCheck> = (check, { answer, reference }) => {
  if (answer.kind !== 'curve') return null;
  const seam = check.against.map((name) => lengthOfShape(shapeNamed(reference, name)));
  const walked = walkedLength(answer.path, check, reference);
  if (walked === null || seam.includes(null)) return null;
  return plainReading(
    walked,
    seam.reduce<number>((sum, length) => sum + (length ?? 0), 0),
  );
};

/** The length of a curve between its match marks. */
function walkedLength(path: Path, { between }: WalkCheck, reference: Named): number | null {
  if (between === undefined) return lengthOf(path);
  const [from, to] = between.map((name) => stationOfMark(path, name, reference));
  return from == null || to == null ? null : Math.abs(to - from);
}

function stationOfMark(path: Path, name: Name, reference: Named): number | null {
  if (name === 'start') return 0;
  if (name === 'end') return lengthOf(path);
  const mark = pointNamed(reference, name);
  return mark === null ? null : nearestOn(path, mark).station;
}

export const takeThrough: Take<ThroughCheck> = (check, { answer, reference }) => {
  const point = pointNamed(reference, check.point);
  if (answer.kind !== 'curve' || point === null) return null;
  const met = meetingPlace(answer.path, check.where, point);
  return {
    measured: distance(met, point),
    expected: 0,
    unit: 'mm',
    displacement: subtract(met, point),
    spot: check.point,
    arrow: { from: met, to: point },
  };
};

function meetingPlace(path: Path, where: ThroughCheck['where'], point: Point): Point {
  if (where === 'start') return startOf(path);
  return where === 'end' ? endOf(path) : nearestPoint(path, point);
}

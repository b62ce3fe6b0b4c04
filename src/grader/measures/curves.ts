import type { Shape } from '../../drafting/shape.ts';
import { bowOf, greatestDistance } from '../../geometry/compare.ts';
import type { Path } from '../../geometry/cubic.ts';
import { lengthOf } from '../../geometry/length.ts';
import { nearestOn } from '../../geometry/nearest.ts';
import { breaksOf, inflectionsOf } from '../../geometry/smooth.ts';
import { pieceBetween } from '../../geometry/station.ts';
import type { BowCheck, InflectionCheck, LengthCheck, ShapeCheck, SmoothnessCheck, WalkCheck } from '../exercise.ts';
import type { MeasureUnit } from '../tolerance.ts';
import { pathNamed } from './lookup.ts';
import type { Reading, Take } from './reading.ts';

function plainReading(measured: number, expected: number, unit: MeasureUnit = 'mm'): Reading {
  return { measured, expected, unit, displacement: null, spot: null, arrow: null };
}

function lengthOfShape(shape: Shape): number | null {
  if (shape.kind === 'length') return shape.length;
  return shape.kind === 'curve' ? lengthOf(shape.path) : null;
}

export const takeLength: Take<LengthCheck> = (_check, { answer, right }) => {
  const measured = lengthOfShape(answer);
  const expected = lengthOfShape(right);
  return measured === null || expected === null ? null : plainReading(measured, expected);
};

export const takeWalk: Take<WalkCheck> = (check, { answer, reference }) => {
  if (answer.kind !== 'curve') return null;
  let seam = 0;
  for (const name of check.against) {
    const path = pathNamed(reference, name);
    if (path === null) return null;
    seam += lengthOf(path);
  }
  return plainReading(lengthOf(answer.path), seam);
};

export const takeBow: Take<BowCheck> = (_check, { answer, right }) => {
  if (answer.kind !== 'curve' || right.kind !== 'curve') return null;
  return plainReading(bowOf(answer.path), bowOf(right.path));
};

export const takeShape: Take<ShapeCheck> = (_check, { answer, right }) => {
  if (answer.kind !== 'curve' || right.kind !== 'curve') return null;
  const worst = greatestDistance(answer.path, right.path);
  const other = nearestOn(worst.on === 'a' ? right.path : answer.path, worst.at).point;
  const arrow = worst.on === 'a' ? { from: worst.at, to: other } : { from: other, to: worst.at };
  const displacement = { x: arrow.from.x - arrow.to.x, y: arrow.from.y - arrow.to.y };
  return { measured: worst.distance, expected: 0, unit: 'mm', displacement, spot: null, arrow };
};

export const takeSmoothness: Take<SmoothnessCheck> = (_check, { answer }) => {
  if (answer.kind !== 'curve') return null;
  const sharpest = Math.max(0, ...breaksOf(answer.path).map((at) => Math.abs(at.angle)));
  return plainReading((sharpest * 180) / Math.PI, 0, 'deg');
};

export const takeInflection: Take<InflectionCheck> = (_check, { answer, right }) => {
  if (answer.kind !== 'curve' || right.kind !== 'curve') return null;
  return plainReading(reverseDepth(answer.path), reverseDepth(right.path));
};

/** How deep the lesser of a curve's two ways of bending is, mm: each stretch between inflections has its bow; 0 when it bends one way only. */
function reverseDepth(path: Path): number {
  const ends = [0, ...inflectionsOf(path), lengthOf(path)];
  let left = 0;
  let right = 0;
  for (let i = 1; i < ends.length; i++) {
    const stretch = pieceBetween(path, ends[i - 1] ?? 0, ends[i] ?? 0);
    const bow = stretch === null ? 0 : bowOf(stretch);
    left = Math.max(left, bow);
    right = Math.max(right, -bow);
  }
  return Math.min(left, right);
}

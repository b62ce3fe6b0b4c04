import { sameShape } from '../drafting/same-shape.ts';
import type { Shape } from '../drafting/shape.ts';
import { partFurther } from '../geometry/compare.ts';
import { COINCIDENT } from '../geometry/epsilon.ts';
import { signedDistance } from '../geometry/line.ts';
import { distance, norm, subtract } from '../geometry/point.ts';
import { isRight, type JudgedTarget } from './judge.ts';

/** Earlier targets that were answered but are off: the slips that later targets must not be punished for. */
export function slipsBefore(judged: readonly JudgedTarget[], index: number): readonly JudgedTarget[] {
  return judged.slice(0, index).filter((earlier) => earlier.answer.found === 'right-kind' && !isRight(earlier));
}

/** Whether two shapes differ by more than the geometry's accuracy. */
export function differ(a: Shape, b: Shape): boolean {
  // Are they one to the last digit? Where curves run together, looking takes longest.
  if (sameShape(a, b)) return false;
  if (a.kind === 'point' && b.kind === 'point') return distance(a.point, b.point) > COINCIDENT;
  if (a.kind === 'length' && b.kind === 'length') return Math.abs(a.length - b.length) > COINCIDENT;
  if (a.kind === 'angle' && b.kind === 'angle') return Math.abs(a.angle - b.angle) > COINCIDENT;
  if (a.kind === 'line' && b.kind === 'line') {
    const turned = norm(subtract(a.line.direction, b.line.direction));
    return Math.abs(signedDistance(a.line, b.line.through)) > COINCIDENT || turned > COINCIDENT;
  }
  if (a.kind === 'curve' && b.kind === 'curve') return partFurther(a.path, b.path, COINCIDENT);
  return true;
}

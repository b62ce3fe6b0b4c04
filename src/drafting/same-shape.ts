import type { Cubic, Path } from '../geometry/cubic.ts';
import type { Point } from '../geometry/point.ts';
import type { Shape } from './shape.ts';

/** Whether two shapes are the same to the last digit: what is made from the one is then what is made from the other. */
export function sameShape(a: Shape, b: Shape): boolean {
  if (a === b) return true;
  switch (a.kind) {
    case 'point':
      return b.kind === 'point' && samePoint(a.point, b.point);
    case 'line':
      return (
        b.kind === 'line' && samePoint(a.line.through, b.line.through) && samePoint(a.line.direction, b.line.direction)
      );
    case 'curve':
      return b.kind === 'curve' && samePath(a.path, b.path);
    case 'length':
      return b.kind === 'length' && a.length === b.length;
    case 'angle':
      return b.kind === 'angle' && a.angle === b.angle;
  }
}

const samePoint = (a: Point, b: Point): boolean => a.x === b.x && a.y === b.y;

const samePath = (a: Path, b: Path): boolean =>
  a.length === b.length && a.every((piece, i) => sameCubic(piece, b[i] as Cubic));

const sameCubic = (a: Cubic, b: Cubic): boolean =>
  samePoint(a.p0, b.p0) && samePoint(a.p1, b.p1) && samePoint(a.p2, b.p2) && samePoint(a.p3, b.p3);

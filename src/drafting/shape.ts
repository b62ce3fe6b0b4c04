import type { Path } from '../geometry/cubic.ts';
import type { Line } from '../geometry/line.ts';
import type { Point } from '../geometry/point.ts';

export interface PointShape {
  readonly kind: 'point';
  readonly point: Point;
}

export interface LineShape {
  readonly kind: 'line';
  readonly line: Line;
}

export interface CurveShape {
  readonly kind: 'curve';
  readonly path: Path;
}

/** A length taken with the tape, mm. */
export interface LengthShape {
  readonly kind: 'length';
  readonly length: number;
}

/** An angle read off the protractor, radians. */
export interface AngleShape {
  readonly kind: 'angle';
  readonly angle: number;
}

/** Anything that has a name on the sheet. */
export type Shape = PointShape | LineShape | CurveShape | LengthShape | AngleShape;

export type ShapeKind = Shape['kind'];

/** What can be drawn: everything but lengths and angles, which have a value and no place. */
export type Drawn = PointShape | LineShape | CurveShape;

export function isDrawn(shape: Shape): shape is Drawn {
  return shape.kind !== 'length' && shape.kind !== 'angle';
}

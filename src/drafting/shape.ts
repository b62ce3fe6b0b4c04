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

/** Anything that has a name on the sheet. */
export type Shape = PointShape | LineShape | CurveShape | LengthShape;

export type ShapeKind = Shape['kind'];

/** What can be drawn: everything but a length. */
export type Drawn = PointShape | LineShape | CurveShape;

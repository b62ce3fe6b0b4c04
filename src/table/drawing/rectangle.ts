import type { Point } from '../../geometry/point.ts';

/** A rectangle by its middle and its half sizes; here in pixels. */
export interface Rectangle {
  readonly at: Point;
  readonly halfWide: number;
  readonly halfHigh: number;
}

/** The area two rectangles share. */
export function overlap(a: Rectangle, b: Rectangle): number {
  const wide = a.halfWide + b.halfWide - Math.abs(a.at.x - b.at.x);
  const high = a.halfHigh + b.halfHigh - Math.abs(a.at.y - b.at.y);
  return wide > 0 && high > 0 ? wide * high : 0;
}

/** How much of the straight run from `a` to `b` lies in the rectangle, from 0 to its length. */
export function runWithin(rectangle: Rectangle, a: Point, b: Point): number {
  const across = enter(a.x, b.x - a.x, rectangle.at.x - rectangle.halfWide, rectangle.at.x + rectangle.halfWide);
  const upright = enter(a.y, b.y - a.y, rectangle.at.y - rectangle.halfHigh, rectangle.at.y + rectangle.halfHigh);
  if (!across || !upright) return 0;
  const from = Math.max(0, across[0], upright[0]);
  const to = Math.min(1, across[1], upright[1]);
  return to > from ? (to - from) * Math.hypot(b.x - a.x, b.y - a.y) : 0;
}

function enter(from: number, change: number, low: number, high: number): readonly [number, number] | null {
  if (Math.abs(change) < 1e-12) return from >= low && from <= high ? [0, 1] : null;
  const a = (low - from) / change;
  const b = (high - from) / change;
  return a < b ? [a, b] : [b, a];
}

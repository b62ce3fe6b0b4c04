import type { Point } from '../../geometry/point.ts';

/** A rectangle by its middle and its half sizes; here in pixels. */
export interface Rectangle {
  readonly at: Point;
  readonly halfWide: number;
  readonly halfHigh: number;
}

/** The rectangle about a straight run. */
export function boundsOf(a: Point, b: Point): Rectangle {
  return {
    at: { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 },
    halfWide: Math.abs(a.x - b.x) / 2,
    halfHigh: Math.abs(a.y - b.y) / 2,
  };
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

/** How far the straight run from `a` to `b` keeps from the rectangle; 0 where it touches it. */
export function gapTo(rectangle: Rectangle, a: Point, b: Point): number {
  if (runWithin(rectangle, a, b) > 0) return 0;
  const { at, halfWide, halfHigh } = rectangle;
  const corners = [-1, 1].flatMap((x) => [-1, 1].map((y) => ({ x: at.x + x * halfWide, y: at.y + y * halfHigh })));
  return Math.min(outside(rectangle, a), outside(rectangle, b), ...corners.map((corner) => fromRun(corner, a, b)));
}

/** How far two rectangles keep from each other; 0 where they touch. */
export function gapBetween(a: Rectangle, b: Rectangle): number {
  const wide = Math.abs(a.at.x - b.at.x) - a.halfWide - b.halfWide;
  const high = Math.abs(a.at.y - b.at.y) - a.halfHigh - b.halfHigh;
  return Math.hypot(Math.max(0, wide), Math.max(0, high));
}

/** The place in the rectangle that is nearest to a point. */
export function nearestIn({ at, halfWide, halfHigh }: Rectangle, p: Point): Point {
  return {
    x: Math.min(at.x + halfWide, Math.max(at.x - halfWide, p.x)),
    y: Math.min(at.y + halfHigh, Math.max(at.y - halfHigh, p.y)),
  };
}

/** How far a point lies outside the rectangle; 0 within. */
function outside({ at, halfWide, halfHigh }: Rectangle, p: Point): number {
  return Math.hypot(Math.max(0, Math.abs(p.x - at.x) - halfWide), Math.max(0, Math.abs(p.y - at.y) - halfHigh));
}

function fromRun(p: Point, a: Point, b: Point): number {
  const run = { x: b.x - a.x, y: b.y - a.y };
  const long = run.x * run.x + run.y * run.y;
  const t = long > 0 ? Math.min(1, Math.max(0, ((p.x - a.x) * run.x + (p.y - a.y) * run.y) / long)) : 0;
  return Math.hypot(p.x - a.x - run.x * t, p.y - a.y - run.y * t);
}

function enter(from: number, change: number, low: number, high: number): readonly [number, number] | null {
  if (Math.abs(change) < 1e-12) return from >= low && from <= high ? [0, 1] : null;
  const a = (low - from) / change;
  const b = (high - from) / change;
  return a < b ? [a, b] : [b, a];
}

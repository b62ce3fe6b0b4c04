import type { Point } from '../../geometry/point.ts';

/** A run that goes no further than this in one direction, px, goes nowhere in it. */
const STILL = 1e-12;

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
  const part = partWithin(rectangle, a, b);
  return part > 0 ? part * long(b.x - a.x, b.y - a.y) : 0;
}

/** How far the straight run from `a` to `b` keeps from the rectangle; 0 where it touches it. */
export function gapTo(rectangle: Rectangle, a: Point, b: Point): number {
  if (partWithin(rectangle, a, b) > 0) return 0;
  const { at, halfWide, halfHigh } = rectangle;
  const [left, right, top, foot] = [at.x - halfWide, at.x + halfWide, at.y - halfHigh, at.y + halfHigh];
  return Math.min(
    outside(rectangle, a),
    outside(rectangle, b),
    fromRun(left, top, a, b),
    fromRun(left, foot, a, b),
    fromRun(right, top, a, b),
    fromRun(right, foot, a, b),
  );
}

/** How far a point keeps from the straight run from `a` to `b`. */
export function gapToPoint(p: Point, a: Point, b: Point): number {
  return fromRun(p.x, p.y, a, b);
}

/** How far two rectangles keep from each other; 0 where they touch. */
export function gapBetween(a: Rectangle, b: Rectangle): number {
  const wide = Math.abs(a.at.x - b.at.x) - a.halfWide - b.halfWide;
  const high = Math.abs(a.at.y - b.at.y) - a.halfHigh - b.halfHigh;
  return long(Math.max(0, wide), Math.max(0, high));
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
  return long(Math.max(0, Math.abs(p.x - at.x) - halfWide), Math.max(0, Math.abs(p.y - at.y) - halfHigh));
}

function fromRun(x: number, y: number, a: Point, b: Point): number {
  const [runX, runY] = [b.x - a.x, b.y - a.y];
  const square = runX * runX + runY * runY;
  const t = square > 0 ? Math.min(1, Math.max(0, ((x - a.x) * runX + (y - a.y) * runY) / square)) : 0;
  return long(x - a.x - runX * t, y - a.y - runY * t);
}

/** What part of the straight run from `a` to `b` lies in the rectangle, from 0 to 1. Asked thousands of times a sheet: nothing is made. */
function partWithin({ at, halfWide, halfHigh }: Rectangle, a: Point, b: Point): number {
  const [left, right, top, foot] = [at.x - halfWide, at.x + halfWide, at.y - halfHigh, at.y + halfHigh];
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const from = Math.max(0, entersAt(a.x, dx, left, right), entersAt(a.y, dy, top, foot));
  const to = Math.min(1, leavesAt(a.x, dx, left, right), leavesAt(a.y, dy, top, foot));
  return Math.max(0, to - from);
}

/** From what part of its change on something lies between two bounds; never where it stays outside them. */
function entersAt(from: number, change: number, low: number, high: number): number {
  if (Math.abs(change) < STILL) return from >= low && from <= high ? 0 : Number.POSITIVE_INFINITY;
  return Math.min((low - from) / change, (high - from) / change);
}

function leavesAt(from: number, change: number, low: number, high: number): number {
  return Math.abs(change) < STILL ? 1 : Math.max((low - from) / change, (high - from) / change);
}

/** How long a step is. `Math.hypot` guards against overflow, which pixels never come near, and takes several times as long. */
function long(dx: number, dy: number): number {
  return Math.sqrt(dx * dx + dy * dy);
}

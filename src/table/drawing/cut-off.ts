import type { Point } from '../../geometry/point.ts';
import type { Rectangle } from './rectangle.ts';
import type { Seat } from './seats.ts';

/** Words keep this far from the edge of what is shown, px: their length is a guess, and so, by a tenth, is the scale they are laid out at. */
const CLEAR = 6;

/** Whether all of a rectangle lies in another, by so many pixels. */
export function isInside(one: Rectangle, other: Rectangle, by = 0): boolean {
  const { x, y } = apart(one, other);
  return x <= other.halfWide - one.halfWide - by && y <= other.halfHigh - one.halfHigh - by;
}

/** What is out of sight is liked less than a place in sight, even one with a leader, px. */
const UNSEEN = 120;

/**
 * How little is liked where a seat lies in what is shown, px; null where it may not be taken. What stands about a place in sight,
 * an anchor in pixels, is to be seen whole: half a name can be the name of something else. What stands about a place that is out
 * of sight stays out too. Where all is shown (null) nothing is cut off.
 */
export function costOfEdge({ rectangle }: Seat, anchor: Point, shown: Rectangle | null): number | null {
  if (shown === null) return 0;
  if (isInside({ at: anchor, halfWide: 0, halfHigh: 0 }, shown)) return isInside(rectangle, shown, CLEAR) ? 0 : null;
  return isOutside(rectangle, shown) ? UNSEEN : null;
}

function isOutside(one: Rectangle, other: Rectangle): boolean {
  const { x, y } = apart(one, other);
  return x >= one.halfWide + other.halfWide + CLEAR || y >= one.halfHigh + other.halfHigh + CLEAR;
}

function apart({ at: one }: Rectangle, { at: other }: Rectangle): Point {
  return { x: Math.abs(one.x - other.x), y: Math.abs(one.y - other.y) };
}

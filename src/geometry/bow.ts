import type { Path } from './cubic.ts';
import { pointAt } from './cubic.ts';
import { lineThrough, signedDistance } from './line.ts';
import { endOf, startOf } from './path.ts';
import { cross, type Point, quarterTurn } from './point.ts';
import { signChanges } from './polynomial.ts';
import { powerOf } from './power.ts';

/** Where a path is furthest from the line through its ends. */
export interface Bow {
  /** How far, mm: positive when that place lies to the left of the way from start to end. */
  readonly by: number;
  readonly at: Point;
  /** Square to that line, to the left of the way; of length 1. */
  readonly left: Point;
}

const turns = new Float64Array(2);

/** The greatest bow of the path; null when its ends coincide, for then there is no chord. */
export function greatestBow(path: Path): Bow | null {
  const chord = lineThrough(startOf(path), endOf(path));
  if (!chord) return null;
  let by = 0;
  let at = startOf(path);
  const see = (p: Point) => {
    const off = signedDistance(chord, p);
    if (Math.abs(off) > Math.abs(by)) [by, at] = [off, p];
  };
  for (const piece of path) {
    const b = powerOf(piece);
    const slope = [
      cross(chord.direction, { x: b.x1, y: b.y1 }),
      2 * cross(chord.direction, { x: b.x2, y: b.y2 }),
      3 * cross(chord.direction, { x: b.x3, y: b.y3 }),
    ];
    const count = signChanges(slope, 2, turns);
    for (const t of turns.subarray(0, count)) see(pointAt(piece, t));
    see(piece.p0);
  }
  return { by, at, left: quarterTurn(chord.direction) };
}

/** How far a path is at most from the line through its ends, mm, signed as its bow is; 0 when its ends coincide. */
export function bowOf(path: Path): number {
  return greatestBow(path)?.by ?? 0;
}

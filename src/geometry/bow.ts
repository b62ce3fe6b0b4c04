import type { Path } from './cubic.ts';
import { pointAt } from './cubic.ts';
import { lineThrough, signedDistance } from './line.ts';
import { endOf, startOf } from './path.ts';
import { type Point, quarterTurn } from './point.ts';
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

const slope = new Float64Array(3);
const turns = new Float64Array(2);

/** The greatest bow of the path; null when its ends coincide, for then there is no chord. */
export function greatestBow(path: Path): Bow | null {
  const chord = lineThrough(startOf(path), endOf(path));
  if (!chord) return null;
  const { x, y } = chord.direction;
  let by = 0;
  let at = startOf(path);
  for (const piece of path) {
    const { x1, y1, x2, y2, x3, y3 } = powerOf(piece);
    slope[0] = x * y1 - y * x1;
    slope[1] = 2 * (x * y2 - y * x2);
    slope[2] = 3 * (x * y3 - y * x3);
    const count = signChanges(slope, 2, turns);
    // Where it turns, and where it begins.
    for (let i = 0; i <= count; i++) {
      const p = i < count ? pointAt(piece, turns[i] as number) : piece.p0;
      const off = signedDistance(chord, p);
      if (!(Math.abs(off) > Math.abs(by))) continue;
      by = off;
      at = p;
    }
  }
  return { by, at, left: quarterTurn(chord.direction) };
}

/** How far a path is at most from the line through its ends, mm, signed as its bow is; 0 when its ends coincide. */
export function bowOf(path: Path): number {
  return greatestBow(path)?.by ?? 0;
}

import type { CurveThrough, Passing } from '../../drafting/step.ts';
import type { Cubic, Path } from '../../geometry/cubic.ts';
import { cross, distance, dot, norm, type Point, scale, subtract } from '../../geometry/point.ts';

/** A handle of a curve: it turns the curve where it passes a point, and says how far it keeps that direction. */
export interface Handle {
  /** Which point of the curve. */
  readonly point: number;
  readonly side: 'before' | 'after';
  readonly at: Point;
  readonly root: Point;
}

/** Handles nearer than this to their point, as a fraction of the chord, could not be picked up again. */
const SHORTEST = 0.02;
const LONGEST = 3;

/** The handles of a drawn curve, two to each point but the ends. */
export function handlesOf(path: Path): Handle[] {
  return path.flatMap((piece, index): Handle[] => [
    { point: index, side: 'after', at: piece.p1, root: piece.p0 },
    { point: index + 1, side: 'before', at: piece.p2, root: piece.p3 },
  ]);
}

/** The `shape` of a curve when one of its handles is put at `to`; the other points keep theirs. */
export function bent(
  step: CurveThrough,
  path: Path,
  handle: Pick<Handle, 'point' | 'side'>,
  to: Point,
): readonly (Passing | null)[] {
  return step.through.map((_, index) => {
    if (index !== handle.point) return step.shape?.[index] ?? null;
    const now = passingOf(path, index);
    const root = rootOf(path, index);
    const reach = subtract(to, root);
    const span = path[handle.side === 'after' ? index : index - 1] as Cubic;
    // Is the handle laid on its own point? Then it has no direction: keep the one it had.
    if (!(norm(reach) > 0)) return now;
    const direction = handle.side === 'after' ? reach : scale(reach, -1);
    const long = Math.min(LONGEST, Math.max(SHORTEST, norm(reach) / distance(span.p0, span.p3)));
    return { ...now, turn: angle(chordAt(path, index), direction), [handle.side]: long };
  });
}

/** How a drawn curve passes its point: the direction from the chord of its neighbours, and its handles. */
function passingOf(path: Path, index: number): Passing {
  const before = path[index - 1];
  const after = path[index];
  const direction = after ? subtract(after.p1, after.p0) : subtract((before as Cubic).p3, (before as Cubic).p2);
  const one = after ? distance(after.p1, after.p0) / distance(after.p0, after.p3) : null;
  const other = before ? distance(before.p2, before.p3) / distance(before.p0, before.p3) : null;
  return { turn: angle(chordAt(path, index), direction), before: other ?? one ?? 1 / 3, after: one ?? other ?? 1 / 3 };
}

function rootOf(path: Path, index: number): Point {
  return path[index]?.p0 ?? (path[index - 1] as Cubic).p3;
}

/** The chord a passing's turn is told from: between the neighbours, or at an end to the next point. */
function chordAt(path: Path, index: number): Point {
  const from = path[index - 1]?.p0 ?? (path[index] as Cubic).p0;
  const to = path[index]?.p3 ?? (path[index - 1] as Cubic).p3;
  return subtract(to, from);
}

function angle(from: Point, to: Point): number {
  return Math.atan2(cross(from, to), dot(from, to));
}

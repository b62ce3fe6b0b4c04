import { passingMoved, passingsOf } from '../../drafting/curve/passings.ts';
import type { CurveThrough, Passing } from '../../drafting/step.ts';
import type { Path } from '../../geometry/cubic.ts';
import { endOf } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';

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
  { point, side }: Pick<Handle, 'point' | 'side'>,
  to: Point,
): readonly (Passing | null)[] {
  const points = [...path.map(({ p0 }) => p0), endOf(path)];
  const now = passingsOf(path)[point];
  return step.through.map((_, index) => {
    if (index !== point || now === undefined) return step.shape?.[index] ?? null;
    const moved = passingMoved(points, index, side, to, now);
    return { ...moved, [side]: Math.min(LONGEST, Math.max(SHORTEST, moved[side])) };
  });
}

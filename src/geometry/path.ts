import { type Cubic, type Path, reverseCubic, straight } from './cubic.ts';
import { COINCIDENT } from './epsilon.ts';
import { distance, type Point } from './point.ts';

/** The piece at `index`. A path is never empty; an index outside it is a mistake of the caller. */
export function pieceAt(path: Path, index: number): Cubic {
  const piece = path[index];
  if (!piece) throw new RangeError(`a path of ${path.length} pieces has no piece ${index}`);
  return piece;
}

/** Where the path starts. */
export function startOf(path: Path): Point {
  return pieceAt(path, 0).p0;
}

/** Where the path ends. */
export function endOf(path: Path): Point {
  return pieceAt(path, path.length - 1).p3;
}

/** The same path run from its end to its start. */
export function reversePath(path: Path): Path {
  return path.map(reverseCubic).reverse();
}

/**
 * One path through all of `paths`, in order. Ends that meet within COINCIDENT are made the same point.
 * Null when there is nothing to join, or when ends do not meet.
 */
export function joinPaths(paths: readonly Path[]): Path | null {
  const joined: Cubic[] = [];
  for (const path of paths) {
    for (const piece of path) {
      const last = joined.at(-1);
      if (last && !(distance(last.p3, piece.p0) <= COINCIDENT)) return null;
      joined.push(last ? startingAt(piece, last.p3) : piece);
    }
  }
  return joined.length > 0 ? joined : null;
}

/** The piece with its start moved to `start`, its handle along with it; the very same piece when it starts there. */
export function startingAt(piece: Cubic, start: Point): Cubic {
  const { p0, p1 } = piece;
  if (p0.x === start.x && p0.y === start.y) return piece;
  return { ...piece, p0: start, p1: { x: p1.x + start.x - p0.x, y: p1.y + start.y - p0.y } };
}

/** Straight runs through `points`; points that coincide with the one before are passed over. Null when fewer than two are left. */
export function polyline(points: readonly Point[]): Path | null {
  const pieces: Cubic[] = [];
  let last = points[0];
  for (const next of points) {
    if (!last || !(distance(last, next) > COINCIDENT)) continue;
    pieces.push(straight(last, next));
    last = next;
  }
  return pieces.length > 0 ? pieces : null;
}

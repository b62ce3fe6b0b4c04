import type { Cubic, Path } from '../../geometry/cubic.ts';
import type { Point } from '../../geometry/point.ts';
import type { Part } from './drawing.ts';

/** A straight run of ink. */
export interface Run {
  readonly from: Point;
  readonly to: Point;
}

const PIECES = 8;

/** Everything on the sheet as straight runs, for keeping words off the lines. Coarse on purpose. */
export function runsOf(parts: readonly Part[]): Run[] {
  return parts.flatMap((part) => {
    if (part.kind === 'line') return [{ from: part.from, to: part.to }];
    if (part.kind === 'arrow') return [{ from: part.from, to: part.to }];
    if (part.kind === 'mark') return [{ from: part.at, to: { x: part.at.x + 1e-3, y: part.at.y } }];
    return part.kind === 'curve' ? runsAlong(part.path) : [];
  });
}

function runsAlong(path: Path): Run[] {
  return path.flatMap((piece) =>
    Array.from({ length: PIECES }, (_, i) => ({ from: on(piece, i / PIECES), to: on(piece, (i + 1) / PIECES) })),
  );
}

/** Points along a path, close enough together to look smooth, ends included. For the eye only. */
export function sampled(path: Path, pieces: number): Point[] {
  const first = path[0];
  if (!first) return [];
  const rest = path.flatMap((piece) => Array.from({ length: pieces }, (_, i) => on(piece, (i + 1) / pieces)));
  return [first.p0, ...rest];
}

/** The point at parameter `t` of a cubic piece (Bernstein form). */
function on({ p0, p1, p2, p3 }: Cubic, t: number): Point {
  const s = 1 - t;
  const [a, b, c, d] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
  return { x: a * p0.x + b * p1.x + c * p2.x + d * p3.x, y: a * p0.y + b * p1.y + c * p2.y + d * p3.y };
}

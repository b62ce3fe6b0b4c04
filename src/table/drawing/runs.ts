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
    isStraight(piece)
      ? [{ from: piece.p0, to: piece.p3 }]
      : Array.from({ length: PIECES }, (_, i) => ({ from: on(piece, i / PIECES), to: on(piece, (i + 1) / PIECES) })),
  );
}

/** Whether a piece runs straight on from its start to its end: a polyline is made of such pieces, and a class of polylines. */
function isStraight({ p0, p1, p2, p3 }: Cubic): boolean {
  const along = { x: p3.x - p0.x, y: p3.y - p0.y };
  const across = ({ x, y }: Point): number => Math.abs((x - p0.x) * along.y - (y - p0.y) * along.x);
  const least = 1e-9 * (along.x * along.x + along.y * along.y);
  const isBetween = ({ x, y }: Point): boolean => {
    const part = (x - p0.x) * along.x + (y - p0.y) * along.y;
    return part >= 0 && part <= along.x * along.x + along.y * along.y;
  };
  return across(p1) <= least && across(p2) <= least && isBetween(p1) && isBetween(p2);
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

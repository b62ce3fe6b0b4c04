import { type Cubic, type Path, pointAt } from './cubic.ts';
import { CONVERGED } from './epsilon.ts';
import { pieceAt } from './path.ts';
import { distance, type Point } from './point.ts';
import { signChanges } from './polynomial.ts';
import { type Place, stationOfPlace } from './station.ts';
import { spend } from './work.ts';

/** The point of a path nearest to a given one: where, how far along from the path's start, and how far off, mm. */
export interface Nearest {
  readonly point: Point;
  readonly station: number;
  readonly distance: number;
}

/**
 * The point of the path nearest to `p`; the earliest where several are equally near.
 * Every place where the line to `p` is square to the path is found (a polynomial of degree 5), so none can be missed.
 */
export function nearestOn(path: Path, p: Point): Nearest {
  const place = nearestPlace(path, p);
  const point = pointAt(pieceAt(path, place.index), place.t);
  return { point, station: stationOfPlace(path, place), distance: distance(point, p) };
}

/** That point, without how far along it lies. */
export function nearestPoint(path: Path, p: Point): Point {
  // Does a piece begin or end there? Curves are mostly asked about points that they were drawn through.
  for (const { p0, p3 } of path) if (isAt(p0, p) || isAt(p3, p)) return p;
  const { index, t } = nearestPlace(path, p);
  return pointAt(pieceAt(path, index), t);
}

function isAt(one: Point, other: Point): boolean {
  return one.x === other.x && one.y === other.y;
}

/** The nearest place, without its station; `first` is the piece to look at first, which saves work when it is near. */
export function nearestPlace(path: Path, p: Point, first = 0): Place {
  spend(path.length / 64);
  let index = first;
  let best = nearestParameter(pieceAt(path, first), p);
  let least = leastSquare;
  for (let i = 0; i < path.length; i++) {
    const piece = pieceAt(path, i);
    if (i === first || boxSquare(piece, p) > least) continue;
    const t = nearestParameter(piece, p);
    if (leastSquare < least || (leastSquare === least && i < index)) {
      index = i;
      best = t;
      least = leastSquare;
    }
  }
  return { index, t: best };
}

/** The nearest place where it is no further off than `most`, mm; else null, and mostly at a glance. */
export function placeWithin(path: Path, p: Point, most: number): Place | null {
  // Is it outside every box? A hair more is allowed for rounding.
  const square = 4 * most * most;
  if (path.every((piece) => boxSquare(piece, p) > square)) return null;
  const place = nearestPlace(path, p);
  return distance(pointAt(pieceAt(path, place.index), place.t), p) <= most ? place : null;
}

/** The square of the distance from `p` to the box about the control points: no point of the piece is nearer. */
function boxSquare({ p0, p1, p2, p3 }: Cubic, { x, y }: Point): number {
  const dx = Math.max(Math.min(p0.x, p1.x, p2.x, p3.x) - x, x - Math.max(p0.x, p1.x, p2.x, p3.x), 0);
  const dy = Math.max(Math.min(p0.y, p1.y, p2.y, p3.y) - y, y - Math.max(p0.y, p1.y, p2.y, p3.y), 0);
  return dx * dx + dy * dy;
}

/** What `nearestParameter` found last: the square of its distance. Kept here so that the innermost loop returns no object. */
let leastSquare = Number.POSITIVE_INFINITY;

const quintic = new Float64Array(6);
const feet = new Float64Array(7);

/** The parameter of the piece's point nearest to `p`. */
function nearestParameter(c: Cubic, p: Point): number {
  const count = feetOn(c, p, feet);
  let best = 0;
  leastSquare = squareAt(c, p, 0);
  for (let i = 0; i <= count; i++) {
    const t = i < count ? (feet[i] as number) : 1;
    const square = squareAt(c, p, t);
    if (square < leastSquare) {
      leastSquare = square;
      best = t;
    }
  }
  return best;
}

function squareAt(c: Cubic, p: Point, t: number): number {
  const u = 1 - t;
  const b0 = u * u * u;
  const b1 = 3 * u * u * t;
  const b2 = 3 * u * t * t;
  const b3 = t * t * t;
  const dx = b0 * c.p0.x + b1 * c.p1.x + b2 * c.p2.x + b3 * c.p3.x - p.x;
  const dy = b0 * c.p0.y + b1 * c.p1.y + b2 * c.p2.y + b3 * c.p3.y - p.y;
  return dx * dx + dy * dy;
}

/**
 * Every parameter strictly inside 0..1 where the line from `p` is square to the piece and the distance turns, ascending,
 * into `out` (at least 6 long); returns how many. The roots of (B(t) - p) . B'(t).
 */
export function feetOn(c: Cubic, p: Point, out: Float64Array): number {
  const { p0, p1, p2, p3 } = c;
  const rx = p0.x - p.x;
  const ry = p0.y - p.y;
  const ax = 3 * (p1.x - p0.x);
  const ay = 3 * (p1.y - p0.y);
  const bx = 3 * (p0.x - 2 * p1.x + p2.x);
  const by = 3 * (p0.y - 2 * p1.y + p2.y);
  const cx = p3.x - p0.x + 3 * (p1.x - p2.x);
  const cy = p3.y - p0.y + 3 * (p1.y - p2.y);
  quintic[0] = rx * ax + ry * ay;
  quintic[1] = 2 * (rx * bx + ry * by) + ax * ax + ay * ay;
  // A straight run at an even pace: the rest is rounding.
  if (Math.abs(bx) + Math.abs(by) + Math.abs(cx) + Math.abs(cy) < CONVERGED * 1e-3) return signChanges(quintic, 1, out);
  quintic[2] = 3 * (rx * cx + ry * cy + ax * bx + ay * by);
  quintic[3] = 4 * (ax * cx + ay * cy) + 2 * (bx * bx + by * by);
  quintic[4] = 5 * (bx * cx + by * cy);
  quintic[5] = 3 * (cx * cx + cy * cy);
  return signChanges(quintic, 5, out);
}

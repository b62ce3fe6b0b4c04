import { type Cubic, type Path, pointAt } from './cubic.ts';
import { COINCIDENT } from './epsilon.ts';
import { pieceAt } from './path.ts';
import { distance, hypotenuse, type Point } from './point.ts';

/** A stretch of a path, and by how much it turns in all, to either side, radians: never negative. */
export interface Turning {
  readonly by: number;
  readonly from: Point;
  /** The place half way along the turning. */
  readonly at: Point;
  readonly to: Point;
}

/** A path is looked at in steps no longer than this, mm: a loop that none of them meets is a blot, and no loop. */
const STEP = 2;

/** A piece is looked at in no fewer steps than this, however short it is, and in no more than that, however long. */
const [LEAST, MOST] = [16, 200];

/**
 * The stretch of a path, no longer than this, mm, that turns most: turns to the left and to the right are added up, and corners
 * count. Read off points no more than STEP apart, which miss the turn of the first and the last of them.
 */
export function sharpestTurn(path: Path, length: number): Turning {
  const { points, turns, runs } = walkOf(path);
  let worst = { by: 0, from: 0, to: 0 };
  let [by, run, from] = [0, 0, 0];
  for (let to = 1; to < points.length; to++) {
    run += runs[to] as number;
    // What turns at the first point of a stretch is turned before it, and at the last after it.
    if (to - 1 > from) by += turns[to - 1] as number;
    while (run > length && from < to - 1) {
      from++;
      run -= runs[from] as number;
      by -= turns[from] as number;
    }
    if (by > worst.by) worst = { by, from, to };
  }
  const at = halfWay(turns, worst);
  return { by: worst.by, from: pointIn(points, worst.from), at: pointIn(points, at), to: pointIn(points, worst.to) };
}

/** Points along a path, the run to each from the one before, mm, and by how much the way turns at each, radians: nothing at both ends. */
interface Walk {
  readonly points: readonly Point[];
  readonly runs: Float64Array;
  readonly turns: Float64Array;
}

/** A path is walked once, whatever stretches of it are looked at. */
const walked = new WeakMap<Path, Walk>();

function walkOf(path: Path): Walk {
  const known = walked.get(path) ?? walkAlong(pointsOf(path));
  walked.set(path, known);
  return known;
}

function walkAlong(points: readonly Point[]): Walk {
  const [runs, turns] = [new Float64Array(points.length), new Float64Array(points.length)];
  let [dx, dy] = [0, 0];
  for (let i = 1; i < points.length; i++) {
    const [p, q] = [pointIn(points, i - 1), pointIn(points, i)];
    const [x, y] = [q.x - p.x, q.y - p.y];
    runs[i] = hypotenuse(x, y);
    if (i > 1) turns[i - 1] = Math.abs(Math.atan2(dx * y - dy * x, dx * x + dy * y));
    [dx, dy] = [x, y];
  }
  return { points, runs, turns };
}

/** None of them on the one before. */
function pointsOf(path: Path): readonly Point[] {
  const points = [pieceAt(path, 0).p0];
  for (const piece of path) {
    const count = stepsAlong(piece);
    for (let i = 1; i <= count; i++) {
      const p = pointAt(piece, i / count);
      if (distance(pointIn(points, points.length - 1), p) > COINCIDENT) points.push(p);
    }
  }
  return points;
}

function stepsAlong({ p0, p1, p2, p3 }: Cubic): number {
  const run = distance(p0, p1) + distance(p1, p2) + distance(p2, p3);
  return Math.min(MOST, Math.max(LEAST, Math.ceil(run / STEP)));
}

function halfWay(turns: Float64Array, { by, from, to }: { by: number; from: number; to: number }): number {
  let [at, turned] = [from, 0];
  while (at < to && turned < by / 2) {
    at++;
    turned += turns[at] as number;
  }
  return at;
}

function pointIn(points: readonly Point[], at: number): Point {
  return points[at] as Point;
}

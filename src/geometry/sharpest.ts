import type { Cubic, Path } from './cubic.ts';
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
const STEP = 4;

/** A piece is looked at in no fewer steps than this, however short it is, and in no more than that, however long. */
const [LEAST, MOST] = [16, 200];

/**
 * The stretch of a path, no longer than this, mm, that turns most: turns to the left and to the right are added up, and corners
 * count. Read off points no more than STEP apart, which miss the turn of the first and the last of them.
 */
export function sharpestTurn(path: Path, length: number): Turning {
  const walk = walkOf(path);
  const { count, turns, runs } = walk;
  let worst = { by: 0, from: 0, to: 0 };
  let [by, run, from] = [0, 0, 0];
  for (let to = 1; to < count; to++) {
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
  return { by: worst.by, from: placeIn(walk, worst.from), at: placeIn(walk, at), to: placeIn(walk, worst.to) };
}

/**
 * So many points along a path, none on the one before; the run to each from the one before, mm, and by how much the way turns at
 * each, radians: nothing at both ends.
 */
interface Walk {
  readonly count: number;
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  readonly runs: Float64Array;
  readonly turns: Float64Array;
}

/** A path is walked once, whatever stretches of it are looked at. */
const walked = new WeakMap<Path, Walk>();

function walkOf(path: Path): Walk {
  const known = walked.get(path) ?? walkAlong(path);
  walked.set(path, known);
  return known;
}

function walkAlong(path: Path): Walk {
  const most = path.reduce((sum, piece) => sum + stepsAlong(piece), 1);
  const [xs, ys] = [new Float64Array(most), new Float64Array(most)];
  const { x, y } = pieceAt(path, 0).p0;
  [xs[0], ys[0]] = [x, y];
  let count = 1;
  for (const piece of path) count = stepOn(piece, xs, ys, count);
  return { count, xs, ys, ...turnsAlong(xs, ys, count) };
}

/** Writes down the points of a piece but its first; gives how many there are by then. */
function stepOn({ p0, p1, p2, p3 }: Cubic, xs: Float64Array, ys: Float64Array, before: number): number {
  const steps = stepsAlong({ p0, p1, p2, p3 });
  let count = before;
  for (let i = 1; i <= steps; i++) {
    const t = i / steps;
    const u = 1 - t;
    const [a, b, c, d] = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t];
    const x = a * p0.x + b * p1.x + c * p2.x + d * p3.x;
    const y = a * p0.y + b * p1.y + c * p2.y + d * p3.y;
    if (Math.abs(x - (xs[count - 1] as number)) + Math.abs(y - (ys[count - 1] as number)) <= COINCIDENT) continue;
    xs[count] = x;
    ys[count] = y;
    count++;
  }
  return count;
}

function turnsAlong(xs: Float64Array, ys: Float64Array, count: number): Pick<Walk, 'runs' | 'turns'> {
  const [runs, turns] = [new Float64Array(count), new Float64Array(count)];
  let [dx, dy] = [0, 0];
  for (let i = 1; i < count; i++) {
    const x = (xs[i] as number) - (xs[i - 1] as number);
    const y = (ys[i] as number) - (ys[i - 1] as number);
    runs[i] = hypotenuse(x, y);
    if (i > 1) turns[i - 1] = Math.abs(Math.atan2(dx * y - dy * x, dx * x + dy * y));
    dx = x;
    dy = y;
  }
  return { runs, turns };
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

function placeIn({ xs, ys }: Walk, at: number): Point {
  return { x: xs[at] as number, y: ys[at] as number };
}

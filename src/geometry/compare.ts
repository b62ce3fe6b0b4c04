import { squareOfCubic } from './bernstein.ts';
import { type Cubic, type Path, pointAt, subCubic } from './cubic.ts';
import { COINCIDENT } from './epsilon.ts';
import { nearestPlace } from './nearest.ts';
import { pieceAt } from './path.ts';
import { distance, type Point, subtract } from './point.ts';
import type { Place } from './station.ts';

/** The place where two paths are furthest from agreeing: how far, where, and on which of them that place lies. */
export interface GreatestDistance {
  readonly distance: number;
  readonly at: Point;
  readonly on: 'a' | 'b';
}

/**
 * The greatest distance between two paths, both ways (the Hausdorff distance): the furthest any point of either lies from
 * the other. Branch and bound: a stretch is looked at again only while a bound on its distance is above the greatest
 * found by more than COINCIDENT. The result is certain to that, unless the paths run so evenly apart over so long a way
 * that a thousand looks do not settle it; then the greatest of those thousand stands.
 */
export function greatestDistance(a: Path, b: Path): GreatestDistance {
  const there = furthestFrom(a, b, 0, Number.POSITIVE_INFINITY);
  const back = furthestFrom(b, a, there.off, Number.POSITIVE_INFINITY);
  return back.off > there.off
    ? { distance: back.off, at: back.point, on: 'b' }
    : { distance: there.off, at: there.point, on: 'a' };
}

/** Whether two paths part further than this anywhere, as `greatestDistance` finds; where they do, that is mostly seen at a glance. */
export function partFurther(a: Path, b: Path, most: number): boolean {
  // Run at the same pace, they are no further apart than their control points.
  if (a.length === b.length && a.every((piece, i) => handlesApart(piece, pieceAt(b, i)) <= most)) return false;
  const there = furthestFrom(a, b, 0, most);
  return there.off > most || furthestFrom(b, a, there.off, most).off > most;
}

/** The greatest distance between the control points of two pieces. */
function handlesApart(a: Cubic, b: Cubic): number {
  return Math.max(distance(a.p0, b.p0), distance(a.p1, b.p1), distance(a.p2, b.p2), distance(a.p3, b.p3));
}

/** A point of one path and its nearest place on the other. */
interface Look {
  readonly t: number;
  readonly point: Point;
  readonly foot: Place;
  readonly off: number;
}

/** A stretch of one piece between two looks, and a bound on how far off it gets. */
interface Span {
  readonly piece: Cubic;
  readonly from: Look;
  readonly to: Look;
  readonly most: number;
}

/** More looks than this are not worth a grader's time. */
const MOST = 1000;

/** The point of `a` furthest from `b`, or the first found that is further off than `enough`; stretches that cannot beat `floor` are passed over. */
function furthestFrom(a: Path, b: Path, floor: number, enough: number): Look {
  let best = lookFrom(pieceAt(a, 0), 0, b, 0);
  const spans: Span[] = [];
  const open = (piece: Cubic, from: Look, to: Look) => {
    if (to.off > best.off) best = to;
    const most = boundOf(piece, from, to, b);
    if (most > Math.max(best.off, floor) + COINCIDENT) spans.push({ piece, from, to, most });
  };
  let last = best;
  for (const piece of a) {
    const end = lookFrom(piece, 1, b, last.foot.index);
    open(piece, { ...last, t: 0 }, end);
    if (best.off > enough) return best;
    last = end;
  }
  for (let looks = 0; looks < MOST; looks++) {
    const span = takeWidest(spans);
    if (!span || span.most <= Math.max(best.off, floor) + COINCIDENT) break;
    const middle = lookFrom(span.piece, 0.5 * (span.from.t + span.to.t), b, span.from.foot.index);
    open(span.piece, span.from, middle);
    open(span.piece, middle, span.to);
    if (best.off > enough) break;
  }
  return best;
}

function lookFrom(piece: Cubic, t: number, b: Path, hint: number): Look {
  const point = pointAt(piece, t);
  const foot = nearestPlace(b, point, hint);
  return { t, point, foot, off: distance(point, pointAt(pieceAt(b, foot.index), foot.t)) };
}

/** Takes out the span with the greatest bound. */
function takeWidest(spans: Span[]): Span | undefined {
  let widest = 0;
  for (let i = 1; i < spans.length; i++) {
    if ((spans[i] as Span).most > (spans[widest] as Span).most) widest = i;
  }
  const span = spans[widest];
  const last = spans.pop();
  if (last && widest < spans.length) spans[widest] = last;
  return span;
}

/** A distance that no point of the stretch exceeds, by the best of three arguments. */
function boundOf(piece: Cubic, from: Look, to: Look, b: Path): number {
  const stretch = subCubic(piece, from.t, to.t);
  // 1. Distance changes no faster than the point moves.
  const run = distance(stretch.p0, stretch.p1) + distance(stretch.p1, stretch.p2) + distance(stretch.p2, stretch.p3);
  const lazy = 0.5 * (from.off + to.off + run);
  if (from.foot.index !== to.foot.index) return lazy;
  const other = subCubic(pieceAt(b, from.foot.index), from.foot.t, to.foot.t);
  // 2. Run both at an even pace: the greatest coefficient of the squared difference bounds it.
  const even = Math.sqrt(
    Math.max(
      ...squareOfCubic(
        subtract(stretch.p0, other.p0),
        subtract(stretch.p1, other.p1),
        subtract(stretch.p2, other.p2),
        subtract(stretch.p3, other.p3),
      ),
    ),
  );
  // 3. Distance to a chord is convex, so the handles bound it; the other curve stays within its bow of the chord.
  const chord = Math.max(...[stretch.p0, stretch.p1, stretch.p2, stretch.p3].map((p) => toSegment(p, other)));
  const bow = Math.max(toSegment(other.p1, other), toSegment(other.p2, other));
  return Math.min(lazy, even, chord + bow);
}

/** The distance from `p` to the chord of the piece, mm. */
function toSegment(p: Point, { p0, p3 }: Cubic): number {
  const chord = subtract(p3, p0);
  const square = chord.x * chord.x + chord.y * chord.y;
  const reach = subtract(p, p0);
  const t = square > 0 ? Math.min(1, Math.max(0, (reach.x * chord.x + reach.y * chord.y) / square)) : 0;
  return distance(p, { x: p0.x + t * chord.x, y: p0.y + t * chord.y });
}

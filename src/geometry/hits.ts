import { type Path, pointAt } from './cubic.ts';
import { COINCIDENT, SAME_CROSSING, TOUCH } from './epsilon.ts';
import { pieceAt } from './path.ts';
import { distance, type Point } from './point.ts';
import type { Place } from './station.ts';
import { spend } from './work.ts';

/** Where a path meets something: the place on it and the point. */
export interface Hit extends Place {
  readonly point: Point;
}

/** The hit at a place of the path. */
export function hitAt(path: Path, index: number, t: number): Hit {
  return { index, t, point: pointAt(pieceAt(path, index), t) };
}

/**
 * The hits in order along the path, each crossing once. Two in a row are one when they lie within SAME_CROSSING, or when
 * the path stays within COINCIDENT of what it meets between them (`gap`: how far off a point is, mm): a crossing at a
 * join, found on both pieces, or a touch. Of two that are one, the truer stays.
 */
export function distinctHits<H extends Hit>(path: Path, hits: readonly H[], gap: (p: Point) => number): H[] {
  const kept: H[] = [];
  for (const hit of hits.toSorted((a, b) => a.index - b.index || a.t - b.t)) {
    const last = kept.at(-1);
    if (!last || !sameHit(path, last, hit, gap)) kept.push(hit);
    else if (gap(hit.point) < gap(last.point)) kept[kept.length - 1] = hit;
  }
  return kept;
}

function sameHit(path: Path, a: Hit, b: Hit, gap: (p: Point) => number): boolean {
  if (distance(a.point, b.point) <= SAME_CROSSING) return true;
  if (distance(a.point, b.point) > TOUCH) return false;
  if (a.index === b.index) return gap(pointAt(pieceAt(path, a.index), 0.5 * (a.t + b.t))) <= COINCIDENT;
  if (b.index - a.index !== 1) return false;
  const before = a.t === 1 || gap(pointAt(pieceAt(path, a.index), 0.5 * (a.t + 1))) <= COINCIDENT;
  const after = b.t === 0 || gap(pointAt(pieceAt(path, b.index), 0.5 * b.t)) <= COINCIDENT;
  return before && after && gap(pieceAt(path, b.index).p0) <= COINCIDENT;
}

/** The points of the hits, none twice: a closed path met where it closes, or a loop met where it crosses itself, counts once. */
export function pointsOf(hits: readonly Hit[]): Point[] {
  const points: Point[] = [];
  for (const { point } of hits) {
    spend(points.length / 64);
    if (!points.some((p) => distance(p, point) <= SAME_CROSSING)) points.push(point);
  }
  return points;
}

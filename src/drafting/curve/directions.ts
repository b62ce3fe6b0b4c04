import { COINCIDENT } from '../../geometry/epsilon.ts';
import { dot, norm, type Point, quarterTurn, scale, subtract, turnAbout } from '../../geometry/point.ts';
import { senseToward } from '../make/sense.ts';
import type { Passing } from '../step.ts';
import type { Course } from '../taken.ts';

/** The unit direction of a curve at each of its points, or the point where it cannot be told and why. */
export type Directions =
  | { readonly ok: true; readonly directions: readonly Point[] }
  | { readonly ok: false; readonly at: number; readonly why: Why };

type Why = 'doubles-back' | 'heading-square';

/**
 * The direction of a smooth curve at each of its points:
 * - inside, the direction of the chord between the two neighbours, turned by the passing's `turn`;
 * - at an end with a heading, along or square to its line, in the sense that goes with the chord to the next point;
 * - at an end with a passing, the chord to the next point turned by its `turn`;
 * - at a free end, the direction at the next point mirrored, so that the span between is symmetric: a span whose other
 *   end is free too is straight.
 * `points` are two or more, no two that follow each other in one place; `shape` has as many entries.
 */
export function directionsOf(
  points: readonly Point[],
  shape: readonly (Passing | null)[],
  leave: Course | null,
  arrive: Course | null,
): Directions {
  const last = points.length - 1;
  const found: (Point | null)[] = [];
  for (let i = 0; i <= last; i++) {
    const passing = shape[i] ?? null;
    const course = i === 0 ? leave : i === last ? arrive : null;
    const direction = directionAt(chordAt(points, i), course, passing, i > 0 && i < last);
    if (typeof direction === 'string') return { ok: false, at: i, why: direction };
    found.push(direction);
  }
  return { ok: true, directions: withFreeEnds(found, points) };
}

/** The directions with the free ends filled in, each mirrored from the point beside it. */
function withFreeEnds(found: readonly (Point | null)[], points: readonly Point[]): readonly Point[] {
  const last = points.length - 1;
  const first = found[0] ?? mirrored(found[1] ?? null, unit(chordAt(points, 0)));
  const beforeLast = last === 1 ? first : (found[last - 1] ?? null);
  const end = found[last] ?? mirrored(beforeLast, unit(chordAt(points, last)));
  return [first, ...(found.slice(1, last) as Point[]), end];
}

/** The chord a direction is measured from: between the neighbours, or at an end from or to the next point. */
export function chordAt(points: readonly Point[], i: number): Point {
  const [before, after] = [Math.max(i - 1, 0), Math.min(i + 1, points.length - 1)];
  return subtract(points[after] as Point, points[before] as Point);
}

/** The direction at one point; null at a free end, and why when it cannot be told. */
function directionAt(
  chord: Point,
  course: Course | null,
  passing: Passing | null,
  isInside: boolean,
): Point | null | Why {
  // Does the curve come straight back on itself?
  if (!(norm(chord) > COINCIDENT)) return 'doubles-back';
  if (course) {
    const along = course.kind === 'along' ? course.line.direction : quarterTurn(course.line.direction);
    const sense = senseToward(along, unit(chord));
    return sense === 0 ? 'heading-square' : scale(along, sense);
  }
  if (passing) return turnAbout(unit(chord), ORIGIN, passing.turn);
  return isInside ? unit(chord) : null;
}

const ORIGIN: Point = { x: 0, y: 0 };

const unit = (a: Point): Point => scale(a, 1 / norm(a));

/** A direction mirrored so that the span along the unit chord is symmetric; the chord itself where there is none. */
function mirrored(direction: Point | null, chord: Point): Point {
  return direction === null ? chord : subtract(scale(chord, 2 * dot(direction, chord)), direction);
}

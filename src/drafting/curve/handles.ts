import { cross, dot, type Point } from '../../geometry/point.ts';

/** Handle lengths of a span as fractions of its chord: after its first point, before its last. */
export interface Handles {
  readonly after: number;
  readonly before: number;
}

const THIRD = 1 / 3;

/** No free handle is longer or shorter than this, as a fraction of the chord: reached only where an end all but turns back. */
const LONGEST = 2;
const SHORTEST = 1 / 10;

/** Where one end bends less than this part of what the other does, the span is on its way to being an S. */
const EVEN = 1 / 4;

/**
 * The handles a span takes of itself, from the angles at which its ends leave the chord.
 *
 * Where both ends bend to one side, each handle goes the same part of the way to the place where the end directions
 * meet, the part that draws a circle: 4/3 tan(turn/4) / tan(turn/2), for a quarter turn the classic 0.5523. (The handles
 * of a circular arc of angle t and radius r are 4/3 r tan(t/4) long, and its tangents meet r tan(t/2) away: any text on
 * cubic arcs. For unequal ends of a quarter turn the same part draws a quarter ellipse.)
 *
 * Where they bend to different sides, as in an S, a third of the chord. Between the two the handles change smoothly, so
 * that a curve never jumps when the figure changes a little.
 *
 * `leaving` and `arriving` are unit vectors, `chord` goes from start to end.
 */
export function freeHandles(chord: Point, leaving: Point, arriving: Point): Handles {
  const first = Math.atan2(cross(chord, leaving), dot(chord, leaving));
  const last = Math.atan2(cross(arriving, chord), dot(arriving, chord));
  // Do they bend to different sides, or is one of them straight on?
  if (!(first * last > 0)) return { after: THIRD, before: THIRD };
  const [one, other] = [Math.abs(first), Math.abs(last)];
  const share = smoothStep(Math.min(one, other) / Math.max(one, other) / EVEN);
  // Law of sines in the triangle of chord and tangents, with sin(turn) tan(turn/2) = 2 sin^2(turn/2).
  const turn = one + other;
  const part = (2 * Math.tan(turn / 4)) / (3 * Math.sin(turn / 2) ** 2);
  const handle = (far: number): number =>
    Math.max(SHORTEST, Math.min(THIRD + (part * Math.sin(far) - THIRD) * share, LONGEST));
  return { after: handle(other), before: handle(one) };
}

/** 0 at and below 0, 1 at and above 1, and smooth between. */
function smoothStep(x: number): number {
  const s = Math.min(Math.max(x, 0), 1);
  return s * s * (3 - 2 * s);
}

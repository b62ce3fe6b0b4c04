import { cross, dot, type Point } from '../../geometry/point.ts';

/** Handle lengths of a span as fractions of its chord: after its first point, before its last. */
export interface Handles {
  readonly after: number;
  readonly before: number;
}

const THIRD = 1 / 3;

/** No free handle is shorter than this fraction of the chord, or a curve that leaves nearly at its far end would have a corner there. */
const SHORTEST = 1 / 6;

const clamp = (value: number): number => Math.max(SHORTEST, value);

/**
 * The handles a span takes of itself. Where its end directions meet ahead, each handle goes the same part of the way to
 * the meeting place, the part that draws a circle exactly enough: 4/3 tan(turn/4) / tan(turn/2), for a quarter turn
 * 0.5523. (The handles of a circular arc of angle t and radius r are 4/3 r tan(t/4) long, and its tangents meet
 * r tan(t/2) away; any text on cubic arcs.) Where they do not meet ahead, as in an S, a third of the chord.
 * `leaving` and `arriving` are unit vectors, `chord` goes from start to end.
 */
export function freeHandles(chord: Point, leaving: Point, arriving: Point): Handles {
  const first = Math.atan2(cross(chord, leaving), dot(chord, leaving));
  const last = Math.atan2(cross(arriving, chord), dot(arriving, chord));
  const turn = Math.abs(first + last);
  // Do the directions meet ahead: both bend to the same side, and less than a half turn in all?
  if (!(first * last > 0) || !(turn < Math.PI)) return { after: THIRD, before: THIRD };
  // Law of sines in the triangle of chord and tangents, with sin(turn) tan(turn/2) = 2 sin^2(turn/2).
  const part = (2 * Math.tan(turn / 4)) / (3 * Math.sin(turn / 2) ** 2);
  return { after: clamp(part * Math.sin(Math.abs(last))), before: clamp(part * Math.sin(Math.abs(first))) };
}

import type { Sheet } from '../../drafting/sheet.ts';
import { type Line, signedDistance, stationOf } from '../../geometry/line.ts';
import type { Point } from '../../geometry/point.ts';
import { add, scale } from '../../geometry/point.ts';
import { type Box, clip } from './box.ts';

/** A mark this near a line, mm, is drawn as lying on it. For the eye only: nothing is computed from it. */
export const ON_LINE = 0.05;
/** How far a ruled line runs past its marks, mm, as a pencil does. */
const OVERRUN = 9;

export type Span = readonly [number, number];

/** The points of the sheet that lie on a line, as stations in mm along it, in order. */
export function stationsOn(line: Line, points: readonly Point[]): number[] {
  return points
    .filter((p) => Math.abs(signedDistance(line, p)) < ON_LINE)
    .map((p) => stationOf(line, p))
    .sort((a, b) => a - b);
}

/** The points among the drawn shapes. */
export function pointsOf(sheet: Sheet, shown: (name: string) => boolean): Point[] {
  return [...sheet.shapes].flatMap(([name, shape]) => (shape.kind === 'point' && shown(name) ? [shape.point] : []));
}

/** How much of an unbounded line of the block is drawn: from where it starts, as far as its marks or the sheet go. */
export function givenSpan(line: Line, points: readonly Point[], box: Box): Span | null {
  const inside = clip(line, box);
  if (!inside) return null;
  const marks = stationsOn(line, points);
  const last = marks.at(-1) ?? 0;
  const start = Math.max(inside[0], Math.min(0, marks[0] ?? 0));
  const end = last > 1 ? last : inside[1];
  return start < end ? [start, end] : null;
}

/**
 * How much of a line is drawn that an exercise lays on the block. It was ruled for what is to come: with no more on it yet than the
 * mark it was drawn through, nothing says to which side of that it is wanted, and it is drawn to both.
 */
export function laidSpan(line: Line, points: readonly Point[], box: Box): Span | null {
  const marks = stationsOn(line, points);
  const alone = marks.length > 0 && marks.every((station) => Math.abs(station) < 1);
  return alone ? clip(line, box) : givenSpan(line, points, box);
}

/** How much of a line that was drawn is firm: between its marks and a little `over`, or right across the sheet. */
export function madeSpan(line: Line, points: readonly Point[], box: Box, over = OVERRUN): Span | null {
  const marks = stationsOn(line, points);
  const first = marks[0];
  const last = marks.at(-1);
  if (first !== undefined && last !== undefined && last - first > 1) return [first - over, last + over];
  return clip(line, box);
}

/** The two ends of a span. */
export function endsOf(line: Line, span: Span): readonly [Point, Point] {
  return [add(line.through, scale(line.direction, span[0])), add(line.through, scale(line.direction, span[1]))];
}

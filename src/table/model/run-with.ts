import { isDrawn } from '../../drafting/shape.ts';
import type { Sheet } from '../../drafting/sheet.ts';
import type { Name } from '../../drafting/step.ts';
import { endOf, startOf } from '../../geometry/path.ts';
import { distance, type Point } from '../../geometry/point.ts';
import { nearestPlaceOn } from './catch.ts';

/** A mark this near, mm, lies on a curve, and an end this near is one. */
const ON = 0.05;

/**
 * A run with one more piece at its end. A mark, then a line or curve that it lies on, then another mark on it: so one shows which
 * part of it is meant, and it is taken from the one mark to the other. A curve that runs from mark to mark is taken whole.
 */
export function runWith(run: readonly unknown[], next: unknown, sheet: Sheet): readonly unknown[] {
  const [from, along] = run.slice(-2);
  if (typeof from !== 'string' || typeof along !== 'string' || typeof next !== 'string') return [...run, next];
  if (!isPartOf(along, [from, next], sheet)) return [...run, next];
  // The mark it begins at is needed only to come to it from what stands before.
  const before = run.length > 2 ? run.slice(0, -1) : [];
  return [...before, { along, from, to: next }, next];
}

/** Whether two marks bound a part of a line or curve, and not the whole of it. */
function isPartOf(along: Name, ends: readonly [Name, Name], sheet: Sheet): boolean {
  const shape = sheet.shapes.get(along);
  const marks = ends.flatMap((name) => {
    const mark = sheet.shapes.get(name);
    return mark?.kind === 'point' ? [mark.point] : [];
  });
  const [from, to] = marks;
  if (!shape || !isDrawn(shape) || shape.kind === 'point' || !from || !to || meets(from, to)) return false;
  if (!marks.every((mark) => meets(nearestPlaceOn(shape, mark), mark))) return false;
  if (shape.kind === 'line') return true;
  const [start, end] = [startOf(shape.path), endOf(shape.path)];
  return !(meets(start, from) && meets(end, to)) && !(meets(start, to) && meets(end, from));
}

function meets(a: Point, b: Point): boolean {
  return distance(a, b) < ON;
}

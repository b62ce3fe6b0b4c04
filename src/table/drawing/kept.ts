import type { Drawn } from '../../drafting/shape.ts';
import type { Name } from '../../drafting/step.ts';
import type { Point } from '../../geometry/point.ts';
import type { Box } from './box.ts';
import type { Label, Part, Tone } from './drawing.ts';

/** All that decides how one object is drawn, beside its shape. */
export interface Manner {
  readonly name: Name;
  readonly tone: Tone;
  /** What it is called on the sheet. */
  readonly called: Name;
  readonly isGiven: boolean;
  /** What decides how far a line goes; null for what has ends of its own. */
  readonly box: Box | null;
  readonly reach: number | undefined;
  readonly marks: readonly Point[] | null;
}

/** One object as it is drawn. */
export interface DrawnObject {
  readonly parts: readonly Part[];
  readonly labels: readonly Label[];
}

const kept = new WeakMap<Drawn, { readonly manner: Manner; readonly drawn: DrawnObject }>();

/**
 * An object drawn as it was drawn last, where nothing has changed that decides how: the very parts and words of then. A sheet is drawn
 * over and over with one thing on it moved.
 */
export function drawnOnce(shape: Drawn, manner: Manner, draw: () => DrawnObject): DrawnObject {
  const last = kept.get(shape);
  if (last && isSame(last.manner, manner)) return last.drawn;
  const drawn = draw();
  kept.set(shape, { manner, drawn });
  return drawn;
}

function isSame(one: Manner, other: Manner): boolean {
  return (
    one.name === other.name &&
    one.tone === other.tone &&
    one.called === other.called &&
    one.isGiven === other.isGiven &&
    one.reach === other.reach &&
    one.box === other.box &&
    one.marks === other.marks
  );
}

let last: readonly Point[] = [];

/** The marks, as the very list of the last time where they are the same. */
export function sameMarks(marks: readonly Point[]): readonly Point[] {
  if (marks.length !== last.length || marks.some((mark, index) => mark !== last[index])) last = marks;
  return last;
}

import type { Sheet } from '../../drafting/sheet.ts';
import type { Name } from '../../drafting/step.ts';
import { type Line, lineAlong } from '../../geometry/line.ts';
import { scale } from '../../geometry/point.ts';
import { lineCalled } from './called.ts';

/** The line directed up the sheet (a level one to the right), so that its left is the side of the front edge. */
export function upward(line: Line): Line {
  const { x, y } = line.direction;
  const down = y < 0 || (y === 0 && x < 0);
  return down ? (lineAlong(line.through, scale(line.direction, -1)) ?? line) : line;
}

/** The line called so on a sheet, directed up; null when there is none. */
export function upwardCalled(sheet: Sheet, name: Name): Line | null {
  const line = lineCalled(sheet, name);
  return line && upward(line);
}

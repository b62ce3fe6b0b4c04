import type { Sheet } from '../../drafting/sheet.ts';
import type { Box } from '../drawing/box.ts';
import type { Drawing } from '../drawing/drawing.ts';
import type { Held } from './grips.ts';
import { steady } from './steady.ts';

/** How the sheet lies on the table at one moment. */
export interface Scene {
  readonly sheet: Sheet;
  readonly drawing: Drawing;
  /** The part of the sheet that is shown at first, mm. */
  readonly home: Box;
  readonly grips: readonly Held[];
}

/** A scene with as much in it the very thing of the one before as has not changed. */
export function steadyScene({ sheet, drawing, home, grips }: Scene, before: Scene | null): Scene {
  if (before === null) return { sheet, drawing, home, grips };
  return {
    sheet,
    drawing: steady(drawing, before.drawing),
    home: steady(home, before.home),
    grips: steady(grips, before.grips),
  };
}

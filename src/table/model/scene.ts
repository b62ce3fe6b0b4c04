import type { Sheet } from '../../drafting/sheet.ts';
import type { Box } from '../drawing/box.ts';
import type { Drawing } from '../drawing/drawing.ts';
import type { Held } from './grips.ts';
import { steady, steadyList } from './steady.ts';

/** How the sheet lies on the table at one moment. */
export interface Scene {
  readonly sheet: Sheet;
  readonly drawing: Drawing;
  /** The part of the sheet that is shown at first, mm. */
  readonly home: Box;
  readonly grips: readonly Held[];
}

/** A scene with all that is drawn and held as it was before the very thing of before. */
export function steadyScene(now: Scene, before: Scene | null): Scene {
  if (before === null) return now;
  return {
    ...now,
    drawing: steadyDrawing(now.drawing, before.drawing),
    grips: steadyList(now.grips, before.grips),
  };
}

function steadyDrawing(now: Drawing, before: Drawing): Drawing {
  const parts = steadyList(now.parts, before.parts);
  const labels = steadyList(now.labels, before.labels);
  const says = steady(now.says, before.says);
  const isSame =
    parts === before.parts &&
    labels === before.labels &&
    says === before.says &&
    now.box === before.box &&
    now.dots === before.dots;
  return isSame ? before : { ...now, parts, labels, says };
}

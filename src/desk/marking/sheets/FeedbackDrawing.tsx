import type { VNode } from 'preact';
import { heightOf, widthOf } from '../../../table/drawing/box.ts';
import type { Drawing } from '../../../table/drawing/drawing.ts';
import { SheetDrawing } from '../../../table/drawing/SheetDrawing.tsx';
import type { Say } from '../../../table/say.ts';

/**
 * How wide a drawing is on the sheet, mm, as the style sheet has it: where something is off, wide enough that the red pencil
 * stands clear of the lines; where all is right, small, for there is little to be seen.
 */
export const WIDTHS = { off: 66, right: 36 } as const;

/** How high a drawing may be at most to its width: two that are off and a row of right ones go on one page. */
export const FEEDBACK_ASPECT = 66 / 81;

/** CSS pixels a millimetre of paper. */
const PIXELS = 96 / 25.4;

interface FeedbackDrawingProps {
  readonly drawing: Drawing;
  readonly size: keyof typeof WIDTHS;
  /** Unique on the page. */
  readonly id: string;
  readonly say: Say;
}

/** A draft on the sheet that a student gets back. */
export function FeedbackDrawing({ drawing, size, id, say }: FeedbackDrawingProps): VNode {
  // Words are seated for just that width, on the screen too.
  const high = WIDTHS[size] * PIXELS * (heightOf(drawing.box) / widthOf(drawing.box));
  return (
    <div class="feedback-drawing" data-size={size}>
      <SheetDrawing drawing={drawing} reader={say.reader} id={id} heights={[high, high]} />
    </div>
  );
}

import type { VNode } from 'preact';
import { type Reader, say } from '../../words/say.ts';
import { type Box, heightOf, widthOf } from './box.ts';
import type { Drawing } from './drawing.ts';
import { Ink } from './Ink.tsx';
import { type Placed, placeLabels } from './labels.ts';
import { figure } from './path-data.ts';
import './drawing.css';
import { Symbols } from './Symbols.tsx';

export interface SheetDrawingProps {
  readonly drawing: Drawing;
  readonly reader: Reader;
  /** Unique on the page: the patterns of the paper are named after it. */
  readonly id: string;
  /** Spoken in place of what the drawing says of itself. */
  readonly says?: string;
  /** How high the drawing will stand, in px, wide and narrow: words are seated for both, and the style sheet shows one. */
  readonly heights?: readonly [number, number];
  /** How far the paper goes on around the box, mm, for a frame that shows more of it. */
  readonly spread?: number;
}

const FIGURE_WIDTHS: readonly [number, number] = [620, 340];

/**
 * A sheet as SVG, with classes only. Two layers: lines in mm, which scale with the figure, and words and marks,
 * which keep their size in pixels. Serves as the built figure of a lesson and as the table's first paint.
 */
export function SheetDrawing({ drawing, reader, id, says, heights, spread = 0 }: SheetDrawingProps): VNode {
  const { box } = drawing;
  const scales = heights ? heights.map((h) => h / heightOf(box)) : FIGURE_WIDTHS.map((w) => w / widthOf(box));
  const speak = (words: Parameters<typeof say>[0]) => say(words, reader);
  const [wide, narrow] = scales.map((scale) => placeLabels(drawing, scale, speak));
  return (
    <div class="drawing" role="img" aria-label={says ?? drawing.says.map(speak).join(' ')}>
      <svg class="drawing-sheet" viewBox={viewBox(box)} aria-hidden="true" focusable="false">
        <Ink drawing={drawing} id={id} spread={spread} />
      </svg>
      <svg class="drawing-words drawing-words--wide" aria-hidden="true" focusable="false">
        <Symbols drawing={drawing} />
        <Words placed={wide ?? []} box={box} />
      </svg>
      <svg class="drawing-words drawing-words--narrow" aria-hidden="true" focusable="false">
        <Symbols drawing={drawing} />
        <Words placed={narrow ?? []} box={box} />
      </svg>
    </div>
  );
}

export function viewBox(box: Box): string {
  return [box.min.x, -box.max.y, widthOf(box), heightOf(box)].map(figure).join(' ');
}

function Words({ placed, box }: { readonly placed: readonly Placed[]; readonly box: Box }): VNode {
  return (
    <g>
      {placed.map(({ text, tone, anchor, shift }) => (
        <text
          key={`${text}/${anchor.x}/${anchor.y}`}
          class={`words words--${tone}`}
          x={`${figure(((anchor.x - box.min.x) / widthOf(box)) * 100)}%`}
          y={`${figure(((box.max.y - anchor.y) / heightOf(box)) * 100)}%`}
          dx={figure(shift.x)}
          dy={figure(shift.y)}
        >
          {text}
        </text>
      ))}
    </g>
  );
}

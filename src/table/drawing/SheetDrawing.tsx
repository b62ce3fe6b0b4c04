import type { VNode } from 'preact';
import { useRef } from 'preact/hooks';
import type { Point } from '../../geometry/point.ts';
import { type Reader, say } from '../../words/say.ts';
import { type Box, heightOf, widthOf, withAspect } from './box.ts';
import type { Drawing } from './drawing.ts';
import { Ink } from './Ink.tsx';
import { type Placed, placeLabels } from './labels.ts';
import './drawing.css';
import { percent, Symbols } from './Symbols.tsx';
import { viewBox } from './view-box.ts';
import { keysOfWords, Words } from './Words.tsx';

export interface SheetDrawingProps {
  readonly drawing: Drawing;
  readonly reader: Reader;
  /** Unique on the page: the patterns of the paper are named after it. */
  readonly id: string;
  /** Spoken in place of what the drawing says of itself. */
  readonly says?: string;
  /** How high the drawing will stand, in px, wide and narrow: words are seated for both, and the style sheet shows one. */
  readonly heights?: readonly [number, number];
  /** How many times as wide as high its frame is, wide and narrow, where it is wider than the drawing: words may stand there. */
  readonly aspects?: readonly [number, number];
  /** How far the paper goes on around the box, mm, for a frame that shows more of it. */
  readonly spread?: number;
  /** Marks with a ring about them, mm, that words keep clear of. */
  readonly rings?: readonly Point[];
}

const NO_RINGS: readonly Point[] = [];

const FIGURE_WIDTHS: readonly [number, number] = [620, 340];

/**
 * A sheet as SVG, with classes only. Two layers: lines in mm, which scale with the figure, and words and marks,
 * which keep their size in pixels. Serves as the built figure of a lesson and as the table's first paint.
 */
export function SheetDrawing({
  drawing,
  reader,
  id,
  says,
  heights,
  aspects,
  spread = 0,
  rings = NO_RINGS,
}: SheetDrawingProps): VNode {
  const { box } = drawing;
  const scales = heights ? heights.map((h) => h / heightOf(box)) : FIGURE_WIDTHS.map((w) => w / widthOf(box));
  const speak = (words: Parameters<typeof say>[0]) => say(words, reader);
  const stood = useRef<readonly (readonly Placed[])[]>([]);
  const placed = scales.map((scale, index) => {
    const within = withAspect(box, Math.max(aspects?.[index] ?? 0, widthOf(box) / heightOf(box)));
    return placeLabels(drawing, scale, speak, { rings, within, before: stood.current[index] ?? [] });
  });
  stood.current = placed;
  const [wide, narrow] = placed;
  return (
    <div class="drawing" role="img" aria-label={says ?? drawing.says.map(speak).join(' ')}>
      <svg class="drawing-sheet" viewBox={viewBox(box)} aria-hidden="true" focusable="false">
        <Ink drawing={drawing} id={id} spread={spread} />
      </svg>
      <svg class="drawing-words drawing-words--wide" aria-hidden="true" focusable="false">
        <Symbols drawing={drawing} />
        <AllWords placed={wide ?? []} box={box} />
      </svg>
      <svg class="drawing-words drawing-words--narrow" aria-hidden="true" focusable="false">
        <Symbols drawing={drawing} />
        <AllWords placed={narrow ?? []} box={box} />
      </svg>
    </div>
  );
}

function AllWords({ placed, box }: { readonly placed: readonly Placed[]; readonly box: Box }): VNode {
  const keys = keysOfWords(placed);
  return (
    <g>
      {placed.map((words, index) => (
        <svg key={keys[index]} class="symbol" aria-hidden="true" {...percent(words.anchor, box)}>
          <Words {...words} />
        </svg>
      ))}
    </g>
  );
}

import type { VNode } from 'preact';
import { type Box, boxAbout, heightOf, widthOf } from '../drawing/box.ts';
import { InkPart } from '../drawing/Ink.tsx';
import { keyOf } from '../drawing/key.ts';
import { figure } from '../drawing/path-data.ts';
import { viewBox } from '../drawing/view-box.ts';
import type { FullDrawing } from './full-drawing.ts';
import { codeOf, type Tile } from './tiles.ts';

interface PlanProps {
  readonly full: FullDrawing;
  readonly tiles: readonly Tile[];
  readonly says: string;
}

/** How the sheets will lie beside one another, small. */
export function Plan({ full: { drawing }, tiles, says }: PlanProps): VNode {
  const box: Box = boxAbout(tiles.flatMap((tile) => [tile.box.min, tile.box.max])) ?? drawing.box;
  // As large as the rest of the words about it, however many sheets there are.
  const high = Math.max(widthOf(box), heightOf(box)) / 14;
  return (
    <svg class="paper-plan" viewBox={viewBox(box)} role="img" aria-label={says}>
      {tiles.map((tile) => (
        <g key={codeOf(tile)}>
          <rect
            class="paper-plan-sheet"
            x={figure(tile.box.min.x)}
            y={figure(-tile.box.max.y)}
            width={figure(widthOf(tile.box))}
            height={figure(heightOf(tile.box))}
          />
          <text
            class="paper-plan-code"
            x={figure(tile.box.min.x + high / 3)}
            y={figure(high * 1.1 - tile.box.max.y)}
            font-size={figure(high)}
          >
            {codeOf(tile)}
          </text>
        </g>
      ))}
      {drawing.parts.map((part) => (
        <InkPart key={keyOf(part)} part={part} id="plan" />
      ))}
    </svg>
  );
}

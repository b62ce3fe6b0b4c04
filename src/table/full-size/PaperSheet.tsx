import type { VNode } from 'preact';
import type { Point } from '../../geometry/point.ts';
import { type Box, heightOf, widthOf } from '../drawing/box.ts';
import type { Part } from '../drawing/drawing.ts';
import { InkPart } from '../drawing/Ink.tsx';
import { keyOf } from '../drawing/key.ts';
import { figure } from '../drawing/path-data.ts';
import { CROSS } from '../drawing/Symbols.tsx';
import { viewBox } from '../drawing/view-box.ts';
import { keysOfWords, Words } from '../drawing/Words.tsx';
import { type FullDrawing, PIXEL } from './full-drawing.ts';
import { ABOUT, frameOf, type Paper, printable } from './papers.ts';
import { Scales } from './Scales.tsx';
import type { Tile } from './tiles.ts';

interface PaperSheetProps {
  readonly tile: Tile;
  /** The sheets that lie beside it: where one does, the frame has half a diamond. */
  readonly beside: readonly Tile[];
  readonly paper: Paper;
  readonly full: FullDrawing;
  /** What this is, for whoever finds the sheet alone. */
  readonly says: string;
  /** What to measure before one cuts. */
  readonly measure: string;
  readonly unit: 'cm' | 'in';
}

/** One sheet of paper, in mm: its part of the draft in a frame, a scale in both directions, and what it is. */
export function PaperSheet({ tile, beside, paper, full, says, measure, unit }: PaperSheetProps): VNode {
  const { width, height } = printable(paper);
  const frame = frameOf(paper);
  const place = { x: ABOUT.left, y: ABOUT.top, ...frame };
  return (
    <svg
      class={`paper-sheet paper-sheet--${paper}`}
      width={`${width}mm`}
      height={`${height}mm`}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={says}
    >
      <Diamonds tile={tile} beside={beside} />
      <svg {...place} viewBox={viewBox(tile.box)} aria-hidden="true">
        <PaperInk full={full} />
      </svg>
      <rect class="paper-frame" {...place} />
      <Scales frame={frame} unit={unit} says={says} measure={measure} />
    </svg>
  );
}

/** The draft in mm, y down, with marks and names as large as on a screen. */
export function PaperInk({ full: { drawing, names } }: { readonly full: FullDrawing }): VNode {
  const keys = keysOfWords(names);
  return (
    <>
      {drawing.parts.map((part) => (
        <InkPart key={keyOf(part)} part={part} id="paper" />
      ))}
      {drawing.parts.map((part) => (
        <Cross key={keyOf(part)} part={part} />
      ))}
      {names.map((name, index) => (
        <g key={keys[index]} transform={inPixels(name.anchor)}>
          <Words {...name} />
        </g>
      ))}
    </>
  );
}

function Cross({ part }: { readonly part: Part }): VNode | null {
  if (part.kind !== 'mark') return null;
  return (
    <g transform={inPixels(part.at)}>
      <path class={`mark mark--${part.tone}`} d={CROSS} />
    </g>
  );
}

/** What is drawn in pixels from here, on a sheet in mm. */
function inPixels({ x, y }: Point): string {
  return `translate(${figure(x)} ${figure(-y)}) scale(${PIXEL})`;
}

/** Half the width of a diamond, mm. */
const DIAMOND = 4;

/** In the middle of each side that meets another sheet, half a diamond: two halves make a whole where the sheets lie right. */
function Diamonds({ tile, beside }: Pick<PaperSheetProps, 'tile' | 'beside'>): VNode {
  const meets = (rows: number, columns: number): boolean =>
    beside.some(({ row, column }) => row === tile.row + rows && column === tile.column + columns);
  const { width, height } = sizeOf(tile.box);
  const [left, top] = [ABOUT.left, ABOUT.top];
  const halves = [
    meets(0, -1) ? `M${left} ${top + height / 2 - DIAMOND}l${DIAMOND} ${DIAMOND} ${-DIAMOND} ${DIAMOND}Z` : '',
    meets(0, 1) ? `M${left + width} ${top + height / 2 - DIAMOND}l${-DIAMOND} ${DIAMOND} ${DIAMOND} ${DIAMOND}Z` : '',
    meets(-1, 0) ? `M${left + width / 2 - DIAMOND} ${top}l${DIAMOND} ${DIAMOND} ${DIAMOND} ${-DIAMOND}Z` : '',
    meets(1, 0) ? `M${left + width / 2 - DIAMOND} ${top + height}l${DIAMOND} ${-DIAMOND} ${DIAMOND} ${DIAMOND}Z` : '',
  ];
  return <path class="paper-diamond" d={halves.join('')} />;
}

function sizeOf(box: Box): { readonly width: number; readonly height: number } {
  return { width: widthOf(box), height: heightOf(box) };
}

import type { VNode } from 'preact';
import { isDrawn } from '../../drafting/shape.ts';
import type { Sheet } from '../../drafting/sheet.ts';
import type { Point } from '../../geometry/point.ts';
import { boxIn, REACH, type Size, toPixels, type View } from '../board/view.ts';
import { padded } from '../drawing/box.ts';
import type { Part } from '../drawing/drawing.ts';
import { InkPart } from '../drawing/Ink.tsx';
import { keyOf } from '../drawing/key.ts';
import { shapeParts } from '../drawing/parts.ts';
import { figure } from '../drawing/path-data.ts';
import { CROSS } from '../drawing/Symbols.tsx';
import type { Pointed } from '../model/point-at.ts';
import { drawnOf, type Preview } from '../model/preview.ts';
import { type UnderPointer, useUnder } from '../under-pointer.ts';

/** What pointing shows: what lies under the pointer, and what the step in hand would make of it. */
export interface Looks {
  readonly pointer: UnderPointer;
  readonly ahead: (pointed: Pointed | null) => Preview;
  readonly sheet: Sheet;
}

interface AheadProps extends Looks {
  readonly id: string;
  readonly view: View;
  readonly size: Size;
  /** The pointer that the arrow keys move; null until they are used. */
  readonly cross: Point | null;
}

/** Lines run this far past where the paper may be slid to, px: their ends are not seen. */
const PAST = 20;

/**
 * What shows only while one points, between the board and its words: what is caught, and the step ahead of being drawn. In a
 * picture of its own, so that neither the board nor the words have to be painted again at a move of the pointer.
 */
export function Ahead({ pointer, ahead, sheet, id, view, size, cross }: AheadProps): VNode {
  const { pointed, lit } = useUnder(pointer);
  const past = PAST + REACH * Math.max(size.width, size.height);
  const box = padded(boxIn(view, size), past / view.scale);
  const caught = lit.flatMap((name): Part[] => {
    const shape = sheet.shapes.get(name);
    return shape && isDrawn(shape) ? shapeParts(shape, 'cue', box, name) : [];
  });
  const made = drawnOf(ahead(pointed));
  const parts = [...caught, ...(made ? shapeParts(made, 'preview', box) : [])];
  return (
    <svg class="sheet-ahead" aria-hidden="true" focusable="false">
      <g transform={`translate(${figure(view.origin.x)} ${figure(view.origin.y)}) scale(${view.scale})`}>
        {parts.map((part) => (
          <InkPart key={keyOf(part)} part={part} id={id} />
        ))}
      </g>
      {parts.map((part) =>
        part.kind === 'mark' ? (
          <path key={keyOf(part)} class={`mark mark--${part.tone}`} {...at(view, part.at)} d={CROSS} />
        ) : null,
      )}
      {pointed?.at ? <circle class="cue-ring" {...at(view, pointed.at)} r="10" /> : null}
      {cross ? <path class="cue-cross" {...at(view, cross)} d="M-14 0H-4M4 0H14M0-14V-4M0 4V14" /> : null}
    </svg>
  );
}

function at(view: View, p: Point): { readonly transform: string } {
  const { x, y } = toPixels(view, p);
  return { transform: `translate(${figure(x)} ${figure(y)})` };
}

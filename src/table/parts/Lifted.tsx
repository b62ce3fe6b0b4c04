import type { ComponentChildren, VNode } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Point } from '../../geometry/point.ts';
import type { AwakeSheet } from '../board/awake-sheet.ts';
import { figure } from '../drawing/path-data.ts';

interface LiftedProps {
  readonly board: AwakeSheet;
  /** Where the sheet's origin is in the frame, px. */
  readonly origin: Point;
  readonly children: ComponentChildren;
}

/**
 * Two specks far out of sight, px: however what moves lies, the picture reaches as far. A browser sorts all layers of a page again
 * when one of them reaches further or less far than before.
 */
const CORNERS = 'M-1e5-1e5h1M1e5 1e5h1';

/** The picture of what is dragged, over all that lies still: its lines and rings, which the board paints here, and its words. */
export function Lifted({ board, origin, children }: LiftedProps): VNode {
  const lines = useRef<SVGGElement>(null);
  useLayoutEffect(() => {
    board.lift(lines.current);
    return () => board.lift(null);
  }, [board]);
  return (
    <svg class="sheet-lifted" aria-hidden="true" focusable="false">
      <g transform={`translate(${figure(origin.x)} ${figure(origin.y)})`}>
        <path class="sheet-corners" d={CORNERS} />
        <g ref={lines} />
        {children}
      </g>
    </svg>
  );
}

import { useLayoutEffect, useRef } from 'preact/hooks';
import type { AwakeSheet } from '../board/awake-sheet.ts';
import { boxIn, fitView } from '../board/view.ts';
import type { Box } from '../drawing/box.ts';

/**
 * A sheet that lies wholly in sight stays so as it grows: what is drawn outside the frame would seem not to be drawn at all. It is
 * left as it lies where one has gone nearer, and while something on it is being dragged.
 */
export function useWhole(board: AwakeSheet | null, home: Box, dragging: boolean): void {
  const before = useRef(home);
  // Before the change is seen: who points at what was just drawn would else point at where it lay a frame ago.
  useLayoutEffect(() => {
    const last = before.current;
    if (board === null || dragging) return;
    before.current = home;
    const seen = boxIn(board.view(), board.size());
    if (holds(seen, last) && !holds(seen, home)) board.show(fitView(home, board.size()));
  }, [board, home, dragging]);
}

/** Whether one box holds another, but for what rounding loses, mm. */
function holds(outer: Box, inner: Box): boolean {
  return (
    outer.min.x <= inner.min.x + 1 &&
    outer.min.y <= inner.min.y + 1 &&
    outer.max.x >= inner.max.x - 1 &&
    outer.max.y >= inner.max.y - 1
  );
}

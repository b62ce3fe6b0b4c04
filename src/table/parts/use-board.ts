import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Point } from '../../geometry/point.ts';
import type { AwakeSheet } from '../board/awake-sheet.ts';
import type { View } from '../board/view.ts';
import type { Box } from '../drawing/box.ts';
import type { Drawing } from '../drawing/drawing.ts';
import type { InMotion } from '../in-motion.ts';
import type { Held } from '../model/grips.ts';
import type { Say } from '../say.ts';

interface BoardInputs {
  readonly host: { readonly current: HTMLElement | null };
  readonly frame: { readonly current: HTMLElement | null };
  readonly id: string;
  readonly home: Box;
  readonly drawing: Drawing;
  readonly grips: readonly Held[];
  /** What is dragged on it is painted as it moves, and not with the table. */
  readonly motion: InMotion;
  readonly say: Say;
  readonly onView: (view: View) => void;
  readonly onSlide: (by: Point | null) => void;
  readonly onDrag: (held: Held, to: Point) => void;
  readonly onLetGo: () => void;
}

interface BoardState {
  readonly sheet: AwakeSheet | null;
  readonly failed: boolean;
}

/** Wakes the board once the page is up, and keeps it in step with the drawing. */
export function useBoard(inputs: BoardInputs): BoardState {
  const [state, setState] = useState<BoardState>({ sheet: null, failed: false });
  const now = useRef(inputs);
  now.current = inputs;
  useEffect(() => {
    let gone = false;
    let laid: AwakeSheet | null = null;
    const wake = async (): Promise<void> => {
      laid = await awakeBoard(now, () => gone);
      if (laid) setState({ sheet: laid, failed: false });
    };
    wake().catch(() => setState({ sheet: null, failed: true }));
    return () => {
      gone = true;
      laid?.destroy();
    };
  }, []);
  const { sheet } = state;
  const { drawing, grips, motion, frame } = inputs;
  useLayoutEffect(() => {
    sheet?.paint(drawing, grips);
  }, [sheet, drawing, grips]);
  useLayoutEffect(
    () => (sheet ? motion.watch((now) => now && sheet.paint(now.scene.drawing, now.scene.grips)) : undefined),
    [sheet, motion],
  );
  useEffect(() => (sheet && frame.current ? keepSize(sheet, frame.current) : undefined), [sheet, frame]);
  return state;
}

/** Lays the board in its place, as soon as its script has come and there is room; null where the table is gone by then. */
async function awakeBoard(now: { readonly current: BoardInputs }, isGone: () => boolean): Promise<AwakeSheet | null> {
  const { layBoard } = await import('../board/lay-board.ts');
  if (now.current.host.current) await roomIn(now.current.host.current);
  const { host, home, id } = now.current;
  if (isGone() || !host.current) return null;
  return layBoard(host.current, home, id, {
    onView: (view) => now.current.onView(view),
    onSlide: (by) => now.current.onSlide(by),
    onHandle: (key, to) => {
      const held = now.current.grips.find((one) => one.key === key);
      if (held) now.current.onDrag(held, to);
    },
    onLetGo: () => now.current.onLetGo(),
  });
}

/** Lets the board follow the size of its frame; gives what ends that. */
function keepSize(sheet: AwakeSheet, frame: HTMLElement): () => void {
  const watch = new ResizeObserver(([entry]) => {
    const size = entry?.contentRect;
    if (size && (size.width !== sheet.size().width || size.height !== sheet.size().height))
      sheet.resize({ width: size.width, height: size.height });
  });
  watch.observe(frame);
  return () => watch.disconnect();
}

/** When the element is laid out with room for a board: at once, or once it is no longer hidden. */
function roomIn(element: HTMLElement): Promise<void> {
  return new Promise((resolve) => {
    const watch = new ResizeObserver(() => {
      if (element.clientWidth === 0 || element.clientHeight === 0) return;
      watch.disconnect();
      resolve();
    });
    watch.observe(element);
  });
}

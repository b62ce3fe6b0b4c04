import type { ComponentChildren, VNode } from 'preact';
import { useMemo, useRef, useState } from 'preact/hooks';
import type { Point } from '../../geometry/point.ts';
import type { AwakeSheet } from '../board/awake-sheet.ts';
import { slide } from '../board/slide.ts';
import type { Size, View } from '../board/view.ts';
import type { Drawing } from '../drawing/drawing.ts';
import { SheetDrawing } from '../drawing/SheetDrawing.tsx';
import type { InMotion } from '../in-motion.ts';
import type { Held } from '../model/grips.ts';
import type { Say } from '../say.ts';
import { Ahead, type Looks } from './Ahead.tsx';
import { GripKeys } from './GripKeys.tsx';
import { Overlay } from './Overlay.tsx';
import { SheetBar, type SheetBarProps } from './SheetBar.tsx';
import { useBoard } from './use-board.ts';
import { type Pointing, useFrame } from './use-frame.ts';
import { useWhole } from './use-whole.ts';

interface SheetProps extends Pointing {
  readonly id: string;
  readonly drawing: Drawing;
  readonly grips: readonly Held[];
  readonly looks: Looks;
  /** Whether something on it is held, and whether it is nudged by keys at this moment; and what is dragged. */
  readonly dragging: boolean;
  readonly moving: boolean;
  readonly motion: InMotion;
  readonly onDrag: (held: Held, to: Point) => void;
  readonly onNudge: (held: Held, to: Point) => void;
  readonly onLetGo: () => void;
  /** What the bar under the sheet does beside moving it. */
  readonly bar: Omit<SheetBarProps, 'board' | 'home' | 'failed' | 'say'>;
  /** What else stands under the sheet. */
  readonly below?: ComponentChildren;
}

/** Heights the built sheet is drawn for, wide and narrow, px: what the style sheet gives the frame. */
const HEIGHTS: readonly [number, number] = [500, 412];
/** How many times as wide as high a frame is at least, wide and narrow: words may stand beside the block. */
const ASPECTS: readonly [number, number] = [1.1, 0.75];
/** The paper goes on this far around the box, mm, so that it fills any frame. */
const SPREAD = 1200;

/** The sheet in its frame: the built picture first, then the awake board in its place, and words over both. */
export function Sheet(props: SheetProps): VNode {
  const { id, drawing, home, say } = props;
  const { frame, host, over, board, view, cross, handlers } = useAwake(props);
  const bar = useMemo(
    () => <SheetBar board={board.sheet} home={home} failed={board.failed} say={say} {...props.bar} />,
    [board, home, say, props.bar],
  );
  return (
    <div class="table-sheet" data-awake={board.sheet !== null} data-holding={props.holding}>
      <div
        class="sheet-frame"
        ref={frame}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the sheet is pointed at with the arrow keys.
        tabIndex={0}
        role="application"
        aria-label={say('table.sheet')}
        aria-describedby={`${id}-keys`}
        {...handlers}
      >
        {view === null ? <Still drawing={drawing} id={id} say={say} /> : null}
        <div class="sheet-board" ref={host} />
        {view && board.sheet ? (
          <div class="sheet-over" ref={over}>
            <OverBoard {...props} board={board.sheet} view={view} size={board.sheet.size()} cross={cross} />
          </div>
        ) : null}
      </div>
      <p id={`${id}-keys`} class="unseen">
        {say('table.sheet-keys')}
      </p>
      <Described says={drawing.says} say={say} />
      {bar}
      {props.below}
    </div>
  );
}

/** Wakes the sheet: its board, the view that was laid last, and what hands and keys do there. */
function useAwake(props: SheetProps) {
  const { id, home, drawing, grips, motion, say, onDrag, onLetGo } = props;
  const [view, setView] = useState<View | null>(null);
  const frame = useRef<HTMLDivElement>(null);
  const host = useRef<HTMLDivElement>(null);
  const over = useRef<HTMLDivElement>(null);
  const onSlide = (by: Point | null): void => {
    if (over.current) slide(over.current, by);
  };
  const shown = { id, home, drawing, grips, motion, say };
  const board = useBoard({ ...shown, host, frame, onView: setView, onSlide, onDrag, onLetGo });
  useWhole(board.sheet, home, props.dragging);
  return { frame, host, over, board, view, ...useFrame({ ...props, board: board.sheet, frame }) };
}

/** The picture that the page was built with, until the board is awake. */
function Still({ drawing, id, say }: Pick<SheetProps, 'drawing' | 'id' | 'say'>): VNode {
  return (
    <div class="sheet-still">
      <SheetDrawing drawing={drawing} reader={say.reader} id={id} heights={HEIGHTS} aspects={ASPECTS} spread={SPREAD} />
    </div>
  );
}

interface OverBoardProps extends SheetProps {
  readonly board: AwakeSheet;
  readonly view: View;
  readonly size: Size;
  /** Where the arrow keys point. */
  readonly cross: Point | null;
}

/** What lies over the awake board: what shows ahead, words, and what is held by keys. */
function OverBoard({ id, drawing, grips, looks, moving, motion, say, onNudge, onLetGo, ...at }: OverBoardProps): VNode {
  const { board, view, size, cross } = at;
  const ahead = useMemo(
    () => <Ahead {...looks} id={id} view={view} size={size} cross={cross} />,
    [looks, id, view, size, cross],
  );
  return (
    <>
      {ahead}
      <Overlay
        board={board}
        drawing={drawing}
        view={view}
        size={size}
        grips={grips}
        moving={moving}
        motion={motion}
        say={say}
      />
      <GripKeys grips={grips} view={view} motion={motion} say={say} onNudge={onNudge} onLetGo={onLetGo} />
    </>
  );
}

/** What lies on the sheet, in words. Said again only where it has changed, and not at every move of the pointer. */
function Described({ says, say }: { readonly says: Drawing['says']; readonly say: Say }): VNode {
  return useMemo(() => <p class="unseen">{says.map((said) => say.message(said)).join(' ')}</p>, [says, say]);
}

import { useRef, useState } from 'preact/hooks';
import type { Point } from '../../geometry/point.ts';
import { arrowWay } from '../arrow-way.ts';
import type { AwakeSheet } from '../board/lay-board.ts';
import { toPixels, toSheet, type View } from '../board/view.ts';
import type { Pointed } from '../model/point-at.ts';
import type { SheetProps } from './Sheet.tsx';

interface FrameInputs
  extends Pick<SheetProps, 'read' | 'onPoint' | 'onHover' | 'onSay' | 'where' | 'called' | 'say' | 'holding'> {
  readonly board: AwakeSheet | null;
  readonly view: View | null;
  readonly frame: { readonly current: HTMLElement | null };
}

interface FrameGestures {
  /** The pointer that the arrow keys move, on the sheet; null until they are used. */
  readonly cross: Point | null;
  /** What was caught last, to ring it. */
  readonly caught: Point | null;
  readonly handlers: Readonly<Record<string, (event: never) => void>>;
}

/** How near the pointer must come to catch something, px: a hand with a mouse, and a finger. */
const MOUSE_REACH = 14;
const FINGER_REACH = 26;
/** A press that moves further than this, px, drags the paper and does not point. */
const STILL = 7;
/** How far an arrow key moves the pointer, mm; with Shift a tenth of that. */
const STRIDE = 10;
const WHEEL_STEP = 1.0015;

/** Pointing at the sheet: by mouse or finger, or by the arrow keys. All of them end in `onPoint`. */
export function useFrame(inputs: FrameInputs): FrameGestures {
  const { board, view, frame, read, onPoint, onHover, onSay, say, holding } = inputs;
  const [cross, setCross] = useState<Point | null>(null);
  const [caught, setCaught] = useState<Point | null>(null);
  const press = useRef<{ readonly id: number; readonly at: Point } | null>(null);

  const pixelsOf = (event: PointerEvent | WheelEvent): Point => {
    const box = (frame.current as HTMLElement).getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };
  const look = (p: Point, reach: number): Pointed | null => {
    const pointed = view ? read(p, reach / view.scale) : null;
    onHover(pointed);
    setCaught(pointed?.at ?? null);
    return pointed;
  };
  const point = (p: Point, reach: number): void => {
    const pointed = look(p, reach);
    onHover(null);
    setCaught(null);
    if (pointed) onPoint(pointed);
  };
  const moveCross = (event: KeyboardEvent): boolean => {
    const way = arrowWay(event);
    if (!way || !view || !board) return false;
    const { width, height } = board.size();
    const from = cross ?? toSheet(view, { x: width / 2, y: height / 2 });
    const stride = event.shiftKey ? STRIDE / 100 : STRIDE;
    const to = { x: Math.round(from.x) + way.x * stride, y: Math.round(from.y) + way.y * stride };
    setCross(to);
    keepInSight(board, view, to);
    const pointed = look(to, MOUSE_REACH);
    onSay(
      say('table.pointer-at', {
        place: inputs.where(to),
        caught: pointed && pointed.caught.length > 0 ? inputs.called(pointed.caught) : 'none',
      }),
    );
    return true;
  };
  const keys: Readonly<Record<string, () => void>> = {
    Enter: () => cross && point(cross, MOUSE_REACH),
    ' ': () => cross && point(cross, MOUSE_REACH),
    '+': () => board?.zoom(1.25, null),
    '=': () => board?.zoom(1.25, null),
    '-': () => board?.zoom(0.8, null),
  };
  return {
    cross,
    caught,
    handlers: {
      onPointerDown: (event: PointerEvent) => {
        press.current =
          event.button === 0 && press.current === null ? { id: event.pointerId, at: pixelsOf(event) } : null;
      },
      onPointerMove: (event: PointerEvent) => {
        if (view && event.pointerType === 'mouse' && event.buttons === 0 && holding)
          look(toSheet(view, pixelsOf(event)), MOUSE_REACH);
      },
      onPointerUp: (event: PointerEvent) => {
        const down = press.current;
        press.current = null;
        const at = pixelsOf(event);
        if (!view || !down || down.id !== event.pointerId || Math.hypot(at.x - down.at.x, at.y - down.at.y) > STILL)
          return;
        setCross(null);
        point(toSheet(view, at), event.pointerType === 'mouse' ? MOUSE_REACH : FINGER_REACH);
      },
      onPointerCancel: () => {
        press.current = null;
      },
      onPointerLeave: () => {
        onHover(null);
        setCaught(null);
      },
      onWheel: (event: WheelEvent) => {
        // Only a sheet that is being worked on takes the wheel; the page scrolls otherwise.
        if (!board || !(event.ctrlKey || frame.current?.contains(document.activeElement))) return;
        event.preventDefault();
        board.zoom(WHEEL_STEP ** -event.deltaY, pixelsOf(event));
      },
      onKeyDown: (event: KeyboardEvent) => {
        if (event.target !== event.currentTarget) return;
        const act = keys[event.key];
        if (!moveCross(event) && !act) return;
        event.preventDefault();
        act?.();
      },
      onBlur: () => setCross(null),
    } as never,
  };
}

/** Moves the paper along when the pointer leaves the frame. */
function keepInSight(board: AwakeSheet, view: View, p: Point): void {
  const { width, height } = board.size();
  const at = toPixels(view, p);
  const dx = at.x < 20 ? 60 : at.x > width - 20 ? -60 : 0;
  const dy = at.y < 20 ? 60 : at.y > height - 20 ? -60 : 0;
  if (dx !== 0 || dy !== 0) board.show({ scale: view.scale, origin: { x: view.origin.x + dx, y: view.origin.y + dy } });
}

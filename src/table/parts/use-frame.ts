import { useRef, useState } from 'preact/hooks';
import type { Name } from '../../drafting/step.ts';
import type { Point } from '../../geometry/point.ts';
import { arrowWay } from '../arrow-way.ts';
import type { AwakeSheet } from '../board/awake-sheet.ts';
import { fitView, toPixels, toSheet } from '../board/view.ts';
import type { Box } from '../drawing/box.ts';
import type { Pointed } from '../model/point-at.ts';
import type { Say } from '../say.ts';
import { typeOn } from './type-on.ts';

/** What pointing at the sheet does. */
export interface Pointing {
  /** Whether a tool is in hand, for which one points. */
  readonly holding: boolean;
  /** What the sheet shows at first, mm. */
  readonly home: Box;
  readonly say: Say;
  /** Reads a place as a filling of the blank in hand. */
  readonly read: (p: Point, radius: number) => Pointed | null;
  readonly onPoint: (pointed: Pointed) => void;
  readonly onHover: (pointed: Pointed | null) => void;
  readonly onSay: (text: string) => void;
  /** A place, and objects, in words. */
  readonly where: (p: Point) => string;
  readonly called: (names: readonly Name[]) => string;
}

interface FrameInputs extends Pointing {
  readonly board: AwakeSheet | null;
  readonly frame: { readonly current: HTMLElement | null };
}

interface FrameGestures {
  /** The pointer that the arrow keys move, on the sheet; null until they are used. */
  readonly cross: Point | null;
  readonly handlers: Readonly<Record<string, (event: never) => void>>;
}

/** How near the pointer must come to catch something, px: a hand with a mouse, and a finger. */
const MOUSE_REACH = 14;
const FINGER_REACH = 26;
/** A press that moves further than this, px, drags the paper and does not point. */
const STILL = 7;
/** How far an arrow key moves the pointer, mm; and with Shift. */
const STRIDE = 10;
const FINE = 1;
const WHEEL_STEP = 1.0015;

/** Pointing at the sheet: by mouse or finger, or by the arrow keys. All of them end in `onPoint`. */
export function useFrame(inputs: FrameInputs): FrameGestures {
  const [cross, setCross] = useState<Point | null>(null);
  const press = useRef<Press | null>(null);
  const { board, read, onHover, onPoint } = inputs;
  const look = (p: Point, reach: number): Pointed | null => {
    const pointed = board ? read(p, reach / board.view().scale) : null;
    onHover(pointed);
    return pointed;
  };
  const away = (): void => onHover(null);
  const point = (p: Point, reach: number): void => {
    const pointed = look(p, reach);
    away();
    if (pointed) onPoint(pointed);
  };
  const frame: Frame = { ...inputs, cross, setCross, press, look, away, point };
  return { cross, handlers: { ...pointerHandlers(frame), ...keyHandlers(frame) } as never };
}

interface Press {
  readonly id: number;
  readonly at: Point;
}

interface Frame extends FrameInputs {
  readonly cross: Point | null;
  readonly setCross: (p: Point | null) => void;
  readonly press: { current: Press | null };
  readonly look: (p: Point, reach: number) => Pointed | null;
  readonly away: () => void;
  readonly point: (p: Point, reach: number) => void;
}

function pointerHandlers({ board, frame, press, look, away, point, setCross, holding }: Frame) {
  const pixelsOf = (event: PointerEvent | WheelEvent): Point => {
    const box = (frame.current as HTMLElement).getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };
  return {
    onPointerDown: (event: PointerEvent): void => {
      press.current =
        event.button === 0 && press.current === null ? { id: event.pointerId, at: pixelsOf(event) } : null;
    },
    onPointerMove: (event: PointerEvent): void => {
      if (board && event.pointerType === 'mouse' && event.buttons === 0 && holding)
        look(toSheet(board.view(), pixelsOf(event)), MOUSE_REACH);
    },
    onPointerUp: (event: PointerEvent): void => {
      const down = press.current;
      press.current = null;
      const at = pixelsOf(event);
      if (!board || !down || down.id !== event.pointerId || Math.hypot(at.x - down.at.x, at.y - down.at.y) > STILL)
        return;
      setCross(null);
      point(toSheet(board.view(), at), event.pointerType === 'mouse' ? MOUSE_REACH : FINGER_REACH);
    },
    onPointerCancel: (): void => {
      press.current = null;
    },
    onPointerLeave: away,
    onWheel: (event: WheelEvent): void => {
      // Only a sheet that is being worked on takes the wheel; the page scrolls otherwise.
      if (!board || !(event.ctrlKey || frame.current?.contains(document.activeElement))) return;
      event.preventDefault();
      board.zoom(WHEEL_STEP ** -event.deltaY, pixelsOf(event));
    },
  };
}

const CLOSER = 1.25;

function keyHandlers(frame: Frame) {
  const { board, home, cross, point, setCross } = frame;
  const acts: ReadonlyMap<string, () => void> = new Map([
    ['Enter', () => cross && point(cross, MOUSE_REACH)],
    [' ', () => cross && point(cross, MOUSE_REACH)],
    ['+', () => board?.zoom(CLOSER, null)],
    ['=', () => board?.zoom(CLOSER, null)],
    ['-', () => board?.zoom(1 / CLOSER, null)],
    ['0', () => board?.show(fitView(home, board.size()))],
  ]);
  return {
    onKeyDown: (event: KeyboardEvent): void => {
      // The keys of the marks and handles on the sheet are their own.
      if (event.target !== event.currentTarget || event.ctrlKey || event.metaKey) return;
      // With the pointer of the arrow keys on the sheet, its keys are meant.
      if (cross === null && typeOn(event)) return;
      const act = acts.get(event.key);
      if (!moveCross(event, frame) && !act) return;
      event.preventDefault();
      act?.();
    },
    onBlur: (): void => setCross(null),
  };
}

/** Moves the pointer of the arrow keys and says where it is; false for other keys. */
function moveCross(event: KeyboardEvent, { board, cross, setCross, look, where, called, say, onSay }: Frame): boolean {
  const way = arrowWay(event);
  if (!way || !board) return false;
  const { width, height } = board.size();
  const from = cross ?? toSheet(board.view(), { x: width / 2, y: height / 2 });
  // An arrow with Shift comes ten times as long.
  const stride = event.shiftKey ? FINE / 10 : STRIDE;
  const to = { x: Math.round(from.x) + way.x * stride, y: Math.round(from.y) + way.y * stride };
  setCross(to);
  keepInSight(board, to);
  const pointed = look(to, MOUSE_REACH);
  onSay(
    say('table.pointer-at', {
      place: where(to),
      caught: pointed && pointed.caught.length > 0 ? called(pointed.caught) : 'none',
    }),
  );
  return true;
}

/** Moves the paper along when the pointer leaves the frame. */
function keepInSight(board: AwakeSheet, p: Point): void {
  const view = board.view();
  const { width, height } = board.size();
  const at = toPixels(view, p);
  const dx = at.x < 20 ? 60 : at.x > width - 20 ? -60 : 0;
  const dy = at.y < 20 ? 60 : at.y > height - 20 ? -60 : 0;
  if (dx !== 0 || dy !== 0) board.show({ scale: view.scale, origin: { x: view.origin.x + dx, y: view.origin.y + dy } });
}

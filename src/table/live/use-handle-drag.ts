import { useRef } from 'preact/hooks';
import { add, type Point, subtract } from '../../geometry/point.ts';
import { arrowWay } from '../arrow-way.ts';
import { type Box, heightOf, widthOf } from '../drawing/box.ts';

interface HandleDrag {
  readonly box: Box;
  readonly at: Point;
  readonly onDrag: (to: Point) => void;
  readonly onNudge: (way: Point) => void;
}

interface Gestures {
  readonly onPointerDown: (event: PointerEvent) => void;
  readonly onPointerMove: (event: PointerEvent) => void;
  readonly onPointerUp: () => void;
  readonly onPointerCancel: () => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
}

/** Dragging and arrow keys on something held over a drawing; says where it should go, in mm on the sheet. */
export function useHandleDrag({ box, at, onDrag, onNudge }: HandleDrag): Gestures {
  // What the finger holds is kept where it took hold, or the mark would jump under it.
  const grip = useRef<Point | null>(null);
  const letGo = (): void => {
    grip.current = null;
  };
  return {
    onPointerDown: (event) => {
      if (event.button !== 0) return;
      const target = event.currentTarget as SVGElement;
      grip.current = subtract(at, placeOf(event, box));
      target.setPointerCapture(event.pointerId);
      target.focus({ preventScroll: true });
      event.preventDefault();
    },
    onPointerMove: (event) => {
      if (grip.current) onDrag(add(placeOf(event, box), grip.current));
    },
    onPointerUp: letGo,
    onPointerCancel: letGo,
    onKeyDown: (event) => {
      const way = arrowWay(event);
      if (!way) return;
      event.preventDefault();
      onNudge(way);
    },
  };
}

/** Where the pointer is on the sheet, from the drawing's outline on the screen. */
function placeOf(event: PointerEvent, box: Box): Point {
  const sheet = (event.currentTarget as Element).closest('.live-handles');
  const frame = (sheet as Element).getBoundingClientRect();
  return {
    x: box.min.x + ((event.clientX - frame.left) / frame.width) * widthOf(box),
    y: box.max.y - ((event.clientY - frame.top) / frame.height) * heightOf(box),
  };
}

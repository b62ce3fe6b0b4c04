import { type Point, subtract } from '../../geometry/point.ts';
import { type Box, centreOf, heightOf, widthOf } from '../drawing/box.ts';

/** How the sheet lies in its frame: pixels a mm, and where its origin is, in pixels from the frame's top left. */
export interface View {
  readonly scale: number;
  readonly origin: Point;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

export function toPixels({ scale, origin }: View, p: Point): Point {
  return { x: origin.x + p.x * scale, y: origin.y - p.y * scale };
}

/** A place of the sheet in pixels from the sheet's origin, y down. */
export function onPaper(p: Point, scale: number): Point {
  return { x: p.x * scale, y: -p.y * scale };
}

export function toSheet({ scale, origin }: View, pixels: Point): Point {
  return { x: (pixels.x - origin.x) / scale, y: (origin.y - pixels.y) / scale };
}

/** The view that shows the whole box in the middle of the frame, as the built SVG does. */
export function fitView(box: Box, { width, height }: Size): View {
  const scale = Math.min(width / widthOf(box), height / heightOf(box));
  const middle = centreOf(box);
  return { scale, origin: { x: width / 2 - middle.x * scale, y: height / 2 + middle.y * scale } };
}

/** What of the sheet the frame shows. */
export function boxIn(view: View, { width, height }: Size): Box {
  const topLeft = toSheet(view, { x: 0, y: 0 });
  const bottomRight = toSheet(view, { x: width, y: height });
  return { min: { x: topLeft.x, y: bottomRight.y }, max: { x: bottomRight.x, y: topLeft.y } };
}

/** How far one may zoom, in pixels a mm. */
const CLOSEST = 40;
const FURTHEST = 0.2;

/** The view once what lay at one pixel of the frame lies at another, everything about it so many times as large, as far as one may zoom. */
export function movedView({ scale, origin }: View, from: Point, to: Point, factor: number): View {
  const next = Math.min(CLOSEST, Math.max(FURTHEST, scale * factor));
  const grown = next / scale;
  return {
    scale: next,
    origin: { x: to.x - (from.x - origin.x) * grown, y: to.y - (from.y - origin.y) * grown },
  };
}

/** How far the paper is slid before it is laid anew, in frames: it lies ready that far on every side of the one that shows it. */
export const REACH = 0.5;

/**
 * How far a sheet laid in one view has to be slid to be seen in another, px. Null where it has to be laid anew: it is nearer or
 * further then, or would be slid past what lies ready.
 */
export function slideBetween(laid: View, seen: View, { width, height }: Size): Point | null {
  const by = subtract(seen.origin, laid.origin);
  const ready = Math.abs(by.x) <= width * REACH && Math.abs(by.y) <= height * REACH;
  return seen.scale === laid.scale && ready ? by : null;
}

/** The view that brings a place to the middle of the frame. */
export function centredOn({ scale }: View, p: Point, { width, height }: Size): View {
  return { scale, origin: { x: width / 2 - p.x * scale, y: height / 2 + p.y * scale } };
}

/**
 * The view once its frame has another size. A sheet that showed the whole box goes on showing it; else what was in the middle
 * stays there. Null where the new frame has no room, hidden or squeezed to nothing: there is nothing to show then, and a view
 * taken from it would have no scale to come back with.
 */
export function resizedView(view: View, box: Box, from: Size, to: Size): View | null {
  if (!hasRoom(to)) return null;
  if (!hasRoom(from) || isSame(view, fitView(box, from))) return fitView(box, to);
  const { scale, origin } = view;
  return { scale, origin: { x: origin.x + (to.width - from.width) / 2, y: origin.y + (to.height - from.height) / 2 } };
}

/** Whether two views show the same, within what a screen shows: sizes are rounded on the way. */
export function isSame(one: View, other: View): boolean {
  const apart = Math.hypot(one.origin.x - other.origin.x, one.origin.y - other.origin.y);
  return apart < 0.5 && Math.abs(one.scale / other.scale - 1) < 1e-3;
}

/** Whether a frame of this size, CSS pixels, can show anything. One that is hidden has none. */
function hasRoom({ width, height }: Size): boolean {
  return width > 0 && height > 0;
}

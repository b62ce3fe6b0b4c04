import type { Point } from '../../geometry/point.ts';
import type { Drawing } from '../drawing/drawing.ts';
import type { Size, View } from './view.ts';

/** What the awake sheet tells the table. */
export interface SheetEvents {
  /** The sheet is laid anew in its frame. */
  readonly onView: (view: View) => void;
  /** The paper is slid that many pixels from where it was laid last; null: it lies there. What lies over it goes along. */
  readonly onSlide: (by: Point | null) => void;
  /** A handle or a free mark was dragged to a place. */
  readonly onHandle: (key: string, to: Point) => void;
  readonly onLetGo: () => void;
}

/** Something that can be held and dragged on the sheet. */
export interface Grip {
  readonly key: string;
  readonly at: Point;
  /** What it is of a curve; null for a mark. */
  readonly handle: object | null;
}

/** The sheet, awake. Geometry comes in as drawings; nothing is computed from what the board holds. */
export interface AwakeSheet {
  readonly paint: (drawing: Drawing, grips: readonly Grip[]) => void;
  /** Paints what changes on a picture over the board's own from now on; null: on its own again, with all that was on the other. */
  readonly lift: (over: SVGGElement | null) => void;
  readonly show: (view: View) => void;
  readonly zoom: (factor: number, about: Point | null) => void;
  readonly resize: (size: Size) => void;
  /** As it is seen at this moment, slid or laid. */
  readonly view: () => View;
  readonly size: () => Size;
  readonly destroy: () => void;
}

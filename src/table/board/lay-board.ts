import { distance, type Point } from '../../geometry/point.ts';
import type { Box } from '../drawing/box.ts';
import type { Drawing } from '../drawing/drawing.ts';
import type { AwakeSheet, Grip, SheetEvents } from './awake-sheet.ts';
import { Gestures } from './gestures.ts';
import { Painter, ringOf } from './painter.ts';
import { layPaper, type Paper } from './paper.ts';
import { slide } from './slide.ts';
import { made } from './svg.ts';
import { fitView, movedView, resizedView, type Size, slideBetween, toPixels, toSheet, type View } from './view.ts';

/** How near a finger must come to take hold of something, px; and how far past its ring a mouse may be. */
const FINGER_REACH = 32;
const MOUSE_SLACK = 2;

/** Lays a board over the host, showing the box as the built SVG shows it. */
export function layBoard(host: HTMLElement, box: Box, id: string, events: SheetEvents): AwakeSheet {
  return new Board(host, box, id, events);
}

class Board implements AwakeSheet {
  readonly #box: Box;
  readonly #events: SheetEvents;
  readonly #root = made('svg', { 'aria-hidden': 'true', focusable: 'false' });
  readonly #paper: Paper;
  readonly #painter: Painter;
  readonly #gestures: Gestures;
  #size: Size;
  #view: View;
  /** The view that the sheet was laid in: it is slid from there while a hand moves the paper. */
  #laid: View;
  #shown: { readonly drawing: Drawing; readonly grips: readonly Grip[] } | null = null;

  constructor(host: HTMLElement, box: Box, id: string, events: SheetEvents) {
    this.#box = box;
    this.#events = events;
    this.#paper = layPaper(this.#root, id);
    this.#painter = new Painter(this.#root, id);
    host.append(this.#root);
    this.#gestures = new Gestures(host, {
      holdAt: (p, byFinger) => this.#holdAt(p, byFinger),
      onHold: (key, to) => events.onHandle(key, toSheet(this.#view, to)),
      onLetGo: events.onLetGo,
      onMove: (from, to, factor) => this.#move(movedView(this.#view, from, to, factor)),
      onRest: () => {
        if (this.#laid !== this.#view) this.show(this.#view);
      },
    });
    this.#size = { width: host.clientWidth, height: host.clientHeight };
    this.#view = fitView(box, this.#size);
    this.#laid = this.#view;
    this.show(this.#view);
  }

  paint(drawing: Drawing, grips: readonly Grip[]): void {
    this.#shown = { drawing, grips };
    this.#paper.rule(drawing.dots);
    this.#painter.paint(drawing, grips, this.#view.scale);
  }

  lift(over: SVGGElement | null): void {
    this.#painter.lift(over);
  }

  show(view: View): void {
    const scaled = view.scale !== this.#view.scale;
    if (this.#laid !== this.#view) this.#slide(null);
    this.#view = view;
    this.#laid = view;
    this.#paper.move(view);
    this.#painter.move(view.origin);
    if (scaled && this.#shown) this.paint(this.#shown.drawing, this.#shown.grips);
    this.#events.onView(view);
  }

  zoom(factor: number, about: Point | null): void {
    const still = about ?? { x: this.#size.width / 2, y: this.#size.height / 2 };
    this.show(movedView(this.#view, still, still, factor));
  }

  resize(next: Size): void {
    const view = resizedView(this.#view, this.#box, this.#size, next);
    if (view === null) return;
    this.#size = next;
    this.show(view);
  }

  view(): View {
    return this.#view;
  }

  size(): Size {
    return this.#size;
  }

  destroy(): void {
    this.#gestures.end();
    this.#root.remove();
  }

  /** Laying the sheet has all of the paper painted again, and its words looked through: while a hand moves it, it is slid. */
  #move(view: View): void {
    const by = slideBetween(this.#laid, view, this.#size);
    if (by === null) this.show(view);
    else {
      this.#view = view;
      this.#slide(by);
    }
  }

  #slide(by: Point | null): void {
    slide(this.#root, by);
    this.#events.onSlide(by);
  }

  /** The nearest grip that a hand at a place takes hold of. */
  #holdAt(p: Point, byFinger: boolean): { readonly key: string; readonly at: Point } | null {
    const near = (this.#shown?.grips ?? []).flatMap((grip) => {
      const at = toPixels(this.#view, grip.at);
      const off = distance(at, p);
      return off < (byFinger ? FINGER_REACH : ringOf(grip) + MOUSE_SLACK) ? [{ key: grip.key, at, off }] : [];
    });
    return near.toSorted((a, b) => a.off - b.off)[0] ?? null;
  }
}

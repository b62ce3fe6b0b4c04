import type { Point } from '../../geometry/point.ts';

/**
 * Shows an element so many pixels from where it is laid; null: where it is laid. The browser pushes along what it has painted,
 * which the style sheet gives a layer of its own meanwhile, and paints nothing; by whole pixels, which it need not blend.
 */
export function slide(element: HTMLElement | SVGSVGElement, by: Point | null): void {
  if (by === null) delete element.dataset.slid;
  else element.dataset.slid = '';
  element.style.transform = by === null ? '' : `translate(${Math.round(by.x)}px, ${Math.round(by.y)}px)`;
}

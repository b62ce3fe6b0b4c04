import type { Path } from '../../geometry/cubic.ts';
import type { Point } from '../../geometry/point.ts';

/** A path as SVG path data with y down, the sheet's y turned over: in mm, or in pixels at `scale` of them a mm. */
export function pathData(path: Path, scale = 1): string {
  const first = path[0];
  if (!first) return '';
  const pieces = path.map(({ p1, p2, p3 }) => `C${pair(p1, scale)} ${pair(p2, scale)} ${pair(p3, scale)}`);
  return `M${pair(first.p0, scale)}${pieces.join('')}`;
}

/** A straight run as SVG path data, likewise. */
export function runData(from: Point, to: Point, scale = 1): string {
  return `M${pair(from, scale)}L${pair(to, scale)}`;
}

/** The ends of an SVG line, in pixels. They are no properties of its style, as path data are: a browser moves it more lightly. */
export function runBetween(from: Point, to: Point): Readonly<Record<'x1' | 'y1' | 'x2' | 'y2', string>> {
  return { x1: figure(from.x), y1: figure(from.y), x2: figure(to.x), y2: figure(to.y) };
}

/** A hundredth of a millimetre, or of a pixel, is finer than any screen shows. */
export function figure(value: number): string {
  const rounded = Math.round(value * 100) / 100;
  return (rounded === 0 ? 0 : rounded).toString();
}

function pair(p: Point, scale: number): string {
  return `${figure(p.x * scale)} ${figure(-p.y * scale)}`;
}

import type { Path } from '../../geometry/cubic.ts';
import type { Point } from '../../geometry/point.ts';

/** A path as SVG path data, in mm with y down: the sheet's y turned over. */
export function pathData(path: Path): string {
  const first = path[0];
  if (!first) return '';
  const pieces = path.map((piece) => `C${pair(piece.p1)} ${pair(piece.p2)} ${pair(piece.p3)}`);
  return `M${pair(first.p0)}${pieces.join('')}`;
}

/** A straight run as SVG path data. */
export function runData(from: Point, to: Point): string {
  return `M${pair(from)}L${pair(to)}`;
}

/** A hundredth of a millimetre is finer than any screen shows. */
export function figure(value: number): string {
  const rounded = Math.round(value * 100) / 100;
  return (rounded === 0 ? 0 : rounded).toString();
}

function pair(p: Point): string {
  return `${figure(p.x)} ${figure(-p.y)}`;
}

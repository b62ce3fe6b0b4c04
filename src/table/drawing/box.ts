import { pointsBounds } from '../../geometry/bounds.ts';
import type { Line } from '../../geometry/line.ts';
import { add, type Point, scale } from '../../geometry/point.ts';

/** A rectangle of the sheet, mm, y up. */
export interface Box {
  readonly min: Point;
  readonly max: Point;
}

/** The least box about the points, however many: the answers of a class come to more than a call takes arguments. Null when there are none. */
export function boxAbout(points: readonly Point[]): Box | null {
  return points.length === 0 ? null : pointsBounds(points);
}

export function widthOf(box: Box): number {
  return box.max.x - box.min.x;
}

export function heightOf(box: Box): number {
  return box.max.y - box.min.y;
}

export function centreOf(box: Box): Point {
  return { x: (box.min.x + box.max.x) / 2, y: (box.min.y + box.max.y) / 2 };
}

/** The box with a margin all round, mm. */
export function padded(box: Box, margin: number): Box {
  return {
    min: { x: box.min.x - margin, y: box.min.y - margin },
    max: { x: box.max.x + margin, y: box.max.y + margin },
  };
}

/** The least box about the same centre that holds `box` and is `aspect` times as wide as high. */
export function withAspect(box: Box, aspect: number): Box {
  const width = Math.max(widthOf(box), heightOf(box) * aspect);
  const half = { x: width / 2, y: width / aspect / 2 };
  const centre = centreOf(box);
  return { min: add(centre, scale(half, -1)), max: add(centre, half) };
}

export function holds(box: Box, p: Point): boolean {
  return p.x >= box.min.x && p.x <= box.max.x && p.y >= box.min.y && p.y <= box.max.y;
}

/** The stations, mm along the line, at which it enters and leaves the box; null when it misses it. */
export function clip(line: Line, box: Box): readonly [number, number] | null {
  const across = slab(line.through.x, line.direction.x, box.min.x, box.max.x);
  const upright = slab(line.through.y, line.direction.y, box.min.y, box.max.y);
  if (!across || !upright) return null;
  const enter = Math.max(across[0], upright[0]);
  const leave = Math.min(across[1], upright[1]);
  return enter < leave ? [enter, leave] : null;
}

/** Where a coordinate that starts at `from` and changes by `rate` a mm lies between two bounds. */
function slab(from: number, rate: number, low: number, high: number): readonly [number, number] | null {
  // Does it run along the slab, within or without?
  if (Math.abs(rate) < 1e-12) return from >= low && from <= high ? [-1e6, 1e6] : null;
  const a = (low - from) / rate;
  const b = (high - from) / rate;
  return a < b ? [a, b] : [b, a];
}

import { type Drawn, isDrawn, type ShapeKind } from '../../drafting/shape.ts';
import type { Sheet } from '../../drafting/sheet.ts';
import type { Name } from '../../drafting/step.ts';
import { crossLineWithPath, crossPaths } from '../../geometry/crossings.ts';
import { crossLines, footOn } from '../../geometry/line.ts';
import { nearestOn } from '../../geometry/nearest.ts';
import { distance, type Point } from '../../geometry/point.ts';

/** What the pointer has caught, and the place on it nearest the pointer. */
export interface Caught {
  readonly name: Name;
  readonly kind: ShapeKind;
  readonly at: Point;
}

/** What can be pointed at: the sheet, and which of its objects are shown. */
export interface Pointing {
  readonly sheet: Sheet;
  readonly shown: (name: Name) => boolean;
  /** How near the pointer must come, mm: a fixed distance on the screen. */
  readonly radius: number;
}

interface Near extends Caught {
  readonly away: number;
  readonly shape: Drawn;
}

/** The object of one of these kinds that the pointer means: a mark before a line that runs through it, else the nearest. */
export function catchObject(pointing: Pointing, p: Point, kinds: readonly ShapeKind[]): Caught | null {
  const near = nearby(pointing, p).filter((one) => kinds.includes(one.kind));
  const mark = near.find((one) => one.kind === 'point');
  return mark ?? near[0] ?? null;
}

/** Where a free mark snaps: onto a mark, where two lines cross, onto a line or curve; null where it stays free. */
export function catchPlace(
  pointing: Pointing,
  p: Point,
): { readonly at: Point; readonly names: readonly Name[] } | null {
  const near = nearby(pointing, p);
  const mark = near.find((one) => one.kind === 'point');
  if (mark) return { at: mark.at, names: [mark.name] };
  const [first, second] = near;
  if (!first) return null;
  const crossing = second ? crossingNear(first.shape, second.shape, p) : null;
  if (second && crossing && distance(crossing, p) <= pointing.radius)
    return { at: crossing, names: [first.name, second.name] };
  return { at: first.at, names: [first.name] };
}

/** Everything within reach, nearest first. */
function nearby({ sheet, shown, radius }: Pointing, p: Point): Near[] {
  const found: Near[] = [];
  for (const [name, shape] of sheet.shapes) {
    if (!isDrawn(shape) || !shown(name)) continue;
    const at = nearestPlaceOn(shape, p);
    const away = distance(at, p);
    if (away <= radius) found.push({ name, kind: shape.kind, at, away, shape });
  }
  return found.sort((a, b) => a.away - b.away);
}

/** The place on a shape nearest a point. */
export function nearestPlaceOn(shape: Drawn, p: Point): Point {
  if (shape.kind === 'point') return shape.point;
  return shape.kind === 'line' ? footOn(shape.line, p) : nearestOn(shape.path, p).point;
}

function crossingNear(a: Drawn, b: Drawn, p: Point): Point | null {
  const [nearest] = crossings(a, b).sort((one, other) => distance(one, p) - distance(other, p));
  return nearest ?? null;
}

function crossings(a: Drawn, b: Drawn): Point[] {
  if (a.kind === 'point' || b.kind === 'point') return [];
  if (a.kind === 'line' && b.kind === 'line') {
    const crossing = crossLines(a.line, b.line);
    return crossing ? [crossing] : [];
  }
  if (a.kind === 'line') return b.kind === 'curve' ? crossLineWithPath(a.line, b.path) : [];
  return b.kind === 'line' ? crossLineWithPath(b.line, a.path) : crossPaths(a.path, b.path);
}

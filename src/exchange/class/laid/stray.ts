import type { Shape } from '../../../drafting/shape.ts';
import type { Path } from '../../../geometry/cubic.ts';
import { crossLines, type Line, lineAlong } from '../../../geometry/line.ts';
import { nearestOn } from '../../../geometry/nearest.ts';
import { endOf, startOf } from '../../../geometry/path.ts';
import { add, dot, type Point, quarterTurn, scale, subtract } from '../../../geometry/point.ts';
import { runsAcross } from '../../../grader/measures/across.ts';
import { facing } from '../../../grader/measures/facing.ts';
import type { Footing, Spot } from './footing.ts';

/** How far an answer lies from a place of the right one, mm: along the way it runs there, and to the left of that way. */
export interface Off {
  readonly along: number;
  readonly across: number;
}

/** An answer by how far it lies from the right one, place for place: nothing in it hangs on the figure any more. */
export interface Stray {
  readonly kind: Footing['kind'];
  readonly offs: readonly Off[];
}

/** How far an answer strays from the right one; null where it is another kind of thing, or a line that runs across. */
export function strayOf(answer: Shape, { kind, right, spots }: Footing): Stray | null {
  const turned = facing(answer, right);
  const places = placesOf(turned, right, spots);
  if (places === null) return null;
  return { kind, offs: spots.map((spot, index) => offAt(spot, places[index] ?? spot.at)) };
}

/** Where a stray lies when it is laid over another figure's right answer: as far off, mm for mm, and to the same side. */
export function laidOver({ offs }: Stray, { spots }: Footing): readonly Point[] {
  return spots.map(({ at, along }, index) => {
    const off = offs[index] ?? { along: 0, across: 0 };
    return add(at, add(scale(along, off.along), scale(quarterTurn(along), off.across)));
  });
}

/** How far a stray lies off where it is furthest, mm. */
export function sizeOf({ offs }: Stray): number {
  return Math.max(...offs.map(({ along, across }) => Math.hypot(along, across)));
}

function placesOf(answer: Shape, right: Shape, spots: readonly Spot[]): readonly Point[] | null {
  if (answer.kind === 'point' && right.kind === 'point') return [answer.point];
  if (answer.kind === 'line' && right.kind === 'line') return onLine(answer.line, right.line, spots);
  return answer.kind === 'curve' && right.kind === 'curve' ? onCurve(answer.path, spots) : null;
}

/** A line is met square to the right one. */
function onLine(answer: Line, right: Line, spots: readonly Spot[]): readonly Point[] | null {
  if (runsAcross(answer, right)) return null;
  const met = spots.map(({ at, along }) => {
    const square = lineAlong(at, quarterTurn(along));
    return square && crossLines(square, answer);
  });
  return met.includes(null) ? null : (met as readonly Point[]);
}

/** Ends are held against ends, so that one drawn too short or too long shows; between them the nearest place counts. */
function onCurve(answer: Path, spots: readonly Spot[]): readonly Point[] {
  const last = spots.length - 1;
  return spots.map(({ at }, index) => {
    if (index === 0) return startOf(answer);
    return index === last ? endOf(answer) : nearestOn(answer, at).point;
  });
}

function offAt({ at, along }: Spot, place: Point): Off {
  const away = subtract(place, at);
  return { along: dot(away, along), across: dot(away, quarterTurn(along)) };
}

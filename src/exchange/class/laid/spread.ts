import { add, type Point, quarterTurn, scale } from '../../../geometry/point.ts';
import type { Footing, Spot } from './footing.ts';
import { type Off, type Stray, sizeOf } from './stray.ts';

/** How the answers of a class lie about the right one. */
export interface Spread {
  /** How far off the nearest lies, and how far at most half of them do: as far as one of them does. Where each is furthest off, mm. */
  readonly nearest: number;
  readonly half: number;
  /** How far off the furthest lies, mm. */
  readonly furthest: number;
  /** Which way the middle of the class lies off, mm on that sheet, where it is furthest off. */
  readonly lean: Point;
  /** That place; null where it is off as far everywhere. */
  readonly at: Spot | null;
}

/** Places that are off by so nearly the same, mm, are off alike. */
const EVEN = 0.5;

/** The spread of a class's strays, laid over a footing; null of none. */
export function spreadOf(strays: readonly Stray[], { spots }: Footing): Spread | null {
  if (strays.length === 0) return null;
  const sizes = strays.map(sizeOf).toSorted((a, b) => a - b);
  const leans = spots.map((spot, index) => ({ at: spot, lean: leanAt(spot, strays, index) }));
  const most = leans.reduce((one, other) => (long(other.lean) > long(one.lean) ? other : one));
  const isEven = leans.every(({ lean }) => long(most.lean) - long(lean) < EVEN);
  const [nearest = 0, half = 0, furthest = 0] = [0, Math.ceil(sizes.length / 2) - 1, sizes.length - 1].map(
    (at) => sizes[at] ?? 0,
  );
  return { nearest, half, furthest, lean: most.lean, at: isEven ? null : most.at };
}

/** The middle of the class at a place: the middle one along and the middle one across. */
function leanAt({ along }: Spot, strays: readonly Stray[], index: number): Point {
  const of = (way: keyof Off): number => middleOne(strays.map(({ offs }) => offs[index]?.[way] ?? 0));
  return add(scale(along, of('along')), scale(quarterTurn(along), of('across')));
}

/** The one in the middle; of two there, the one nearer to right. Between two bunches, where the median would be, nobody lies. */
function middleOne(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const [low = 0, high = 0] = [Math.ceil(sorted.length / 2) - 1, Math.floor(sorted.length / 2)].map((at) => sorted[at]);
  return Math.abs(high) < Math.abs(low) ? high : low;
}

function long({ x, y }: Point): number {
  return Math.hypot(x, y);
}

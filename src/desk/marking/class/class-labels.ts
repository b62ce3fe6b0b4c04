import type { Footing } from '../../../exchange/class/laid/footing.ts';
import type { Point } from '../../../geometry/point.ts';
import type { Label, Tone } from '../../../table/drawing/drawing.ts';
import type { Message } from '../../../words/message.ts';

/** Answers that are named together in a class picture, where each lies on its sheet. */
export interface Bundle {
  /** By what its parts are known among those of the drawing. */
  readonly group: string;
  /** Null for those who are not named. */
  readonly words: Message | null;
  readonly tone: Tone;
  readonly laid: readonly (readonly Point[])[];
}

/** The words of a bundle, at the answer in its middle: there they are nearest to most of it, and on none of the others. */
export function labelOf({ group, words, tone, laid }: Bundle, { kind }: Footing): readonly Label[] {
  const middle = middleOf(laid);
  const first = middle[0];
  if (first === undefined || words === null) return [];
  return [{ by: kind === 'point' ? first : middle, of: group, words, tone, must: true }];
}

/** Of answers the one that lies nearest to the mean of all, place for place. */
function middleOf(laid: readonly (readonly Point[])[]): readonly Point[] {
  const mean = (laid[0] ?? []).map((_, index) => meanOf(laid.flatMap((places) => places[index] ?? [])));
  const away = (places: readonly Point[]): number =>
    places.reduce((sum, { x, y }, index) => sum + Math.hypot(x - (mean[index]?.x ?? x), y - (mean[index]?.y ?? y)), 0);
  return laid.reduce<{ places: readonly Point[]; far: number }>(
    (nearest, places) => {
      const far = away(places);
      return far < nearest.far ? { places, far } : nearest;
    },
    { places: [], far: Number.POSITIVE_INFINITY },
  ).places;
}

function meanOf(points: readonly Point[]): Point {
  const sum = points.reduce((all, { x, y }) => ({ x: all.x + x, y: all.y + y }), { x: 0, y: 0 });
  return { x: sum.x / points.length, y: sum.y / points.length };
}

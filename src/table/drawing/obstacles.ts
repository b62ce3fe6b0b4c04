import type { Name } from '../../drafting/step.ts';
import type { Point } from '../../geometry/point.ts';
import type { Part } from './drawing.ts';
import { boundsOf, type Rectangle } from './rectangle.ts';
import { runsOf } from './runs.ts';

/** A straight run of ink, or a mark, that words keep clear of; in pixels. */
export interface Obstacle {
  /** The object it shows; null when it shows none. */
  readonly of: Name | null;
  readonly from: Point;
  readonly to: Point;
  /** The rectangle about it: what keeps from that keeps from it. */
  readonly bounds: Rectangle;
  /** How far words stay from it: a mark has a body, and more of one where it can be held. */
  readonly room: number;
  readonly mark: boolean;
  /** The rest of a line, drawn faintly to the edge of the sheet. */
  readonly faint: boolean;
}

/** Words keep this far from a line that is not theirs, px. */
const LINE_ROOM = 4;
/** From a mark: its cross, and a little air. */
const MARK_ROOM = 7;
/** From a mark with a ring about it, by which it can be held. */
const RING_ROOM = 14;

/**
 * Everything that words keep clear of. What only shows for a moment (what a step would make, what the pointer has caught)
 * does not count, so that words stay where they are while one points.
 */
export function obstaclesOf(
  parts: readonly Part[],
  rings: readonly Point[],
  toPixels: (p: Point) => Point,
): readonly Obstacle[] {
  const ink = parts.filter(lasts).flatMap((part) => {
    const mark = part.kind === 'mark';
    const room = mark ? roomAbout(part.at, rings) : LINE_ROOM;
    const about = { of: part.group ?? part.name, room, mark, faint: part.kind === 'line' && part.faint };
    return runsOf([part]).map(({ from, to }) => obstacle(toPixels(from), toPixels(to), about));
  });
  const ring = { of: null, room: RING_ROOM, mark: true, faint: false };
  return [...ink, ...rings.map((at) => obstacle(toPixels(at), toPixels(at), ring))];
}

/** Whether a part is there to stay, and not only while one points. */
export function lasts({ tone }: Part): boolean {
  return tone !== 'preview' && tone !== 'cue';
}

function obstacle(from: Point, to: Point, about: Omit<Obstacle, 'from' | 'to' | 'bounds'>): Obstacle {
  return { from, to, bounds: boundsOf(from, to), ...about };
}

/** How far words stay from a mark. */
export function roomAbout(mark: Point, rings: readonly Point[]): number {
  return rings.some(({ x, y }) => Math.hypot(x - mark.x, y - mark.y) < 1e-6) ? RING_ROOM : MARK_ROOM;
}

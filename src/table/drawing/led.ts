import type { Point } from '../../geometry/point.ts';
import { isWithin, type Surroundings } from './clear.ts';
import type { Obstacle } from './obstacles.ts';
import { gapTo, gapToPoint, nearestIn, type Rectangle, runWithin } from './rectangle.ts';
import type { Run } from './runs.ts';
import type { Seat } from './seats.ts';

/** A leader crosses at most so many lines; each is disliked as much as so many pixels of leader. */
const MOST_CROSSED = 3;
const CROSSED = 30;
/** A leader keeps this far from marks that are not meant, px. */
const PAST_MARK = 6;

/** The leader of words that stand off: from what they name to the words, px. */
export function leaderOf({ rectangle }: Pick<Seat, 'rectangle'>, at: Point, clear: number): Run {
  const to = nearestIn(rectangle, at);
  const long = Math.hypot(to.x - at.x, to.y - at.y) || 1;
  const start = Math.min(clear, long) / long;
  return { from: { x: at.x + (to.x - at.x) * start, y: at.y + (to.y - at.y) * start }, to };
}

/**
 * What a leader crosses makes it liked less. Null where the words would lie on something, or their leader would run through
 * other words, across another leader or past a mark that is not meant.
 */
export function costOfLeader(
  rectangle: Rectangle,
  leader: Run,
  { all, others }: Surroundings,
  taken: readonly Rectangle[],
  leaders: readonly Run[],
): number | null {
  if (all.some((one) => isWithin(rectangle, one, one.room))) return null;
  if (leaders.some((run) => gapTo(rectangle, run.from, run.to) < 2 || cross(run, leader))) return null;
  if (taken.some((words) => runWithin(words, leader.from, leader.to) > 0)) return null;
  const missed = ({ mark, from }: Obstacle) => mark && gapToPoint(from, leader.from, leader.to) < PAST_MARK;
  if (others.some(missed)) return null;
  const crossed = others.filter((one) => !one.mark && cross(one, leader)).length;
  return crossed > MOST_CROSSED ? null : crossed * CROSSED;
}

function cross(a: Run, b: Run): boolean {
  return side(a, b.from) * side(a, b.to) < 0 && side(b, a.from) * side(b, a.to) < 0;
}

function side({ from, to }: Run, p: Point): number {
  return (to.x - from.x) * (p.y - from.y) - (to.y - from.y) * (p.x - from.x);
}

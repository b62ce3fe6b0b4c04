import type { Point } from '../../geometry/point.ts';
import { isWithin, type Surroundings } from './clear.ts';
import type { Obstacle } from './obstacles.ts';
import { gapTo, gapToPoint, nearestIn, type Rectangle, runWithin } from './rectangle.ts';
import type { Run } from './runs.ts';
import type { Seat } from './seats.ts';

/** A leader crosses at most so many lines; each is disliked as much as so many pixels of leader. */
const MOST_CROSSED = 3;
const CROSSED = 30;
/** A note may come so much closer to what is drawn, in shares of the usual room. */
const CLOSER = 0.5;
/** A leader keeps this far from marks that are not meant, px. */
const PAST_MARK = 6;

/** The leader of words that stand off: from what they name to the words, px. */
export function leaderOf({ rectangle }: Pick<Seat, 'rectangle'>, at: Point, clear: number): Run {
  const to = nearestIn(rectangle, at);
  const long = Math.hypot(to.x - at.x, to.y - at.y) || 1;
  const start = Math.min(clear, long) / long;
  return { from: { x: at.x + (to.x - at.x) * start, y: at.y + (to.y - at.y) * start }, to };
}

/** What a leader of words may run into. */
interface Way {
  readonly rectangle: Rectangle;
  readonly leader: Run;
  readonly about: Surroundings;
  /** Words and leaders that have their place already. */
  readonly taken: readonly Rectangle[];
  readonly leaders: readonly Run[];
}

/**
 * What a leader crosses makes it liked less. Null where the words would lie on something, or their leader would run through
 * other words, across another leader or past a mark that is not meant.
 */
export function costOfLeader(way: Way): number | null {
  if (!isClear(way, 1) || missed(way) > 0 || tangled(way) > 0) return null;
  const over = crossedBy(way);
  return over > MOST_CROSSED ? null : over * CROSSED;
}

/** The same of a note, which has to be written: its leader may cross and pass whatever it must. */
export function costOfNoteLeader(way: Way): number | null {
  return isClear(way, CLOSER) ? (crossedBy(way) + missed(way) + tangled(way)) * CROSSED : null;
}

/** Whether words and leader lie on nothing, the words with such a share of the usual room about them. */
function isClear({ rectangle, leader, about, taken, leaders }: Way, share: number): boolean {
  if (about.all.some((one) => isWithin(rectangle, one, one.room * share))) return false;
  if (leaders.some((run) => gapTo(rectangle, run.from, run.to) < 2)) return false;
  return taken.every((words) => runWithin(words, leader.from, leader.to) === 0);
}

/** Across how many other leaders it runs. */
function tangled({ leader, leaders }: Way): number {
  return leaders.filter((run) => cross(run, leader)).length;
}

/** Past how many marks it runs that are not meant. */
function missed({ leader, about }: Way): number {
  const isMissed = ({ mark, from }: Obstacle) => mark && gapToPoint(from, leader.from, leader.to) < PAST_MARK;
  return about.others.filter(isMissed).length;
}

function crossedBy({ leader, about }: Way): number {
  return about.others.filter((one) => !one.mark && cross(one, leader)).length;
}

function cross(a: Run, b: Run): boolean {
  return side(a, b.from) * side(a, b.to) < 0 && side(b, a.from) * side(b, a.to) < 0;
}

function side({ from, to }: Run, p: Point): number {
  return (to.x - from.x) * (p.y - from.y) - (to.y - from.y) * (p.x - from.x);
}

import type { Point } from '../../geometry/point.ts';
import type { Label } from './drawing.ts';
import type { Obstacle } from './obstacles.ts';
import { gapBetween, gapTo, gapToPoint, type Rectangle } from './rectangle.ts';
import type { Seat } from './seats.ts';

/** Words are this much nearer to what they name than to anything else, px. */
const NEARER = 2;
/** Words keep this far from the line they name, px: one that bends would run into them. */
const OWN_ROOM = 3;
/** And no further from it than this: past the end of a slanting line they would seem to name nothing. */
const OWN_REACH = 18;
/** More free room than this about words is no better, px. */
export const FREE = 48;
/** Two lines this near each other, px, lie in one place: which of them words mean cannot be told by where they stand. */
const SAME = 1.5;
const ALONG_SAME = 15;

/** What there is about the words of one label. */
export interface Surroundings {
  /** What they name. */
  readonly own: readonly Obstacle[];
  /** What is near by its nature: it runs through the mark that is named, or lies on the line that is. */
  readonly touching: readonly Obstacle[];
  readonly others: readonly Obstacle[];
  /** All three. */
  readonly all: readonly Obstacle[];
  readonly namesMark: boolean;
}

/** Sorts what words keep clear of by what it is to one label. The faint rest of a line may run under words: they cover it. */
export function surroundingsOf(
  { by, of }: Label,
  obstacles: readonly Obstacle[],
  toPixels: (p: Point) => Point,
): Surroundings {
  const firm = obstacles.filter((one) => !one.faint);
  const mark = 'x' in by ? toPixels(by) : null;
  // A note names nothing; its own is the arrow it is written beside.
  const run = 'x' in by || of !== undefined ? null : by.map(toPixels);
  const isOwn = (one: Obstacle): boolean => (run === null ? one.of === of : runsAlong(one, run));
  const own = firm.filter(isOwn);
  const rest = firm.filter((one) => !isOwn(one));
  const touches = (one: Obstacle): boolean =>
    mark ? liesAt(one, mark) : one.mark && own.some((run) => liesAt(run, one.from));
  return {
    own,
    touching: rest.filter(touches),
    others: rest.filter((one) => !touches(one)),
    all: firm,
    namesMark: mark !== null,
  };
}

/** How much free room there is about words, px, at most `FREE`; null where they would cross something or could mean it. */
export function freeAbout(
  { rectangle, anchor }: Seat,
  { own, touching, others, namesMark }: Surroundings,
  taken: readonly Rectangle[],
  toPixels: (p: Point) => Point,
): number | null {
  const away = Math.min(...own.map(({ from, to }) => gapTo(rectangle, from, to)));
  if (away < OWN_ROOM || away > OWN_REACH) return null;
  if (touching.some((one) => isWithin(rectangle, one, leastTouching(one, namesMark)))) return null;
  const at = toPixels(anchor);
  let free = Math.min(FREE, ...taken.map((other) => gapBetween(rectangle, other)));
  for (const other of others) {
    if (gapBetween(rectangle, other.bounds) >= Math.max(free, away + NEARER)) continue;
    const gap = gapTo(rectangle, other.from, other.to);
    const mistaken = gap < away + NEARER && (namesMark || other.mark || !liesAlong(other, own, at));
    if (gap < other.room || mistaken) return null;
    free = Math.min(free, gap);
  }
  return free;
}

/** Whether a rectangle comes nearer than `least` to something. */
export function isWithin(rectangle: Rectangle, { bounds, from, to }: Obstacle, least: number): boolean {
  return gapBetween(rectangle, bounds) < least && gapTo(rectangle, from, to) < least;
}

/** Two marks in one place may have their words side by side. */
function leastTouching({ mark, room }: Obstacle, namesMark: boolean): number {
  return mark && namesMark ? 0 : room / 2;
}

/** Whether a run of ink is just the one that words sit along. */
function runsAlong({ mark, from, to }: Obstacle, corners: readonly Point[]): boolean {
  const [first, last] = [corners[0], corners.at(-1)];
  return !mark && corners.length === 2 && isAt(from, first) && isAt(to, last);
}

function isAt(p: Point, other: Point | undefined): boolean {
  return other !== undefined && Math.hypot(p.x - other.x, p.y - other.y) < SAME;
}

function liesAt({ from, to }: Obstacle, p: Point): boolean {
  return gapToPoint(p, from, to) < SAME;
}

/** Whether a line lies in the same place as the named one, where the words would stand. */
function liesAlong(other: Obstacle, own: readonly Obstacle[], anchor: Point): boolean {
  const run = own.find((one) => liesAt(one, anchor));
  if (!run || !liesAt(other, anchor)) return false;
  const d = { x: run.to.x - run.from.x, y: run.to.y - run.from.y };
  const long = Math.hypot(d.x, d.y) || 1;
  const at = (step: number) => ({ x: anchor.x + (d.x / long) * step, y: anchor.y + (d.y / long) * step });
  return liesAt(other, at(ALONG_SAME)) || liesAt(other, at(-ALONG_SAME));
}

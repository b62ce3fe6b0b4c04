import { between, type Point, subtract } from '../../geometry/point.ts';
import type { Message } from '../../words/message.ts';
import type { Box } from './box.ts';
import { FREE, freeAbout, type Surroundings, surroundingsOf } from './clear.ts';
import type { Drawing, Label, Tone } from './drawing.ts';
import { costOfLeader, leaderOf } from './led.ts';
import { type Obstacle, obstaclesOf, roomAbout } from './obstacles.ts';
import { overlap, type Rectangle, runWithin } from './rectangle.ts';
import type { Run } from './runs.ts';
import { LEAST_LED, type Seat, type Seats, seatsOf } from './seats.ts';

/** Words with a place: about an anchor of the sheet in mm, their middle moved by so many pixels (y down). */
export interface Placed {
  readonly text: string;
  readonly tone: Tone;
  readonly anchor: Point;
  readonly shift: Point;
  /** The leader from what they name to the words, px from the anchor, y down; null where they stand beside it. */
  readonly leader: Run | null;
  /** Whether the leader begins on a line, and not beside a mark. */
  readonly onLine: boolean;
  /** Which of the seats of its label it has. */
  readonly seat: number;
}

/** What is known beside the drawing. */
export interface Around {
  /** Marks with a ring about them, by which they can be held, mm. */
  readonly rings?: readonly Point[];
  /** Where the words stood before: they stay there as long as they may. */
  readonly before?: readonly Placed[];
  /** Where words may stand, mm; the drawing's box when absent. */
  readonly within?: Box;
}

const NOT_AT_ALL = Number.POSITIVE_INFINITY;
/** Another seat must be liked more by this, px, for words to leave theirs. */
const STAYS = 30;
/** So many pixels of a faint line under words are disliked as one pixel less of free room. */
const FAINT = 4;

/**
 * Finds each label a seat, at `scale` pixels a mm: on no other words, across no line, and nearer to what it names than to
 * anything else; or off it, with a leader. A label without a seat is left out: what it names still answers to pointing, and
 * the description names it. Greedy, hardest first; deterministic.
 */
export function placeLabels(
  drawing: Drawing,
  scale: number,
  speak: (words: Message) => string,
  { rings = [], before = [], within = drawing.box }: Around = {},
): Placed[] {
  const { box } = drawing;
  const toPixels = (p: Point) => ({ x: (p.x - box.min.x) * scale, y: (box.max.y - p.y) * scale });
  const obstacles = obstaclesOf(drawing.parts, rings, toPixels);
  const field: Field = { within: rectangleOf(within, toPixels), obstacles, taken: [], leaders: [], toPixels };
  const stood = new Map(before.map((one) => [one.text, one.seat]));
  const placed: Placed[] = [];
  for (const label of hardestFirst(drawing.labels)) {
    const text = speak(label.words);
    const room = 'x' in label.by ? roomAbout(label.by, rings) : 0;
    const seats = seatsOf(label, text, room, toPixels);
    const found = best(seats, label, field, stood.get(text) ?? null);
    if (found === null) continue;
    const { seat, index } = found;
    field.taken.push(seat.rectangle);
    const { anchor, shift } = seat;
    placed.push({
      text,
      tone: label.tone,
      anchor,
      shift,
      leader: lead(seat, room, field),
      onLine: !('x' in label.by),
      seat: index,
    });
  }
  return placed;
}

/** Draws the leader of words that have one; px from the anchor. */
function lead(seat: Seat, room: number, { leaders, toPixels }: Field): Run | null {
  if (!seat.led) return null;
  const at = toPixels(seat.anchor);
  const leader = leaderOf(seat, at, room);
  leaders.push(leader);
  return { from: subtract(leader.from, at), to: subtract(leader.to, at) };
}

interface Field {
  /** Where words may stand, px. */
  readonly within: Rectangle;
  readonly obstacles: readonly Obstacle[];
  /** Words that have their place already. */
  readonly taken: Rectangle[];
  readonly leaders: Run[];
  readonly toPixels: (p: Point) => Point;
}

/** The marker's words must be read; then what was drawn; then the block and what only helps. */
const ORDER: Readonly<Record<Tone, number>> = {
  red: 0,
  right: 1,
  made: 1,
  roll: 1,
  preview: 1,
  cue: 1,
  help: 2,
  given: 2,
  class: 2,
};

/** Of what matters alike, marks come first: they have fewer seats to choose from than lines. */
function hardestFirst(labels: readonly Label[]): readonly Label[] {
  const rank = ({ tone, by }: Label): number => ORDER[tone] * 2 + ('x' in by ? 0 : 1);
  return labels.toSorted((a, b) => rank(a) - rank(b));
}

/** A seat, and which of a label's seats it is: those with a leader are counted after those without. */
interface Found {
  readonly seat: Seat;
  readonly index: number;
}

/** The seat to take: the one it had, unless it may not or there is a much better one; else the best. Null when there is none. */
function best(seats: Seats, label: Label, field: Field, had: number | null): Found | null {
  const faint = field.obstacles.filter((one) => one.faint);
  const about = label.of === undefined ? null : surroundingsOf(label, field.obstacles, field.toPixels);
  const costOf = (seat: Seat): number => cost(seat, about, faint, field);
  const stood = had === null ? null : seatOf(seats, had);
  const stays = stood === null ? NOT_AT_ALL : costOf(stood.seat);
  let found = Number.isFinite(stays) ? stood : null;
  let least = found === null ? NOT_AT_ALL : stays - STAYS;
  const look = (among: readonly Seat[], first: number): void => {
    for (const [rank, seat] of among.entries()) {
      if (seat.dislike >= least) continue;
      const now = costOf(seat);
      if (now < least) [found, least] = [{ seat, index: first + rank }, now];
    }
  };
  look(seats.near, 0);
  if (least > LEAST_LED) look(seats.led(), seats.near.length);
  return found;
}

function seatOf({ near, led }: Seats, index: number): Found | null {
  const seat = index < near.length ? near[index] : led()[index - near.length];
  return seat ? { seat, index } : null;
}

/** How little a seat is liked; without end where it may not be taken. */
function cost(seat: Seat, about: Surroundings | null, faint: readonly Obstacle[], field: Field): number {
  const { rectangle, dislike, led } = seat;
  const { taken, leaders, obstacles, toPixels } = field;
  if (!inside(rectangle, field) || taken.some((other) => overlap(rectangle, other) > 0)) return NOT_AT_ALL;
  if (about === null) return led ? NOT_AT_ALL : dislike + crossed(rectangle, obstacles);
  const more = led
    ? costOfLeader(rectangle, leaderOf(seat, toPixels(seat.anchor), 0), about, taken, leaders)
    : costOfRoom(freeAbout(seat, about, taken, toPixels), rectangle, leaders);
  return more === null ? NOT_AT_ALL : dislike + more + crossed(rectangle, faint) / FAINT;
}

function costOfRoom(free: number | null, rectangle: Rectangle, leaders: readonly Run[]): number | null {
  const led = leaders.some(({ from, to }) => runWithin(rectangle, from, to) > 0);
  return free === null || led ? null : (FREE - free) / 2;
}

function rectangleOf({ min, max }: Box, toPixels: (p: Point) => Point): Rectangle {
  const at = toPixels(between(min, max, 0.5));
  const corner = toPixels(max);
  return { at, halfWide: corner.x - at.x, halfHigh: at.y - corner.y };
}

function inside({ at, halfWide, halfHigh }: Rectangle, { within }: Field): boolean {
  const wide = within.halfWide - halfWide - Math.abs(at.x - within.at.x);
  const high = within.halfHigh - halfHigh - Math.abs(at.y - within.at.y);
  return wide >= 0 && high >= 0;
}

/** How many pixels of drawn lines run under the words. */
function crossed(rectangle: Rectangle, obstacles: readonly Obstacle[]): number {
  return obstacles.reduce((sum, run) => sum + runWithin(rectangle, run.from, run.to), 0);
}

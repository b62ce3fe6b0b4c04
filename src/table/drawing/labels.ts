import { between, type Point, subtract } from '../../geometry/point.ts';
import type { Message } from '../../words/message.ts';
import type { Box } from './box.ts';
import { FREE, freeAbout, isWithin, type Surroundings, surroundingsOf } from './clear.ts';
import { costOfEdge, isInside } from './cut-off.ts';
import type { Drawing, Label, Tone } from './drawing.ts';
import { costOfLeader, costOfNoteLeader, leaderOf } from './led.ts';
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
  readonly label: Label;
}

/** What is known beside the drawing. */
export interface Around {
  /** Marks with a ring about them, by which they can be held, mm. */
  readonly rings?: readonly Point[];
  /** Where the words stood before: they stay there as long as they may. */
  readonly before?: readonly Placed[];
  /** Where words may stand, mm; the drawing's box when absent. */
  readonly within?: Box;
  /** What the frame shows at this moment, mm, where that is not all: no words are cut off at its edge. */
  readonly shown?: Box | null;
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
  { rings = [], before = [], within = drawing.box, shown = null }: Around = {},
): Placed[] {
  const toPixels = pixelsOf(drawing.box, scale);
  const obstacles = obstaclesOf(drawing.parts, rings, toPixels);
  const field: Field = {
    within: rectangleOf(within, toPixels),
    shown: shown && rectangleOf(shown, toPixels),
    obstacles,
    taken: [],
    leaders: [],
    toPixels,
  };
  const stood = new Map(before.map((one) => [one.text, one.seat]));
  const placed: Placed[] = [];
  for (const label of hardestFirst(drawing.labels)) {
    const text = speak(label.words);
    const room = roomOf(label, rings);
    const found = best(seatsOf(label, text, room, toPixels), label, field, stood.get(text) ?? null);
    if (found === null) continue;
    const leader = found.seat.led ? leaderOf(found.seat, toPixels(found.seat.anchor), room) : null;
    field.taken.push(found.seat.rectangle);
    if (leader) field.leaders.push(leader);
    placed.push(placedIn(found, label, text, leader, toPixels));
  }
  return placed;
}

/**
 * The words in the seats they had, gone along with what they name, whatever they come to lie on: for a sheet in motion, where
 * words that looked for better seats would jump about. `scale` is pixels a mm and was so before; what had no seat has none.
 */
export function carryLabels(drawing: Drawing, scale: number, { rings = [], before = [] }: Around): Placed[] {
  const toPixels = pixelsOf(drawing.box, scale);
  const byWords = new Map(before.map((one) => [one.label.words, one]));
  const byName = new Map(before.map((one) => [one.label.of, one]));
  return hardestFirst(drawing.labels).flatMap((label) => {
    const had = byWords.get(label.words) ?? (label.of === undefined ? undefined : byName.get(label.of));
    if (had === undefined || had.label === label) return had ?? [];
    const room = roomOf(label, rings);
    const seat = seatOf(seatsOf(label, had.text, room, toPixels), had.seat);
    if (seat === null) return [];
    const leader = seat.led ? leaderOf(seat, toPixels(seat.anchor), room) : null;
    return [placedIn({ seat, index: had.seat }, label, had.text, leader, toPixels)];
  });
}

function pixelsOf({ min, max }: Box, scale: number): (p: Point) => Point {
  return (p) => ({ x: (p.x - min.x) * scale, y: (max.y - p.y) * scale });
}

/** How far words stay from the mark they name. */
function roomOf({ by }: Label, rings: readonly Point[]): number {
  return 'x' in by ? roomAbout(by, rings) : 0;
}

function placedIn(
  { seat: { anchor, shift }, index }: Found,
  label: Label,
  text: string,
  leader: Run | null,
  toPixels: (p: Point) => Point,
): Placed {
  const at = toPixels(anchor);
  const run = leader && { from: subtract(leader.from, at), to: subtract(leader.to, at) };
  return { text, tone: label.tone, anchor, shift, leader: run, onLine: !('x' in label.by), seat: index, label };
}

interface Field {
  /** Where words may stand, px. */
  readonly within: Rectangle;
  /** What can be seen of that, px; null: all. */
  readonly shown: Rectangle | null;
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
  class: 1,
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

/** The best seat of a label: as a name, and where it has to be written and there is none, as a note. */
function best(seats: Seats, label: Label, field: Field, had: number | null): Found | null {
  const seatedAs = (manner: Manner): Found | null => bestAs(manner, seats, label, field, had);
  if (label.of === undefined) return seatedAs(AS_NOTE);
  return seatedAs(AS_NAME) ?? (label.must ? seatedAs(AS_NOTE) : null);
}

/** The seat to take: the one it had, unless it may not or there is a much better one; else the best. Null when there is none. */
function bestAs(manner: Manner, seats: Seats, label: Label, field: Field, had: number | null): Found | null {
  const faint = field.obstacles.filter((one) => one.faint);
  const about = surroundingsOf(label, field.obstacles, field.toPixels);
  const costOf = (seat: Seat): number => cost(seat, about, faint, field, manner);
  const stood = had === null ? null : seatOf(seats, had);
  const stays = stood === null ? NOT_AT_ALL : costOf(stood);
  let found: Found | null = stood && had !== null && Number.isFinite(stays) ? { seat: stood, index: had } : null;
  let least = found === null ? NOT_AT_ALL : stays - STAYS;
  const look = (from: number, to: number): void => {
    for (let index = from; index < to; index += 1) {
      const seat = seatOf(seats, index);
      if (seat === null || seat.dislike >= least) continue;
      const now = costOf(seat);
      if (now < least) [found, least] = [{ seat, index }, now];
    }
  };
  const { nearCount } = seats;
  look(0, nearCount);
  if (least > LEAST_LED) look(nearCount, nearCount + seats[manner.leaders]);
  return found;
}

/** One of a label's seats; null where it has none of that number. */
function seatOf({ nearCount, near, farCount, led }: Seats, index: number): Seat | null {
  if (index < nearCount) return near(index);
  const withLeader = index - nearCount;
  return withLeader < farCount ? led(withLeader) : null;
}

/** How much is disliked what a seat has about it, without a leader and with one; null where it may not be taken. */
interface Manner {
  readonly beside: (seat: Seat, about: Surroundings, field: Field) => number | null;
  readonly led: typeof costOfLeader;
  /** Which of the seats with a leader are looked at. */
  readonly leaders: 'ledCount' | 'farCount';
}

const AS_NAME: Manner = { beside: costOfName, led: costOfLeader, leaders: 'ledCount' };
const AS_NOTE: Manner = { beside: costOfNote, led: costOfNoteLeader, leaders: 'farCount' };

/** How little a seat is liked; without end where it may not be taken. */
function cost(seat: Seat, about: Surroundings, faint: readonly Obstacle[], field: Field, manner: Manner): number {
  const { rectangle, dislike, led } = seat;
  const { taken, leaders, toPixels } = field;
  if (!isInside(rectangle, field.within) || taken.some((other) => overlap(rectangle, other) > 0)) return NOT_AT_ALL;
  const edge = costOfEdge(seat, toPixels(seat.anchor), field.shown);
  if (edge === null) return NOT_AT_ALL;
  const leader = (): Run => leaderOf(seat, toPixels(seat.anchor), 0);
  const more = led
    ? manner.led({ rectangle, leader: leader(), about, taken, leaders })
    : manner.beside(seat, about, field);
  return more === null ? NOT_AT_ALL : dislike + edge + more + crossed(rectangle, faint) / FAINT;
}

/** Words that name something stand where nothing else can be meant. */
function costOfName(seat: Seat, about: Surroundings, { taken, leaders, toPixels }: Field): number | null {
  const free = freeAbout(seat, about, taken, toPixels);
  const led = leaders.some(({ from, to }) => runWithin(seat.rectangle, from, to) > 0);
  return free === null || led ? null : (FREE - free) / 2;
}

/** Words that lie on a mark or across a line are liked less than any that stand off with a leader, px. */
const LYING = 500;
/** Nearer than this they lie on it, px. */
const TOUCHING = 2;

/** A note has to be written: where no seat is clear, it has the one with the least under it. */
function costOfNote({ rectangle }: Seat, { all }: Surroundings): number {
  const on = all.filter((one) => isWithin(rectangle, one, one.mark ? one.room : TOUCHING));
  return on.length === 0 ? 0 : LYING + on.length + crossed(rectangle, on);
}

function rectangleOf({ min, max }: Box, toPixels: (p: Point) => Point): Rectangle {
  const at = toPixels(between(min, max, 0.5));
  const corner = toPixels(max);
  return { at, halfWide: corner.x - at.x, halfHigh: at.y - corner.y };
}

/** How many pixels of drawn lines run under the words. */
function crossed(rectangle: Rectangle, obstacles: readonly Obstacle[]): number {
  return obstacles.reduce((sum, run) => sum + runWithin(rectangle, run.from, run.to), 0);
}

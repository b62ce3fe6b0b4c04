import { between, type Point } from '../../geometry/point.ts';
import type { Message } from '../../words/message.ts';
import type { Box } from './box.ts';
import type { Drawing, Label, Tone } from './drawing.ts';
import { overlap, type Rectangle, runWithin } from './rectangle.ts';
import { type Run, runsOf } from './runs.ts';

/** Words with a place: about an anchor of the sheet in mm, their middle moved by so many pixels (y down). */
export interface Placed {
  readonly text: string;
  readonly tone: Tone;
  readonly anchor: Point;
  readonly shift: Point;
}

/** How wide and high words are in pixels; a guess at the plain sans of the figures. */
const CHARACTER = 6.9;
const HALF_HIGH = 8;
const GAP = 7;

const COMPASS: readonly Point[] = [
  { x: 0.9, y: -0.5 },
  { x: -0.9, y: -0.5 },
  { x: 0.9, y: 0.5 },
  { x: -0.9, y: 0.5 },
  { x: 1, y: -1.1 },
  { x: -1, y: -1.1 },
  { x: 1, y: 1.1 },
  { x: -1, y: 1.1 },
  { x: 1, y: 0 },
  { x: -1, y: 0 },
  { x: 0, y: -1 },
  { x: 0, y: 1 },
];
/** Where along a line its words may sit, best first. */
const ALONG = [0.86, 0.14, 0.7, 0.3, 0.78, 0.22, 0.6, 0.4, 0.5, 0.93, 0.07];
/** A seat one place later is disliked as much as this many pixels of a line under the words. */
const LATER = 1.2;

interface Seat {
  readonly anchor: Point;
  readonly shift: Point;
  readonly rectangle: Rectangle;
  /** Later seats are liked a little less. */
  readonly rank: number;
}

/**
 * Finds each label a seat, at `scale` pixels a mm, where it lies on no other label and on as little as possible else.
 * Greedy, in the order given; deterministic. Labels that find no seat inside the box and clear of others are left out:
 * their objects still answer to pointing, and the description names them.
 */
export function placeLabels(drawing: Drawing, scale: number, speak: (words: Message) => string): Placed[] {
  const field = fieldOf(drawing, scale);
  const placed: Placed[] = [];
  const taken: Rectangle[] = [];
  for (const label of hardestFirst(drawing.labels)) {
    const text = speak(label.words);
    const seat = best(seatsOf(label, text, field), taken, field);
    if (!seat) continue;
    taken.push(seat.rectangle);
    placed.push({ text, tone: label.tone, anchor: seat.anchor, shift: seat.shift });
  }
  return placed;
}

interface Field {
  readonly box: Box;
  readonly scale: number;
  readonly runs: readonly Run[];
  readonly toPixels: (p: Point) => Point;
}

function fieldOf(drawing: Drawing, scale: number): Field {
  const { box } = drawing;
  const toPixels = (p: Point) => ({ x: (p.x - box.min.x) * scale, y: (box.max.y - p.y) * scale });
  const runs = runsOf(drawing.parts).map((run) => ({ from: toPixels(run.from), to: toPixels(run.to) }));
  return { box, scale, runs, toPixels };
}

/** The marker's words must be read; marks have fewest seats to choose from; lines have many. */
function hardestFirst(labels: readonly Label[]): Label[] {
  const rank = ({ tone, by }: Label): number => (tone === 'red' ? 0 : 'x' in by ? 1 : 2);
  return [0, 1, 2].flatMap((now) => labels.filter((label) => rank(label) === now));
}

function seatsOf({ by }: Label, text: string, field: Field): Seat[] {
  const halfWide = (text.length * CHARACTER) / 2;
  if ('x' in by)
    return COMPASS.map((way, rank) =>
      seat(by, { x: way.x * (halfWide + GAP), y: way.y * (HALF_HIGH + GAP) }, halfWide, rank, field),
    );
  const [from, to] = by.map(field.toPixels) as [Point, Point];
  const long = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const normal = { x: -(to.y - from.y) / long, y: (to.x - from.x) / long };
  // Just clear of the line: the reach of the words' rectangle in the direction of the normal.
  const clear = Math.abs(normal.x) * halfWide + Math.abs(normal.y) * HALF_HIGH + GAP;
  const beside = (t: number, side: 1 | -1, rank: number): Seat =>
    seat(between(by[0], by[1], t), { x: normal.x * clear * side, y: normal.y * clear * side }, halfWide, rank, field);
  return ALONG.flatMap((t, index) => [beside(t, 1, index * 2), beside(t, -1, index * 2 + 1)]);
}

function seat(anchor: Point, shift: Point, halfWide: number, rank: number, field: Field): Seat {
  const at = field.toPixels(anchor);
  return {
    anchor,
    shift,
    rank,
    rectangle: { at: { x: at.x + shift.x, y: at.y + shift.y }, halfWide, halfHigh: HALF_HIGH },
  };
}

function best(seats: readonly Seat[], taken: readonly Rectangle[], field: Field): Seat | null {
  let found: Seat | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const candidate of seats) {
    if (!inside(candidate.rectangle, field) || taken.some((other) => overlap(candidate.rectangle, other) > 0)) continue;
    const cost = candidate.rank * LATER + crossed(candidate.rectangle, field.runs);
    if (cost < least) {
      least = cost;
      found = candidate;
    }
  }
  return found;
}

function inside({ at, halfWide, halfHigh }: Rectangle, { box, scale }: Field): boolean {
  const wide = (box.max.x - box.min.x) * scale;
  const high = (box.max.y - box.min.y) * scale;
  return at.x - halfWide >= 0 && at.x + halfWide <= wide && at.y - halfHigh >= 0 && at.y + halfHigh <= high;
}

/** How many pixels of drawn lines run under the words. */
function crossed(rectangle: Rectangle, runs: readonly Run[]): number {
  return runs.reduce((sum, run) => sum + runWithin(rectangle, run.from, run.to), 0);
}

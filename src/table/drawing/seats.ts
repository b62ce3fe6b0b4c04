import type { Point } from '../../geometry/point.ts';
import type { Label } from './drawing.ts';
import type { Rectangle } from './rectangle.ts';

/** How wide and high words are in pixels; a guess at the plain sans of the figures. */
export const CHARACTER = 6.9;
const HALF_HIGH = 8;
/** How far words stand from the line they name, px. */
const GAP = 7;

/** A place where words could stand. */
export interface Seat {
  /** On the sheet, mm. */
  readonly anchor: Point;
  /** From there to the middle of the words, px, y down. */
  readonly shift: Point;
  /** The words where they would lie, px. */
  readonly rectangle: Rectangle;
  /** Whether a leader runs from what they name to the words, which stand off it. */
  readonly led: boolean;
  /** Disliked as much as so many pixels more of free room would be liked. */
  readonly dislike: number;
}

/** Where beside a mark words may stand, best first: on which side of it, and how far along that side, in halves of the words. */
const BESIDE: readonly { readonly side: 'right' | 'left' | 'over' | 'under'; readonly along: number }[] = [
  { side: 'right', along: -0.8 },
  { side: 'left', along: -0.8 },
  { side: 'right', along: 0.8 },
  { side: 'left', along: 0.8 },
  { side: 'right', along: 0 },
  { side: 'left', along: 0 },
  { side: 'over', along: 0 },
  { side: 'under', along: 0 },
  { side: 'over', along: 0.7 },
  { side: 'over', along: -0.7 },
  { side: 'under', along: 0.7 },
  { side: 'under', along: -0.7 },
  { side: 'right', along: -1.6 },
  { side: 'left', along: -1.6 },
  { side: 'right', along: 1.6 },
  { side: 'left', along: 1.6 },
];
/** How much a seat one place later is disliked, px. */
const LATER = 1;

/** Along a line words may stand at so many places, on either side. */
const PLACES = 24;
/** They stand best somewhat past its middle; at its ends they are disliked this much, px. */
const BEST = 0.62;
const AT_THE_END = 16;

/** Words with a leader stand this far off what they name, px, in so many directions. */
const OFF = [22, 34, 48, 66, 88];
/** And a note, which has to be written, further where it must. */
const NOTE_OFF = [...OFF, 116, 150, 190];
const DIRECTIONS = 16;
/** They are liked less than any that need none. */
const LED = 60;

/** The seats of a label, each made where it is asked for: those that need no leader, and the many that do, shortest leader first. */
export interface Seats {
  readonly nearCount: number;
  readonly near: (index: number) => Seat;
  readonly ledCount: number;
  /** With those that stand further off, which only a note takes. */
  readonly farCount: number;
  readonly led: (index: number) => Seat;
}

/** The least that a seat with a leader is disliked, px. */
export const LEAST_LED = LED + Math.min(...OFF);

/** The seats of a label. `room` is how far words stay from a mark it names. */
export function seatsOf(label: Label, text: string, room: number, toPixels: (p: Point) => Point): Seats {
  const halfWide = (text.length * CHARACTER) / 2;
  const seatAt = (anchor: Point, shift: Point, dislike: number, led = false): Seat => {
    const at = toPixels(anchor);
    const rectangle = { at: { x: at.x + shift.x, y: at.y + shift.y }, halfWide, halfHigh: HALF_HIGH };
    return { anchor, shift, rectangle, dislike, led };
  };
  const { by } = label;
  if ('x' in by) return { ...besideMark(by, halfWide, room, seatAt), ...ledSeats([by], halfWide, seatAt) };
  const places = stations(by);
  const anchors = places.filter((_, index) => index % 4 === 2).map(({ anchor }) => anchor);
  return { ...besideLine(places, halfWide, seatAt), ...ledSeats(anchors, halfWide, seatAt) };
}

type SeatAt = (anchor: Point, shift: Point, dislike: number, led?: boolean) => Seat;

type NearSeats = Pick<Seats, 'nearCount' | 'near'>;

function besideMark(mark: Point, halfWide: number, room: number, seatAt: SeatAt): NearSeats {
  return {
    nearCount: BESIDE.length,
    near: (rank) => seatAt(mark, shiftBeside(BESIDE[rank] as (typeof BESIDE)[number], halfWide, room), rank * LATER),
  };
}

/** At each place on either side of it. */
function besideLine(places: readonly Station[], halfWide: number, seatAt: SeatAt): NearSeats {
  return {
    nearCount: places.length * 2,
    near: (index) => {
      const { anchor, direction, part } = places[Math.floor(index / 2)] as Station;
      const side = index % 2 === 0 ? -1 : 1;
      // Pixels run down; across the line is a quarter turn from along it.
      const normal = { x: direction.y, y: direction.x };
      // Just clear of the line: the reach of the words' rectangle in the direction of the normal.
      const clear = Math.abs(normal.x) * halfWide + Math.abs(normal.y) * HALF_HIGH + GAP;
      const dislike = (Math.abs(part - BEST) / BEST) * AT_THE_END;
      const shift = { x: normal.x * clear * side, y: normal.y * clear * side };
      return seatAt(anchor, shift, dislike + (side > 0 ? LATER : 0));
    },
  };
}

/** With each length of leader, from each place along what is named, in each direction. */
function ledSeats(anchors: readonly Point[], halfWide: number, seatAt: SeatAt): Omit<Seats, keyof NearSeats> {
  const ofOneLength = anchors.length * DIRECTIONS;
  return {
    ledCount: OFF.length * ofOneLength,
    farCount: NOTE_OFF.length * ofOneLength,
    led: (index) => {
      const off = NOTE_OFF[Math.floor(index / ofOneLength)] as number;
      const anchor = anchors[Math.floor((index % ofOneLength) / DIRECTIONS)] as Point;
      const turn = ((index % DIRECTIONS) / DIRECTIONS) * 2 * Math.PI;
      const shift = { x: Math.cos(turn) * (halfWide + off), y: Math.sin(turn) * (HALF_HIGH + off) };
      return seatAt(anchor, shift, LED + off, true);
    },
  };
}

function shiftBeside({ side, along }: (typeof BESIDE)[number], halfWide: number, room: number): Point {
  if (side === 'right' || side === 'left')
    return { x: (side === 'right' ? 1 : -1) * (halfWide + room), y: along * HALF_HIGH };
  return { x: along * halfWide, y: (side === 'over' ? -1 : 1) * (HALF_HIGH + room) };
}

interface Station {
  readonly anchor: Point;
  /** Of the line there, in the sheet's directions. */
  readonly direction: Point;
  /** How far along, from 0 to 1. */
  readonly part: number;
}

/** Places along a line of corners, evenly spread. */
function stations(corners: readonly Point[]): Station[] {
  const runs = corners.slice(1).flatMap((to, index) => {
    const from = corners[index] as Point;
    const long = Math.hypot(to.x - from.x, to.y - from.y);
    return long > 0 ? [{ from, to, long }] : [];
  });
  const whole = runs.reduce((sum, { long }) => sum + long, 0);
  return Array.from({ length: PLACES }, (_, index) => (index + 0.5) / PLACES).flatMap((part) => {
    let left = part * whole;
    for (const { from, to, long } of runs) {
      if (left <= long) {
        const direction = { x: (to.x - from.x) / long, y: (to.y - from.y) / long };
        return [{ anchor: { x: from.x + direction.x * left, y: from.y + direction.y * left }, direction, part }];
      }
      left -= long;
    }
    return [];
  });
}

import { isDrawn } from '../../drafting/shape.ts';
import type { Sheet } from '../../drafting/sheet.ts';
import type { Direction, Name } from '../../drafting/step.ts';
import type { Blank } from '../../drafting/verbs.ts';
import { distance, type Point, subtract } from '../../geometry/point.ts';
import { lengthText } from '../../words/length.ts';
import type { Unit } from '../../words/unit.ts';
import type { Draft, Filling, Hand, Room } from './bench.ts';
import { type Caught, catchObject, catchPlace, nearestPlaceOn, type Pointing } from './catch.ts';
import { fill, missing } from './hand.ts';
import { drawnOf, previewOf } from './preview.ts';
import { runWith } from './run-with.ts';
import { blankOf } from './tools.ts';

/** What pointing at a place means for the blank in hand: what would fill it, and what to light up. */
export interface Pointed {
  readonly field: string;
  readonly value: Filling;
  /** Objects the pointer has caught. */
  readonly caught: readonly Name[];
  /** The place that was caught, when a place is wanted. */
  readonly at: Point | null;
  /** What fills the other blank at once, where one place says both. */
  readonly also?: { readonly field: string; readonly value: Filling };
}

/** The hand with what was pointed at filled in. */
export function takenUp(hand: Hand, { field, value, also }: Pointed): Hand {
  const filled = fill(hand, field, value);
  return also ? fill(filled, also.field, also.value) : filled;
}

/** The table as far as pointing needs it. */
export interface Aim extends Pointing {
  readonly draft: Draft;
  readonly room: Room;
  readonly unit: Unit;
}

const WAYS: readonly Direction[] = ['left', 'right', 'up', 'down'];
const TURNS = ['clockwise', 'anticlockwise'] as const;

/** Reads a place on the sheet as a filling of the blank in hand; null where there is nothing to point at. */
export function pointAt(hand: Hand, aim: Aim, p: Point): Pointed | null {
  const field = hand.at === null ? null : blankOf(hand, hand.at);
  const both = field && crossing(field.field, hand, aim, p);
  if (both) return both;
  return field ? pointedFor(field.field, field.blank, hand, aim, p) : null;
}

function pointedFor(field: string, blank: Blank, hand: Hand, aim: Aim, p: Point): Pointed | null {
  switch (blank.takes) {
    case 'object':
      return object(field, catchObject(aim, p, blank.kinds));
    case 'objects':
      return oneMore(field, catchObject(aim, p, blank.kinds), hand);
    case 'run':
      return oneMore(field, catchObject(aim, p, ['point', 'curve', 'line']), hand, aim.sheet);
    case 'place':
      return place(field, aim, p);
    case 'near':
      return nearPlace(field, aim, p);
    case 'heading':
      return heading(field, catchObject(aim, p, ['line']));
    case 'length':
      return byEye(field, hand, aim, p);
    case 'toward':
      return toward(field, hand, aim, p);
    case 'turn':
      return chosen(field, TURNS, hand, aim, p);
    default:
      return null;
  }
}

function object(field: string, caught: Caught | null): Pointed | null {
  return caught && { field, value: caught.name, caught: [caught.name], at: null };
}

/** Where two lines cross, a sentence that asks for both takes both, while neither is said. */
function crossing(field: string, { tool, filled }: Hand, aim: Aim, p: Point): Pointed | null {
  if (tool !== 'cross' || filled.one !== undefined || filled.other !== undefined) return null;
  const shown = (name: Name): boolean => aim.shown(name) && aim.sheet.shapes.get(name)?.kind !== 'point';
  const place = catchPlace({ ...aim, shown }, p);
  // In the order of the sheet: which of the two is nearer by a hair says nothing.
  const [one, other] = [...aim.sheet.shapes.keys()].filter((name) => place?.names.includes(name));
  if (!place || one === undefined || other === undefined) return null;
  const second = field === 'one' ? 'other' : 'one';
  return { field, value: one, caught: [one, other], at: place.at, also: { field: second, value: other } };
}

/** Adds to a list, or to a run on a sheet; pointing at the last one again takes it out. */
function oneMore(field: string, caught: Caught | null, hand: Hand, runOn?: Sheet): Pointed | null {
  if (!caught) return null;
  const list = listOf(hand.filled[field]);
  const more = runOn ? runWith(list, caught.name, runOn) : [...list, caught.name];
  const value = list.at(-1) === caught.name ? list.slice(0, -1) : more;
  return { field, value: value as readonly Name[], caught: [caught.name], at: null };
}

function listOf(value: Filling | undefined): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

function place(field: string, aim: Aim, p: Point): Pointed {
  const caught = catchPlace(aim, p);
  // A mark by eye is no finer than a pencil's point; one that snaps lies exactly on what it snapped to.
  const at = caught ? rounded(caught.at, 1e6) : rounded(p, 10);
  return { field, value: [at.x, at.y], caught: caught?.names ?? [], at };
}

function rounded(p: Point, grain: number): Point {
  return { x: Math.round(p.x * grain) / grain, y: Math.round(p.y * grain) / grain };
}

function nearPlace(field: string, aim: Aim, p: Point): Pointed {
  const mark = catchObject(aim, p, ['point']);
  if (mark) return { field, value: mark.name, caught: [mark.name], at: null };
  const at = rounded(p, 10);
  return { field, value: [at.x, at.y], caught: [], at };
}

function heading(field: string, caught: Caught | null): Pointed | null {
  return caught && { field, value: { along: caught.name }, caught: [caught.name], at: null };
}

/** A length taken by eye from what the sentence measures from: a number, which will stay that number on every figure. */
function byEye(field: string, hand: Hand, aim: Aim, p: Point): Pointed | null {
  const from = referenceOf(hand, aim);
  if (!from) return null;
  const mm = distance(nearestPlaceOn(from, p), p);
  return { field, value: lengthText(mm, aim.unit), caught: [], at: p };
}

/** What a length in the sentence is measured from: the mark named in it, else the line or curve. */
function referenceOf(hand: Hand, { sheet }: Aim): Parameters<typeof nearestPlaceOn>[0] | null {
  const names = ['from', 'about', 'to', 'of', 'on'].map((field) => hand.filled[field]);
  for (const name of names) {
    const shape = typeof name === 'string' ? sheet.shapes.get(name) : undefined;
    if (shape && isDrawn(shape)) return shape;
  }
  return null;
}

/** Of a few words, the one whose step would come nearest the pointer. */
function chosen(field: string, words: readonly string[], hand: Hand, aim: Aim, p: Point): Pointed | null {
  let best: { readonly word: string; readonly away: number } | null = null;
  for (const word of words) {
    const tried = fill(hand, field, word);
    if (missing(tried).length > 0) return null;
    const made = drawnOf(previewOf(aim.draft, tried, aim.sheet, aim.room));
    const far = made ? distance(nearestPlaceOn(made, p), p) : Number.POSITIVE_INFINITY;
    if (made && (best === null || far < best.away - 1e-6)) best = { word, away: far };
  }
  return best && { field, value: best.word, caught: [], at: null };
}

/** Of ways that come to the same, the one that the pointer itself went is said. */
function toward(field: string, hand: Hand, aim: Aim, p: Point): Pointed | null {
  const own = away(field, hand, aim, p);
  const ways = own === null ? WAYS : [own.value as Direction, ...WAYS.filter((way) => way !== own.value)];
  return chosen(field, ways, hand, aim, p) ?? own;
}

/** The way across the sheet from what the sentence measures from to the pointer. */
function away(field: string, hand: Hand, aim: Aim, p: Point): Pointed | null {
  const from = referenceOf(hand, aim);
  if (!from) return null;
  const d = subtract(p, nearestPlaceOn(from, p));
  const across: Direction = d.x < 0 ? 'left' : 'right';
  const upright: Direction = d.y < 0 ? 'down' : 'up';
  return { field, value: Math.abs(d.x) > Math.abs(d.y) ? across : upright, caught: [], at: null };
}

import type { Givens, Sheet } from '../../drafting/sheet.ts';
import type { Name } from '../../drafting/step.ts';
import { add, type Point, scale } from '../../geometry/point.ts';
import type { Reader } from '../../words/say.ts';
import { say } from '../../words/say.ts';
import { padded } from '../drawing/box.ts';
import { draw, fitBox } from '../drawing/draw.ts';
import type { Drawing, Part } from '../drawing/drawing.ts';
import { type Placed, placeLabels } from '../drawing/labels.ts';
import { type Run, sampled } from '../drawing/runs.ts';
import { CHARACTER } from '../drawing/seats.ts';
import { shownOn } from '../model/sheet-box.ts';

/** Millimetres to a CSS pixel, of which there are 96 to an inch on paper (CSS Values and Units 4, absolute lengths). */
export const PIXEL = 25.4 / 96;

/** A draft as it goes on paper: its lines, the names of what is on it, and the size of it all in mm. */
export interface FullDrawing {
  readonly drawing: Drawing;
  readonly names: readonly Placed[];
  /** All that leaves ink, as straight runs: a sheet of paper without any need not be printed. */
  readonly ink: readonly Run[];
}

/** Less white about the draft than a screen gives it, mm: it costs paper. */
const LESS = -14;
/** Pieces to a cubic: of any curve of a draft their chords stay within 0.1 mm. */
const PIECES = 32;

/** What there is of a draft to be printed, and how much of it is wanted. */
export interface Wanted {
  readonly sheet: Sheet;
  readonly givens: Givens;
  /** What of the block is laid on the table. */
  readonly shows: readonly Name[];
  /** All that was drawn, or only what answers to the order, as a piece is cut. */
  readonly lines: 'all' | 'answers';
}

/** The draft without the marker's red, and without what on a screen only helps to point. */
export function fullDrawing({ sheet, givens, shows, lines }: Wanted, reader: Reader): FullDrawing {
  const answers = new Set(sheet.answers.values());
  const help = new Set([...sheet.shapes.keys()].filter((name) => !givens.shapes.has(name) && !answers.has(name)));
  const hides = lines === 'all' ? new Set<Name>() : help;
  const onTable = shownOn(shows, givens);
  const drawing = draw(sheet, {
    given: new Set(givens.shapes.keys()),
    shows,
    help,
    hides,
    unit: reader.unit,
    box: padded(
      fitBox(sheet, (name) => onTable(name) && !hides.has(name), []),
      LESS,
    ),
  });
  const names = placeLabels(drawing, 1 / PIXEL, (words) => say(words, reader));
  return { drawing, names, ink: [...drawing.parts.flatMap(runsOf), ...names.map(runOf)] };
}

function runsOf(part: Part): readonly Run[] {
  if (part.kind === 'line' || part.kind === 'arrow') return [part];
  if (part.kind === 'mark') return [{ from: part.at, to: part.at }];
  return part.kind === 'curve' ? pairs(sampled(part.path, PIECES)) : [];
}

function pairs(points: readonly Point[]): readonly Run[] {
  return points.slice(1).map((to, index) => ({ from: points[index] ?? to, to }));
}

/** A name from its first letter to its last. */
function runOf({ anchor, shift, text }: Placed): Run {
  const middle = add(anchor, scale({ x: shift.x, y: -shift.y }, PIXEL));
  const half = { x: (text.length * CHARACTER * PIXEL) / 2, y: 0 };
  return { from: add(middle, scale(half, -1)), to: add(middle, half) };
}

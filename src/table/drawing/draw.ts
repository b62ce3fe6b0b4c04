import { type CurveShape, type Drawn, isDrawn } from '../../drafting/shape.ts';
import type { Sheet } from '../../drafting/sheet.ts';
import type { Name } from '../../drafting/step.ts';
import { blockLines } from '../../garment/block.ts';
import type { Path } from '../../geometry/cubic.ts';
import { type Line, signedDistance } from '../../geometry/line.ts';
import { distance, type Point } from '../../geometry/point.ts';
import type { RedMark } from '../../grader/result.ts';
import { message } from '../../words/message.ts';
import type { Unit } from '../../words/unit.ts';
import { type Box, boxAbout, clip, padded } from './box.ts';
import { sayDrawing } from './describe.ts';
import type { ClothPart, Drawing, Label, Part, Tone } from './drawing.ts';
import { type DrawnObject, drawnOnce, sameMarks } from './kept.ts';
import { lineAcross } from './parts.ts';
import { redParts } from './red.ts';
import { sampled } from './runs.ts';
import { endsOf, givenSpan, laidSpan, madeSpan, ON_LINE, pointsOf, type Span } from './spans.ts';

export interface DrawOptions {
  /** Names that lay on the table before the first step. */
  readonly given: ReadonlySet<Name>;
  /** Which of the given objects are shown; all of them when absent. */
  readonly shows?: readonly Name[];
  /** Objects drawn as construction lines. */
  readonly help?: ReadonlySet<Name>;
  /** Objects drawn as folds. By default, whatever is called or answers `roll-line`. */
  readonly folds?: ReadonlySet<Name>;
  /** Made objects left out, for a figure that tells only part of a draft. */
  readonly hides?: ReadonlySet<Name>;
  /** Whose names are written: all shown objects when absent. */
  readonly labels?: ReadonlySet<Name>;
  readonly unit: Unit;
  /** The part of the sheet shown; fitted about what is drawn when absent. */
  readonly box?: Box;
  readonly red?: readonly RedMark[];
  /** Areas of cloth under the lines. */
  readonly cloth?: readonly ClothPart[];
  /** How far past the box unbounded lines go on, faintly, mm: for a table, where one points at them. Not at all when absent. */
  readonly reach?: number;
  /** More parts on top, and words of their own. */
  readonly more?: readonly Part[];
  readonly notes?: readonly Label[];
}

/** Space about what is drawn, mm. */
const MARGIN = 26;
/** Words of a line stay this far inside the sheet, mm. */
const LABEL_INSIDE = 8;
const INCH_DOTS = 25.4;
const CENTIMETRE_DOTS = 10;
const FOLDS: ReadonlySet<Name> = new Set(['roll-line']);

/** What the sheet looks like. Pure: the same sheet and options give the same drawing. */
export function draw(sheet: Sheet, options: DrawOptions): Drawing {
  const laid = options.shows ? new Set(options.shows) : null;
  const shown = (name: Name) =>
    options.given.has(name) ? (laid?.has(name) ?? true) : !(options.hides?.has(name) ?? false);
  const box = options.box ?? fitBox(sheet, shown, options.cloth ?? []);
  const marks = sameMarks(pointsOf(sheet, shown));
  const painter: Painter = { options, box, marks, toneOf: toneOf(sheet, options), calledOn: calledOn(sheet) };
  const objects = [...sheet.shapes].flatMap(([name, shape]) =>
    isDrawn(shape) && shown(name) ? [{ name, ...objectOf(painter, name, shape) }] : [],
  );
  const parts = objects.flatMap((one) => one.parts);
  const red = redParts(options.red ?? [], across(painter));
  const labelled = objects.filter(({ name }) => options.labels?.has(name) ?? true);
  return {
    box,
    dots: options.unit === 'cm' ? CENTIMETRE_DOTS : INCH_DOTS,
    parts: [...(options.cloth ?? []), ...bands(red), ...bottomFirst(parts), ...(options.more ?? []), ...arrows(red)],
    labels: [...labelled.flatMap(({ labels }) => labels), ...(options.notes ?? [])],
    says: sayDrawing(
      objects.map(({ name }) => name),
      options.given,
    ),
  };
}

interface Painter {
  readonly options: DrawOptions;
  readonly box: Box;
  readonly marks: readonly Point[];
  readonly toneOf: (name: Name) => Tone;
  readonly calledOn: (name: Name) => Name;
}

/** The box about the marks and curves shown; a sheet with nothing on it shows the origin. */
export function fitBox(sheet: Sheet, shown: (name: Name) => boolean, cloth: readonly ClothPart[]): Box {
  const shapes = [...sheet.shapes].flatMap(([name, shape]) => (shown(name) && isDrawn(shape) ? [shape] : []));
  const points = shapes.flatMap((shape) => reachOf(shape, shapes));
  const all = [...points, ...cloth.flatMap((part) => hull(part.outline))];
  const about = boxAbout(all) ?? { min: { x: -50, y: -50 }, max: { x: 50, y: 50 } };
  return padded(about, MARGIN);
}

function reachOf(shape: Drawn, all: readonly Drawn[]): readonly Point[] {
  if (shape.kind === 'point') return [shape.point];
  if (shape.kind === 'curve') return hull(shape.path);
  // A line has no ends. Only the place it was drawn through counts, where that is told by what else lies there.
  const { through } = shape.line;
  return all.some((other) => other !== shape && liesAt(other, through)) ? [through] : [];
}

function liesAt(shape: Drawn, p: Point): boolean {
  if (shape.kind === 'curve') return false;
  return (shape.kind === 'point' ? distance(shape.point, p) : Math.abs(signedDistance(shape.line, p))) < ON_LINE;
}

function hull(path: Path): readonly Point[] {
  return path.flatMap((piece) => [piece.p0, piece.p1, piece.p2, piece.p3]);
}

function toneOf(sheet: Sheet, options: DrawOptions): (name: Name) => Tone {
  const answers = new Set<Name>();
  const folds = new Set<Name>(options.folds ?? FOLDS);
  for (const [target, name] of sheet.answers) {
    answers.add(name);
    if (folds.has(target)) folds.add(name);
  }
  return (name) => {
    if (folds.has(name)) return 'roll';
    if (options.given.has(name)) return 'given';
    return options.help?.has(name) && !answers.has(name) ? 'help' : 'made';
  };
}

function objectOf(painter: Painter, name: Name, shape: Drawn): DrawnObject {
  const { options, box, marks } = painter;
  const [tone, called, isGiven] = [painter.toneOf(name), painter.calledOn(name), options.given.has(name)];
  const isLine = shape.kind === 'line';
  const manner = {
    name,
    tone,
    called,
    isGiven,
    box: isLine ? box : null,
    reach: options.reach,
    marks: isLine ? marks : null,
  };
  return drawnOnce(shape, manner, () => ({
    parts: partsOf(painter, name, shape),
    labels: labelOf(painter, name, shape),
  }));
}

function partsOf(painter: Painter, name: Name, shape: Drawn): Part[] {
  const tone = painter.toneOf(name);
  if (shape.kind === 'point') return [{ kind: 'mark', name, tone, at: shape.point }];
  if (shape.kind === 'curve') return [{ kind: 'curve', name, tone, path: shape.path }];
  const span = spanOf(painter, name, shape.line);
  if (!span) return [];
  const [from, to] = endsOf(shape.line, span);
  const firm: Part = { kind: 'line', name, tone, from, to, faint: false };
  return [...faintParts(painter, name, shape.line), firm];
}

function spanOf(painter: Painter, name: Name, line: Line): Span | null {
  const { options, marks, box, toneOf: tone } = painter;
  // Cloth turns over between the marks of a fold and no further: below the break point there is none.
  const isFold = tone(name) === 'roll';
  if (!options.given.has(name)) return madeSpan(line, marks, across(painter), isFold ? 0 : undefined);
  return isFold || blockLines.has(name) ? givenSpan(line, marks, box) : laidSpan(line, marks, box);
}

/** All of the sheet that may come into sight: what runs right across it has no end there. */
function across({ options, box }: Painter): Box {
  return options.reach === undefined ? box : padded(box, options.reach);
}

function faintParts(painter: Painter, name: Name, line: Line): Part[] {
  const { options, toneOf: tone } = painter;
  const whole = options.reach === undefined ? null : lineAcross(line, across(painter));
  return whole ? [{ kind: 'line', name, tone: tone(name), from: whole[0], to: whole[1], faint: true }] : [];
}

function bands(parts: readonly Part[]): Part[] {
  return parts.filter((part) => part.kind === 'band');
}

function arrows(parts: readonly Part[]): Part[] {
  return parts.filter((part) => part.kind !== 'band');
}

/** Curves and lines first, marks on top of them. */
function bottomFirst(parts: readonly Part[]): Part[] {
  return [...parts.filter((part) => part.kind !== 'mark'), ...parts.filter((part) => part.kind === 'mark')];
}

function labelOf(painter: Painter, name: Name, shape: Drawn): Label[] {
  const tone = painter.toneOf(name);
  const words = message('table.label', { name: { named: painter.calledOn(name) } });
  if (shape.kind === 'point') return [{ by: shape.point, words, tone, of: name }];
  const run = shape.kind === 'line' ? lineRun(painter, name, shape.line) : curveRun(shape);
  return run ? [{ by: run, words, tone, of: name }] : [];
}

/** What answers a target is called after the target. */
function calledOn({ answers }: Sheet): (name: Name) => Name {
  const targets = new Map<Name, Name>();
  for (const [target, answer] of answers) if (!targets.has(answer)) targets.set(answer, target);
  return (name) => targets.get(name) ?? name;
}

function lineRun(painter: Painter, name: Name, line: Line): readonly [Point, Point] | null {
  const span = spanOf(painter, name, line);
  const inside = clip(line, padded(painter.box, -LABEL_INSIDE));
  if (!span || !inside) return null;
  const low = Math.max(inside[0], span[0]);
  const high = Math.min(inside[1], span[1]);
  return low < high ? endsOf(line, [low, high]) : null;
}

function curveRun({ path }: CurveShape): readonly Point[] {
  return sampled(path, 8);
}

import type { Name } from '../../drafting/step.ts';
import { boundsOf } from '../../geometry/bounds.ts';
import type { Path } from '../../geometry/cubic.ts';
import { lengthOf } from '../../geometry/length.ts';
import { endOf, joinPaths, polyline, startOf } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { pointAtStation } from '../../geometry/station.ts';
import { type Key, message } from '../../words/message.ts';
import type { Unit } from '../../words/unit.ts';
import { type Box, boxAbout, padded } from '../drawing/box.ts';
import type { ClothPart, CurvePart, Label, LinePart, MarkPart, Tone } from '../drawing/drawing.ts';

/** Distance between the dots of the paper, mm. */
export function dotsFor(unit: Unit): number {
  return unit === 'cm' ? 10 : 25.4;
}

/** A box about everything, with a margin in mm. */
export function boxOf(paths: readonly Path[], margin: number): Box {
  const corners = paths.flatMap((path) => {
    const { min, max } = boundsOf(path);
    return [min, max];
  });
  return padded(boxAbout(corners) ?? { min: { x: 0, y: 0 }, max: { x: 1, y: 1 } }, margin);
}

export function curve(name: Name, tone: Tone, path: Path): CurvePart {
  return { kind: 'curve', name, tone, path };
}

export function run(name: Name, tone: Tone, from: Point, to: Point): LinePart {
  return { kind: 'line', name, tone, from, to, faint: false };
}

export function mark(name: Name, tone: Tone, at: Point): MarkPart {
  return { kind: 'mark', name, tone, at };
}

export function cloth(name: Name, outline: Path, side: ClothPart['side']): ClothPart {
  return { kind: 'cloth', name, tone: 'made', outline, side };
}

/** The path closed with straight runs through these points, or straight. */
export function closedBy(path: Path, through: readonly Point[] = []): Path {
  const back = polyline([endOf(path), ...through, startOf(path)]);
  return (back && joinPaths([path, back])) ?? path;
}

/** Words of the catalogue beside a place. */
export function words(by: Label['by'], key: Extract<Key, `views.${string}`>, tone: Tone): Label {
  return { by, words: { key, values: {} }, tone };
}

/** Words of the catalogue that name a part of the picture: they are seated where nothing else can be meant. */
export function wordsOf(of: Name, by: Label['by'], key: Extract<Key, `views.${string}`>, tone: Tone): Label {
  return { ...words(by, key, tone), of };
}

/** The name of an object beside a place. */
export function nameAt(by: Label['by'], name: Name, tone: Tone): Label {
  return { by, words: message('table.label', { name: { named: name } }), tone };
}

/** The name of a part of the picture, seated where nothing else can be meant. */
export function nameOf(by: Label['by'], name: Name, tone: Tone): Label {
  return { ...nameAt(by, name, tone), of: name };
}

/** A straight run beside a stretch of a path, from one part of its length to another, along which words may sit. */
export function runBeside(path: Path, from = 0.4, to = 0.6): readonly [Point, Point] {
  const length = lengthOf(path);
  const at = (part: number): Point => pointAtStation(path, length * part) ?? startOf(path);
  return [at(from), at(to)];
}

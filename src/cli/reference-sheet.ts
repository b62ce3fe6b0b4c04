import { replay } from '../drafting/replay.ts';
import type { Shape } from '../drafting/shape.ts';
import type { Givens, Sheet } from '../drafting/sheet.ts';
import { blockOf } from '../garment/block.ts';
import type { Figure } from '../garment/figure.ts';
import type { Cubic } from '../geometry/cubic.ts';
import { lengthOf } from '../geometry/length.ts';
import type { Point } from '../geometry/point.ts';
import type { Exercise } from '../grader/exercise.ts';
import { shapeNamed } from '../grader/measures/lookup.ts';

type Pair = readonly [number, number];

/** A drawn object in mm, in the frame of the sheet. A line's direction has length 1; a curve is a list of cubics, four points each. */
export type Geometry =
  | { readonly point: Pair }
  | { readonly line: { readonly through: Pair; readonly direction: Pair } }
  | { readonly curve: readonly (readonly [Pair, Pair, Pair, Pair])[] };

/** The reference of an exercise on one order. Style measures and lengths are in mm; the figure's as in figure files. */
export interface ReferenceSheet {
  readonly exercise: string;
  readonly figure: Figure;
  readonly style: Readonly<Record<string, number>>;
  readonly block: Readonly<Record<string, Geometry>>;
  readonly targets: Readonly<Record<string, Geometry>>;
  /** Lengths in mm, and angles in radians. */
  readonly lengths: Readonly<Record<string, number>>;
}

/** Draws the reference on what lies on the table; `styled` names the style measures of the order. */
export function referenceSheet(
  exercise: Exercise,
  figure: Figure,
  styled: readonly string[],
  givens: Givens,
): ReferenceSheet {
  const sheet = replay(givens, exercise.reference);
  const block = blockOf(figure);
  const targets = exercise.targets.flatMap(({ name }): [string, Shape][] => {
    const shape = shapeNamed(sheet, name);
    return shape === null ? [] : [[name, shape]];
  });
  return {
    exercise: exercise.id,
    figure,
    style: Object.fromEntries(styled.map((name) => [name, givens.measures.get(name)?.value ?? 0])),
    block: drawnOf(block.ok ? block.shapes : []),
    targets: drawnOf(targets),
    lengths: lengthsOf(sheet, targets),
  };
}

function drawnOf(shapes: Iterable<readonly [string, Shape]>): Readonly<Record<string, Geometry>> {
  const drawn = [...shapes].flatMap(([name, shape]) => {
    const geometry = geometryOf(shape);
    return geometry === null ? [] : [[name, geometry] as const];
  });
  return Object.fromEntries(drawn);
}

/** What the reference tapes and reads off the protractor, under its own names, and how long the curves are that it answers targets with. */
function lengthsOf(sheet: Sheet, targets: readonly (readonly [string, Shape])[]): Readonly<Record<string, number>> {
  const read = [...sheet.shapes, ...targets].flatMap(([name, shape]) => {
    if (shape.kind === 'length') return [[name, shape.length] as const];
    return shape.kind === 'angle' ? [[name, shape.angle] as const] : [];
  });
  const curves = targets.flatMap(([name, shape]) =>
    shape.kind === 'curve' ? [[name, lengthOf(shape.path)] as const] : [],
  );
  return Object.fromEntries([...curves, ...read]);
}

/** A shape as data; null for a length or an angle, which lie nowhere. */
export function geometryOf(shape: Shape): Geometry | null {
  switch (shape.kind) {
    case 'point':
      return { point: pair(shape.point) };
    case 'line':
      return { line: { through: pair(shape.line.through), direction: pair(shape.line.direction) } };
    case 'curve':
      return { curve: shape.path.map(cubic) };
    case 'length':
    case 'angle':
      return null;
  }
}

function cubic({ p0, p1, p2, p3 }: Cubic): readonly [Pair, Pair, Pair, Pair] {
  return [pair(p0), pair(p1), pair(p2), pair(p3)];
}

function pair({ x, y }: Point): Pair {
  return [x, y];
}

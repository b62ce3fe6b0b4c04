import { Bezier } from 'bezier-js';
import type { Shape } from '../../src/drafting/shape.ts';
import { blockOf } from '../../src/garment/block.ts';
import type { Figure } from '../../src/garment/figure.ts';
import type { Path } from '../../src/geometry/cubic.ts';
import type { Line } from '../../src/geometry/line.ts';
import type { Point } from '../../src/geometry/point.ts';

/** A block taken apart, and measured by bezier-js and by plain trigonometry rather than by the project's geometry. */
export interface MeasuredBlock {
  readonly points: (name: string) => Point;
  readonly lines: (name: string) => Line;
  readonly front: Bezier;
  readonly back: Bezier;
  /** Both necklines together, mm. */
  readonly half: number;
}

export function measureBlock(figure: Figure): MeasuredBlock {
  const block = blockOf(figure);
  if (!block.ok) throw new Error(`no block for ${JSON.stringify(figure)}`);
  const { shapes } = block;
  const front = oracleOf(shapes.get('front-neckline'));
  const back = oracleOf(shapes.get('back-neckline'));
  return {
    points: (name) => pointOf(shapes.get(name)),
    lines: (name) => lineOf(shapes.get(name)),
    front,
    back,
    half: front.length() + back.length(),
  };
}

function pointOf(shape: Shape | undefined): Point {
  if (shape?.kind !== 'point') throw new Error('not a point');
  return shape.point;
}

function lineOf(shape: Shape | undefined): Line {
  if (shape?.kind !== 'line') throw new Error('not a line');
  return shape.line;
}

function oracleOf(shape: Shape | undefined): Bezier {
  if (shape?.kind !== 'curve') throw new Error('not a curve');
  const path: Path = shape.path;
  const [piece] = path;
  if (!piece || path.length !== 1) throw new Error('a neckline is one cubic');
  return new Bezier([piece.p0, piece.p1, piece.p2, piece.p3].map((p) => ({ x: p.x, y: p.y })));
}

/** How far two directions are from a right angle, as the cosine between them. */
export function unsquare(a: Point, b: Point): number {
  return Math.abs(a.x * b.x + a.y * b.y) / (Math.hypot(a.x, a.y) * Math.hypot(b.x, b.y));
}

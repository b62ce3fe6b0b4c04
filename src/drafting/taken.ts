import type { Path } from '../geometry/cubic.ts';
import type { Line } from '../geometry/line.ts';
import type { Point } from '../geometry/point.ts';
import type { Shape } from './shape.ts';
import type { Direction, Name, Passing } from './step.ts';
import type { Blank, FormId, table } from './verbs.ts';

/** A way across the sheet, or a point of it, that tells one side or sense from the other. */
export type Aim =
  | { readonly kind: 'way'; readonly word: Direction; readonly way: Point }
  | { readonly kind: 'point'; readonly name: Name; readonly point: Point }
  | { readonly kind: 'place'; readonly point: Point };

/** The direction a curve takes at an end. */
export interface Course {
  readonly kind: 'along' | 'square';
  readonly line: Line;
}

/** One entry of a seam's run. */
export type RunPiece =
  | { readonly kind: 'point'; readonly name: Name; readonly point: Point }
  | { readonly kind: 'path'; readonly name: Name; readonly path: Path };

/** What a blank comes to once its names are looked up and its expression is worked out: lengths in mm, angles in radians. */
export type Taken<B extends Blank> = B extends { takes: 'object'; kinds: readonly (infer K)[] }
  ? Extract<Shape, { kind: K }>
  : B extends { takes: 'objects'; kinds: readonly (infer K)[] }
    ? readonly Extract<Shape, { kind: K }>[]
    : B extends { takes: infer W extends keyof Simple }
      ? Simple[W]
      : never;

interface Simple {
  readonly run: readonly RunPiece[];
  readonly length: number;
  readonly angle: number;
  readonly number: number;
  readonly toward: Exclude<Aim, { kind: 'place' }>;
  readonly near: Aim;
  /** 1 anticlockwise, -1 clockwise. */
  readonly turn: 1 | -1;
  readonly place: Point;
  readonly heading: Course;
  readonly shape: readonly (Passing | null)[];
}

type FormIn<I extends FormId> = Extract<(typeof table)[number], { id: I }>;

/** The blanks of one form, taken. */
export type Given<I extends FormId> = {
  readonly [F in FormIn<I>['fields'][number] as F['field']]: F['optional'] extends true
    ? Taken<F['blank']> | undefined
    : Taken<F['blank']>;
};

import type { Point } from './point.ts';

/** One cubic Bézier piece: from p0 to p3, with handles p1 and p2, in mm. A straight piece has its handles at the thirds. */
export interface Cubic {
  readonly p0: Point;
  readonly p1: Point;
  readonly p2: Point;
  readonly p3: Point;
}

/** Cubic pieces joined end to end: never empty, each piece starts where the last one ended. */
export type Path = readonly Cubic[];

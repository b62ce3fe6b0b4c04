import type { Path } from '../../geometry/cubic.ts';
import type { Point } from '../../geometry/point.ts';
import type { Part } from '../drawing/drawing.ts';

/** A line as a board takes it: coordinates, and whether they are corners (1) or the control points of cubic pieces (3). */
export interface Trace {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  readonly degree: 1 | 3;
}

export function dataOf(part: Part): Trace {
  switch (part.kind) {
    case 'line':
    case 'arrow':
      return run(part.from, part.to);
    case 'curve':
      return along(part.path);
    case 'cloth':
      return along(part.outline);
    case 'band':
      return isRun(part.path) ? run(...part.path) : along(part.path);
    default:
      return { xs: [], ys: [], degree: 1 };
  }
}

/** Whether two traces draw the same. */
export function sameTrace(a: Trace, b: Trace): boolean {
  return a.degree === b.degree && sameNumbers(a.xs, b.xs) && sameNumbers(a.ys, b.ys);
}

function sameNumbers(a: readonly number[], b: readonly number[]): boolean {
  return a.length === b.length && a.every((one, at) => one === b[at]);
}

function isRun(path: Path | readonly [Point, Point]): path is readonly [Point, Point] {
  return path[0] !== undefined && 'x' in path[0];
}

function run(from: Point, to: Point): Trace {
  return { xs: [from.x, to.x], ys: [from.y, to.y], degree: 1 };
}

function along(path: Path): Trace {
  const first = path[0];
  const points = first ? [first.p0, ...path.flatMap(({ p1, p2, p3 }) => [p1, p2, p3])] : [];
  return { xs: points.map(({ x }) => x), ys: points.map(({ y }) => y), degree: 3 };
}

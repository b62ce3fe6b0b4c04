import type { Cubic, Path } from './cubic.ts';
import { footOn, type Line } from './line.ts';
import { add, dot, type Point, scale, subtract, turnAbout } from './point.ts';

/** `p` mirrored over the line `over`. */
export function mirrorPoint(p: Point, over: Line): Point {
  const foot = footOn(over, p);
  return { x: 2 * foot.x - p.x, y: 2 * foot.y - p.y };
}

/** `line` mirrored over `over`; its left becomes its right. */
export function mirrorLine(line: Line, over: Line): Line {
  const d = over.direction;
  const direction = subtract(scale(d, 2 * dot(d, line.direction)), line.direction);
  return { through: mirrorPoint(line.through, over), direction };
}

/** `path` mirrored over `over`, run in the same order. */
export function mirrorPath(path: Path, over: Line): Path {
  return mapPath(path, (p) => mirrorPoint(p, over));
}

/** `p` turned about `centre` by `angle` radians, anticlockwise positive. */
export function turnPoint(p: Point, centre: Point, angle: number): Point {
  return turnAbout(p, centre, angle);
}

/** `line` turned about `centre` by `angle` radians. */
export function turnLine(line: Line, centre: Point, angle: number): Line {
  return {
    through: turnAbout(line.through, centre, angle),
    direction: turnAbout(line.direction, { x: 0, y: 0 }, angle),
  };
}

/** `path` turned about `centre` by `angle` radians. */
export function turnPath(path: Path, centre: Point, angle: number): Path {
  return mapPath(path, (p) => turnAbout(p, centre, angle));
}

/** `path` moved by `displacement`, mm. */
export function shiftPath(path: Path, displacement: Point): Path {
  return mapPath(path, (p) => add(p, displacement));
}

/** Every control point moved by one affine map: the curve moves with them. */
function mapPath(path: Path, move: (p: Point) => Point): Path {
  return path.map((c: Cubic) => ({ p0: move(c.p0), p1: move(c.p1), p2: move(c.p2), p3: move(c.p3) }));
}

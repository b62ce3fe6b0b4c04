/** A point of the sheet, or a displacement on it, in millimetres; x to the right, y up. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export function point(x: number, y: number): Point {
  return { x, y };
}

export function add(a: Point, b: Point): Point {
  return { x: a.x + b.x, y: a.y + b.y };
}

/** The displacement from `b` to `a`. */
export function subtract(a: Point, b: Point): Point {
  return { x: a.x - b.x, y: a.y - b.y };
}

export function scale(a: Point, factor: number): Point {
  return { x: a.x * factor, y: a.y * factor };
}

export function dot(a: Point, b: Point): number {
  return a.x * b.x + a.y * b.y;
}

/** Twice the signed area of the triangle 0, a, b: positive when b lies anticlockwise of a. */
export function cross(a: Point, b: Point): number {
  return a.x * b.y - a.y * b.x;
}

export function norm(a: Point): number {
  return hypotenuse(a.x, a.y);
}

/** Distance between two points, mm. */
export function distance(a: Point, b: Point): number {
  return hypotenuse(a.x - b.x, a.y - b.y);
}

/** The long side of a right triangle. To the last digit what `Math.hypot` gives in V8, of which every call takes some five times as long. */
export function hypotenuse(x: number, y: number): number {
  const [a, b] = [Math.abs(x), Math.abs(y)];
  const long = Math.max(a, b);
  if (long === 0 || long === Number.POSITIVE_INFINITY) return long;
  const part = Math.min(a, b) / long;
  return Math.sqrt(1 + part * part) * long;
}

/** The point a fraction `t` of the way from `a` to `b`; `t` may lie outside 0..1. */
export function between(a: Point, b: Point, t: number): Point {
  return { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
}

/** `a` turned a quarter turn anticlockwise. */
export function quarterTurn(a: Point): Point {
  return { x: -a.y, y: a.x };
}

/** `p` turned anticlockwise about `centre` by `angle` radians. */
export function turnAbout(p: Point, centre: Point, angle: number): Point {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const d = subtract(p, centre);
  return { x: centre.x + d.x * cos - d.y * sin, y: centre.y + d.x * sin + d.y * cos };
}

/** The unit vector at `angle` radians anticlockwise of the x axis. */
export function heading(angle: number): Point {
  return { x: Math.cos(angle), y: Math.sin(angle) };
}

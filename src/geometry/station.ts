import { type Cubic, derivativeAt, type Path, pointAt, subCubic } from './cubic.ts';
import { directionAt } from './direction.ts';
import { COINCIDENT, CONVERGED, PARAMETER } from './epsilon.ts';
import { cubicLength } from './length.ts';
import { pieceAt, reversePath } from './path.ts';
import { norm, type Point } from './point.ts';

/** A place on a path: the piece by index, and the parameter on it. */
export interface Place {
  readonly index: number;
  readonly t: number;
}

/**
 * The place at station `s`: the distance in mm along the path from its start. At a join it is the start of the piece that
 * leaves it. A station within COINCIDENT of an end, or of a join, is there; null off the ends.
 */
function placeAtStation(path: Path, s: number): Place | null {
  if (!(s >= -COINCIDENT)) return null;
  let rest = s;
  for (let index = 0; index < path.length; index++) {
    if (rest <= COINCIDENT) return { index, t: 0 };
    const piece = pieceAt(path, index);
    const length = cubicLength(piece);
    if (rest < length - COINCIDENT) return { index, t: parameterAtLength(piece, rest, length) };
    rest -= length;
  }
  return rest <= COINCIDENT ? { index: path.length - 1, t: 1 } : null;
}

/** The station of a place, mm. */
export function stationOfPlace(path: Path, { index, t }: Place): number {
  let before = 0;
  for (let at = 0; at < index; at++) before += cubicLength(pieceAt(path, at));
  return before + cubicLength(pieceAt(path, index), 0, t);
}

/** The parameter at which the piece has run `wanted` of its `whole` mm: Newton on the length, kept in a bracket. */
function parameterAtLength(c: Cubic, wanted: number, whole: number): number {
  let low = 0;
  let high = 1;
  let t = wanted / whole;
  let run = cubicLength(c, 0, t);
  for (let i = 0; i < 80; i++) {
    const over = run - wanted;
    if (over > 0) high = t;
    else low = t;
    let next = t - over / norm(derivativeAt(c, t));
    if (!(next >= low && next <= high)) next = 0.5 * (low + high);
    const moved = cubicLength(c, t, next);
    t = next;
    run += moved;
    if (Math.abs(moved) <= CONVERGED && (Math.abs(run - wanted) <= CONVERGED || high - low <= PARAMETER)) break;
  }
  return t;
}

/** The point at station `s`; null off the ends. */
export function pointAtStation(path: Path, s: number): Point | null {
  const place = placeAtStation(path, s);
  return place && pointAt(pieceAt(path, place.index), place.t);
}

/** The unit direction of travel at station `s`; at a corner, the direction in which it is left. Null off the ends, or where the path has no length. */
export function directionAtStation(path: Path, s: number): Point | null {
  const place = placeAtStation(path, s);
  if (!place) return null;
  for (let index = place.index; index < path.length; index++) {
    const direction = directionAt(pieceAt(path, index), index === place.index ? place.t : 0);
    if (direction) return direction;
  }
  return null;
}

/** The path before and the path after station `s`; null at the ends (nothing on one side) and off them. */
export function splitAtStation(path: Path, s: number): readonly [Path, Path] | null {
  const place = placeAtStation(path, s);
  if (!place) return null;
  const { index, t } = place;
  if (t === 0 || t === 1) {
    const cut = index + t;
    return cut > 0 && cut < path.length ? [path.slice(0, cut), path.slice(cut)] : null;
  }
  return [pathBetween(path, { index: 0, t: 0 }, place), pathBetween(path, place, { index: path.length - 1, t: 1 })];
}

/** The path from one station to another, run backward when `s1 < s0`; null when they coincide or lie off the ends. */
export function pieceBetween(path: Path, s0: number, s1: number): Path | null {
  if (!(Math.abs(s1 - s0) > COINCIDENT)) return null;
  const from = placeAtStation(path, Math.min(s0, s1));
  const to = placeAtStation(path, Math.max(s0, s1));
  if (!from || !to) return null;
  const piece = pathBetween(path, from, to);
  if (piece.length === 0) return null;
  return s1 < s0 ? reversePath(piece) : piece;
}

/** The path from one place to a later one; empty when they are the same place. */
export function pathBetween(path: Path, from: Place, to: Place): Path {
  const pieces: Cubic[] = [];
  for (let index = from.index; index <= to.index; index++) {
    const t0 = index === from.index ? from.t : 0;
    const t1 = index === to.index ? to.t : 1;
    if (t1 > t0) pieces.push(subCubic(pieceAt(path, index), t0, t1));
  }
  return pieces;
}

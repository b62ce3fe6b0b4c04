import { type Cubic, derivativeAt, type Path, subCubic } from './cubic.ts';
import { type Join, joinsOf } from './direction.ts';
import { SMOOTH } from './epsilon.ts';
import { lengthOf } from './length.ts';
import { pieceAt } from './path.ts';
import { cross, norm, type Point, subtract } from './point.ts';
import { signChanges } from './polynomial.ts';
import { type Place, stationOfPlace } from './station.ts';
import { cubicTurn } from './turn.ts';

export { turnOf } from './turn.ts';

/** A corner of a path: where, how far along, and by how much the direction breaks, radians, anticlockwise positive. */
export interface Break {
  readonly station: number;
  readonly point: Point;
  readonly angle: number;
}

/** Every join at which the direction breaks by more than SMOOTH. */
export function breaksOf(path: Path): Break[] {
  return sharpJoins(path).map(({ after, turn }) => ({
    station: lengthOf(path.slice(0, after)),
    point: pieceAt(path, after).p0,
    angle: turn,
  }));
}

/** The same, without how far along they lie. */
export function cornersOf(path: Path): Omit<Break, 'station'>[] {
  return sharpJoins(path).map(({ after, turn }) => ({ point: pieceAt(path, after).p0, angle: turn }));
}

function sharpJoins(path: Path): Join[] {
  return joinsOf(path).filter(({ turn }) => Math.abs(turn) > SMOOTH);
}

/**
 * The stations at which the curve changes the side it is hollow on. Stretches that turn by less than SMOOTH count as
 * straight: an S with a straight run between its bows has one inflection, where the second bow begins. Corners are not
 * inflections.
 */
export function inflectionsOf(path: Path): number[] {
  return inflectionPlaces(path).map((place) => stationOfPlace(path, place));
}

/** The same as places: how far along the curve they lie need not be worked out. */
export function inflectionPlaces(path: Path): Place[] {
  const places: Place[] = [];
  let side = 0;
  for (let index = 0; index < path.length; index++) {
    const piece = pieceAt(path, index);
    const cuts = [0, ...cubicInflections(piece), 1];
    for (let i = 1; i < cuts.length; i++) {
      const t = cuts[i - 1] as number;
      const turn = turnBetween(piece, t, cuts[i] as number);
      if (Math.abs(turn) <= SMOOTH) continue;
      if (side !== 0 && Math.sign(turn) !== side) places.push({ index, t });
      side = Math.sign(turn);
    }
  }
  return places;
}

function turnBetween(piece: Cubic, t0: number, t1: number): number {
  return cubicTurn(t0 === 0 && t1 === 1 ? piece : subCubic(piece, t0, t1));
}

const roots = new Float64Array(2);

/** The parameters inside the piece at which its curvature changes sign: the roots of the quadratic B'(t) x B''(t). */
function cubicInflections(c: Cubic): readonly number[] {
  const v0 = subtract(c.p1, c.p0);
  const v1 = subtract(c.p2, c.p1);
  const v2 = subtract(c.p3, c.p2);
  const q0 = cross(v0, v1);
  const q1 = cross(v0, v2);
  const q2 = cross(v1, v2);
  const count = signChanges([q0, q1 - 2 * q0, q0 - q1 + q2], 2, roots);
  // Most pieces bend one way only.
  if (count === 0) return none;
  return [...roots.subarray(0, count)].filter((t) => norm(derivativeAt(c, t)) > 0);
}

const none: readonly number[] = [];

import { type Cubic, derivativeAt, type Path, pointAt, reverseCubic } from './cubic.ts';
import { COINCIDENT, TOUCH } from './epsilon.ts';
import { distinctHits, type Hit, hitAt, pointsOf } from './hits.ts';
import { footOn, type Line, signedDistance } from './line.ts';
import { type Meeting, meetCubics } from './meet.ts';
import { nearestPlace, placeWithin } from './nearest.ts';
import { pieceAt } from './path.ts';
import { add, distance, norm, type Point, scale } from './point.ts';
import { zerosOf } from './polynomial.ts';
import { type Power, powerOf } from './power.ts';
import type { Place } from './station.ts';

/**
 * Where the line crosses or touches the path, in order along the path. A stretch that runs along the line gives no
 * crossing of its own; the pieces that leave it do.
 */
export function crossLineWithPath(line: Line, path: Path): Point[] {
  const { direction: d, through: q } = line;
  const hits: Hit[] = [];
  for (const [index, piece] of path.entries()) {
    const b = powerOf(piece);
    const off = [
      d.x * (b.y0 - q.y) - d.y * (b.x0 - q.x),
      d.x * b.y1 - d.y * b.x1,
      d.x * b.y2 - d.y * b.x2,
      d.x * b.y3 - d.y * b.x3,
    ];
    for (const t of zerosOf(off, 3, COINCIDENT) ?? []) hits.push(hitAt(path, index, t));
  }
  return pointsOf(distinctHits(path, hits, (p) => Math.abs(signedDistance(line, p))));
}

/** Where two paths cross or touch, in order along the first. Stretches that run along each other give no crossing. */
export function crossPaths(a: Path, b: Path): Point[] {
  return pointsOf(meetPaths(a, b));
}

/** A crossing of two paths: the place on the first, and the place on the second. */
export interface PathMeeting extends Hit {
  readonly other: Place;
}

/** Where two paths cross or touch, with the places on both, in order along the first. */
function meetPaths(a: Path, b: Path): PathMeeting[] {
  const meetings: PathMeeting[] = [];
  for (const [index, piece] of a.entries()) {
    for (const [other, otherPiece] of b.entries()) {
      for (const meeting of meetCubics(piece, otherPiece)) meetings.push(pathMeeting(a, index, other, meeting));
    }
  }
  meetings.push(...endContacts(a, b));
  return distinctHits(a, meetings, (p) => gapTo(b, p));
}

function pathMeeting(a: Path, index: number, other: number, { t, u }: Meeting): PathMeeting {
  return { ...hitAt(a, index, t), other: { index: other, t: u } };
}

/** The ends of either path that lie on the other, unless the path runs along it there. */
function endContacts(a: Path, b: Path): PathMeeting[] {
  const ofA = endsOn(a, b).map(({ end, foot }) => ({ ...end, other: foot }));
  const ofB = endsOn(b, a).map(({ end, foot }) => ({ ...foot, point: end.point, other: end }));
  return [...ofA, ...ofB];
}

/** The ends of `path` that lie on `other`, each with its place there. */
function endsOn(path: Path, other: Path): { end: Hit; foot: Place }[] {
  const ends = [
    { end: hitAt(path, 0, 0), inward: aLittleWay(pieceAt(path, 0)) },
    { end: hitAt(path, path.length - 1, 1), inward: aLittleWay(reverseCubic(pieceAt(path, path.length - 1))) },
  ];
  return ends.flatMap(({ end, inward }) => {
    const foot = placeWithin(other, end.point, COINCIDENT);
    return foot && placeWithin(other, inward, COINCIDENT) === null ? [{ end, foot }] : [];
  });
}

/** A point about TOUCH along the piece from its start, or half way where the piece starts slowly. */
function aLittleWay(piece: Cubic): Point {
  return pointAt(piece, Math.min(0.5, TOUCH / norm(derivativeAt(piece, 0))));
}

function gapTo(path: Path, p: Point): number {
  const { index, t } = nearestPlace(path, p);
  return distance(pointAt(pieceAt(path, index), t), p);
}

/**
 * Where the circle about `centre` of radius `r` crosses the line, in order along the line; one point where it touches
 * within COINCIDENT; none when the radius is negative.
 */
export function crossCircleWithLine(centre: Point, r: number, line: Line): Point[] {
  const foot = footOn(line, centre);
  const off = distance(foot, centre);
  if (!(r >= 0 && off <= r + COINCIDENT)) return [];
  if (off >= r - COINCIDENT) return [foot];
  const half = Math.sqrt((r - off) * (r + off));
  return [add(foot, scale(line.direction, -half)), add(foot, scale(line.direction, half))];
}

/** Where the circle about `centre` of radius `r` crosses or touches the path, in order along the path. */
export function crossCircleWithPath(centre: Point, r: number, path: Path): Point[] {
  if (!(r >= 0)) return [];
  const hits: Hit[] = [];
  // The polynomial measures the square of the distance: within COINCIDENT of the circle it is within this of zero.
  const touch = COINCIDENT * (2 * r + COINCIDENT);
  for (const [index, piece] of path.entries()) {
    for (const t of zerosOf(circleGap(powerOf(piece), centre, r), 6, touch) ?? []) hits.push(hitAt(path, index, t));
  }
  return pointsOf(distinctHits(path, hits, (p) => Math.abs(distance(p, centre) - r)));
}

/** |B(t) - centre|^2 - r^2, degree 6. */
function circleGap(b: Power, centre: Point, r: number): number[] {
  const x = [b.x0 - centre.x, b.x1, b.x2, b.x3];
  const y = [b.y0 - centre.y, b.y1, b.y2, b.y3];
  const gap = [-r * r, 0, 0, 0, 0, 0, 0];
  for (let i = 0; i < 4; i++) {
    for (let j = 0; j < 4; j++) {
      gap[i + j] = (gap[i + j] as number) + (x[i] as number) * (x[j] as number) + (y[i] as number) * (y[j] as number);
    }
  }
  return gap;
}

import { type Cubic, derivativeAt, pointAt, secondDerivativeAt, splitCubic } from './cubic.ts';
import { COINCIDENT, CONVERGED, PARALLEL, PARAMETER } from './epsilon.ts';
import { nearestPlace, placeWithin } from './nearest.ts';
import { cross, distance, dot, norm, type Point, subtract } from './point.ts';
import { meetStraight, straightRun } from './straight.ts';
import { spend } from './work.ts';

/** Where two pieces meet: the parameter on each. */
export interface Meeting {
  readonly t: number;
  readonly u: number;
}

/** A stretch of a piece. */
interface Stretch {
  readonly c: Cubic;
  readonly from: number;
  readonly to: number;
}

/** A stretch of each piece. */
type Pair = readonly [Stretch, Stretch];

/** After this many pairs the pieces are asked whether they lie on each other: an honest crossing needs far fewer. */
const SUSPICIOUS = 400;

/** Never more pairs than this, whatever comes. */
const MOST = 40_000;

/** What it costs to see that two pieces lie apart, beside a look at a pair. */
const PASSING_BY = 1 / 16;

/**
 * Where two pieces cross or touch. Stretches are halved; a pair is dropped when its boxes, or the bands about its chords
 * that hold the whole curve, lie apart, so no crossing can be missed. Where directions cannot agree within a pair there is
 * one crossing at most, and Newton finds it. Where they can agree and both are straight to within CONVERGED, they touch or
 * miss. Pieces that lie on each other give none.
 */
export function meetCubics(a: Cubic, b: Cubic): Meeting[] {
  spend(PASSING_BY);
  if (boxesApart(a, b)) return [];
  spend(1);
  if (straightRun(a)) return meetStraight(a, b);
  if (straightRun(b)) return meetStraight(b, a).map(({ t, u }) => ({ t: u, u: t }));
  return meetCurved(a, b);
}

function meetCurved(a: Cubic, b: Cubic): Meeting[] {
  const meetings: Meeting[] = [];
  const pairs: Pair[] = [[whole(a), whole(b)]];
  let looks = 0;
  for (let pair = pairs.pop(); pair && looks < MOST; pair = pairs.pop()) {
    looks++;
    spend(1);
    if (looks === SUSPICIOUS && overlap(a, b)) return [];
    const found = settle(a, b, pair);
    if (found === 'split') addHalves(pairs, pair);
    else if (found) meetings.push(found);
  }
  return meetings.length > 0 && overlap(a, b) ? [] : meetings;
}

function whole(c: Cubic): Stretch {
  return { c, from: 0, to: 1 };
}

/** Adds the pairs to look at next: the longer stretch halved, or both when they are about as long. */
function addHalves(pairs: Pair[], [one, other]: Pair): void {
  const size = reach(one.c);
  const otherSize = reach(other.c);
  const ones = size >= 0.5 * otherSize ? halve(one) : [one];
  const others = otherSize >= 0.5 * size ? halve(other) : [other];
  for (const x of ones) for (const y of others) pairs.push([x, y]);
}

function halve({ c, from, to }: Stretch): Stretch[] {
  const middle = 0.5 * (from + to);
  const [left, right] = splitCubic(c, 0.5);
  return [
    { c: left, from, to: middle },
    { c: right, from: middle, to },
  ];
}

/** The size of the box about the control points, mm. */
function reach({ p0, p1, p2, p3 }: Cubic): number {
  return Math.max(
    Math.max(p0.x, p1.x, p2.x, p3.x) - Math.min(p0.x, p1.x, p2.x, p3.x),
    Math.max(p0.y, p1.y, p2.y, p3.y) - Math.min(p0.y, p1.y, p2.y, p3.y),
  );
}

function boxesApart(a: Cubic, b: Cubic): boolean {
  return (
    Math.min(a.p0.x, a.p1.x, a.p2.x, a.p3.x) - Math.max(b.p0.x, b.p1.x, b.p2.x, b.p3.x) > COINCIDENT ||
    Math.min(b.p0.x, b.p1.x, b.p2.x, b.p3.x) - Math.max(a.p0.x, a.p1.x, a.p2.x, a.p3.x) > COINCIDENT ||
    Math.min(a.p0.y, a.p1.y, a.p2.y, a.p3.y) - Math.max(b.p0.y, b.p1.y, b.p2.y, b.p3.y) > COINCIDENT ||
    Math.min(b.p0.y, b.p1.y, b.p2.y, b.p3.y) - Math.max(a.p0.y, a.p1.y, a.p2.y, a.p3.y) > COINCIDENT
  );
}

/** Whether `b` lies wholly to one side of the band along the chord of `a` that holds all of `a`. */
function bandsApart(a: Cubic, b: Cubic): boolean {
  const dx = a.p3.x - a.p0.x;
  const dy = a.p3.y - a.p0.y;
  const chord = Math.sqrt(dx * dx + dy * dy);
  if (!(chord > COINCIDENT)) return false;
  const off = (p: Point) => dx * (p.y - a.p0.y) - dy * (p.x - a.p0.x);
  const a1 = off(a.p1);
  const a2 = off(a.p2);
  const b0 = off(b.p0);
  const b1 = off(b.p1);
  const b2 = off(b.p2);
  const b3 = off(b.p3);
  const slack = COINCIDENT * chord;
  return (
    Math.min(b0, b1, b2, b3) - Math.max(0, a1, a2) > slack || Math.min(0, a1, a2) - Math.max(b0, b1, b2, b3) > slack
  );
}

/** What a pair comes to: a meeting, null for none, or that it must be halved. */
function settle(a: Cubic, b: Cubic, [one, other]: Pair): Meeting | null | 'split' {
  if (boxesApart(one.c, other.c) || bandsApart(one.c, other.c) || bandsApart(other.c, one.c)) return null;
  const flat = bow(one.c) <= CONVERGED && bow(other.c) <= CONVERGED;
  if (!directionsApart(one.c, other.c)) return flat ? touch(a, b, one, other) : 'split';
  return newton(a, b, [one, other], crossingStep) ?? (flat ? null : 'split');
}

function middles(one: Stretch, other: Stretch): Meeting {
  return { t: 0.5 * (one.from + one.to), u: 0.5 * (other.from + other.to) };
}

/** Two stretches, straight to within CONVERGED and nearly parallel: where they run parallel and how near they come. */
function touch(a: Cubic, b: Cubic, one: Stretch, other: Stretch): Meeting | null {
  const parallel = newton(a, b, [one, other], parallelStep) ?? middles(one, other);
  const foot = nearestPlace([other.c], pointAt(a, parallel.t));
  const u = other.from + foot.t * (other.to - other.from);
  return distance(pointAt(a, parallel.t), pointAt(b, u)) <= COINCIDENT ? { t: parallel.t, u } : null;
}

/** How far the handles stand off the chord, mm: the curve stands off less. */
function bow(c: Cubic): number {
  const chord = subtract(c.p3, c.p0);
  const length = norm(chord);
  const reach1 = subtract(c.p1, c.p0);
  const reach2 = subtract(c.p2, c.p0);
  if (!(length > COINCIDENT)) return Math.max(norm(reach1), norm(reach2), length);
  return Math.max(Math.abs(cross(chord, reach1)), Math.abs(cross(chord, reach2))) / length;
}

/** Whether no direction of `a` is, forward or backward, a direction of `b`. */
function directionsApart(a: Cubic, b: Cubic): boolean {
  const fanA = fanOf(a);
  const fanB = fanOf(b);
  if (!fanA || !fanB) return false;
  let turn = Math.atan2(fanB.chord.y, fanB.chord.x) - Math.atan2(fanA.chord.y, fanA.chord.x);
  turn -= Math.PI * Math.round(turn / Math.PI);
  const low = turn + fanB.low - fanA.high;
  const high = turn + fanB.high - fanA.low;
  return (low > PARALLEL && high < Math.PI - PARALLEL) || (high < -PARALLEL && low > -Math.PI + PARALLEL);
}

/** The directions of a stretch as angles from its chord; null when some are square to it or more. */
function fanOf(c: Cubic): { chord: Point; low: number; high: number } | null {
  const chord = subtract(c.p3, c.p0);
  let low = 0;
  let high = 0;
  for (const v of [subtract(c.p1, c.p0), subtract(c.p2, c.p1), subtract(c.p3, c.p2)]) {
    if (v.x === 0 && v.y === 0) continue;
    const ahead = dot(chord, v);
    if (!(ahead > 0)) return null;
    const angle = Math.atan(cross(chord, v) / ahead);
    low = Math.min(low, angle);
    high = Math.max(high, angle);
  }
  return { chord, low, high };
}

type StepOf = (a: Cubic, b: Cubic, t: number, u: number) => readonly [number, number];

/** Newton in both parameters from the middle of the pair; null unless it settles within the pair. */
function newton(a: Cubic, b: Cubic, [one, other]: Pair, step: StepOf): Meeting | null {
  let { t, u } = middles(one, other);
  for (let i = 0; i < 12; i++) {
    const [dt, du] = step(a, b, t, u);
    t += dt;
    u += du;
    if (!(Math.abs(t) < 2 && Math.abs(u) < 2)) return null;
    if (Math.abs(dt) + Math.abs(du) > PARAMETER) continue;
    return withinStretch(one, t) && withinStretch(other, u) ? { t: clamp(t), u: clamp(u) } : null;
  }
  return null;
}

function withinStretch({ from, to }: Stretch, t: number): boolean {
  const slack = 10 * PARAMETER;
  return t >= from - slack && t <= to + slack;
}

function clamp(t: number): number {
  return Math.min(1, Math.max(0, t));
}

/** Newton's step toward A(t) = B(u). */
function crossingStep(a: Cubic, b: Cubic, t: number, u: number): readonly [number, number] {
  const gap = subtract(pointAt(b, u), pointAt(a, t));
  const da = derivativeAt(a, t);
  const db = derivativeAt(b, u);
  const turn = cross(da, db);
  return [cross(gap, db) / turn, cross(gap, da) / turn];
}

/** Newton's step toward where the directions are parallel, side by side: A' x B' = 0 and (A - B) . A' = 0. */
function parallelStep(a: Cubic, b: Cubic, t: number, u: number): readonly [number, number] {
  const gap = subtract(pointAt(a, t), pointAt(b, u));
  const da = derivativeAt(a, t);
  const db = derivativeAt(b, u);
  const dda = secondDerivativeAt(a, t);
  const f = cross(da, db);
  const g = dot(gap, da);
  const ft = cross(dda, db);
  const fu = cross(da, secondDerivativeAt(b, u));
  const gt = dot(da, da) + dot(gap, dda);
  const gu = -dot(db, da);
  const turn = ft * gu - fu * gt;
  return [(fu * g - f * gu) / turn, (f * gt - ft * g) / turn];
}

/** Whether the pieces lie on each other: two ends of either on the other, and nine points between them too (Bezout: then they are one curve). */
function overlap(a: Cubic, b: Cubic): boolean {
  const shared: number[] = [];
  for (const t of [0, 1]) if (placeWithin([b], pointAt(a, t), COINCIDENT)) shared.push(t);
  for (const end of [b.p0, b.p3]) {
    const place = placeWithin([a], end, COINCIDENT);
    if (place) shared.push(place.t);
  }
  const from = Math.min(...shared);
  const to = Math.max(...shared);
  if (!(to - from > CONVERGED)) return false;
  for (let i = 1; i < 10; i++) {
    if (!placeWithin([b], pointAt(a, from + ((to - from) * i) / 10), COINCIDENT)) return false;
  }
  return true;
}

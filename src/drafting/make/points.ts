import { crossCircleWithLine, crossCircleWithPath, crossLineWithPath, crossPaths } from '../../geometry/crossings.ts';
import { crossLines, footOn } from '../../geometry/line.ts';
import { nearestOn } from '../../geometry/nearest.ts';
import { between, distance, type Point } from '../../geometry/point.ts';
import { message } from '../../words/message.ts';
import { failed, made, type Outcome } from '../outcome.ts';
import type { CurveShape, LineShape, PointShape } from '../shape.ts';
import type { Compass, Cross } from '../step.ts';
import type { Given } from '../taken.ts';
import { choose } from './choose.ts';
import { HAIR } from './hair.ts';

const pointShape = (point: Point): PointShape => ({ kind: 'point', point });

const chosen = (outcome: Outcome<Point>): Outcome<PointShape> =>
  outcome.ok ? made(pointShape(outcome.value)) : outcome;

/** A mark made by eye. */
export function makePencil({ at }: Given<'pencil'>): Outcome<PointShape> {
  return made(pointShape(at));
}

/** Where two lines or curves cross. */
export function makeCross({ one, other, near }: Given<'cross'>, step: Cross): Outcome<PointShape> {
  const names = { one: { named: step.one }, other: { named: step.other } };
  // Is it the same thing twice?
  if (step.one === step.other) return failed('other', message('problem.itself-cross', { one: names.one }));
  const places = crossings(one, other);
  if (places.length > 0) return chosen(choose(places, near));
  const bothLines = one.kind === 'line' && other.kind === 'line';
  return failed('other', message(bothLines ? 'problem.parallel' : 'problem.no-cross', names));
}

function crossings(one: LineShape | CurveShape, other: LineShape | CurveShape): readonly Point[] {
  if (one.kind === 'curve') {
    return other.kind === 'curve' ? crossPaths(one.path, other.path) : crossLineWithPath(other.line, one.path);
  }
  if (other.kind === 'curve') return crossLineWithPath(one.line, other.path);
  const place = crossLines(one.line, other.line);
  return place ? [place] : [];
}

/** Where an arc about a point, of a radius, cuts a line or curve. */
export function makeCompass({ about, radius, on, near }: Given<'compass'>, step: Compass): Outcome<PointShape> {
  // Does the compass stand open?
  if (!(radius > 0)) return failed('radius', message('problem.no-radius', { radius: { mm: radius } }));
  const centre = about.point;
  const places =
    on.kind === 'line' ? crossCircleWithLine(centre, radius, on.line) : crossCircleWithPath(centre, radius, on.path);
  if (places.length > 0) return chosen(choose(places, near));
  const gap = on.kind === 'line' ? distance(centre, footOn(on.line, centre)) : nearestOn(on.path, centre).distance;
  const values = { radius: { mm: radius }, about: { named: step.about }, on: { named: step.on } };
  if (gap < radius) return failed('radius', message('problem.too-wide', values));
  if (gap - radius < HAIR) return failed('radius', message('problem.out-of-reach-hair', values));
  return failed('radius', message('problem.out-of-reach', { ...values, gap: { mm: gap } }));
}

/** The foot of the square from a point to a line. */
export function makeFoot({ from, on }: Given<'foot'>): Outcome<PointShape> {
  return made(pointShape(footOn(on.line, from.point)));
}

/** A fraction of the way between two points; below 0 or above 1 it lies beyond them. */
export function makePart({ from, to, fraction }: Given<'part'>): Outcome<PointShape> {
  return made(pointShape(between(from.point, to.point, fraction)));
}

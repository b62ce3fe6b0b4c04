import type { Shape } from '../../../drafting/shape.ts';
import type { Name, Step } from '../../../drafting/step.ts';
import { lengthOf } from '../../../geometry/length.ts';
import { crossLines, footOn, type Line } from '../../../geometry/line.ts';
import { nearestOn } from '../../../geometry/nearest.ts';
import { add, dot, norm, type Point, point, scale, subtract } from '../../../geometry/point.ts';
import { directionAtStation, pointAtStation } from '../../../geometry/station.ts';
import type { Check, Exercise } from '../../../grader/exercise.ts';
import { type Named, pointNamed, shapeNamed } from '../../../grader/measures/lookup.ts';

/** A place of a right answer, mm, and the unit direction in which the answer, or what it is marked on, runs there. */
export interface Spot {
  readonly at: Point;
  readonly along: Point;
  /** The name of the place, where it has one. */
  readonly name: Name | null;
}

/** Where a right answer lies on one figure, in places that every figure has. */
export interface Footing {
  readonly kind: 'point' | 'line' | 'curve';
  readonly right: Shape;
  readonly spots: readonly Spot[];
}

/** A right answer on one figure. */
export interface RightAnswer {
  readonly exercise: Exercise;
  readonly target: Name;
  readonly right: Shape;
  /** The sheet on which its neighbours are looked up: the reference's, with the learner's earlier answers pinned. */
  readonly reference: Named;
  /** The reference's sheet with nothing pinned: which way its lines run does not hang on what a learner drew. */
  readonly own: Named;
}

/** So many places of a curve are looked at between its ends. */
const BETWEEN = 24;
/** A line of which an exercise names no stretch is looked at so far to both sides of its place, mm. */
const EITHER_SIDE = 100;

/**
 * The places at which answers to a target are held against the right one: a mark itself; a line at the two ends of the
 * stretch that its checks read; a curve at its ends and at even shares of its length between. Null where the right answer has
 * no place on the sheet.
 */
export function footingOf(answer: RightAnswer): Footing | null {
  const { right } = answer;
  if (right.kind === 'point') {
    const along = runAt(answer, right.point);
    return { kind: 'point', right, spots: [{ at: right.point, along, name: answer.target }] };
  }
  if (right.kind === 'line') return { kind: 'line', right, spots: lineSpots(answer, right.line) };
  if (right.kind !== 'curve') return null;
  const whole = lengthOf(right.path);
  const spots = Array.from({ length: BETWEEN + 2 }, (_, index): Spot | null => {
    const station = (whole * index) / (BETWEEN + 1);
    const at = pointAtStation(right.path, station);
    const along = directionAtStation(right.path, station);
    return at && along && { at, along, name: null };
  });
  return spots.includes(null) ? null : { kind: 'curve', right, spots: spots as readonly Spot[] };
}

/** The direction in which runs what the reference's step marks a point on; level where it marks it on nothing. */
function runAt({ exercise, target, own }: RightAnswer, at: Point): Point {
  const step = exercise.reference.find(({ answers }) => answers === target);
  const base = step === undefined ? null : baseOf(step);
  const shape = base === null ? null : shapeNamed(own, base);
  if (shape?.kind === 'line') return shape.line.direction;
  if (shape?.kind !== 'curve') return point(1, 0);
  return directionAtStation(shape.path, nearestOn(shape.path, at).station) ?? point(1, 0);
}

/** The line or curve a step marks a point on. */
function baseOf(step: Step): Name | null {
  switch (step.verb) {
    case 'along':
    case 'compass':
    case 'foot':
      return step.on;
    case 'cross':
      return step.one;
    default:
      return null;
  }
}

function lineSpots(answer: RightAnswer, line: Line): readonly Spot[] {
  const along = alignedWith(answer, line.direction);
  const named = stretchOf(answer).flatMap((name): Spot[] => {
    const mark = pointNamed(answer.reference, name);
    return mark === null ? [] : [{ at: footOn(line, mark), along, name }];
  });
  const [first, second] = named;
  if (first && second && norm(subtract(second.at, first.at)) > 1) return [first, second];
  const middle = first?.at ?? crossLines(line, { through: point(0, 0), direction: point(0, 1) }) ?? line.through;
  return [-EITHER_SIDE, EITHER_SIDE].map((way) => ({ at: add(middle, scale(along, way)), along, name: null }));
}

/** The names of the places between which a line is read, or of the one at which it is. */
function stretchOf({ exercise, target }: RightAnswer): readonly Name[] {
  const names = exercise.checks.filter((check) => check.target === target).map(namesOf);
  return names.find(({ length }) => length === 2) ?? names.find(({ length }) => length === 1) ?? [];
}

function namesOf(check: Check): readonly Name[] {
  if (check.measure === 'line') return check.between;
  return check.measure === 'parallel' ? [check.at].flat() : [];
}

/** The direction turned to run as the reference's own line does. */
function alignedWith({ target, own }: RightAnswer, direction: Point): Point {
  const shape = shapeNamed(own, target);
  return shape?.kind === 'line' && dot(shape.line.direction, direction) < 0 ? scale(direction, -1) : direction;
}

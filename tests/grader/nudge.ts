import type { CurveShape, Shape } from '../../src/drafting/shape.ts';
import type { Path } from '../../src/geometry/cubic.ts';
import { lengthOf } from '../../src/geometry/length.ts';
import { type Line, lineThrough, signedDistance } from '../../src/geometry/line.ts';
import { endOf, startOf } from '../../src/geometry/path.ts';
import { add, between, distance, heading, type Point, quarterTurn, scale, subtract } from '../../src/geometry/point.ts';
import { splitAtStation } from '../../src/geometry/station.ts';
import { shiftLine, shiftPath, turnLine, turnPath } from '../../src/geometry/transform.ts';
import type { Check } from '../../src/grader/exercise.ts';
import type { JudgedCheck } from '../../src/grader/judge.ts';
import { outwardNormal, shapeNamed } from '../../src/grader/measures/lookup.ts';
import type { Subject } from '../../src/grader/measures/reading.ts';
import { takeReading } from '../../src/grader/measures/take.ts';

/** How far, in mm or degrees, and which way: `angle` says where a point goes when any way will do. */
export interface Move {
  readonly amount: number;
  readonly sense: 1 | -1;
  readonly angle: number;
}

/** The right answer, moved so that one check is off by exactly the amount. Null where the check has no such move. */
export function nudge(check: Check, subject: Subject, move: Move): Shape | null {
  const { right, reference } = subject;
  const by = move.sense * move.amount;
  switch (check.measure) {
    case 'position':
      return moved(right, scale(heading(move.angle), move.amount));
    case 'distance':
      return movedFrom(shapeNamed(reference, check.from), right, by);
    case 'parallel':
      return movedFrom(shapeNamed(reference, check.from), right, by);
    case 'line':
      return right.kind === 'line' ? moved(right, scale(quarterTurn(right.line.direction), by)) : null;
    case 'squareness':
      return right.kind === 'line' ? leaned(right.line, by) : null;
    case 'level':
      return moved(right, { x: 0, y: by });
    case 'length':
    case 'walk':
      return lengthened(right, by);
    case 'through':
    case 'bow':
    case 'shape':
    case 'inflection':
      return right.kind === 'curve' ? reshaped(check, { ...subject, right }, by) : null;
    case 'angle':
      return right.kind === 'angle' ? { kind: 'angle', angle: right.angle + (by * Math.PI) / 180 } : null;
    case 'smoothness':
      return right.kind === 'curve' ? cornered(right.path, by) : null;
  }
}

function leaned(line: Line, degrees: number): Shape {
  return { kind: 'line', line: turnLine(line, line.through, (degrees * Math.PI) / 180) };
}

/** Square away from a line, or straight away from a point. */
function movedFrom(from: Shape | null, shape: Shape, by: number): Shape | null {
  if (from?.kind === 'line') return moved(shape, scale(outwardNormal(from.line), by));
  if (from?.kind !== 'point' || shape.kind !== 'point') return null;
  const away = subtract(shape.point, from.point);
  return moved(shape, scale(away, by / distance(shape.point, from.point)));
}

/** A curve drawn out square to its chord, or moved so, until the reading has changed by the amount wanted: found by halving. */
function reshaped(check: Check, subject: Subject & { readonly right: CurveShape }, by: number): Shape | null {
  const { path } = subject.right;
  const chord = lineThrough(startOf(path), endOf(path));
  if (chord === null) return null;
  const normal = quarterTurn(chord.direction);
  const whole = check.measure === 'through' || check.measure === 'shape';
  const at = (share: number): Shape => ({
    kind: 'curve',
    path: whole
      ? shiftPath(path, scale(normal, share))
      : placed(path, (p) => add(p, scale(normal, share * signedDistance(chord, p)))),
  });
  const change = (share: number) => {
    const reading = takeReading(check, { ...subject, answer: at(share) });
    return reading === null ? Number.NaN : reading.measured - reading.expected;
  };
  let low = 0;
  let high = whole ? 4 * by : Math.sign(change(1) * by);
  while (Math.abs(change(high)) < Math.abs(by) && Math.abs(high) < 1e4) high *= 2;
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (Math.abs(change(middle)) < Math.abs(by)) low = middle;
    else high = middle;
  }
  return at((low + high) / 2);
}

/** A curve with a corner put into the middle of it. */
function cornered(path: Path, degrees: number): Shape | null {
  const halves = splitAtStation(path, lengthOf(path) * 0.37);
  if (halves === null) return null;
  const [first, second] = halves;
  return { kind: 'curve', path: [...first, ...turnPath(second, startOf(second), (degrees * Math.PI) / 180)] };
}

function placed(path: Path, place: (p: Point) => Point): Path {
  return path.map(({ p0, p1, p2, p3 }) => ({ p0: place(p0), p1: place(p1), p2: place(p2), p3: place(p3) }));
}

function moved(shape: Shape, by: Point): Shape | null {
  if (shape.kind === 'point') return { kind: 'point', point: add(shape.point, by) };
  if (shape.kind === 'line') return { kind: 'line', line: shiftLine(shape.line, by) };
  if (shape.kind === 'curve') return { kind: 'curve', path: shiftPath(shape.path, by) };
  return null;
}

function lengthened(shape: Shape, by: number): Shape | null {
  if (shape.kind === 'length') return { kind: 'length', length: shape.length + by };
  if (shape.kind !== 'curve') return null;
  const factor = (lengthOf(shape.path) + by) / lengthOf(shape.path);
  return { kind: 'curve', path: stretched(shape.path, startOf(shape.path), factor) };
}

function stretched(path: Path, about: Point, factor: number): Path {
  return placed(path, (p) => between(about, p, factor));
}

/** What to move so that a ranged check is off by `amount`: from the right reading to the bound, and beyond it. */
export function beyondRange({ reading, bounds }: JudgedCheck, amount: number): Pick<Move, 'amount' | 'sense'> {
  if (reading !== null && bounds.least !== null) return { amount: reading.measured - bounds.least + amount, sense: -1 };
  if (reading !== null && bounds.most !== null) return { amount: bounds.most - reading.measured + amount, sense: 1 };
  throw new Error('a range without a bound');
}

import type { CurveShape, Shape } from '../../src/drafting/shape.ts';
import { bowOf } from '../../src/geometry/bow.ts';
import { type Cubic, type Path, straight } from '../../src/geometry/cubic.ts';
import { lengthOf } from '../../src/geometry/length.ts';
import { lineThrough, signedDistance } from '../../src/geometry/line.ts';
import { endOf, reversePath, startOf } from '../../src/geometry/path.ts';
import { add, between, distance, heading, type Point, quarterTurn, scale, subtract } from '../../src/geometry/point.ts';
import { breaksOf, inflectionsOf, turnOf } from '../../src/geometry/smooth.ts';
import { directionAtStation, pieceBetween, splitAtStation } from '../../src/geometry/station.ts';
import { shiftPath, turnLine, turnPath } from '../../src/geometry/transform.ts';
import type { Check, WalkCheck } from '../../src/grader/exercise.ts';
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
      return leaned(right, check.end ?? 'start', by);
    case 'level':
      return moved(right, { x: 0, y: by });
    case 'length':
      return lengthened(right, by);
    case 'walk':
      return walkedOn(check, right, by);
    case 'bow':
      return right.kind === 'curve' ? bowed(right.path, by) : null;
    case 'through':
    case 'shape':
    case 'inflection':
    case 'bend':
      return right.kind === 'curve' ? redrawn(check, { ...subject, right }, by) : null;
    case 'angle':
      return right.kind === 'angle' ? { kind: 'angle', angle: right.angle + (by * Math.PI) / 180 } : null;
    case 'smoothness':
      return right.kind === 'curve' ? cornered(right.path, by) : null;
  }
}

/** A line turned about the place it was drawn through; a curve about one of its ends. */
function leaned(shape: Shape, end: 'start' | 'end', degrees: number): Shape | null {
  const angle = (degrees * Math.PI) / 180;
  if (shape.kind === 'line') return { kind: 'line', line: turnLine(shape.line, shape.line.through, angle) };
  if (shape.kind !== 'curve') return null;
  const about = end === 'start' ? startOf(shape.path) : endOf(shape.path);
  return { kind: 'curve', path: turnPath(shape.path, about, angle) };
}

/** Longer or shorter between its match marks: at the end that is walked, or all along where the whole is. */
function walkedOn(check: WalkCheck, shape: Shape, by: number): Shape | null {
  if (check.between === undefined || shape.kind !== 'curve') return lengthened(shape, by);
  if (check.between[0] === 'start') return { kind: 'curve', path: reversePath(drawnOn(reversePath(shape.path), by)) };
  return check.between[1] === 'end' ? { kind: 'curve', path: drawnOn(shape.path, by) } : null;
}

/** A path carried straight on past its end, or cut back from it. */
function drawnOn(path: Path, by: number): Path {
  const end = endOf(path);
  if (by < 0) return splitAtStation(path, lengthOf(path) + by)?.[0] ?? path;
  const direction = directionAtStation(path, lengthOf(path)) ?? { x: 1, y: 0 };
  return [...path, straight(end, add(end, scale(direction, by)))];
}

/**
 * A curve that bows by so much more. A straight one of one piece is bent: its middle moves by 3/4 of what its two handles do.
 * Any other is drawn out square to its chord, which draws out its bow alike.
 */
function bowed(path: Path, by: number): Shape | null {
  const [piece] = path;
  const chord = lineThrough(startOf(path), endOf(path));
  if (piece === undefined || chord === null) return null;
  const own = bowOf(path);
  if (Math.abs(own) > 1e-3) {
    const normal = scale(quarterTurn(chord.direction), by / own);
    return { kind: 'curve', path: placed(path, (p) => add(p, scale(normal, signedDistance(chord, p)))) };
  }
  const aside = scale(quarterTurn(chord.direction), (by * 4) / 3);
  return { kind: 'curve', path: [{ ...piece, p1: add(piece.p1, aside), p2: add(piece.p2, aside) }] };
}

/** Square away from a line, or straight away from a point. */
function movedFrom(from: Shape | null, shape: Shape, by: number): Shape | null {
  if (from?.kind === 'line') return moved(shape, scale(outwardNormal(from.line), by));
  if (from?.kind !== 'point' || shape.kind !== 'point') return null;
  const away = subtract(shape.point, from.point);
  return moved(shape, scale(away, by / distance(shape.point, from.point)));
}

function redrawn(check: Check, subject: OfCurve, by: number): Shape | null {
  if (check.measure === 'bend') return bentOn(check, subject, by);
  return check.measure === 'inflection' ? wavering(check, subject, by) : reshaped(check, subject, by);
}

type OfCurve = Subject & { readonly right: CurveShape };

/** A curve drawn out square to its chord, or moved so, until the reading has changed by the amount wanted: found by halving. */
function reshaped(check: Check, subject: OfCurve, by: number): Shape | null {
  const { path } = subject.right;
  const chord = lineThrough(startOf(path), endOf(path));
  if (chord === null) return null;
  const normal = quarterTurn(chord.direction);
  const whole = check.measure !== 'inflection';
  const at = (share: number): Shape => ({
    kind: 'curve',
    path: whole
      ? shiftPath(path, scale(normal, share))
      : placed(path, (p) => add(p, scale(normal, share * signedDistance(chord, p)))),
  });
  const value = (share: number) => {
    const reading = takeReading(check, { ...subject, answer: at(share) });
    return reading === null ? Number.NaN : reading.measured - reading.expected;
  };
  const start = value(0);
  const change = (share: number) => Math.abs(value(share) - start);
  // A curve that misses its mark already is moved further off, and not first over the mark.
  const away = whole ? (value(0.1) >= value(-0.1) ? 1 : -1) : Math.sign((value(1) - start) * by);
  let low = 0;
  let high = whole ? 4 * Math.abs(by) * away : away;
  // What does not change at all is not moved by this.
  if (high === 0) return null;
  while (change(high) < Math.abs(by) && Math.abs(high) < 1e4) high *= 2;
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (change(middle) < Math.abs(by)) low = middle;
    else high = middle;
  }
  return at((low + high) / 2);
}

/**
 * A curve that bends back by so much more, or less, than the right one. What bends back less than is wanted to move cannot bend
 * back less by that; it is drawn on in a wave instead, to either side as deep.
 */
function wavering(check: Check, subject: OfCurve, by: number): Shape | null {
  const { path } = subject.right;
  const own = takeReading(check, { ...subject, answer: subject.right })?.measured ?? 0;
  if (by < 0 && own > -by) return reshaped(check, subject, by);
  const length = lengthOf(path);
  const last = pieceBetween(path, inflectionsOf(path).at(-1) ?? 0, length);
  // The wave begins by bending the other way from where the curve ends, so that it has bows of its own.
  const side = last !== null && turnOf(last) < 0 ? -1 : 1;
  const ahead = directionAtStation(path, length) ?? { x: 1, y: 0 };
  return drawnOutTo(check, subject, Math.abs(by), (deep) => {
    const first = bow(endOf(path), ahead, side * deep);
    return [...path, first, bow(first.p3, ahead, -side * deep)];
  });
}

/** A curve drawn on in a bow, by which it turns more. */
function bentOn(check: Check, subject: OfCurve, by: number): Shape | null {
  const { path } = subject.right;
  const ahead = directionAtStation(path, lengthOf(path));
  if (ahead === null || by < 0) return null;
  return drawnOutTo(check, subject, by, (deep) => [...path, bow(endOf(path), ahead, deep)]);
}

/** A curve drawn out just so deep that the reading has grown by the amount: found by halving. */
function drawnOutTo(check: Check, subject: OfCurve, by: number, at: (deep: number) => Path): Shape {
  const shape = (deep: number): Shape => ({ kind: 'curve', path: at(deep) });
  const value = (answer: Shape) => takeReading(check, { ...subject, answer })?.measured ?? Number.NaN;
  const own = value(subject.right);
  let [low, high] = [0, 60];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (value(shape(middle)) - own < by) low = middle;
    else high = middle;
  }
  return shape((low + high) / 2);
}

/** A piece of 4 cm in a direction that bows so far to the left of its chord: its handles stand off 4/3 as far. */
function bow(from: Point, ahead: Point, off: number): Cubic {
  const piece = straight(from, add(from, scale(ahead, 40)));
  const aside = scale(quarterTurn(ahead), (off * 4) / 3);
  return { ...piece, p1: add(piece.p1, aside), p2: add(piece.p2, aside) };
}

/** A curve with a corner put into the middle of it. */
function cornered(path: Path, degrees: number): Shape | null {
  // Past the last corner that may be meant, which must stay where it is.
  const last = breaksOf(path).at(-1)?.station ?? 0;
  const halves = splitAtStation(path, last + (lengthOf(path) - last) * 0.37);
  if (halves === null) return null;
  const [first, second] = halves;
  return { kind: 'curve', path: [...first, ...turnPath(second, startOf(second), (degrees * Math.PI) / 180)] };
}

function placed(path: Path, place: (p: Point) => Point): Path {
  return path.map(({ p0, p1, p2, p3 }) => ({ p0: place(p0), p1: place(p1), p2: place(p2), p3: place(p3) }));
}

function moved(shape: Shape, by: Point): Shape | null {
  if (shape.kind === 'point') return { kind: 'point', point: add(shape.point, by) };
  if (shape.kind === 'line') return { kind: 'line', line: { ...shape.line, through: add(shape.line.through, by) } };
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

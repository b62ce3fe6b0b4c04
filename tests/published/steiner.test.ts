import paper from 'paper/dist/paper-core';
import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { Shape } from '../../src/drafting/shape.ts';
import type { Sheet } from '../../src/drafting/sheet.ts';
import type { Step } from '../../src/drafting/step.ts';
import type { Figure } from '../../src/garment/figure.ts';
import type { Cubic, Path } from '../../src/geometry/cubic.ts';
import type { Line } from '../../src/geometry/line.ts';
import type { Point } from '../../src/geometry/point.ts';
import { bezierOf, paperOf, paperPoint } from '../geometry/oracle.ts';
import { invented, orderOn, sampled, tableFor } from '../grader/tables.ts';
import { replayed } from './replayed.ts';

// J. Steiner, 1840 (any textbook of differential geometry): the parallel of a curve is longer than the curve by its
// distance times the angle the curve turns through. What is measured here is measured by bezier-js and paper.

const collar = loadExercise('collar-single');
const figures = [...invented, ...sampled];

function sheetOn(figure: Figure, more: readonly Step[] = []): Sheet {
  return replayed(tableFor(collar, orderOn(collar, figure)), [...collar.reference, ...more]);
}

const never = (): never => {
  throw new Error('not on the sheet');
};
const of = <K extends Shape['kind']>(sheet: Sheet, name: string, kind: K): Extract<Shape, { kind: K }> => {
  const shape = sheet.shapes.get(name);
  return shape?.kind === kind ? (shape as Extract<Shape, { kind: K }>) : never();
};
const pathOf = (sheet: Sheet, name: string): Path => of(sheet, name, 'curve').path;
const lengthOf = (sheet: Sheet, name: string): number => of(sheet, name, 'length').length;
const angleOf = (sheet: Sheet, name: string): number => of(sheet, name, 'angle').angle;
const lineOf = (sheet: Sheet, name: string): Line => of(sheet, name, 'line').line;

const measures = (sheet: Sheet, name: string): number => sheet.measures.get(name)?.value ?? never();

/** The length of the exact parallel of one piece, by chords between places that bezier-js gives with its normals; extrapolated (Richardson). */
function parallelLength(piece: Cubic, d: number): number {
  const bezier = bezierOf(piece);
  const at = (t: number): Point => {
    const [p, n] = [bezier.get(t), bezier.normal(t)];
    return { x: p.x + d * n.x, y: p.y + d * n.y };
  };
  const chords = (count: number): number =>
    Array.from({ length: count }, (_, k) => {
      const [a, b] = [at(k / count), at((k + 1) / count)];
      return Math.hypot(b.x - a.x, b.y - a.y);
    }).reduce((sum, length) => sum + length, 0);
  const fine = chords(800);
  return fine + (fine - chords(400)) / 3;
}

/** The angle from one unit vector to another, radians, anticlockwise. */
const turnFrom = (a: Point, b: Point): number => Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y);

/** What the parallel is longer than the path: piece by piece, and every corner by its arc, with its sign. bezier-js's normals look left. */
function gainOf(path: Path, d: number): number {
  return path.reduce((sum, piece, i) => {
    const next = path[i + 1];
    const corner = next === undefined ? 0 : turnFrom(bezierOf(piece).normal(1), bezierOf(next).normal(0));
    return sum + parallelLength(piece, d) - bezierOf(piece).length() - d * corner;
  }, 0);
}

describe('the joined neck seam', () => {
  test('has a parallel longer by its distance times its turn, to 1e-4 mm, on the invented and the sampled figures', () => {
    for (const figure of figures) {
      const sheet = sheetOn(figure);
      const d = measures(sheet, 'fall') - measures(sheet, 'stand');
      // The seam runs down from the centre back, turning to its right; outside is left.
      const gain = Math.max(gainOf(pathOf(sheet, 'joined'), d), gainOf(pathOf(sheet, 'joined'), -d));
      expect(Math.abs(gain - d * angleOf(sheet, 'phi'))).toBeLessThan(1e-4);
      expect(Math.abs(gain - lengthOf(sheet, 'edge-ease'))).toBeLessThan(1e-4);
    }
  });

  test('turns through 90 degrees less both slopes and more the lean: docs/method.md', () => {
    for (const figure of figures) {
      const sheet = sheetOn(figure);
      const slope = (figure['shoulder-slope'] * Math.PI) / 180;
      expect(angleOf(sheet, 'phi')).toBeCloseTo(Math.PI / 2 - 2 * slope + angleOf(sheet, 'lean'), 9);
    }
  });

  test('is taped by a learner as the same, to 1/50 mm: at the neck point the parallel is trimmed, where the arc is reckoned', () => {
    const taping: readonly Step[] = [
      { verb: 'offset', name: 'fall-line', of: 'joined', distance: 'fall - stand', side: 'right' },
      { verb: 'tape', name: 'fall-length', along: 'fall-line' },
      { verb: 'tape', name: 'seam-length', along: 'joined' },
    ];
    for (const figure of figures) {
      const sheet = sheetOn(figure, taping);
      const short = lengthOf(sheet, 'edge-ease') - (lengthOf(sheet, 'fall-length') - lengthOf(sheet, 'seam-length'));
      expect(short).toBeGreaterThan(-1e-4);
      expect(short).toBeLessThan(0.02);
    }
  });
});

describe('the swung collar', () => {
  test('has an outer edge as long as is needed: its neck edge and the ease, to 1e-4 mm', () => {
    for (const figure of figures) {
      const sheet = sheetOn(figure);
      const width = measures(sheet, 'stand') + measures(sheet, 'fall');
      const d = measures(sheet, 'fall') - measures(sheet, 'stand');
      const needed = Math.max(gainOf(pathOf(sheet, 'joined'), d), gainOf(pathOf(sheet, 'joined'), -d));
      expect(Math.abs(openedBy(sheet, width) - needed)).toBeLessThan(1e-4);
    }
  });

  test('is drawn so: from the centre back to over the shoulder its edge is the back neck and half the ease, to 0.2 mm', () => {
    for (const figure of figures) {
      const sheet = sheetOn(figure);
      const edge = paperOf(pathOf(sheet, 'outer-edge'));
      const mark = of(sheet, 'over-shoulder', 'point').point;
      const drawn = edge.getNearestLocation(paperPoint(mark)).offset;
      const needed = lengthOf(sheet, 'back-neck') + lengthOf(sheet, 'edge-ease') / 2;
      expect(Math.abs(drawn - needed)).toBeLessThan(0.2);
    }
  });
});

/** What the swing opens at the outer edge: the arc about the neck point between the squares to the line before and after it, drawn and measured by paper. */
function openedBy(sheet: Sheet, width: number): number {
  const pin = of(sheet, 'neck-point', 'point').point;
  const [before, after] = [lineOf(sheet, 'neck-line'), lineOf(sheet, 'back-line')];
  const outer = ({ direction }: Line): paper.Point =>
    new paper.Point(pin.x, pin.y).add(leftOf(direction).multiply(width));
  const [from, to] = [outer(before), outer(after)];
  const middle = from.add(to).divide(2).subtract(new paper.Point(pin.x, pin.y));
  const through = new paper.Point(pin.x, pin.y).add(middle.normalize(width));
  return new paper.Path.Arc({ from, through, to, insert: false }).length;
}

/** The unit vector to the left of the sheet, square to a direction. */
function leftOf({ x, y }: Point): paper.Point {
  const square = new paper.Point(-y, x);
  return square.x < 0 ? square : square.multiply(-1);
}

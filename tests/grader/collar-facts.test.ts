import { describe, expect, test } from 'vitest';
import { evaluate } from '../../src/drafting/expression.ts';
import { replay } from '../../src/drafting/replay.ts';
import type { Shape } from '../../src/drafting/shape.ts';
import type { Step } from '../../src/drafting/step.ts';
import { people } from '../../src/garment/people.ts';
import type { Cubic } from '../../src/geometry/cubic.ts';
import { nearestOn } from '../../src/geometry/nearest.ts';
import { distance, dot, heading, norm, type Point, quarterTurn, subtract } from '../../src/geometry/point.ts';
import { directionAtStation } from '../../src/geometry/station.ts';
import type { Exercise } from '../../src/grader/exercise.ts';
import { casteljau } from '../geometry/oracle.ts';
import { exercises, orderOn, tableFor } from './tables.ts';

const INCH = 25.4;

/** Common practice, no source. */
describe('what the trade says of collars', () => {
  const mm = (text: string): number => {
    const worked = evaluate(text, new Map());
    return worked.ok ? worked.quantity.value : Number.NaN;
  };
  const named = (name: string) => exercises.find(({ id }) => id === name) ?? never();
  const whole = ['collar-single', 'collar-double', 'shawl'].map(named);
  const sheetsOf = (exercise: Exercise) =>
    people.map(({ figure }) => ({
      figure,
      ...replay(tableFor(exercise, orderOn(exercise, figure)), exercise.reference),
    }));
  const using = (measure: string) =>
    exercises.flatMap(({ id, style }) => (style[measure] === undefined ? [] : [{ id, ...style[measure] }]));

  test('the notch lies no higher than the collarbone level on any order, and half an inch below it is preferred', () => {
    const drops = using('notch-drop');
    expect(drops.length).toBeGreaterThan(5);
    for (const { from, value } of drops) {
      expect(mm(from)).toBeGreaterThan(0);
      expect(mm(value)).toBeCloseTo(INCH / 2, 9);
    }
  });

  test('and worn, it lies there: folded back over the roll line, the reference’s notch is as far below the level as was said', () => {
    for (const exercise of [named('collar-single'), named('collar-double')]) {
      const check: readonly Step[] = [{ verb: 'fold', name: 'seen', what: 'notch', over: 'roll-line' }];
      for (const { figure } of people) {
        const { shapes } = replay(tableFor(exercise, orderOn(exercise, figure)), [...exercise.reference, ...check]);
        const seen = shapes.get('seen');
        expect(seen?.kind === 'point' ? seen.point.y : Number.NaN).toBeCloseTo(figure['front-waist'] - INCH / 2, 6);
      }
    }
  });

  test('the collar end stands about square to the gorge, and is about as long as the lapel’s top edge', () => {
    for (const { shapes } of sheetsOf(named('collar-single'))) {
      const [notch, gorge, end, lapel] = ['notch', 'gorge-corner', 'collar-point', 'lapel-point'].map((name) =>
        pointOf(shapes, name),
      );
      if (!notch || !gorge || !end || !lapel) throw new Error('not drawn');
      expect(Math.abs(cosine(subtract(end, notch), subtract(gorge, notch)))).toBeLessThan(1e-9);
      expect(Math.abs(distance(end, notch) - distance(lapel, notch))).toBeLessThan((5 / 16) * INCH);
    }
  });

  test('a lapel edge may be straight or bowed outward a little: from nothing to 3/8 in is right', () => {
    for (const id of ['collar-single', 'collar-double']) {
      const bow = named(id).checks.find((check) => check.measure === 'bow') ?? never();
      expect([mm(bow.least ?? ''), mm(bow.most ?? '')]).toEqual([expect.closeTo(-0.375 * INCH, 9), 0]);
    }
  });

  test('a stand is 1 to 1 3/4 in high behind, on every order', () => {
    for (const { from, to } of using('stand')) {
      expect(mm(from)).toBeGreaterThanOrEqual(INCH - 1e-9);
      expect(mm(to)).toBeLessThanOrEqual(1.75 * INCH + 1e-9);
    }
  });

  test('turned down, the collar passes the neck seam at the centre back by only 1/8 in, the turn of the cloth allowed for', () => {
    const exercise = named('stand-fall');
    for (const { figure, shapes } of sheetsOf(exercise)) {
      const [seam, crease, edge] = ['back-neck-point', 'crease-point', 'edge-point'].map((name) =>
        pointOf(shapes, name),
      );
      const turn = mm(exercise.style['cloth-turn']?.value ?? '');
      if (!seam || !crease || !edge) throw new Error(`not drawn on ${JSON.stringify(figure)}`);
      expect(distance(crease, edge) - distance(crease, seam) - turn).toBeCloseTo(INCH / 8, 6);
    }
  });

  test('the centre back is square to the neck edge and to the outer edge', () => {
    for (const { shapes } of whole.flatMap(sheetsOf)) {
      const line = shapes.get('collar-centre-back');
      for (const name of ['collar-neck-edge', 'outer-edge']) {
        const edge = shapes.get(name);
        if (line?.kind !== 'line' || edge?.kind !== 'curve') throw new Error(`no ${name}`);
        expect(Math.abs(cosine(line.line.direction, directionAtStation(edge.path, 0) ?? never()))).toBeLessThan(1e-9);
      }
    }
  });

  test('the little dip beside the shoulder is left: filled in is a misreading wherever a neck edge is trued', () => {
    for (const id of ['neck-edge', 'collar-single', 'collar-double', 'shawl', 'true-draped'])
      expect(named(id).misreadings.map((one) => one.id)).toContain('dip-filled');
  });

  test('the shoulder mark meets the shoulder seam when the edge is walked: from centre back to neck point is the back neck', () => {
    for (const { shapes, measures } of whole.flatMap(sheetsOf)) {
      const edge = shapes.get('collar-neck-edge');
      const mark = pointOf(shapes, 'neck-point');
      if (edge?.kind !== 'curve' || !mark) throw new Error('not drawn');
      const walked = nearestOn(edge.path, mark);
      expect(walked.distance).toBeLessThan(1e-6);
      expect(walked.station).toBeCloseTo(measures.get('back-neck')?.value ?? Number.NaN, 6);
    }
  });

  test('half a collar is draped in a piece of 5 by 10 in, laid 1 in past the centre back and 1 in below it; a very large neck needs more', () => {
    const fits = sheetsOf(named('collar-single')).map(({ figure, shapes }) => {
      const points = ['collar-neck-edge', 'outer-edge'].flatMap((name) => {
        const edge = shapes.get(name);
        return edge?.kind === 'curve' ? edge.path.flatMap((piece) => samplesOf(piece)) : [];
      });
      return [figure['neck-base'], narrowest(points, 9 * INCH) <= 4 * INCH] as const;
    });
    for (const [neck, fit] of fits) expect([neck, fit]).toEqual([neck, neck < 460]);
  });

  test('marks from cloth are trued, not traced: none of the draped marks lies where the collar has it, and the edge keeps near them all', () => {
    const exercise = named('true-draped');
    const steady: Exercise = { ...exercise, shaken: { marks: [], by: '0 mm' } };
    for (const { figure } of people) {
      const order = orderOn(exercise, figure);
      const [shaken, still] = [tableFor(exercise, order), tableFor(steady, order)];
      for (const name of exercise.shaken?.marks ?? []) {
        const [mark, place] = [pointOf(shaken.shapes, name), pointOf(still.shapes, name)];
        if (!mark || !place) throw new Error(`no ${name}`);
        expect(distance(mark, place)).toBeGreaterThan(0);
        expect(distance(mark, place)).toBeLessThanOrEqual(0.7 + 1e-9);
      }
    }
  });

  test('every misreading that was asked for is in one exercise or another', () => {
    const all = new Set(exercises.flatMap(({ misreadings }) => misreadings.map(({ id }) => id)));
    for (const id of [
      ...['not-folded', 'over-centre-front', 'above-collarbone', 'on-the-flat', 'not-swung', 'wrong-way'],
      ...['at-the-neck-edge', 'front-for-back', 'whole-for-half', 'stand-and-fall-exchanged', 'no-longer-than-stand'],
      ...['left-unsquare', 'dip-filled', 'along-the-chord', 'wrong-match-mark'],
    ])
      expect([...all]).toContain(id);
  });
});

function pointOf(shapes: ReadonlyMap<string, Shape>, name: string): Point | null {
  const shape = shapes.get(name);
  return shape?.kind === 'point' ? shape.point : null;
}

const cosine = (a: Point, b: Point): number => dot(a, b) / norm(a) / norm(b);

function samplesOf(piece: Cubic): readonly Point[] {
  return Array.from({ length: 21 }, (_, k) => casteljau(piece, k / 20));
}

/** The narrowest strip, turned any way, that holds the points in no more than a length, mm. */
function narrowest(points: readonly Point[], length: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let turn = 0; turn < 180; turn += 0.5) {
    const along = heading((turn * Math.PI) / 180);
    const [far, wide] = [along, quarterTurn(along)].map((way) => points.map((point) => dot(way, point)));
    const extent = (values: readonly number[] | undefined) => Math.max(...(values ?? [])) - Math.min(...(values ?? []));
    if (extent(far) <= length) least = Math.min(least, extent(wide));
  }
  return least;
}

function never(): never {
  throw new Error('not there');
}

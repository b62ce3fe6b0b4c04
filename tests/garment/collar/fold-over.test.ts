import fc from 'fast-check';
import paper from 'paper/dist/paper-core';
import { describe, expect, test } from 'vitest';
import { foldPath, foldPoint, sideSeen } from '../../../src/garment/collar/fold-over.ts';
import { signedDistance, stationOf } from '../../../src/geometry/line.ts';
import { distance, heading } from '../../../src/geometry/point.ts';
import { mirrorPoint } from '../../../src/geometry/transform.ts';

const place = fc.record({
  x: fc.double({ min: -300, max: 300, noNaN: true }),
  y: fc.double({ min: -300, max: 600, noNaN: true }),
});
const line = fc
  .tuple(place, fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }))
  .map(([through, angle]) => ({ through, direction: heading(angle) }));
const fraction = fc.double({ min: 0, max: 1, noNaN: true });

describe('folding over a line', () => {
  test('leaves cloth flat at 0 and mirrors it at 1', () => {
    fc.assert(
      fc.property(place, line, (p, over) => {
        expect(distance(foldPoint(p, over, 0), p)).toBe(0);
        const folded = foldPoint(p, over, 1);
        const mirrored = mirrorPoint(p, over);
        expect(folded.x).toBeCloseTo(mirrored.x, 8);
        expect(folded.y).toBeCloseTo(mirrored.y, 8);
      }),
    );
  });

  test('in between foreshortens by the cosine of the angle, square to the line and not along it', () => {
    fc.assert(
      fc.property(place, line, fraction, (p, over, part) => {
        const folded = foldPoint(p, over, part);
        expect(signedDistance(over, folded)).toBeCloseTo(signedDistance(over, p) * Math.cos(Math.PI * part), 8);
        expect(stationOf(over, folded)).toBeCloseTo(stationOf(over, p), 8);
      }),
    );
  });

  // paper.js: the same affine map as a matrix, applied by another library to the curve itself.
  test('a curve goes with its control points', () => {
    fc.assert(
      fc.property(fc.tuple(place, place, place, place), line, fraction, ([p0, p1, p2, p3], over, part) => {
        const turn = (Math.atan2(over.direction.y, over.direction.x) * 180) / Math.PI;
        const centre = new paper.Point(over.through);
        const map = new paper.Matrix()
          .translate(centre)
          .rotate(turn, new paper.Point(0, 0))
          .scale(1, Math.cos(Math.PI * part))
          .rotate(-turn, new paper.Point(0, 0))
          .translate(centre.multiply(-1));
        const [piece] = foldPath([{ p0, p1, p2, p3 }], over, part);
        for (const [p, folded] of [
          [p0, piece?.p0],
          [p1, piece?.p1],
          [p2, piece?.p2],
          [p3, piece?.p3],
        ] as const) {
          const want = map.transform(new paper.Point(p));
          expect(folded?.x).toBeCloseTo(want.x, 7);
          expect(folded?.y).toBeCloseTo(want.y, 7);
        }
      }),
      { numRuns: 50 },
    );
  });

  test('shows the other side of the cloth once it stands past upright', () => {
    expect([0, 0.4, 0.6, 1].map(sideSeen)).toEqual(['right', 'right', 'other', 'other']);
  });
});

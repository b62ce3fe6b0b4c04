import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fractionAt, momentAt, placed, rollingOf } from '../../../src/garment/collar/rolling.ts';
import { walkOf } from '../../../src/garment/collar/walk.ts';
import { arcPath } from '../../../src/geometry/arc.ts';
import type { Path } from '../../../src/geometry/cubic.ts';
import { lengthOf } from '../../../src/geometry/length.ts';
import { polyline } from '../../../src/geometry/path.ts';
import { cross, distance, dot } from '../../../src/geometry/point.ts';
import { directionAtStation, pointAtStation } from '../../../src/geometry/station.ts';
import { drafted, wholeCollar } from './collar-draft.ts';

const fraction = fc.double({ min: 0, max: 1, noNaN: true });
const walk = walkOf(drafted(wholeCollar));
if (!walk) throw new Error('There is nothing to walk.');
const collar = rollingOf(walk.seam, walk.collar);

function straight(...points: readonly (readonly [number, number])[]): Path {
  const path = polyline(points.map(([x, y]) => ({ x, y })));
  if (!path) throw new Error('The points coincide.');
  return path;
}

describe('rolling one path along another', () => {
  test('keeps them together, without slipping, as far as it has come', () => {
    fc.assert(
      fc.property(fraction, (part) => {
        const { walked, placement } = momentAt(collar, part);
        const laid = placed(walk.collar, placement);
        const [at, on] = [pointAtStation(laid, walked), pointAtStation(walk.seam, walked)];
        expect(distance(at ?? { x: 0, y: 0 }, on ?? { x: 9, y: 9 })).toBeLessThan(1e-6);
      }),
    );
  });

  test('lays their tangents together, but while it turns about a corner', () => {
    const corners = [...collar.legs.filter(({ pivot }) => pivot !== 0).map(({ from }) => from)];
    fc.assert(
      fc.property(fraction, (part) => {
        const { walked, placement } = momentAt(collar, part);
        if (corners.some((at) => Math.abs(at - walked) < 0.6)) return;
        const one = directionAtStation(placed(walk.collar, placement), walked);
        const other = directionAtStation(walk.seam, walked);
        if (!one || !other) return;
        expect(Math.abs(cross(one, other))).toBeLessThan(1e-6);
        expect(dot(one, other)).toBeGreaterThan(0);
      }),
    );
  });

  test('moves the piece without changing it', () => {
    fc.assert(
      fc.property(fraction, (part) => {
        const laid = placed(walk.collar, momentAt(collar, part).placement);
        const ends = (path: Path) => distance(path[0]?.p0 ?? { x: 0, y: 0 }, path.at(-1)?.p3 ?? { x: 0, y: 0 });
        expect(ends(laid)).toBeCloseTo(ends(walk.collar), 8);
        expect(lengthOf(laid)).toBeCloseTo(lengthOf(walk.collar), 6);
      }),
      { numRuns: 30 },
    );
  });

  test('a collar that walks its seam ends where it was drafted', () => {
    const { placement } = momentAt(collar, 1);
    expect(placement.turn % (2 * Math.PI)).toBeCloseTo(0, 3);
    expect(distance(placement.pin, placement.to)).toBeLessThan(1);
  });

  // A wheel of radius 50 rolled along a level line: it turns by the way over the radius.
  test('a wheel turns by the way it has come over its radius', () => {
    const wheel = rollingOf(straight([0, 0], [120, 0]), arcPath({ x: 0, y: 50 }, 50, -Math.PI / 2, 3));
    fc.assert(
      fc.property(fraction, (part) => {
        const { walked, placement } = momentAt(wheel, part);
        expect(walked).toBeCloseTo(120 * part, 6);
        expect(placement.turn).toBeCloseTo(-walked / 50, 6);
      }),
    );
  });

  test('turns about a corner little by little, and corners that match need no turning', () => {
    const corner = straight([0, 0], [50, 0], [50, 80]);
    const rolled = straight([0, 0], [130, 0]);
    const rolling = rollingOf(corner, rolled);
    const turns = [0, 0.2, 0.4, 0.6, 0.8, 1].map((part) => momentAt(rolling, part).placement.turn);
    expect(turns[0]).toBeCloseTo(0, 9);
    expect(turns.at(-1)).toBeCloseTo(Math.PI / 2, 9);
    expect(turns.some((turn) => turn > 0.1 && turn < 1.5)).toBe(true);
    const matched = rollingOf(corner, straight([10, 10], [10, 60], [-70, 60]));
    expect([0, 0.3, 0.7, 1].map((part) => momentAt(matched, part).placement.turn)).toEqual(
      new Array(4).fill(expect.closeTo(-Math.PI / 2, 9)),
    );
  });

  test('tells when a station is reached', () => {
    for (const station of [0, 10, 80, 150]) {
      expect(momentAt(collar, fractionAt(collar, station)).walked).toBeCloseTo(station, 6);
    }
    expect(fractionAt(collar, 1e6)).toBe(1);
  });
});

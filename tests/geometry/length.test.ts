import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arcPath } from '../../src/geometry/arc.ts';
import { type Cubic, splitCubic, straight } from '../../src/geometry/cubic.ts';
import { cubicLength, lengthOf } from '../../src/geometry/length.ts';
import {
  anyAngle,
  anyCubic,
  anyPath,
  anyPoint,
  collinearCubic,
  fraction,
  parabola,
  patternCubic,
} from './arbitrary.ts';
import { bezierOf, chordLength, evenness, gap, paperOf, parabolaLength } from './oracle.ts';

const MANY = { numRuns: 2000 };

test('a straight piece is as long as its ends are apart', () => {
  fc.assert(
    fc.property(anyPoint, anyPoint, (a, b) => {
      expect(Math.abs(cubicLength(straight(a, b)) - gap(a, b))).toBeLessThan(1e-9);
    }),
    MANY,
  );
});

test('a parabola has the length of its closed form', () => {
  fc.assert(
    fc.property(parabola, ({ q0, q1, q2, cubic }) => {
      expect(Math.abs(cubicLength(cubic) - parabolaLength(q0, q1, q2))).toBeLessThan(1e-6);
    }),
    MANY,
  );
});

test('an arc is as long as its radius times its sweep', () => {
  fc.assert(
    fc.property(
      anyPoint,
      fc.double({ min: 0.1, max: 500, noNaN: true }),
      anyAngle,
      anyAngle,
      (centre, r, from, sweep) => {
        expect(Math.abs(lengthOf(arcPath(centre, r, from, sweep)) - r * Math.abs(sweep))).toBeLessThan(2e-7);
      },
    ),
    MANY,
  );
});

test('a semicubical parabola has the length Neile gave it in 1657, cusp and all', () => {
  // x = k t^2, y = k t^3 from t = -a to b; from the cusp to t: k ((4 + 9 t^2)^1.5 - 8) / 27.
  const neile = (k: number, t: number) => (k * ((4 + 9 * t * t) ** 1.5 - 8)) / 27;
  const polar = (k: number, u: number, v: number, w: number) => ({
    x: (k * (u * v + v * w + w * u)) / 3,
    y: k * u * v * w,
  });
  fc.assert(
    fc.property(fc.double({ min: 1, max: 300, noNaN: true }), fraction, fraction, (k, a, b) => {
      // Control points by blossoming: x = t^2 and y = t^3 in polar form.
      const cubic: Cubic = {
        p0: polar(k, -a, -a, -a),
        p1: polar(k, -a, -a, b),
        p2: polar(k, -a, b, b),
        p3: polar(k, b, b, b),
      };
      expect(Math.abs(cubicLength(cubic) - neile(k, a) - neile(k, b))).toBeLessThan(1e-6);
    }),
    MANY,
  );
});

test('a piece that doubles back over itself is as long as all its runs', () => {
  fc.assert(
    fc.property(collinearCubic, (c) => {
      // The distance along the chord is a cubic; its runs end where its slope, a quadratic, vanishes.
      const whole = gap(c.p0, c.p3);
      fc.pre(whole > 1);
      const along = (p: { x: number; y: number }) =>
        ((p.x - c.p0.x) * (c.p3.x - c.p0.x) + (p.y - c.p0.y) * (c.p3.y - c.p0.y)) / whole;
      const [v0, v1, v2] = [along(c.p1), along(c.p2) - along(c.p1), whole - along(c.p2)];
      const [A, B, C] = [v0 - 2 * v1 + v2, 2 * (v1 - v0), v0];
      const root = Math.sqrt(Math.max(0, B * B - 4 * A * C));
      const turns = [(-B - root) / (2 * A), (-B + root) / (2 * A)].filter((t) => t > 0 && t < 1).sort((p, q) => p - q);
      const at = (t: number) => 3 * t * (1 - t) ** 2 * along(c.p1) + 3 * t * t * (1 - t) * along(c.p2) + t ** 3 * whole;
      const stops = [0, ...turns, 1].map(at);
      const runs = stops.slice(1).reduce((sum, s, i) => sum + Math.abs(s - (stops[i] as number)), 0);
      expect(Math.abs(cubicLength(c) - runs)).toBeLessThan(1e-6);
    }),
    MANY,
  );
});

test('any piece without a cusp agrees with chords summed and extrapolated', () => {
  fc.assert(
    fc.property(anyCubic, (c) => {
      fc.pre(evenness(c) > 0.1);
      expect(Math.abs(cubicLength(c) - chordLength([c], 600))).toBeLessThan(1e-6);
    }),
    { numRuns: 500 },
  );
});

test('curves of a pattern agree with bezier-js and with paper', () => {
  fc.assert(
    fc.property(patternCubic, (c) => {
      expect(Math.abs(cubicLength(c) - bezierOf(c).length())).toBeLessThan(1e-6);
      expect(Math.abs(cubicLength(c) - paperOf([c]).length)).toBeLessThan(2e-4);
    }),
    MANY,
  );
});

test('lengths of the parts add up to the whole, through cusps and loops', () => {
  fc.assert(
    fc.property(anyCubic, fraction, (c, t) => {
      const whole = cubicLength(c);
      expect(Math.abs(cubicLength(c, 0, t) + cubicLength(c, t, 1) - whole)).toBeLessThan(1e-7);
      expect(Math.abs(lengthOf(splitCubic(c, t)) - whole)).toBeLessThan(1e-7);
      expect(Math.abs(cubicLength(c, t, 0) + cubicLength(c, 0, t))).toBeLessThan(1e-7);
    }),
    MANY,
  );
});

test('a path is no shorter than its chords and no longer than its handles', () => {
  fc.assert(
    fc.property(anyPath, (path) => {
      const chords = path.reduce((sum, c) => sum + gap(c.p0, c.p3), 0);
      const handles = path.reduce((sum, c) => sum + gap(c.p0, c.p1) + gap(c.p1, c.p2) + gap(c.p2, c.p3), 0);
      expect(lengthOf(path)).toBeGreaterThanOrEqual(chords - 1e-7);
      expect(lengthOf(path)).toBeLessThanOrEqual(handles + 1e-7);
    }),
    MANY,
  );
});

import fc from 'fast-check';
import { type Cubic, type Path, straight } from '../../src/geometry/cubic.ts';
import { type Line, lineAlong } from '../../src/geometry/line.ts';
import { add, between, heading, type Point, scale } from '../../src/geometry/point.ts';

/** Pattern-sized input: coordinates up to half a metre, whole millimetres as often as not, so that things coincide. */
const coordinate = fc.oneof(
  fc.integer({ min: -500, max: 500 }),
  fc.double({ min: -500, max: 500, noNaN: true }),
  fc.integer({ min: -3, max: 3 }),
);

export const anyPoint: fc.Arbitrary<Point> = fc.record({ x: coordinate, y: coordinate });

export const fraction = fc.double({ min: 0, max: 1, noNaN: true });

export const inside = fc.double({ min: 0.02, max: 0.98, noNaN: true });

export const anyAngle = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true });

export const anyLine: fc.Arbitrary<Line> = fc
  .record({ through: anyPoint, angle: fc.oneof(anyAngle, fc.constantFrom(0, Math.PI / 2, Math.PI / 4)) })
  .map(({ through, angle }) => lineAlong(through, heading(angle)) as Line);

const generalCubic: fc.Arbitrary<Cubic> = fc.record({ p0: anyPoint, p1: anyPoint, p2: anyPoint, p3: anyPoint });

/** A cubic with a cusp: its derivative is nothing at `t`. */
export const cuspCubic: fc.Arbitrary<Cubic> = fc
  .record({ p0: anyPoint, v0: anyPoint, v2: anyPoint, t: fc.double({ min: 0.2, max: 0.8, noNaN: true }) })
  .map(({ p0, v0, v2, t }) => {
    const v1 = scale(add(scale(v0, (1 - t) ** 2), scale(v2, t ** 2)), -1 / (2 * t * (1 - t)));
    const p1 = add(p0, v0);
    const p2 = add(p1, v1);
    return { p0, p1, p2, p3: add(p2, v2) };
  });

/** Handles on the chord or beyond its ends: the curve may run back over itself. */
export const collinearCubic: fc.Arbitrary<Cubic> = fc
  .record({
    p0: anyPoint,
    p3: anyPoint,
    a: fc.double({ min: -1, max: 2, noNaN: true }),
    b: fc.double({ min: -1, max: 2, noNaN: true }),
  })
  .map(({ p0, p3, a, b }) => ({ p0, p1: between(p0, p3, a), p2: between(p0, p3, b), p3 }));

/** A quadratic raised to a cubic: the same curve, with closed forms. */
export const parabola: fc.Arbitrary<{ q0: Point; q1: Point; q2: Point; cubic: Cubic }> = fc
  .record({ q0: anyPoint, q1: anyPoint, q2: anyPoint })
  .map(({ q0, q1, q2 }) => ({
    q0,
    q1,
    q2,
    cubic: { p0: q0, p1: between(q0, q1, 2 / 3), p2: between(q2, q1, 2 / 3), p3: q2 },
  }));

/** Every kind of trouble: no handles, one handle, a point, straight, doubling back, cusps, tiny. */
export const degenerateCubic: fc.Arbitrary<Cubic> = fc.oneof(
  generalCubic.map((c) => ({ ...c, p1: c.p0 })),
  generalCubic.map((c) => ({ ...c, p2: c.p3 })),
  generalCubic.map((c) => ({ ...c, p1: c.p0, p2: c.p3 })),
  generalCubic.map((c) => ({ ...c, p1: c.p0, p2: c.p0 })),
  generalCubic.map((c) => ({ ...c, p3: c.p0 })),
  generalCubic.map((c) => ({ ...c, p2: c.p1 })),
  anyPoint.map((p) => ({ p0: p, p1: p, p2: p, p3: p })),
  fc.record({ a: anyPoint, b: anyPoint }).map(({ a, b }) => straight(a, b)),
  collinearCubic,
  cuspCubic,
  generalCubic.map((c) => mapCubic(c, (p) => scale(p, 1e-4))),
);

export const anyCubic: fc.Arbitrary<Cubic> = fc.oneof(
  { weight: 2, arbitrary: generalCubic },
  { weight: 1, arbitrary: degenerateCubic },
  { weight: 1, arbitrary: parabola.map(({ cubic }) => cubic) },
);

function mapCubic(c: Cubic, move: (p: Point) => Point): Cubic {
  return { p0: move(c.p0), p1: move(c.p1), p2: move(c.p2), p3: move(c.p3) };
}

/** Pieces joined end to end, smoothly as often as not. */
export const anyPath: fc.Arbitrary<Path> = fc
  .array(fc.record({ c: anyCubic, smooth: fc.boolean() }), { minLength: 1, maxLength: 4 })
  .map((parts) => {
    const path: Cubic[] = [];
    for (const { c, smooth } of parts) {
      const last = path.at(-1);
      const p0 = last?.p3 ?? c.p0;
      path.push({ ...c, p0, p1: last && smooth ? between(last.p2, last.p3, 1.5) : c.p1 });
    }
    return path;
  });

/**
 * A curve as a pattern has it: a chord of 40 to 600 mm, leaving and arriving within 75 degrees of it, with handles of a
 * quarter to a half of the chord. No cusps, no loops; hollow one way or an S.
 */
export const patternCubic: fc.Arbitrary<Cubic> = fc
  .record({
    p0: anyPoint,
    chord: fc.double({ min: 40, max: 600, noNaN: true }),
    way: anyAngle,
    leave: fc.double({ min: -1.3, max: 1.3, noNaN: true }),
    arrive: fc.double({ min: -1.3, max: 1.3, noNaN: true }),
    before: fc.double({ min: 0.25, max: 0.5, noNaN: true }),
    after: fc.double({ min: 0.25, max: 0.5, noNaN: true }),
  })
  .map(({ p0, chord, way, leave, arrive, before, after }) => {
    const p3 = add(p0, scale(heading(way), chord));
    return {
      p0,
      p1: add(p0, scale(heading(way + leave), chord * before)),
      p2: add(p3, scale(heading(way + arrive), -chord * after)),
      p3,
    };
  });

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { passingMoved, passingsOf } from '../../../src/drafting/curve/passings.ts';
import type { Path } from '../../../src/geometry/cubic.ts';
import { pointAt } from '../../../src/geometry/cubic.ts';
import { cubicLength } from '../../../src/geometry/length.ts';
import { distance, type Point } from '../../../src/geometry/point.ts';
import { draft, pathOf, problemsOf } from '../block.ts';

const pencil = (name: string, x: number, y: number) => ({ verb: 'pencil', name, at: [x, y] });
const drawn = (
  points: readonly (readonly [number, number])[],
  more: object = {},
  ...before: readonly unknown[]
): Path => {
  const names = points.map((_, i) => `p${i}`);
  const marks = points.map(([x, y], i) => pencil(`p${i}`, x, y));
  return pathOf(draft([...marks, ...before, { verb: 'curve', name: 'c', through: names, ...more }]), 'c');
};

/** How far a path strays from a circle. */
const strays = (path: Path, centre: Point, radius: number): number =>
  Math.max(
    ...path.flatMap((piece) =>
      Array.from({ length: 101 }, (_, i) => Math.abs(distance(pointAt(piece, i / 100), centre) - radius)),
    ),
  );

const radian = (degrees: number) => (degrees * Math.PI) / 180;
const onCircle = (degrees: number, radius: number): readonly [number, number] => [
  radius * Math.cos(radian(degrees)),
  radius * Math.sin(radian(degrees)),
];

describe('a curve left to itself', () => {
  test('through two points is straight', () => {
    const [piece] = drawn([
      [0, 0],
      [90, 30],
    ]);
    const near = (x: number, y: number) => ({ x: expect.closeTo(x, 9), y: expect.closeTo(y, 9) });
    expect(piece).toEqual({ p0: near(0, 0), p1: near(30, 10), p2: near(60, 20), p3: near(90, 30) });
  });

  test.each([20, 60, 90, 120])('through three points of an arc of %i degrees keeps to the arc', (sweep) => {
    const path = drawn([onCircle(0, 100), onCircle(sweep / 2, 100), onCircle(sweep, 100)]);
    // The known error, 2.7e-4 of the radius at a quarter turn a span, falls with the sixth power of the span.
    expect(strays(path, { x: 0, y: 0 }, 100)).toBeLessThan(0.0274 * (sweep / 180) ** 6 + 1e-9);
  });

  test('passes its inner points parallel to the chord of their neighbours', () => {
    const [first, second] = drawn([
      [0, 0],
      [40, 30],
      [100, 30],
      [120, 0],
    ]);
    const slope = (a: Point | undefined, b: Point | undefined) =>
      a && b ? Math.atan2(b.y - a.y, b.x - a.x) : Number.NaN;
    expect(slope(first?.p2, first?.p3)).toBeCloseTo(Math.atan2(30, 100), 12);
    expect(slope(second?.p0, second?.p1)).toBeCloseTo(Math.atan2(30, 100), 12);
  });
});

describe('a curve told how to leave and arrive', () => {
  const level = { verb: 'parallel', name: 'level', to: 'waist', distance: '0 mm', side: 'up' };

  test('square at both ends of a quarter turn is the classic quarter circle, 0.5523 of the way', () => {
    const [piece] = drawn(
      [
        [0, -100],
        [100, 0],
      ],
      { leave: { along: 'level' }, arrive: { square: 'level' } },
      level,
    );
    expect(piece?.p1.x).toBeCloseTo(55.228475, 6);
    expect(piece?.p1.y).toBeCloseTo(-100, 9);
    expect(piece?.p2.y).toBeCloseTo(-55.228475, 6);
    // The known error of that circle: 2.7e-4 of the radius.
    expect(strays([piece as Path[number]], { x: 0, y: 0 }, 100)).toBeLessThan(0.0274);
  });

  test('square at both ends of a quarter turn that is deeper than wide is a quarter ellipse', () => {
    const [piece] = drawn(
      [
        [0, -100],
        [60, 0],
      ],
      { leave: { along: 'level' }, arrive: { square: 'level' } },
      level,
    );
    // An ellipse is a circle drawn out one way: its handles are drawn out with it.
    expect(piece?.p1).toEqual({ x: expect.closeTo(0.55228475 * 60, 6), y: expect.closeTo(-100, 9) });
    expect(piece?.p2).toEqual({ x: expect.closeTo(60, 9), y: expect.closeTo(-55.228475, 6) });
  });

  test('sets off in the sense that goes toward the next point', () => {
    const left = drawn(
      [
        [0, 0],
        [-80, 60],
      ],
      { leave: { along: 'level' } },
      level,
    )[0];
    const right = drawn(
      [
        [0, 0],
        [80, 60],
      ],
      { leave: { along: 'level' } },
      level,
    )[0];
    expect(left?.p1.x).toBeLessThan(0);
    expect(right?.p1.x).toBeGreaterThan(0);
    expect(left?.p1.y).toBeCloseTo(0, 9);
  });

  test('mirrors the direction at a free end, so that the span is an even arc', () => {
    // Leaves level; the chord climbs 36.87 degrees, so an even arc arrives at twice that.
    const [piece] = drawn(
      [
        [0, 0],
        [80, 60],
      ],
      { leave: { along: 'level' } },
      level,
    );
    const arrives = Math.atan2(60 - (piece?.p2.y ?? 0), 80 - (piece?.p2.x ?? 0));
    expect(arrives).toBeCloseTo(2 * Math.atan2(60, 80), 9);
    const radius = 100 / (2 * Math.sin(Math.atan2(60, 80)));
    expect(strays([piece as Path[number]], { x: 0, y: radius }, radius)).toBeLessThan(0.02);
  });

  test('takes a third of the chord where the ends do not meet ahead, as in an S', () => {
    const [piece] = drawn(
      [
        [0, 0],
        [90, 90],
      ],
      { leave: { along: 'level' }, arrive: { along: 'level' } },
      level,
    );
    expect(piece?.p1.x).toBeCloseTo(Math.hypot(90, 90) / 3, 9);
    expect(piece?.p2.x).toBeCloseTo(90 - Math.hypot(90, 90) / 3, 9);
  });

  test('does not jump where it turns from a bow into an S', () => {
    // The arrival is turned through the chord's own direction; the departure keeps its bend.
    const reach = (angle: number) => {
      const shape = [{ turn: 0.5, before: 1, after: 0.4 }, null];
      const tilt = {
        verb: 'slant',
        name: 'tilt',
        to: 'level',
        angle: `${angle.toFixed(4)} rad`,
        turn: 'clockwise',
        through: 'p1',
      };
      const [piece] = drawn(
        [
          [0, 0],
          [100, 0],
        ],
        { shape, arrive: { along: 'tilt' } },
        level,
        tilt,
      );
      return distance(piece?.p2 as Point, { x: 100, y: 0 });
    };
    for (let angle = -0.02; angle < 0.02; angle += 0.0005) {
      expect(Math.abs(reach(angle + 0.0005) - reach(angle))).toBeLessThan(0.5);
    }
  });

  test('cannot tell which way to go when the heading is square to the way', () => {
    const steps = [
      pencil('a', 0, 0),
      pencil('b', 0, 50),
      { verb: 'curve', name: 'c', through: ['a', 'b'], leave: { along: 'waist' } },
      { verb: 'curve', name: 'd', through: ['a', 'b'], arrive: { square: 'centre-front' } },
    ];
    expect(problemsOf(steps)).toMatchInlineSnapshot(`
      [
        "3 leave: At a the direction asked for is square to the way to the next point, so it cannot tell which way to set off. Put another point between, or ask for another direction.",
        "4 arrive: At b the direction asked for is square to the way to the next point, so it cannot tell which way to set off. Put another point between, or ask for another direction.",
      ]
    `);
  });
});

describe('a curve with its handles set', () => {
  const points = [
    [0, 0],
    [40, 30],
    [100, 20],
  ] as const;
  const passing = fc.record({
    turn: fc.double({ min: -1.2, max: 1.2, noNaN: true }),
    before: fc.double({ min: 0.05, max: 2, noNaN: true }),
    after: fc.double({ min: 0.05, max: 2, noNaN: true }),
  });

  test('draws the same again from the settings read off it', () => {
    fc.assert(
      fc.property(fc.tuple(...points.map(() => fc.option(passing))), (shape) => {
        const path = drawn(points, { shape });
        const again = drawn(points, { shape: passingsOf(path) });
        for (const [i, piece] of path.entries()) {
          for (const corner of ['p0', 'p1', 'p2', 'p3'] as const) {
            expect(distance(again[i]?.[corner] as Point, piece[corner])).toBeLessThan(1e-9);
          }
        }
      }),
      { numRuns: 500 },
    );
  });

  test('keeps its shape when the whole figure is larger and turned: every length grows alike', () => {
    fc.assert(
      fc.property(
        fc.tuple(...points.map(() => fc.option(passing))),
        fc.double({ min: 0.3, max: 4, noNaN: true }),
        fc.double({ min: 0, max: 6, noNaN: true }),
        (shape, size, turn) => {
          const moved = points.map(([x, y]): readonly [number, number] => [
            size * (x * Math.cos(turn) - y * Math.sin(turn)),
            size * (x * Math.sin(turn) + y * Math.cos(turn)),
          ]);
          const length = (path: Path) => path.reduce((sum, piece) => sum + cubicLength(piece), 0);
          expect(length(drawn(moved, { shape }))).toBeCloseTo(size * length(drawn(points, { shape })), 5);
        },
      ),
      { numRuns: 200 },
    );
  });

  test('follows a handle that is moved, and keeps the other', () => {
    const at = points.map(([x, y]) => ({ x, y }));
    const was = passingsOf(drawn(points))[1] as { turn: number; before: number; after: number };
    const moved = passingMoved(at, 1, 'after', { x: 60, y: 50 }, was);
    const [into, out] = drawn(points, { shape: [null, moved, null] });
    expect(out?.p1).toEqual({ x: expect.closeTo(60, 9), y: expect.closeTo(50, 9) });
    expect(distance(into?.p2 as Point, { x: 40, y: 30 })).toBeCloseTo(was.before * 50, 9);
    const pulled = passingMoved(at, 1, 'before', { x: 20, y: 10 }, was);
    expect(drawn(points, { shape: [null, pulled, null] })[0]?.p2).toEqual({
      x: expect.closeTo(20, 9),
      y: expect.closeTo(10, 9),
    });
  });

  test('keeps a direction when a handle is pushed onto its point, and has none beyond an end', () => {
    const at = points.map(([x, y]) => ({ x, y }));
    const was = { turn: 0.3, before: 0.4, after: 0.5 };
    expect(passingMoved(at, 1, 'after', { x: 40, y: 30 }, was)).toEqual({ ...was, after: 0.01 });
    expect(passingMoved(at, 0, 'before', { x: 9, y: 9 }, was)).toBe(was);
    expect(passingMoved(at, 1, 'after', { x: 40, y: 9000 }, was).after).toBe(10);
  });
});

test('a curve that cannot be drawn is a problem', () => {
  const marks = [pencil('a', 0, 0), pencil('b', 50, 0), pencil('twin', 50, 0)];
  const curve = (name: string, more: object) => ({ verb: 'curve', name, ...more });
  const set = { turn: 0, before: 0.3, after: 0.3 };
  expect(
    problemsOf([
      ...marks,
      curve('c1', { through: ['a', 'b', 'twin'] }),
      curve('c2', { through: ['a', 'b', 'a'] }),
      curve('c3', { through: ['a'] }),
      curve('c4', { through: ['a', 'b'], shape: [null] }),
      curve('c5', { through: ['a', 'b'], shape: [null, { turn: 1 }] }),
      curve('c6', { through: ['a', 'b'], shape: [set, { ...set, before: 0 }] }),
      curve('c7', { through: ['a', 'b'], leave: { along: 'neckline' } }),
      curve('c8', { through: ['a', 'b'], leave: { along: 'waist', square: 'waist' } }),
      curve('c9', { through: ['a', 'b'], leave: 'waist' }),
      curve('c10', { through: Array.from({ length: 101 }, () => 'a') }),
    ]),
  ).toMatchInlineSnapshot(`
    [
      "4 through: The curve cannot pass from b to twin: they lie in the same place. Leave one of them out.",
      "5 through: At b the curve would turn straight back, and cannot tell which way to bend. Give it another point between.",
      "6 through: Too few are listed here. This blank takes a list of two or more points.",
      "7 shape: The curve has 2 points and 1 handle settings. Clear the settings, or give one for each point.",
      "8 shape: What stands in this blank cannot be read. It takes handle settings: for each point a turn and two handle lengths, or nothing.",
      "9 shape: What stands in this blank cannot be read. It takes handle settings: for each point a turn and two handle lengths, or nothing.",
      "10 leave: neckline is a curve, and a line is wanted here.",
      "11 leave: What stands in this blank cannot be read. It takes a line to run along or square to.",
      "12 leave: What stands in this blank cannot be read. It takes a line to run along or square to.",
      "13 through: More than 100 are listed here. Divide the step in two.",
    ]
  `);
});

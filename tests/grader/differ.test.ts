import { expect, test } from 'vitest';
import type { Shape } from '../../src/drafting/shape.ts';
import { straight } from '../../src/geometry/cubic.ts';
import { differ } from '../../src/grader/carried.ts';

/** Shapes that lie so far from where they lay, mm; an angle by so many radians. */
const shapes: Readonly<Record<Shape['kind'], (by: number) => Shape>> = {
  point: (by) => ({ kind: 'point', point: { x: 12 + by, y: 40 } }),
  line: (by) => ({ kind: 'line', line: { through: { x: 0, y: 3 + by }, direction: { x: 1, y: 0 } } }),
  curve: (by) => ({ kind: 'curve', path: [straight({ x: 0, y: by }, { x: 90, y: 30 })] }),
  length: (by) => ({ kind: 'length', length: 137 + by }),
  angle: (by) => ({ kind: 'angle', angle: 0.6 + by }),
};

test.each(Object.entries(shapes))(
  'a %s that differs in its last bits is the same, and one that was moved is not',
  (_, at) => {
    expect(differ(at(0), at(0))).toBe(false);
    // Drawn another way it comes out so.
    expect([differ(at(0), at(1e-12)), differ(at(0), at(-1e-12))]).toEqual([false, false]);
    expect([differ(at(0), at(0.01)), differ(at(0), at(-0.01))]).toEqual([true, true]);
  },
);

test('a line that is turned is another, and so are two of different kinds', () => {
  const level = { through: { x: 0, y: 0 }, direction: { x: 1, y: 0 } };
  const leaning = { ...level, direction: { x: Math.cos(0.01), y: Math.sin(0.01) } };
  expect(differ({ kind: 'line', line: level }, { kind: 'line', line: leaning })).toBe(true);
  expect(differ(shapes.length(0), shapes.angle(0))).toBe(true);
});

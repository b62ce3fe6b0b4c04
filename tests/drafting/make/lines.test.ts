import { describe, expect, test } from 'vitest';
import type { Line } from '../../../src/geometry/line.ts';
import { draft, lineOf, problemsOf } from '../block.ts';

const ruled = (...steps: readonly unknown[]): Line => lineOf(draft(steps), 'l');

/** The angle of a line as it lies, in degrees from 0 to 180. */
const lies = ({ direction }: Line): number => {
  const angle = (Math.atan2(direction.y, direction.x) * 180) / Math.PI;
  return ((angle % 180) + 180) % 180;
};

/** Where a line crosses a height. */
const xAt = ({ through, direction }: Line, y: number): number =>
  through.x + ((y - through.y) * direction.x) / direction.y;

test('a ruled line runs from the first point through the second', () => {
  const line = ruled({ verb: 'rule', name: 'l', from: 'front-neck-point', to: 'neck-point' });
  expect(line.direction.x).toBeCloseTo(70 / Math.hypot(70, 80), 12);
  expect(line.direction.y).toBeCloseTo(80 / Math.hypot(70, 80), 12);
  expect(problemsOf([{ verb: 'rule', name: 'l', from: 'neck-point', to: 'neck-point' }])).toMatchInlineSnapshot(`
    [
      "1 to: neck point and neck point lie in the same place, so no line runs through them. Choose two points apart.",
    ]
  `);
});

describe('square', () => {
  test('to a line, it stands at 90 degrees to it through the point', () => {
    const line = ruled({ verb: 'square', name: 'l', to: 'shoulder-line', through: 'shoulder-tip' });
    expect(lies(line)).toBeCloseTo(67.5, 9);
    expect(xAt(line, 400 - 130 * Math.sin(Math.PI / 8))).toBeCloseTo(70 + 130 * Math.cos(Math.PI / 8), 9);
  });

  test('to a curve, it stands square to it where the curve is nearest to the point', () => {
    expect(lies(ruled({ verb: 'square', name: 'l', to: 'neckline', through: 'neck-point' }))).toBeCloseTo(0, 9);
    expect(lies(ruled({ verb: 'square', name: 'l', to: 'neckline', through: 'front-neck-point' }))).toBeCloseTo(90, 9);
  });
});

describe('parallel', () => {
  const beside = (side: string, distance = 'overlap') =>
    ruled({ verb: 'parallel', name: 'l', to: 'centre-front', distance, side });

  test('a direction or a point picks the side', () => {
    expect(beside('left').through.x).toBeCloseTo(-25, 12);
    expect(beside('right').through.x).toBeCloseTo(25, 12);
    expect(beside('neck-point').through.x).toBeCloseTo(25, 12);
    expect(beside('neck-point', '-overlap').through.x).toBeCloseTo(-25, 12);
  });

  test('on a leaning line any direction but its own picks a side', () => {
    const at = (side: string) =>
      xAt(ruled({ verb: 'parallel', name: 'l', to: 'shoulder-line', distance: '10 mm', side }), 400);
    expect(at('up')).toBeCloseTo(70 + 10 / Math.sin(Math.PI / 8), 9);
    expect(at('right')).toBeCloseTo(70 + 10 / Math.sin(Math.PI / 8), 9);
    expect(at('left')).toBeCloseTo(70 - 10 / Math.sin(Math.PI / 8), 9);
  });

  test('a side that the line does not have is a problem', () => {
    const parallel = { verb: 'parallel', name: 'l', to: 'centre-front', distance: 'overlap' };
    expect(
      problemsOf([
        { ...parallel, side: 'up' },
        { ...parallel, name: 'k', side: 'front-neck-point' },
      ]),
    ).toMatchInlineSnapshot(`
        [
          "1 side: centre front has no side that lies upward: it runs that way itself. Choose another direction, a point on the side you mean, or another line.",
          "2 side: front neck point lies on centre front itself, so it does not say which side. Choose a point to one side, or a direction.",
        ]
      `);
  });

  test('through a point', () => {
    const line = ruled({ verb: 'parallel', name: 'l', to: 'shoulder-line', through: 'front-neck-point' });
    expect(lies(line)).toBeCloseTo(157.5, 9);
    expect(xAt(line, 320)).toBeCloseTo(0, 9);
  });
});

test('a slant is turned from its line, whichever way the line runs', () => {
  const slant = (to: string, turn: string) =>
    lies(ruled({ verb: 'slant', name: 'l', to, angle: 'shoulder-slope', turn, through: 'neck-point' }));
  expect(slant('waist', 'anticlockwise')).toBeCloseTo(22.5, 9);
  expect(slant('waist', 'clockwise')).toBeCloseTo(157.5, 9);
  expect(slant('centre-front', 'clockwise')).toBeCloseTo(67.5, 9);
});

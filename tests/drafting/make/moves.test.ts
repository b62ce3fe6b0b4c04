import { describe, expect, test } from 'vitest';
import type { Point } from '../../../src/geometry/point.ts';
import { draft, lineOf, pathOf, pointOf, problemsOf } from '../block.ts';

const near = (x: number, y: number) => ({ x: expect.closeTo(x, 9), y: expect.closeTo(y, 9) });
const made = (...steps: readonly unknown[]) => draft(steps);

/** Mirrored by hand over the line through the neck point that leans 45 degrees: x and y change places about it. */
const swapped = ({ x, y }: Point): Point => ({ x: 70 + (y - 400), y: 400 + (x - 70) });

describe('fold', () => {
  const crease = {
    verb: 'slant',
    name: 'crease',
    to: 'waist',
    angle: '45 deg',
    turn: 'anticlockwise',
    through: 'neck-point',
  };
  const fold = (what: string) => made(crease, { verb: 'fold', name: 'f', what, over: 'crease' });

  test('mirrors points, lines and curves', () => {
    expect(pointOf(fold('front-neck-point'), 'f')).toEqual(near(-10, 330));
    const { through, direction } = lineOf(fold('waist'), 'f');
    expect(through.x).toBeCloseTo(-330, 9);
    expect(Math.abs(direction.x)).toBeCloseTo(0, 9);
    const [piece] = pathOf(made(), 'neckline');
    const [folded] = pathOf(fold('neckline'), 'f');
    const expected = swapped(piece?.p1 as Point);
    expect(folded?.p1).toEqual(near(expected.x, expected.y));
  });
});

describe('swing', () => {
  test('the arc laid off at the radius is the angle turned: a quarter turn is pi halves of it', () => {
    const swing = { verb: 'swing', name: 's', what: 'front-neck-point', about: 'neck-point' };
    const quarter = [
      { verb: 'pencil', name: 'o', at: [0, 0] },
      { verb: 'pencil', name: 'a', at: [157.07963267948966, 0] },
      { verb: 'tape', name: 'arc', from: 'o', to: 'a' },
    ];
    const turned = (turn: string, by = 'arc') => pointOf(made(...quarter, { ...swing, by, at: '10 cm', turn }), 's');
    expect(turned('anticlockwise')).toEqual(near(150, 330));
    expect(turned('clockwise')).toEqual(near(-10, 470));
    expect(turned('clockwise', '-arc')).toEqual(near(150, 330));
  });

  test('or the angle is given', () => {
    const swing = { verb: 'swing', name: 's', about: 'front-neck-point', angle: '90 deg', turn: 'clockwise' };
    expect(pointOf(made({ ...swing, what: 'neck-point' }), 's')).toEqual(near(80, 250));
    expect(Math.abs(lineOf(made({ ...swing, what: 'waist' }), 's').direction.y)).toBeCloseTo(1, 9);
    expect(pathOf(made({ ...swing, what: 'neckline' }), 's')[0]?.p3).toEqual(near(80, 250));
  });

  test('a radius that is nothing is a problem', () => {
    const swing = {
      verb: 'swing',
      name: 's',
      what: 'neck-point',
      about: 'front-neck-point',
      by: '1 cm',
      turn: 'clockwise',
    };
    expect(problemsOf([{ ...swing, at: 'stand - 3 cm' }])).toMatchInlineSnapshot(`
      [
        "1 at: A swing measured at 0 cm from the pin has no angle. Give a distance greater than zero.",
      ]
    `);
    // Nor is there one behind the pin.
    expect(problemsOf([{ ...swing, at: 'stand - 5 cm' }])).toHaveLength(1);
  });
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hypotenuse } from '../../src/geometry/point.ts';

/** Against the language's own: to a bit of its last digit, which ECMAScript leaves to the engine. */
test('the long side of a right triangle is as long as Math.hypot says', () => {
  fc.assert(
    fc.property(fc.double(), fc.double(), (x, y) => {
      const said = Math.hypot(x, y);
      const found = hypotenuse(x, y);
      if (Number.isFinite(said)) expect(Math.abs(found - said)).toBeLessThanOrEqual(said * 2 ** -52);
      else if (!(Number.isNaN(x) || Number.isNaN(y))) expect(found).toBe(said);
    }),
  );
  expect(hypotenuse(3, -4)).toBe(5);
  expect(hypotenuse(-0, 0)).toBe(0);
});

import { describe, expect, test } from 'vitest';
import { isReadOff } from '../../../../src/exchange/class/alike/read-off.ts';

const length = (value: number) => ({ dimension: 'length', value }) as const;
const angle = (degrees: number) => ({ dimension: 'angle', value: (degrees * Math.PI) / 180 }) as const;
const known = [length(137), angle(37)];

describe('a typed length has a reason', () => {
  test.each([
    ['a measure of the order', 137],
    ['as near as it is shown', 138],
    ['its half', 68.5],
    ['its double', 274],
    ['its centimetres typed as inches', 137 * 2.54],
    ['its inches typed as centimetres', 137 / 2.54],
    ['whole centimetres', 90],
    ['whole inches', 3 * 25.4],
  ])('%s', (_, value) => {
    expect(isReadOff(length(value), known)).toBe(true);
  });

  test.each([
    ['a little further off', 138.1],
    ['a third', 137 / 3],
    ['half a centimetre', 95],
    ['half an inch', 3.5 * 25.4],
    ['what an angle comes to', (37 * Math.PI) / 180],
  ])('and none: %s', (_, value) => {
    expect(isReadOff(length(value), known)).toBe(false);
  });
});

describe('a typed angle has a reason', () => {
  test.each([
    ['an angle that was read', 37.4, true],
    ['further off than half a degree', 37.6, false],
    ['a multiple of 15 degrees', 75, true],
    ['another one', 70, false],
  ])('%s', (_, degrees, is) => {
    expect(isReadOff(angle(degrees), known)).toBe(is);
  });
});

import { expect, test } from 'vitest';
import { boxAbout } from '../../src/table/drawing/box.ts';

test('a box is the least about its points, be they none, one, or those of a very large class', () => {
  expect(boxAbout([])).toBeNull();
  expect(boxAbout([{ x: -3, y: 7 }])).toEqual({ min: { x: -3, y: 7 }, max: { x: -3, y: 7 } });
  const many = Array.from({ length: 200_000 }, (_, at) => ({ x: at % 1000, y: 0 - (at % 77) }));
  expect(boxAbout(many)).toEqual({ min: { x: 0, y: -76 }, max: { x: 999, y: 0 } });
});

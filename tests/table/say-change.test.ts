import { expect, test } from 'vitest';
import { say } from '../../src/words/say.ts';
import { benchAfter, crossing, edge, level, step } from './room.ts';

const said = (actions: Parameters<typeof benchAfter>[0]) => {
  const bench = benchAfter(actions);
  return bench.said && say(bench.said, { language: 'en', unit: 'cm' });
};

test('a mark is said to lie on what its own sentence names', () => {
  // It lies on the collarbone level and the front neckline too.
  const laid = step('along', { on: 'centre-front', from: 'front-neck-point', distance: '0 mm', toward: 'up' });
  expect(said(laid)).toMatch(/^mark 1 made, on centre front and front neck point, /);
  expect(said([...edge, ...level, ...crossing])).toMatch(/^break point made, on line 1 and line 2, /);
});

test('a curve is said to run through its marks in their order', () => {
  const through = ['shoulder-tip', 'front-neck-point', 'neck-point'];
  expect(said(step('curve', { through }))).toBe('curve 1 made, through shoulder tip, front neck point and neck point.');
});

test('a mark by eye is said to lie on whatever it lies on', () => {
  expect(said([...edge, ...step('pencil', { at: [-30, 200] })])).toMatch(/^mark 1 made, on line 1, /);
});

test('a mark on the centre front or on the waist is said to lie on it, and not nothing beside it', () => {
  expect(said(step('pencil', { at: [0, 19] }))).toMatch(/1\.9\scm above the waist and on the centre front\.$/);
  expect(said(step('pencil', { at: [-32, 0] }))).toMatch(/on the waist and 3\.2\scm left of the centre front\.$/);
});

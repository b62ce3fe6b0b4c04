import { expect, test } from 'vitest';
import { angleOf, draft, problemsOf } from '../block.ts';

const DEGREES = 180 / Math.PI;

test('the angle between two lines, however they were drawn', () => {
  const sheet = draft([
    { verb: 'rule', name: 'there', from: 'neck-point', to: 'shoulder-tip' },
    { verb: 'rule', name: 'back', from: 'shoulder-tip', to: 'neck-point' },
    { verb: 'protractor', name: 'a', from: 'waist', to: 'shoulder-line' },
    { verb: 'protractor', name: 'b', from: 'there', to: 'waist' },
    { verb: 'protractor', name: 'c', from: 'waist', to: 'back' },
    { verb: 'protractor', name: 'd', from: 'centre-front', to: 'shoulder-line' },
    { verb: 'protractor', name: 'e', from: 'centre-front', to: 'waist' },
    { verb: 'parallel', name: 'level', to: 'waist', distance: '3 cm', side: 'up' },
    { verb: 'protractor', name: 'f', from: 'level', to: 'waist' },
  ]);
  expect(sheet.problems).toEqual([]);
  // The block's shoulder line falls 22.5 degrees.
  for (const name of ['a', 'b', 'c']) expect(angleOf(sheet, name) * DEGREES).toBeCloseTo(22.5, 10);
  expect(angleOf(sheet, 'd') * DEGREES).toBeCloseTo(67.5, 10);
  expect(angleOf(sheet, 'e') * DEGREES).toBeCloseTo(90, 10);
  expect(angleOf(sheet, 'f')).toBe(0);
});

test('how far a curve turns in all, corners with their sign, either way round', () => {
  const sheet = draft([
    { verb: 'protractor', name: 'quarter', along: 'neckline' },
    // Straight, 90 degrees one way, then 45 back the other.
    { verb: 'pencil', name: 'p', at: [0, 0] },
    { verb: 'pencil', name: 'q', at: [100, 0] },
    { verb: 'pencil', name: 'r', at: [100, 100] },
    { verb: 'pencil', name: 's', at: [200, 200] },
    { verb: 'seam', name: 'there', run: ['p', 'q', 'r', 's'] },
    { verb: 'seam', name: 'back', run: ['s', 'r', 'q', 'p'] },
    { verb: 'protractor', name: 'one', along: 'there' },
    { verb: 'protractor', name: 'other', along: 'back' },
  ]);
  expect(sheet.problems).toEqual([]);
  // The block's neckline leaves level and arrives upright.
  expect(angleOf(sheet, 'quarter') * DEGREES).toBeCloseTo(90, 10);
  expect(angleOf(sheet, 'one') * DEGREES).toBeCloseTo(45, 10);
  expect(angleOf(sheet, 'other')).toBeCloseTo(angleOf(sheet, 'one'), 12);
});

test('an angle read is a measure for later steps', () => {
  const sheet = draft([
    { verb: 'protractor', name: 'drop', from: 'waist', to: 'shoulder-line' },
    { verb: 'slant', name: 'mirror', to: 'waist', angle: 'drop * 2', turn: 'anticlockwise', through: 'neck-point' },
    { verb: 'protractor', name: 'twice', from: 'mirror', to: 'waist' },
    { verb: 'tape', name: 'arc', length: 'stand * drop' },
    {
      verb: 'swing',
      name: 'turned',
      what: 'waist',
      about: 'neck-point',
      angle: 'arc / stand * 1 rad',
      turn: 'clockwise',
    },
    { verb: 'protractor', name: 'again', from: 'turned', to: 'waist' },
  ]);
  expect(sheet.problems).toEqual([]);
  expect(sheet.measures.get('drop')).toEqual({ dimension: 'angle', value: expect.closeTo(Math.PI / 8, 12) });
  expect(angleOf(sheet, 'twice')).toBeCloseTo(Math.PI / 4, 12);
  expect(angleOf(sheet, 'again')).toBeCloseTo(Math.PI / 8, 12);
});

test('a curve has no angle to a line, and a line no turn', () => {
  expect(
    problemsOf([
      { verb: 'protractor', name: 'a', from: 'waist', to: 'neckline' },
      { verb: 'protractor', name: 'b', along: 'waist' },
      { verb: 'protractor', name: 'c', from: 'waist', to: 'shoulder-line' },
      { verb: 'fold', name: 'd', what: 'c', over: 'waist' },
      { verb: 'parallel', name: 'e', to: 'waist', distance: 'c', side: 'up' },
    ]),
  ).toMatchInlineSnapshot(`
    [
      "1 to: neckline is a curve, and a line is wanted here.",
      "2 along: waist is a line, and a curve is wanted here.",
      "4 what: c is an angle, and a point, a line or a curve is wanted here.",
      "5 distance: “c” is an angle, and a length is wanted here.",
    ]
  `);
});

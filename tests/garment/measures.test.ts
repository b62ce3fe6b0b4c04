import { expect, test } from 'vitest';
import { millimetres } from '../../src/drafting/quantity.ts';
import type { Figure } from '../../src/garment/figure.ts';
import { givensOf, measuresOf } from '../../src/garment/measures.ts';
import { say } from '../../src/words/say.ts';

const figure: Figure = { 'neck-base': 370, shoulder: 135, 'shoulder-slope': 30, 'front-waist': 354, 'back-waist': 424 };
const style = new Map([['overlap', millimetres(30)]]);

test('the measures are the body’s and the style’s, lengths in mm and the slope in radians', () => {
  const measures = measuresOf(figure, style);
  expect([...measures.keys()].toSorted()).toEqual([
    'back-waist',
    'front-waist',
    'neck-base',
    'overlap',
    'shoulder',
    'shoulder-slope',
  ]);
  expect(measures.get('neck-base')).toEqual({ dimension: 'length', value: 370 });
  expect(measures.get('overlap')).toEqual({ dimension: 'length', value: 30 });
  expect(measures.get('shoulder-slope')?.dimension).toBe('angle');
  expect(measures.get('shoulder-slope')?.value).toBeCloseTo(Math.PI / 6, 15);
});

test('a style cannot hide a measure of the body', () => {
  expect(measuresOf(figure, new Map([['shoulder', millimetres(1)]])).get('shoulder')).toEqual(millimetres(135));
});

test('the givens are the block and the measures', () => {
  const made = givensOf(figure, style);
  expect(made.ok && made.givens.shapes.has('shoulder-line')).toBe(true);
  expect(made.ok && made.givens.measures).toEqual(measuresOf(figure, style));
});

test('without a block there are no givens, and the reason is handed on', () => {
  const made = givensOf({ ...figure, 'neck-base': 20, 'shoulder-slope': 44 }, style);
  expect(made.ok ? null : say(made.message, { language: 'en', unit: 'cm' })).toMatch(/^No neck width/);
});

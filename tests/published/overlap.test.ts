import { expect, test } from 'vitest';
import { millimetres } from '../../src/drafting/quantity.ts';
import { houseMeasures } from '../../src/garment/house.ts';
import { styleMeasureNamed } from '../../src/garment/style-measures.ts';

const INCH = 25.4;

function overlapBy(rule: string, button: number): number {
  const made = houseMeasures({ 'overlap-rule': rule }, new Map([['button', millimetres(button * INCH)]]));
  return ((made.ok && made.measures.get('overlap-by-rule')?.value) || Number.NaN) / INCH;
}

// Association of Sewing and Design Professionals, Standards of Quality for Custom Clothing, closures: the lap reaches
// at least half the button’s diameter and 1/4 in beyond the centre front.
test.each([
  [1 / 2, 1 / 2],
  [3 / 4, 5 / 8],
  [1, 3 / 4],
  [1.25, 7 / 8],
])('the least lap for a button of %f in is %f in', (button, lap) => {
  expect(overlapBy('button-half-plus-quarter-inch', button)).toBeCloseTo(lap, 9);
});

// Common practice, no source: an overlap of 1 in carries a button of 1/2 in.
test('an overlap of 1 in carries a half-inch button: by twice the button exactly, by the least lap with room', () => {
  expect(overlapBy('twice-the-button', 1 / 2)).toBeCloseTo(1, 9);
  expect(overlapBy('button-half-plus-quarter-inch', 1 / 2)).toBeLessThan(1);
});

test('from 1/6 in up, twice the button is never less than the least lap', () => {
  for (let button = 1 / 6; button <= 2; button += 1 / 16) {
    expect(overlapBy('twice-the-button', button)).toBeGreaterThanOrEqual(
      overlapBy('button-half-plus-quarter-inch', button) - 1e-9,
    );
  }
});

// At least 1 in on a jacket: common practice, no source. Single-breasted overcoat 1 3/4 in, double-breasted 3 to
// 3 1/2 in: W. D. F. Vincent, The Cutter’s Practical Guide, 1898, Part 1, pp. 20, 21. Double-breasted sac about 3 1/2 in:
// Vincent’s Systems of Cutting All Kinds of Tailor-Made Garments, p. 136.
test('the usual overlap begins at 1 in and reaches the overcoat’s 1 3/4 in; double-breasted fronts are accepted', () => {
  const overlap = styleMeasureNamed('overlap');
  expect(overlap?.usual).toEqual([1 * INCH, 1.75 * INCH]);
  expect(overlap?.most).toBeGreaterThan(3.5 * INCH);
});

import { describe, expect, test } from 'vitest';
import { evaluate } from '../../src/drafting/expression.ts';
import { millimetres } from '../../src/drafting/quantity.ts';
import type { Sheet } from '../../src/drafting/sheet.ts';
import { houseMeasures } from '../../src/garment/house.ts';
import { givensOf } from '../../src/garment/measures.ts';
import { styleMeasureNamed } from '../../src/garment/style-measures.ts';
import { convertible, type PublishedCollar, shawlCollar, stepCollar, stepsOf, vincent } from './collar-drafts.ts';
import { replayed } from './replayed.ts';

const INCH = 25.4;

function sheetOf(collar: PublishedCollar): Sheet {
  const made = givensOf(collar.figure, new Map());
  if (!made.ok) throw new Error(JSON.stringify(made.message));
  return replayed(made.givens, stepsOf(collar));
}

/** A taped length in inches, or an angle in degrees. */
function read(sheet: Sheet, name: string): number {
  const { dimension, value } = sheet.measures.get(name) ?? { dimension: 'number', value: Number.NaN };
  return dimension === 'angle' ? (value * 180) / Math.PI : value / INCH;
}

/** The straight distance between two marks, inches. */
function apart(sheet: Sheet, one: string, other: string): number {
  const [a, b] = [sheet.shapes.get(one), sheet.shapes.get(other)];
  if (a?.kind !== 'point' || b?.kind !== 'point') return Number.NaN;
  return Math.hypot(b.point.x - a.point.x, b.point.y - a.point.y) / INCH;
}

const inches = (text: string): number => {
  const worked = evaluate(text, new Map());
  return worked.ok ? worked.quantity.value / INCH : Number.NaN;
};

const all = [vincent, stepCollar, shawlCollar, convertible].map((collar) => [collar.source, collar] as const);

describe.each(all)('%s', (_, collar) => {
  const sheet = sheetOf(collar);

  test('comes out at the printed figures when it is drafted', () => {
    expect(apart(sheet, 'neck-point', 'stand-point')).toBeCloseTo(inches(collar.neckPointToRoll), 9);
    expect(apart(sheet, 'stand-point', 'swung-end')).toBeCloseTo(read(sheet, 'past'), 9);
    expect(apart(sheet, 'swung-end', 'neck-back')).toBeCloseTo(inches(collar.stand), 9);
    expect(apart(sheet, 'swung-end', 'outer-back')).toBeCloseTo(inches(collar.fall), 9);
    if (collar.swing === null) return;
    // Laid off square to the roll line or along an arc: at these angles no scissors tell them apart.
    const arc = read(sheet, 'swing');
    expect(arc).toBeCloseTo(inches(collar.swing), 9);
    expect(apart(sheet, 'crease-end', 'swung-end')).toBeGreaterThan(arc - 1 / 64);
  });

  test.skipIf(collar.swing === null)('gains less at its outer edge than flat cloth needs', () => {
    expect(read(sheet, 'gain-drawn')).toBeLessThan(read(sheet, 'gain-needed'));
  });
});

describe('the stand at the neck point', () => {
  const byRule = (choice: string, stand: string): number => {
    const made = houseMeasures({ 'stand-rule': choice }, new Map([['stand', millimetres(inches(stand) * INCH)]]));
    return made.ok ? (made.measures.get('stand-by-rule')?.value ?? Number.NaN) / INCH : Number.NaN;
  };

  test('is a trifle less than the stand in Vincent’s draft: the house rule quarter-inch-less', () => {
    expect(byRule('quarter-inch-less', vincent.stand)).toBeCloseTo(inches(vincent.neckPointToRoll), 9);
  });

  test.each([stepCollar, convertible].map((collar) => [collar.source, collar] as const))(
    'is the stand itself in %s: the house rule full',
    (_, collar) => expect(byRule('full', collar.stand)).toBeCloseTo(inches(collar.neckPointToRoll), 9),
  );

  test('is an eighth more than the stand in the shawl of 1949, which measures it from the crease', () => {
    expect(inches(shawlCollar.neckPointToRoll) - inches(shawlCollar.stand)).toBeCloseTo(1 / 8, 9);
  });
});

describe('the swing', () => {
  test.each([vincent, stepCollar].map((collar) => [collar.source, collar] as const))(
    'of the step collar in %s is the fall less the stand: the house rule of that name',
    (_, { swing, stand, fall }) => {
      expect(inches(swing ?? '')).toBeCloseTo(inches(fall) - inches(stand), 9);
    },
  );

  test('of the shawl is less than that: 1/2 in where fall less stand is 7/8', () => {
    expect(inches(shawlCollar.fall) - inches(shawlCollar.stand)).toBeCloseTo(7 / 8, 9);
  });

  // What is left to the iron on half a collar, inches: gain needed less gain drawn. docs/method.md, Collar, has the table.
  test.each([
    [vincent.source, vincent, 0.076, 0.591],
    [stepCollar.source, stepCollar, 0.22, 0.969],
    [shawlCollar.source, shawlCollar, 0.497, 1.192],
  ] as const)('is short of what flat cloth needs, and by how much: %s', (_, collar, left, needed) => {
    const sheet = sheetOf(collar);
    expect(read(sheet, 'gain-needed') - read(sheet, 'gain-drawn')).toBeCloseTo(left, 3);
    expect(read(sheet, 'swing-needed')).toBeCloseTo(needed, 3);
    expect(read(sheet, 'swing-needed')).toBeGreaterThan(read(sheet, 'swing'));
  });

  test('of the convertible collar is not given; its fall of 2 1/2 in over a stand of 1 in needs nearly 1 1/2 in', () => {
    const sheet = sheetOf(convertible);
    expect(read(sheet, 'swing-needed')).toBeCloseTo(1.475, 3);
  });
});

describe('the length past the shoulder', () => {
  test('is the back neck and about 1/2 in in the step collars, 3/4 in in the shawl', () => {
    for (const [collar, more] of [
      [vincent, 1 / 2],
      [stepCollar, 1 / 2],
      [shawlCollar, 3 / 4],
    ] as const) {
      const sheet = sheetOf(collar);
      expect(read(sheet, 'past') - read(sheet, 'back-neck')).toBeCloseTo(more, 9);
    }
  });

  test('is 3 1/2 in for the size 36: the block’s back neck and 3/8 in, on a neck base of 14 5/8 in (ASTM D5585-11e1, size 8)', () => {
    const sheet = sheetOf(convertible);
    expect(read(sheet, 'past') - read(sheet, 'back-neck')).toBeGreaterThan(5 / 16);
    expect(read(sheet, 'past') - read(sheet, 'back-neck')).toBeLessThan(7 / 16);
  });
});

describe('the collar end', () => {
  test('of 1 1/2 in (1949) is usual here; the 3 in of the convertible collar (1918) are accepted, and more than usual', () => {
    const { usual, most } = styleMeasureNamed('collar-end') ?? { usual: [0, 0], most: 0 };
    const [least, greatest] = usual.map((mm) => mm / INCH);
    expect(1.5).toBeGreaterThanOrEqual(least ?? Number.NaN);
    expect(1.5).toBeLessThanOrEqual(greatest ?? Number.NaN);
    expect(3).toBeGreaterThan(greatest ?? Number.NaN);
    expect(3 * INCH).toBeLessThanOrEqual(most);
  });
});

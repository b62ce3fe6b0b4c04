import { expect, test } from 'vitest';
import { type FigureReading, readFigure } from '../../src/garment/figure.ts';
import { people } from '../../src/garment/people.ts';
import { say } from '../../src/words/say.ts';

const whole = { 'neck-base': 370, shoulder: 135, 'shoulder-slope': 20, 'front-waist': 354, 'back-waist': 424 };

function errorsOf(reading: FigureReading): string[] {
  if (reading.ok) return [];
  return reading.errors.map((error) => `${error.path}: ${say(error.message, { language: 'en', unit: 'cm' })}`);
}

test('a whole figure is read as it stands', () => {
  expect(readFigure(whole)).toEqual({ ok: true, figure: whole });
});

test('the slope is 22.5 degrees where the figure does not say', () => {
  const { 'shoulder-slope': _, ...without } = whole;
  expect(readFigure(without)).toEqual({ ok: true, figure: { ...whole, 'shoulder-slope': 22.5 } });
});

test('every invented figure is read back from JSON as it was', () => {
  for (const { figure } of people) {
    expect(readFigure(JSON.parse(JSON.stringify(figure)))).toEqual({ ok: true, figure });
  }
});

test.each([[null], [[]], ['neck-base: 370'], [370], [undefined]])('%o is no figure', (json) => {
  expect(errorsOf(readFigure(json))).toMatchInlineSnapshot(`
    [
      ": A figure is an object with one number a measure: neck-base, shoulder, shoulder-slope, front-waist, back-waist.",
    ]
  `);
});

test('every fault is told at once, each with its measure and unit', () => {
  const faulty = { 'neck-base': 37, shoulder: '135 mm', 'shoulder-slope': 67.5, 'front-waist': Number.NaN, waist: 700 };
  expect(errorsOf(readFigure(faulty))).toMatchInlineSnapshot(`
    [
      "waist: “waist” is not a measure of a figure. The measures are: neck-base, shoulder, shoulder-slope, front-waist, back-waist.",
      "neck-base: The neck-base girth, “neck-base”, is 37 mm. An adult’s lies between 270 and 600 mm: look at the tape again, and at the unit.",
      "shoulder: The shoulder length, “shoulder”, has to be a plain number, in mm; "135 mm" was found.",
      "shoulder-slope: The shoulder slope, “shoulder-slope”, is 67.5 degrees. An adult’s lies between 10 and 35 degrees: look at the tape again, and at the unit.",
      "front-waist: The front waist length, “front-waist”, has to be a plain number, in mm; NaN was found.",
      "back-waist: The back waist length is missing. Give “back-waist” in mm, between 310 and 660.",
    ]
  `);
});

test.each([
  ['neck-base', 269.9, 270],
  ['neck-base', 600.1, 600],
  ['shoulder-slope', 9.9, 10],
  ['shoulder-slope', 35.1, 35],
] as const)('the range of %s ends between %d and %d', (measure, beyond, within) => {
  expect(readFigure({ ...whole, [measure]: beyond }).ok).toBe(false);
  expect(readFigure({ ...whole, [measure]: within }).ok).toBe(true);
});

import { expect, test } from 'vitest';
import { readStyle } from '../../src/garment/style.ts';
import { styleMeasures } from '../../src/garment/style-measures.ts';
import { en } from '../../src/words/en/index.ts';
import { say } from '../../src/words/say.ts';

function errorsOf(written: Readonly<Record<string, unknown>>, unit: 'cm' | 'in' = 'cm'): string[] {
  const reading = readStyle(written);
  if (reading.ok) return [];
  return reading.errors.map((error) => `${error.path}: ${say(error.message, { language: 'en', unit })}`);
}

test('a style is read with its units, inch fractions and all', () => {
  const reading = readStyle({ overlap: '1 1/4 in', 'break-rise': '3.8 cm', stand: '30 mm' });
  expect(reading.ok && Object.fromEntries([...reading.style].map(([name, q]) => [name, q.value]))).toEqual({
    overlap: 31.75,
    'break-rise': 38,
    stand: 30,
  });
});

test('a style measure may be told by one before it', () => {
  const reading = readStyle({ stand: '30 mm', fall: 'stand + 12 mm' });
  expect(reading.ok && reading.style.get('fall')).toEqual({ dimension: 'length', value: 42 });
});

test('every fault is told at once', () => {
  const faulty = {
    overlap: 30,
    button: '20',
    stand: '3 in',
    'notch-drop': '30 deg',
    lapel: '9 cm',
  };
  expect(errorsOf(faulty)).toMatchInlineSnapshot(`
    [
      "overlap: The overlap, “overlap”, has to be written with its unit, for example “1 1/4 in” or “32 mm”; 30 was found.",
      "button: The button’s diameter, “button”, has to come to a length; “20” does not. Write it with its unit, for example “1 1/4 in” or “32 mm”.",
      "stand: The stand, “stand”, comes to 7.6 cm. It should lie between 1.2 cm and 6 cm.",
      "notch-drop: The notch drop, “notch-drop”, has to come to a length; “30 deg” does not. Write it with its unit, for example “1 1/4 in” or “32 mm”.",
      "lapel: “lapel” is not a style measure. The style measures are: overlap, button, button-to-edge, break-rise, break-rise-high, top-button-rise, break-above-button, stand, fall, cloth-turn, gorge-depth, notch-width, notch-drop, lapel-width, peak-rise, collar-end.",
    ]
  `);
});

test('what is wrong with an expression is handed on', () => {
  expect(errorsOf({ fall: 'stand + 12 mm' })).toEqual([
    expect.stringMatching(/^fall: The fall, “fall”, is “stand \+ 12 mm”\. .*“stand”/),
  ]);
});

test('the range is told in the reader’s unit', () => {
  expect(errorsOf({ stand: '3 in' }, 'in')).toMatchInlineSnapshot(`
    [
      "stand: The stand, “stand”, comes to 3 in. It should lie between 1/2 in and 2 3/8 in.",
    ]
  `);
});

test('every style measure says what it is and where its range comes from', () => {
  for (const { name, least, most, usual, source } of styleMeasures) {
    expect(en).toHaveProperty([`about.${name}`]);
    expect(source).not.toBe('');
    expect(least).toBeLessThanOrEqual(usual[0]);
    expect(usual[0]).toBeLessThan(usual[1]);
    expect(usual[1]).toBeLessThanOrEqual(most);
  }
});

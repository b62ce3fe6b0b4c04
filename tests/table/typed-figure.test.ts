import { describe, expect, test } from 'vitest';
import { type Figure, figureMeasures } from '../../src/garment/figure.ts';
import { readTypedFigure, type TypedMeasures } from '../../src/table/model/typed-figure.ts';
import { say } from '../../src/words/say.ts';

const figure: Figure = {
  'neck-base': 370,
  shoulder: 135,
  'shoulder-slope': 22.5,
  'front-waist': 354,
  'back-waist': 424,
};
const read = (typed: TypedMeasures) => readTypedFigure(figure, typed);
const troubles = (typed: TypedMeasures, unit: 'cm' | 'in' = 'cm') => {
  const found = read(typed);
  return figureMeasures.flatMap((name) => {
    const why = found.ok ? undefined : found.troubles[name];
    return why ? [`${name}: ${say(why, { language: 'en', unit })}`] : [];
  });
};

describe('measures typed for a body', () => {
  test('are read in either unit, with a comma or a point, and what was not typed stays', () => {
    expect(read({ 'neck-base': '38,5 cm', shoulder: '5 1/4 in' })).toEqual({
      ok: true,
      figure: { ...figure, 'neck-base': 385, shoulder: 133.35 },
      doubt: null,
    });
    const slope = read({ 'shoulder-slope': '20,5°' });
    expect(slope.ok && slope.figure['shoulder-slope']).toBeCloseTo(20.5, 9);
  });

  test('are all told what is the matter with them, each by itself and in the reader’s unit', () => {
    const wrong = { 'neck-base': '24 cm', shoulder: '14', 'shoulder-slope': '60 deg', 'front-waist': ' ' };
    expect(troubles(wrong)).toMatchInlineSnapshot(`
      [
        "neck-base: This is 24 cm. An adult’s lies between 27 cm and 60 cm: look at the tape again, and at the unit.",
        "shoulder: “14” is a bare number, and a length is wanted. Give it a unit: 14 cm or 14 in.",
        "shoulder-slope: This is 60°. An adult’s lies between 10° and 35°: look at the tape again, and at the unit.",
        "front-waist: Nothing is written here. Write what the tape showed, with its unit.",
      ]
    `);
    expect(troubles({ 'neck-base': '24 cm', 'back-waist': '20 deg' }, 'in')).toMatchInlineSnapshot(`
      [
        "neck-base: This is 9 7/16 in. An adult’s lies between 10 5/8 in and 23 5/8 in: look at the tape again, and at the unit.",
        "back-waist: “20 deg” is an angle, and a length is wanted here.",
      ]
    `);
  });

  test('may be doubted and are taken all the same: a front that is longer than the back', () => {
    const doubtful = read({ 'front-waist': '44 cm', 'back-waist': '35 cm' });
    expect(doubtful).toMatchObject({ ok: true, figure: { 'front-waist': 440, 'back-waist': 350 } });
    expect(doubtful.ok && doubtful.doubt).toMatchObject({ key: 'table.measures-swapped' });
    expect(read({ 'front-waist': '42.4 cm' })).toMatchObject({ ok: true, doubt: null });
  });
});

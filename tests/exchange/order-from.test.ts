import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { HandIn, OrderRecipe } from '../../src/exchange/hand-in.ts';
import { orderFrom, orderOf } from '../../src/exchange/order-from.ts';
import { refusalOf } from '../../src/exchange/refusal.ts';
import { personNamed } from '../../src/garment/people.ts';
import { sampleFigure } from '../../src/garment/sample.ts';
import { say } from '../../src/words/say.ts';
import { rightOverlap } from './hand-ins.ts';

const overlap = loadExercise('overlap');
const button = loadExercise('overlap-button');

function figureOf(figure: OrderRecipe['figure']) {
  const made = orderOf({ figure, style: {}, house: {} }, overlap);
  return made.ok ? made.order.figure : null;
}

function refusal(handIn: HandIn): string {
  const made = orderFrom(handIn, overlap);
  return made.ok ? 'not refused' : say(refusalOf(made.faults), { language: 'en', unit: 'cm' });
}

describe('the figure of an order', () => {
  test('is the person named, the one the seed samples, or the body measured', () => {
    expect(figureOf({ named: 'mei' })).toEqual(personNamed('mei')?.figure);
    expect(figureOf({ sampled: 'men', seed: 'a' })).toEqual(sampleFigure('a', 'men'));
    const measures = { 'neck-base': 400, shoulder: 140, 'shoulder-slope': 20, 'front-waist': 380, 'back-waist': 440 };
    expect(figureOf({ measures })).toEqual(measures);
  });

  test('sampled by the same seed is the same on every table', () => {
    expect(figureOf({ sampled: 'women', seed: 'week 2/Ilse Maringa' })).toMatchInlineSnapshot(`
      {
        "back-waist": 398,
        "front-waist": 371,
        "neck-base": 356,
        "shoulder": 134,
        "shoulder-slope": 22.5,
      }
    `);
  });
});

describe('style and house', () => {
  test('left out are as the exercise has them', () => {
    const made = orderOf({ figure: { named: 'tane' }, style: { button: '1 in' }, house: {} }, button);
    expect(made).toMatchObject({
      ok: true,
      order: { style: { button: '1 in', overlap: '1 1/4 in' }, house: { 'overlap-rule': 'twice-the-button' } },
    });
  });

  test('refuse a house rule whose measure the order does not state', () => {
    const recipe = { figure: { named: 'mei' }, style: {}, house: { 'overlap-rule': 'twice-the-button' } };
    const made = orderOf(recipe, overlap);
    expect(made.ok ? null : say(made.message, { language: 'en', unit: 'cm' })).toMatchInlineSnapshot(
      `"The house rule “overlap-rule: twice-the-button” needs the style measure “button”, and the order does not state it. Add it to the style."`,
    );
  });
});

describe('targets', () => {
  test('of hints and answers shown have to be those of the exercise', () => {
    expect(refusal(rightOverlap)).toBe('not refused');
    expect(refusal({ ...rightOverlap, shown: ['overlap-ege'] })).toMatchInlineSnapshot(
      `"shown[0]: No target of this exercise is called “overlap-ege”. Did you mean “overlap-edge”?"`,
    );
    expect(refusal({ ...rightOverlap, hints: { 'roll-line': 2 } })).toMatchInlineSnapshot(
      `"hints.roll-line: No target of this exercise is called “roll-line”. There are: overlap-edge."`,
    );
  });
});

import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { OrderRecipe } from '../../src/exchange/hand-in.ts';
import { isOwnOrder } from '../../src/exchange/own-order.ts';
import { people } from '../../src/garment/people.ts';
import { rightOverlap } from './hand-ins.ts';

const overlap = loadExercise('overlap');
const roll = loadExercise('roll-line');
const person = 'named' in overlap.figure ? overlap.figure.named : '';
const own: OrderRecipe = { figure: { named: person }, style: {}, house: {} };

const isOwn = (order: OrderRecipe, exercise = overlap) => isOwnOrder({ ...rightOverlap, order }, exercise);

describe('the exercise’s own order', () => {
  test('is its own person in its own style, however a length is written', () => {
    expect(isOwn(own)).toBe(true);
    expect(isOwn({ ...own, style: { overlap: '31.75 mm' } })).toBe(true);
  });

  test('is any figure of the group it samples', () => {
    const sampled = 'sampled' in roll.figure ? roll.figure.sampled : 'anyone';
    expect(isOwn({ figure: { sampled, seed: 'any' }, style: {}, house: { 'stand-rule': 'full' } }, roll)).toBe(true);
    expect(isOwn({ figure: { sampled: 'women', seed: 'any' }, style: {}, house: {} }, roll)).toBe(sampled === 'women');
  });

  test('is changed by another person, body, length or house rule', () => {
    const other = people.find(({ id }) => id !== person) ?? people[0];
    if (other === undefined) throw new Error('too few people');
    expect(isOwn({ ...own, figure: { named: other.id } })).toBe(false);
    expect(isOwn({ ...own, figure: { measures: other.figure } })).toBe(false);
    expect(isOwn({ ...own, style: { overlap: '32 mm' } })).toBe(false);
    expect(isOwn({ ...own, house: { 'stand-rule': 'quarter-inch-less' } })).toBe(false);
    // Nor is a measure its own that it does not state at all.
    expect(isOwn({ ...own, style: { stand: '3 cm' } })).toBe(false);
  });
});

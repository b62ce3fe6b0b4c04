import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import { people } from '../../src/garment/people.ts';
import { sampleFigure } from '../../src/garment/sample.ts';
import { orderFor } from '../../src/grader/order-for.ts';

const roll = loadExercise('roll-line');

describe('the order an exercise starts from', () => {
  test.each(['women', 'men', 'anyone'] as const)(
    'has a figure of its own group, the same for a seed: %s',
    (sampled) => {
      const { figure } = orderFor({ ...roll, figure: { sampled } }, 'seat 3');
      expect(figure).toEqual(sampleFigure('seat 3', sampled));
      expect(sampleFigure('seat 3', 'women')).not.toEqual(sampleFigure('seat 3', 'men'));
    },
  );

  test('has the person whom it names, whatever the seed', () => {
    for (const { id, figure } of people)
      expect(orderFor({ ...roll, figure: { named: id } }, 'seat 3').figure).toEqual(figure);
  });

  test('has its style and its house rules as they are stated', () => {
    const { style, house } = orderFor(roll, 'seat 3');
    expect(Object.keys(style)).toEqual(Object.keys(roll.style));
    expect(style['overlap']).toBe(roll.style['overlap']?.value);
    expect(house).toBe(roll.house);
  });
});

import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../../../src/cli/exercises.ts';
import { bandOf } from '../../../../src/exchange/class/laid/band.ts';

describe('the chalk about a right answer', () => {
  test('is as wide as the narrowest check on the place allows, at the strictness in force', () => {
    const roll = loadExercise('roll-line');
    // The mark is allowed 3 mm, and 1.5 mm off the shoulder line.
    expect(bandOf(roll, 'stand-point', 'workroom')).toBe(1.5);
    expect(bandOf(roll, 'roll-line', 'workroom')).toBe(3);
    expect(bandOf(roll, 'roll-line', 'learner')).toBe(6);
  });

  test('is not drawn where a range is allowed, nor along a curve whose checks look at single places', () => {
    expect(bandOf(loadExercise('plan-muslin'), 'side-cut', 'workroom')).toBeNull();
    expect(bandOf(loadExercise('lapel-worn'), 'lapel-edge-worn', 'workroom')).toBeNull();
    expect(bandOf(loadExercise('edge-ease'), 'fall-line', 'workroom')).toBeNull();
    expect(bandOf(loadExercise('lapel-folded'), 'lapel-edge', 'workroom')).toBeGreaterThan(0);
  });
});

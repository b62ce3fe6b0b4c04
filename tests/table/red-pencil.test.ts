import { describe, expect, test } from 'vitest';
import type { CheckResult } from '../../src/grader/result.ts';
import { redPencil } from '../../src/table/model/red-pencil.ts';
import { say } from '../../src/words/say.ts';

const check: CheckResult = {
  target: 'stand-point',
  check: 'position',
  status: 'beyond',
  measured: 0,
  expected: 0,
  off: 60,
  tolerance: 3,
  unit: 'mm',
  marks: 0,
  of: 2,
  carried: false,
  misreading: null,
  red: {
    arrow: { from: { x: 0, y: 0 }, to: { x: 60, y: 0 } },
    band: { about: { kind: 'point', point: { x: 60, y: 0 } }, half: 3 },
  },
};

describe('the red pencil', () => {
  test('says which way and how far, without giving the right place away', () => {
    const { marks, notes } = redPencil([check], new Set());
    expect(marks).toEqual([{ band: null, arrow: { from: { x: 0, y: 0 }, to: { x: 22, y: 0 } } }]);
    expect(notes.map(({ words }) => say(words, { language: 'en', unit: 'cm' }))).toEqual(['off 6 cm']);
  });

  test('draws the band where the answer is nearly right', () => {
    expect(redPencil([{ ...check, status: 'near' }], new Set()).marks[0]?.band?.half).toBe(3);
  });

  test('draws all of it when the learner asked to be shown', () => {
    expect(redPencil([check], new Set(['stand-point'])).marks).toEqual([check.red]);
  });

  test('lays under a right answer the narrowest band it has to lie in, and nothing else', () => {
    const band = { about: { kind: 'point', point: { x: 1, y: 0 } }, half: 3 } as const;
    const right: CheckResult = { ...check, status: 'within', off: 1, red: { arrow: null, band } };
    const wider: CheckResult = { ...right, tolerance: 6, red: { arrow: null, band: { ...band, half: 6 } } };
    expect(redPencil([right, wider], new Set())).toEqual({ marks: [right.red], notes: [] });
    // A target with a slip shows the slip only.
    expect(redPencil([right, check], new Set()).marks).toEqual([
      { band: null, arrow: { from: { x: 0, y: 0 }, to: { x: 22, y: 0 } } },
    ]);
  });
});

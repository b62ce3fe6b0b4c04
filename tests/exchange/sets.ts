import type { ProblemSet } from '../../src/exchange/set.ts';

/** A set for an invented class. */
export const weekTwo: ProblemSet = {
  title: 'Week 2: from the button to the roll line',
  note: 'Draft for yourself first, then check.\nBring a question on Thursday.',
  exercises: [
    { exercise: 'overlap-button', marks: 10 },
    { exercise: 'roll-line', marks: 20 },
    { exercise: 'notch-level', marks: 5 },
  ],
  figures: { each: 'women' },
  seed: 'autumn-b',
  strictness: 'workroom',
  house: { 'overlap-rule': 'twice-the-button', 'stand-rule': 'quarter-inch-less' },
  feedback: 'direction',
  checks: 3,
  hints: true,
  due: '2026-03-06T17:00:00.000Z',
};

export const exercises: readonly string[] = ['notch-level', 'overlap-button', 'roll-line', 'swing'];

import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { Step } from '../../src/drafting/step.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { orderFor } from '../../src/grader/order-for.ts';
import type { Status, Verdict } from '../../src/grader/result.ts';
import { verdictAlone, verdictOn } from '../../src/grader/verdict.ts';
import { message } from '../../src/words/message.ts';
import { say } from '../../src/words/say.ts';

const checks = (...all: readonly (readonly [Status, number])[]) => all.map(([status, of]) => ({ status, of }));

describe('the verdict on a target', () => {
  test.each<[string, readonly (readonly [Status, number])[], Verdict]>([
    ['all earned', [['within', 3]], 'right'],
    [
      'eleven of twelve',
      [
        ['within', 11],
        ['beyond', 1],
      ],
      'nearly',
    ],
    [
      'three quarters',
      [
        ['within', 3],
        ['beyond', 1],
      ],
      'nearly',
    ],
    ['half, and nothing further off than twice what is allowed', [['near', 4]], 'nearly'],
    [
      'half, and the rest far off',
      [
        ['within', 2],
        ['beyond', 2],
      ],
      'partly',
    ],
    [
      'a quarter',
      [
        ['within', 1],
        ['beyond', 3],
      ],
      'partly',
    ],
    [
      'less than a quarter',
      [
        ['near', 1],
        ['beyond', 3],
      ],
      'not-yet',
    ],
    ['nothing earned', [['beyond', 4]], 'not-yet'],
    [
      'nothing there',
      [
        ['missing', 4],
        ['missing', 1],
      ],
      'missing',
    ],
  ])('of %s', (_, all, verdict) => {
    expect(verdictOn(checks(...all))).toBe(verdict);
  });

  test('is no more than right or not where only that is told', () => {
    const all: readonly Verdict[] = ['right', 'nearly', 'partly', 'not-yet', 'missing'];
    expect(all.map(verdictAlone)).toEqual(['right', 'not-yet', 'not-yet', 'not-yet', 'missing']);
  });

  test('is told in plain words', () => {
    const all: readonly Verdict[] = ['right', 'nearly', 'partly', 'not-yet', 'missing'];
    expect(all.map((verdict) => say(message('verdict.word', { verdict }), { language: 'en', unit: 'cm' }))).toEqual([
      'right',
      'nearly right',
      'partly right',
      'not yet',
      'missing',
    ]);
  });

  test('does not say “not yet” of an edge that earns nearly all', () => {
    const exercise = loadExercise('neck-edge');
    // The notch is missed by 8 mm, and all else is right.
    const steps: readonly Step[] = [
      ...exercise.reference.filter(({ answers }) => answers !== 'collar-neck-edge'),
      { verb: 'along', name: 'short-end', on: 'gorge', from: 'notch', distance: '8 mm', toward: 'gorge-corner' },
      {
        verb: 'seam',
        name: 'collar-neck-edge',
        run: [{ along: 'true-back', from: 'edge-start', to: 'neck-point' }, 'neck-point', 'gorge-corner', 'short-end'],
        answers: 'collar-neck-edge',
      },
    ];
    const { reports } = gradeDraft(exercise, orderFor(exercise, 'Ilse'), steps, 'workroom');
    expect(reports.map(({ target, verdict }) => [target, verdict])).toEqual([
      ['front-neck-seam', 'right'],
      ['collar-centre-back', 'right'],
      ['collar-neck-edge', 'nearly'],
    ]);
  });
});

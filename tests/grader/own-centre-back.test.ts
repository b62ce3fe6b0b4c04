import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { Step } from '../../src/drafting/step.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { orderFor } from '../../src/grader/order-for.ts';
import { say } from '../../src/words/say.ts';

const neck = loadExercise('neck-edge');

function graded(change: (step: Step) => Step) {
  return gradeDraft(neck, orderFor(neck, 'Ilse'), neck.reference.map(change), 'workroom');
}

describe('the start of a neck edge', () => {
  test('that bows is told at the centre back that was squared to it, and from there is right', () => {
    // Without the mark that keeps it to the swung line it bows; the centre back is squared to it all the same.
    const { reports, checks } = graded((step) =>
      step.name === 'back-edge' ? ({ ...step, through: ['past-back', 'neck-point'] } as Step) : step,
    );
    const said = ({ sentences }: (typeof reports)[number]) =>
      sentences.map((sentence) => say(sentence, { language: 'en', unit: 'cm' }));
    const [, back, edge] = reports.map(said);
    expect(back?.find((words) => words.includes('out of square with the swung line'))).toBeDefined();
    expect(edge).toEqual([
      'Your collar neck edge is right, as seen from your own collar centre back: that slip was marked there and not counted again.',
    ]);
    const lost = checks.filter(({ marks, of }) => marks < of).map(({ target }) => target);
    expect(new Set(lost)).toEqual(new Set(['collar-centre-back']));
  });

  test('that runs along the swung line is right beside a centre back that leans', () => {
    const { checks } = graded((step) =>
      step.name === 'collar-centre-back'
        ? ({ ...step, verb: 'slant', to: 'back-line', angle: '86 deg', turn: 'clockwise' } as Step)
        : step,
    );
    const statusOf = (of: string) =>
      checks.find(({ target, check }) => target === of && check === 'squareness')?.status;
    expect(statusOf('collar-centre-back')).toBe('beyond');
    expect(statusOf('collar-neck-edge')).toBe('within');
  });
});

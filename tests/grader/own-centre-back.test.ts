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
  test('that is square to its own centre back is not asked to be less than square', () => {
    // Without the mark that keeps it to the swung line it bows; the centre back is squared to it all the same.
    const { reports } = graded((step) =>
      step.name === 'back-edge' ? ({ ...step, through: ['past-back', 'neck-point'] } as Step) : step,
    );
    const edge = reports.find(({ target }) => target === 'collar-neck-edge');
    const said = edge?.sentences.map((sentence) => say(sentence, { language: 'en', unit: 'cm' })) ?? [];
    expect(said.filter((words) => /makes \d/.test(words))).toEqual([]);
    expect(said.find((words) => words.includes('should run as the swung line does'))).toBeDefined();
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

import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { Step } from '../../src/drafting/step.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { orderFor } from '../../src/grader/order-for.ts';
import type { TargetReport } from '../../src/grader/result.ts';
import { say } from '../../src/words/say.ts';

const reader = { language: 'en', unit: 'cm' } as const;

/** The report on a target of an exercise, with a step of the reference changed. */
function reportOn(exercise: string, target: string, name: string, change: object): TargetReport {
  const asked = loadExercise(exercise);
  const steps = asked.reference.map((step) => (step.name === name ? ({ ...step, ...change } as Step) : step));
  const { reports } = gradeDraft(asked, orderFor(asked, 'Ilse'), steps, 'workroom');
  const report = reports.find((one) => one.target === target);
  if (report === undefined) throw new Error(`There is no report on ${target}.`);
  return report;
}

const openings = ({ paragraphs }: TargetReport): readonly string[] =>
  paragraphs.map(([first]) => (first === undefined ? '' : say(first, reader)));

describe('what is said of a target', () => {
  test('has a paragraph for each of several faults, and one behind them for what goes for all', () => {
    const report = reportOn('collar-outline', 'outer-edge', 'over-neck', { distance: 'stand + fall + 5 cm' });
    const said = openings(report);
    expect(said.length).toBeGreaterThan(2);
    expect(said.slice(0, -1).every((words) => words.startsWith('Your outer edge'))).toBe(true);
    expect(said.at(-1)).toMatch(/^\(Your collar point and width mark are right/);
    // Nothing is left out of it, and nothing is told twice.
    expect(report.paragraphs.flat()).toEqual(report.sentences);
    const all = report.sentences.map((sentence) => say(sentence, reader));
    expect(new Set(all).size).toBe(all.length);
  });

  test('is one paragraph where there is one fault, or none', () => {
    expect(
      openings(reportOn('roll-line', 'stand-point', 'stand-point', { distance: 'stand-by-rule + 1 cm' })),
    ).toHaveLength(1);
    expect(openings(reportOn('roll-line', 'overlap-edge', 'nothing', {}))).toEqual([
      expect.stringContaining('Your overlap edge is right'),
    ]);
  });
});

import { expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { Step } from '../../src/drafting/step.ts';
import { people } from '../../src/garment/people.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { say } from '../../src/words/say.ts';
import { orderOn, sampled } from './tables.ts';

/** The last hints of an exercise carried out as they are written, with what the sheet shows and no other. */
const followed: Readonly<Record<string, readonly Step[]>> = {
  'collar-outline': [
    { verb: 'square', name: 'one', to: 'gorge', through: 'notch' },
    {
      verb: 'along',
      name: 'point',
      on: 'one',
      from: 'notch',
      distance: 'collar-end',
      toward: 'up',
      answers: 'collar-point',
    },
    {
      verb: 'along',
      name: 'width',
      on: 'collar-centre-back',
      from: 'collar-back',
      distance: 'stand + fall',
      toward: 'left',
      answers: 'outer-back',
    },
    { verb: 'square', name: 'two', to: 'collar-neck-edge', through: 'neck-point' },
    { verb: 'along', name: 'over', on: 'two', from: 'neck-point', distance: 'stand + fall', toward: 'left' },
    {
      verb: 'curve',
      name: 'edge',
      through: ['width', 'over', 'point'],
      leave: { square: 'collar-centre-back' },
      answers: 'outer-edge',
    },
  ],
  'neck-edge': [
    { verb: 'seam', name: 'run', run: ['neck-point', 'gorge-corner', 'notch'] },
    { verb: 'tape', name: 'front-length', along: 'run', answers: 'front-neck-seam' },
    { verb: 'tape', name: 'back-length', along: 'back-neckline' },
    {
      verb: 'along',
      name: 'past',
      on: 'back-line',
      from: 'neck-point',
      distance: 'back-length + 2.5 cm',
      toward: 'up',
    },
    { verb: 'along', name: 'half', on: 'back-line', from: 'neck-point', distance: 'back-length / 2', toward: 'up' },
    {
      verb: 'curve',
      name: 'long',
      through: ['past', 'half', 'neck-point'],
      leave: { along: 'back-line' },
      arrive: { along: 'neck-line' },
    },
    { verb: 'along', name: 'end', on: 'long', from: 'neck-point', distance: 'back-length', toward: 'past' },
    { verb: 'square', name: 'back', to: 'long', through: 'end', answers: 'collar-centre-back' },
    {
      verb: 'seam',
      name: 'edge',
      run: [{ along: 'long', from: 'end', to: 'neck-point' }, 'neck-point', 'gorge-corner', 'notch'],
      answers: 'collar-neck-edge',
    },
  ],
};

const figures = [...people.map(({ figure }) => figure), ...sampled.slice(0, 12)];

test.each(Object.keys(followed))(
  'the last hints of %s, followed to the letter, come to full marks on every figure',
  (id) => {
    const exercise = loadExercise(id);
    const steps = followed[id] ?? [];
    const made = new Set(steps.map(({ name }) => name));
    const named =
      JSON.stringify(steps.map(({ name: _, answers: __, ...rest }) => rest)).match(/[a-z]+(?:-[a-z]+)+/g) ?? [];
    const measures = new Set(['collar-end', 'back-length']);
    // A learner can name only what the sheet shows, what was drawn, and the measures of the order.
    expect(named.filter((name) => !exercise.shows.includes(name) && !made.has(name) && !measures.has(name))).toEqual(
      [],
    );
    for (const figure of figures) {
      const grade = gradeDraft(exercise, orderOn(exercise, figure), steps, 'workroom');
      expect(grade.problems.map((problem) => say(problem, { language: 'en', unit: 'cm' }))).toEqual([]);
      expect(grade.marks).toBe(grade.of);
      expect(grade.otherFigures.held).toBe(grade.otherFigures.tried);
    }
  },
);

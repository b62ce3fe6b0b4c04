import { expect, test } from 'vitest';
import { loadExercise } from '../../../../src/cli/exercises.ts';
import { workingSentences } from '../../../../src/desk/marking/piece/working-sentences.ts';
import { markWork } from '../../../../src/exchange/mark-work.ts';
import { writeHandIn } from '../../../../src/exchange/write-hand-in.ts';
import { rightOverlap } from '../../../exchange/hand-ins.ts';

test('the working is read with what its names come to on the student’s own order', () => {
  const exercise = loadExercise('overlap');
  const order = { figure: { named: 'amara' }, style: { overlap: '3 cm' }, house: {} } as const;
  const steps = [
    { verb: 'parallel', name: 'edge', to: 'centre-front', distance: 'overlap', side: 'left', answers: 'overlap-edge' },
    { verb: 'parallel', name: 'help', to: 'centre-front', distance: '2 cm', side: 'left' },
  ] as const;
  const text = writeHandIn({ ...rightOverlap, exercise: exercise.id, order, steps });
  const marked = markWork(text, { load: () => exercise, set: null, strictness: null });
  if (!marked.ok) throw new Error('The work was not marked.');
  expect(workingSentences(marked, { language: 'en', unit: 'cm' })).toEqual([
    'Line parallel to centre front, overlap (3 cm), to the left.',
    'Line parallel to centre front, 2 cm, to the left.',
  ]);
});

import { takeIn } from '../../../src/desk/marking/intake/intake.ts';
import type { Sound } from '../../../src/desk/marking/intake/taken.ts';
import type { Step } from '../../../src/drafting/step.ts';
import { writeHandIn } from '../../../src/exchange/write-hand-in.ts';
import type { Exercise } from '../../../src/grader/exercise.ts';
import { rightOverlap } from '../../exchange/hand-ins.ts';

/** Work by invented students, each on a figure of their own, as it lies on the desk. */
export async function piecesOf(
  exercise: Exercise,
  drafts: Readonly<Record<string, readonly Step[]>>,
): Promise<Sound[]> {
  const files = Object.entries(drafts).map(([student, steps]) => {
    const figure = { sampled: 'women', seed: student } as const;
    const order = { figure, style: {}, house: {} };
    const text = writeHandIn({
      ...rightOverlap,
      student,
      number: '',
      set: null,
      exercise: exercise.id,
      order,
      steps,
      hints: {},
    });
    return {
      name: `${student}.json`,
      size: text.length,
      text: () => Promise.resolve(text),
      head: () => Promise.resolve(text),
    };
  });
  const found: Sound[] = [];
  for await (const one of takeIn({ files, pieces: [] }, null, () => exercise, [exercise.id]))
    if (one.kind === 'taken' && one.taken.ok) found.push(one.taken);
  return found;
}

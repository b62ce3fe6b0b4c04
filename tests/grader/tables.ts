import { existsSync, readFileSync } from 'node:fs';
import { exerciseNames, loadExercise } from '../../src/cli/exercises.ts';
import { replay } from '../../src/drafting/replay.ts';
import type { Givens, Sheet } from '../../src/drafting/sheet.ts';
import { type Figure, measureRanges } from '../../src/garment/figure.ts';
import { people } from '../../src/garment/people.ts';
import { sampleFigure } from '../../src/garment/sample.ts';
import type { Exercise } from '../../src/grader/exercise.ts';
import { layOut } from '../../src/grader/lay-out.ts';
import type { Order } from '../../src/grader/order.ts';
import { orderFor } from '../../src/grader/order-for.ts';

/** Every exercise of the course. */
export const exercises: readonly Exercise[] = exerciseNames().map((name) => loadExercise(name));

const bodiesFile = new URL('../../../shared/data/bodies.csv', import.meta.url);

/** Whether the 6,068 measured bodies of Gordon et al. 2014 are at hand; they are not part of the project. */
export const bodiesAtHand = existsSync(bodiesFile);

export const invented: readonly Figure[] = people.map(({ figure }) => figure);

export const sampled: readonly Figure[] = Array.from({ length: 200 }, (_, i) =>
  sampleFigure(`proof/${i}`, i % 2 === 0 ? 'women' : 'men'),
);

/** Every measured body as a figure. The survey did not take the shoulder slope. */
export function measuredBodies(): readonly Figure[] {
  const [head = '', ...rows] = readFileSync(bodiesFile, 'utf8').trim().split('\n');
  const columns = head.split(',');
  const column = (name: string) => columns.indexOf(name);
  const [neck, shoulder, back, front] = [
    column('neck_base_girth_mm'),
    column('shoulder_length_mm'),
    column('back_waist_length_mm'),
    column('front_waist_length_mm'),
  ];
  return rows.map((row) => {
    const cells = row.split(',');
    const number = (at: number | undefined) => Number(cells[at ?? -1]);
    return {
      'neck-base': number(neck),
      shoulder: number(shoulder),
      'shoulder-slope': measureRanges['shoulder-slope'].otherwise ?? Number.NaN,
      'front-waist': number(front),
      'back-waist': number(back),
    };
  });
}

/** An exercise's order, on another figure. */
export function orderOn(exercise: Exercise, figure: Figure, house = exercise.house): Order {
  return { ...orderFor(exercise, 'proof'), figure, house };
}

/** The table of an exercise's order; throws where it cannot be laid, for a test has then failed. */
export function tableFor(exercise: Exercise, order: Order): Givens {
  const dealt = layOut(exercise, order);
  if (!dealt.ok) throw new Error(JSON.stringify(dealt.message));
  return dealt.givens;
}

export function referenceSheet(exercise: Exercise, givens: Givens): Sheet {
  return replay(givens, exercise.reference);
}

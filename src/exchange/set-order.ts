import type { Exercise } from '../grader/exercise.ts';
import type { FigureRecipe, OrderRecipe } from './hand-in.ts';
import type { ProblemSet } from './set.ts';
import { type Student, studentKey } from './student.ts';

/** The order to which a student of a set drafts one of its exercises: the same on every machine. */
export function setOrder(set: ProblemSet, exercise: Exercise, student: Student): OrderRecipe {
  const house = Object.entries(set.house).filter(([rule]) => Object.hasOwn(exercise.house, rule));
  return { figure: setFigure(set, exercise, student), style: {}, house: Object.fromEntries(house) };
}

function setFigure({ figures, seed }: ProblemSet, { figure }: Exercise, student: Student): FigureRecipe {
  if (figures === 'stated') return 'named' in figure ? figure : { sampled: figure.sampled, seed };
  if ('named' in figures) return figures;
  if ('sampled' in figures) return { sampled: figures.sampled, seed };
  return { sampled: figures.each, seed: ownSeed(seed, student) };
}

/** Longer than any name that is typed: one ligature alone can stand for eighteen letters, and a hand-in has room for so many. */
const KEY_LENGTH = 200;

function ownSeed(seed: string, student: Student): string {
  return `${seed}/${studentKey(student).slice(0, KEY_LENGTH)}`;
}

/** Whether a draft's figure is this student's, in a set that has a figure for each; true in any other set. */
export function isOwn({ figures, seed }: ProblemSet, figure: FigureRecipe, student: Student): boolean {
  if (typeof figures !== 'object' || !('each' in figures)) return true;
  return 'sampled' in figure && figure.sampled === figures.each && figure.seed === ownSeed(seed, student);
}

/**
 * By what the student is known for whom a set dealt this figure: its seed tells. Null where a set does not deal each student
 * one, or the figure is nobody's in it.
 */
export function dealtTo({ figures, seed }: ProblemSet, figure: FigureRecipe): string | null {
  if (typeof figures !== 'object' || !('each' in figures)) return null;
  if (!('sampled' in figure) || figure.sampled !== figures.each || !figure.seed.startsWith(`${seed}/`)) return null;
  return figure.seed.slice(seed.length + 1);
}

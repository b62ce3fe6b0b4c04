import type { Name } from '../../../drafting/step.ts';
import type { Student } from '../../student.ts';
import type { ClassWork } from '../class-work.ts';
import { LEAST_NUMBERS } from './free-hand.ts';

/** Drafts of one exercise whose free marks and typed numbers are the same though their figures differ: a question, and no verdict. */
export interface AlikeDrafts {
  readonly exercise: Name;
  /** Whose they are, by what they are known among others, in that order. */
  readonly students: readonly { readonly key: string; readonly who: Student }[];
  /** How many numbers they share that have no reason on the order of one of them. */
  readonly numbers: number;
}

/** By chance alone there should be no more than one such pair in so many classes. */
const CLASSES = 100;
/** Two students who work apart hit upon the same number less often than once in so many times: a guess, and a careful one. */
const ODDS = 10;

/**
 * So many numbers have to be the same before drafts are asked about, in a class of `students`: at one chance in ten a number, no
 * more than one pair in a hundred classes would then be asked about by chance. At least LEAST_NUMBERS.
 */
export function numbersAskedFor(students: number): number {
  const pairs = (students * (students - 1)) / 2;
  if (pairs < 1) return Number.POSITIVE_INFINITY;
  return Math.max(LEAST_NUMBERS, Math.ceil(Math.log(pairs * CLASSES) / Math.log(ODDS) - 1e-9));
}

/**
 * The drafts of a class to be asked about, a question for each group of two or more; by exercise, then by student. Takes
 * of each student the work that counts. Every draft is looked at once, and the drafts of a group are found by what they have
 * in common: never each against each.
 */
export function alikeDrafts(counted: readonly ClassWork[]): readonly AlikeDrafts[] {
  const found = [...Map.groupBy(counted, ({ exercise }) => exercise)].flatMap(([exercise, work]) => {
    const asked = numbersAskedFor(work.length);
    const groups = Map.groupBy(
      work.filter(({ freeHand }) => freeHand !== null),
      ({ freeHand }) => freeHand?.text ?? '',
    );
    return [...groups.values()].flatMap((group) => questionOf(exercise, group, asked));
  });
  return found.toSorted((a, b) => compare(a.exercise, b.exercise) || compare(firstOf(a), firstOf(b)));
}

function questionOf(exercise: Name, group: readonly ClassWork[], asked: number): readonly AlikeDrafts[] {
  const figures = new Set(group.map(({ freeHand }) => freeHand?.figure));
  // On one and the same figure the same numbers may come of the same measures.
  if (figures.size < 2) return [];
  const numbers = group.reduce((most, { freeHand }) => Math.max(most, freeHand?.free ?? 0), 0);
  if (numbers < asked) return [];
  const students = group.map(({ student, who }) => ({ key: student, who })).toSorted((a, b) => compare(a.key, b.key));
  return [{ exercise, students, numbers }];
}

function firstOf({ students }: AlikeDrafts): string {
  return students[0]?.key ?? '';
}

function compare(a: string, b: string): number {
  return a < b ? -1 : Number(a > b);
}

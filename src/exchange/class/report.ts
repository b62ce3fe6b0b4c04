import type { Name } from '../../drafting/step.ts';
import type { MeasureName } from '../../grader/exercise.ts';
import { type AlikeDrafts, alikeDrafts } from './alike/alike-drafts.ts';
import { cronbachAlpha } from './alpha.ts';
import { type Asked, isAsked } from './asked.ts';
import type { ClassWork } from './class-work.ts';
import { type Counts, countingOf } from './counting.ts';
import { discriminationIndex } from './discrimination.ts';

/** Fewest students in the upper and in the lower group for a discrimination index to be told: common practice, no source. */
export const LEAST_GROUP = 5;

/** Fewest students who did everything for an alpha to be told: common practice, no source. */
export const LEAST_COMPLETE = 20;

/** What a class made of one check. */
export interface CheckReport {
  readonly target: Name;
  readonly check: MeasureName;
  /** How many were asked. */
  readonly asked: number;
  /** The mean share of its marks that was earned, 0 to 1: the higher, the easier it was. */
  readonly facility: number;
  readonly missing: number;
  /** Classic wrong ways with how many went them, the most first. */
  readonly misreadings: readonly { readonly id: string; readonly count: number }[];
}

export interface ExerciseReport {
  readonly exercise: Name;
  /** How many did it. */
  readonly worked: number;
  /** The mean share of its marks that was earned, 0 to 1. */
  readonly facility: number;
  /** Null where the class is too small to say. */
  readonly discrimination: number | null;
  readonly checks: readonly CheckReport[];
}

export interface ClassReport {
  readonly students: number;
  /** Pieces of work that count, one of each student for each exercise. */
  readonly work: number;
  /** Pieces of the same students beside those. */
  readonly repeated: number;
  /** Pieces that count, of exercises that the set has not: nothing else here tells of them. */
  readonly aside: number;
  readonly exercises: readonly ExerciseReport[];
  /** Students who did every exercise, and Cronbach's alpha of the whole from theirs; null where they are too few to say. */
  readonly complete: number;
  readonly alpha: number | null;
  /** Drafts to be asked about, because they are alike where they should not be. */
  readonly alike: readonly AlikeDrafts[];
}

/**
 * What a class has understood and what not, from its marked work in any order. One student's work of another set would make of
 * its exercises some that the rest of the class has not done: where there is a set, it is told of the set's alone.
 */
export function classReport(work: Iterable<ClassWork>, set: Asked, counts: Counts = 'last'): ClassReport {
  const all = [...work];
  const counted = countingOf(all, counts, ({ share }) => share);
  const own = counted.filter((one) => isAsked(one, set));
  const byStudent = Map.groupBy(own, ({ student }) => student);
  const byExercise = Map.groupBy(own, ({ exercise }) => exercise);
  const names = [...byExercise.keys()].sort();
  const wholes = new Map([...byStudent].map(([student, did]) => [student, sumOf(did) / names.length]));
  const complete = [...byStudent.values()].filter((did) => did.length === names.length);
  const table = complete.map((did) => names.map((name) => did.find(({ exercise }) => exercise === name)?.share ?? 0));
  return {
    students: new Set(counted.map(({ student }) => student)).size,
    work: counted.length,
    repeated: all.length - counted.length,
    aside: counted.length - own.length,
    exercises: names.map((name) => exerciseReport(name, byExercise.get(name) ?? [], wholes)),
    complete: complete.length,
    alpha: complete.length < LEAST_COMPLETE ? null : cronbachAlpha(table),
    alike: alikeDrafts(counted),
  };
}

function exerciseReport(
  exercise: Name,
  work: readonly ClassWork[],
  wholes: ReadonlyMap<string, number>,
): ExerciseReport {
  const standings = work.map(({ student, share }) => ({ part: share, whole: wholes.get(student) ?? 0 }));
  // Every draft of an exercise has the same checks in the same order, but for one that could not be laid on the table.
  const places = work.reduce((most, { checks }) => Math.max(most, checks.length), 0);
  return {
    exercise,
    worked: work.length,
    facility: sumOf(work) / work.length,
    discrimination: discriminationIndex(standings, LEAST_GROUP),
    checks: Array.from({ length: places }, (_, place) =>
      checkReport(work.flatMap(({ checks }) => checks[place] ?? [])),
    ),
  };
}

function checkReport(results: ClassWork['checks']): CheckReport {
  const [{ target, check }] = results as readonly [Checked];
  const misread = Map.groupBy(
    results.filter(({ misreading }) => misreading !== null),
    ({ misreading }) => misreading ?? '',
  );
  const misreadings = [...misread].map(([id, { length }]) => ({ id, count: length }));
  return {
    target,
    check,
    asked: results.length,
    facility: sumOf(results) / results.length,
    missing: results.filter(({ status }) => status === 'missing').length,
    misreadings: misreadings.sort((a, b) => b.count - a.count || (a.id < b.id ? -1 : 1)),
  };
}

type Checked = ClassWork['checks'][number];

function sumOf(shares: readonly { readonly share: number }[]): number {
  return shares.reduce((sum, { share }) => sum + share, 0);
}

import type { Name } from '../drafting/step.ts';
import type { SampleGroup } from '../garment/sample.ts';
import type { Strictness } from '../grader/tolerance.ts';

/** What a problem set's file says of itself. */
export const SET_FORMAT = 'gorgeline problem set';
export const SET_VERSION = 1;

/** Most exercises of a set; each stands in it once. */
export const SET_EXERCISES = 100;

/** Most marks an exercise of a set may earn. */
export const SET_MARKS = 1000;

/** Most often that a draft may be checked, where a set counts the checks. */
export const SET_CHECKS = 100;

/**
 * On whom the drafts of a set are made: as each exercise has it; one invented person for everything; one figure from the
 * sampler for the whole class; or a figure of every student's own.
 */
export type SetFigures =
  | 'stated'
  | { readonly named: string }
  | { readonly sampled: SampleGroup }
  | { readonly each: SampleGroup };

/** What a student is told when a draft is checked: whether it is right; how it is off; or where it should be, too. */
export type Feedback = 'verdict' | 'direction' | 'place';

export interface SetExercise {
  readonly exercise: Name;
  /** What it is worth in the set; what the exercise's own checks earn is scaled to it. */
  readonly marks: number;
}

/** Work for a class. */
export interface ProblemSet {
  readonly title: string;
  /** A word to the class; may be empty. */
  readonly note: string;
  /** In the order in which they are done. */
  readonly exercises: readonly SetExercise[];
  readonly figures: SetFigures;
  /** Decides the sampled figures. */
  readonly seed: string;
  readonly strictness: Strictness;
  /** House rules in force, in those exercises that have them. */
  readonly house: Readonly<Record<string, string>>;
  readonly feedback: Feedback;
  /** How often a draft may be checked; null for as often as one likes. */
  readonly checks: number | null;
  readonly hints: boolean;
  /** When it should be handed in, ISO 8601; null for no such day. It is told and written down, and stops nothing. */
  readonly due: string | null;
}

/** By what a hand-in knows its set: the title, to be read, and a mark that changes with anything in the set. */
export interface SetMark {
  readonly title: string;
  readonly id: string;
}

import type { Expression, Name, Step } from '../drafting/step.ts';
import type { Figure } from '../garment/figure.ts';
import type { SampleGroup } from '../garment/sample.ts';
import type { Strictness } from '../grader/tolerance.ts';
import type { Unit } from '../words/unit.ts';
import type { SetMark } from './set.ts';
import type { Student } from './student.ts';

/** What a hand-in file says of itself. A draft saved to be gone on with is the same file. */
export const HAND_IN_FORMAT = 'gorgeline hand-in';
export const HAND_IN_VERSION = 1;

/** How a figure is come by: an invented person, a seed of the sampler, or measures taken from a body. */
export type FigureRecipe =
  | { readonly named: string }
  | { readonly sampled: SampleGroup; readonly seed: string }
  | { readonly measures: Figure };

/** How an order is come by, so that the same jacket lies on every table. */
export interface OrderRecipe {
  readonly figure: FigureRecipe;
  /** Style measures; those left out are as the exercise states them. */
  readonly style: Readonly<Record<Name, Expression>>;
  /** House rule to choice; those left out are as the exercise has them. */
  readonly house: Readonly<Record<string, string>>;
}

/** How many of a target's hints were taken. */
export type HintTier = 1 | 2 | 3;

/** A student's draft as it is handed in: the steps and what they were drawn on, never a mark. */
export interface HandIn extends Student {
  /** The problem set it belongs to, if any. */
  readonly set: SetMark | null;
  readonly exercise: Name;
  readonly order: OrderRecipe;
  /** The strictness the student worked under. Whoever marks may choose another. */
  readonly strictness: Strictness;
  /** The student's unit: sentences about the draft are spoken in it. */
  readonly unit: Unit;
  readonly steps: readonly Step[];
  /** Targets whose right place was asked for. */
  readonly shown: readonly Name[];
  readonly hints: Readonly<Record<Name, HintTier>>;
  /** How often the draft was checked. */
  readonly checks: number;
  /** When its first step was drawn, and when it was saved; ISO 8601, null where the clock is nobody's business. */
  readonly begun: string | null;
  readonly saved: string | null;
}

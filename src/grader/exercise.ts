import type { ShapeKind } from '../drafting/shape.ts';
import type { Expression, Name, Step } from '../drafting/step.ts';
import type { WornPlan } from '../garment/collar/worn-plan.ts';
import type { ToleranceClass } from './tolerance.ts';

/**
 * Text of an exercise: an ICU message that may use, in braces, any measure of the order by name (`{stand}` reads
 * "3.0 cm" or "1 1/4 in"); feedback texts may also use `{off}`, `{measured}` and `{expected}`.
 */
export type Text = string;

/** A style measure as the exercise gives it, and the range in which other orders may have it. */
export interface StyleGiven {
  readonly value: Expression;
  readonly from: Expression;
  readonly to: Expression;
  /** What it is, in a sentence: makes it a measure of this exercise alone. The measures of the course have their words. */
  readonly about?: string;
}

/** On whom the draft is made. */
export type FigureChoice = { readonly named: string } | { readonly sampled: 'women' | 'men' | 'anyone' };

/** Something the learner must make and point out. Order matters: a later target is judged from the earlier ones. */
export interface Target {
  readonly name: Name;
  readonly makes: ShapeKind;
  /** Three hints, each saying more than the last: where to look, which tool, the step itself. */
  readonly hints: readonly [Text, Text, Text];
}

interface CheckCommon {
  readonly target: Name;
  readonly tolerance: ToleranceClass;
  readonly marks: number;
  /** Why it shows on the body. */
  readonly why: Text;
  /** What to do about it. */
  readonly mend: Text;
  /** Instead of what the reference gives: the least and the most the reading may be. Only for readings in mm with a sign or size of their own, and for `bend`. */
  readonly least?: Expression;
  readonly most?: Expression;
}

/** A point: how far from where it should be, mm. */
export interface PositionCheck extends CheckCommon {
  readonly measure: 'position';
}
/** A point: its distance from a named point or line, mm, signed: what lies on the wrong side of either is that much further off. */
export interface DistanceCheck extends CheckCommon {
  readonly measure: 'distance';
  readonly from: Name;
}
/** A line: the worst distance between it and the right one over the working span between two named points, mm. */
export interface LineCheck extends CheckCommon {
  readonly measure: 'line';
  readonly between: readonly [Name, Name];
}
/** A line, or a curve at an end: its angle to a named line, degrees off what the reference has (square, unless it says otherwise). */
export interface SquarenessCheck extends CheckCommon {
  readonly measure: 'squareness';
  readonly to: Name;
  /** For a curve: which end is meant. */
  readonly end?: 'start' | 'end';
}
/**
 * A line: its distance from a named line, measured square to that line at a named point, or at two, of which the one
 * counts where it is further off; mm, signed (positive to the right or up).
 */
export interface ParallelCheck extends CheckCommon {
  readonly measure: 'parallel';
  readonly from: Name;
  readonly at: Name | readonly [Name, Name];
}
/** A curve or a taped length: how long, mm. */
export interface LengthCheck extends CheckCommon {
  readonly measure: 'length';
}
/** A curve laid along a seam between match marks: what is left over, mm. */
export interface WalkCheck extends CheckCommon {
  readonly measure: 'walk';
  /** The seam it is walked along: curves and taped lengths, one after another. */
  readonly against: readonly Name[];
  /** The match marks on the answer between which it is walked, or `start` and `end` for its own ends; without them, the whole of it. */
  readonly between?: readonly [Name, Name];
}
/** A curve: how far it, or its start or end, passes from a named point, mm. */
export interface ThroughCheck extends CheckCommon {
  readonly measure: 'through';
  readonly point: Name;
  readonly where: 'start' | 'end' | 'anywhere';
}
/** A point or a level line: its height, mm above the waist. */
export interface LevelCheck extends CheckCommon {
  readonly measure: 'level';
}
/** A curve: greatest distance from its chord, mm. */
export interface BowCheck extends CheckCommon {
  readonly measure: 'bow';
}
/** A curve: greatest distance from the right one, both ways, mm. */
export interface ShapeCheck extends CheckCommon {
  readonly measure: 'shape';
}
/** A curve: the sharpest break of direction at a join, degrees. */
export interface SmoothnessCheck extends CheckCommon {
  readonly measure: 'smoothness';
  /** Points at which a corner is meant, and is not read. */
  readonly corners?: readonly Name[];
}
/**
 * A curve: whether it bends both ways, as the reference does; read as how far it bends back in all, mm: the bows of its stretches
 * to the one side added up, or to the other, whichever come to less.
 */
export interface InflectionCheck extends CheckCommon {
  readonly measure: 'inflection';
}
/**
 * A curve: how much more it turns than the right one, degrees, turns to either side added up; nothing where it turns less. Its
 * range is in degrees too.
 */
export interface BendCheck extends CheckCommon {
  readonly measure: 'bend';
  /** The whole curve, or of each the stretch of 2 in that turns most. */
  readonly over: 'whole' | 'stretch';
}

/** An angle read with the protractor, degrees. */
export interface AngleCheck extends CheckCommon {
  readonly measure: 'angle';
}

export type Check =
  | PositionCheck
  | DistanceCheck
  | LineCheck
  | SquarenessCheck
  | ParallelCheck
  | LengthCheck
  | WalkCheck
  | ThroughCheck
  | LevelCheck
  | BowCheck
  | ShapeCheck
  | SmoothnessCheck
  | InflectionCheck
  | BendCheck
  | AngleCheck;

export type MeasureName = Check['measure'];

/** A classic wrong way: the reference with steps replaced by those of the same name, and the words for it. */
export interface Misreading {
  readonly id: string;
  /** The target on which it shows. */
  readonly target: Name;
  /** Steps that take the place of the reference's steps of the same name. */
  readonly instead: readonly Step[];
  /** New steps put before the first replaced one, where the wrong way needs marks of its own. */
  readonly first?: readonly Step[];
  /** What was done, why it shows on the body, what to do. */
  readonly says: Text;
}

export interface Exercise {
  readonly id: string;
  readonly title: string;
  /** The lesson it belongs to. */
  readonly lesson: string;
  readonly brief: Text;
  readonly figure: FigureChoice;
  readonly style: Readonly<Record<Name, StyleGiven>>;
  /** House rules in force, by rule, with the choice this exercise starts from. */
  readonly house: Readonly<Record<string, string>>;
  /** Of these, the rules that the learner is to apply: what they give is not among the learner's measures. */
  readonly applies?: readonly string[];
  /** Objects of the block, and given ones, that lie on the table; others stay in the drawer. */
  readonly shows: readonly Name[];
  /** What is drawn on the table before the learner begins, as steps on the order's block. */
  readonly given?: readonly Step[];
  /** Given marks that lie a little off, as marks taken from cloth do: each moved up to `by`, any way, by the figure's own seed. */
  readonly shaken?: { readonly marks: readonly Name[]; readonly by: Expression };
  readonly targets: readonly Target[];
  readonly reference: readonly Step[];
  readonly checks: readonly Check[];
  readonly misreadings: readonly Misreading[];
  /** What of the draft turns over when it is worn, where that is not the usual lapel and collar. */
  readonly worn?: WornPlan;
}

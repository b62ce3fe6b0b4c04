import type { Drawn } from '../drafting/shape.ts';
import type { Name } from '../drafting/step.ts';
import type { Point } from '../geometry/point.ts';
import type { Message } from '../words/message.ts';
import type { MeasureName } from './exercise.ts';
import type { MeasureUnit, Strictness } from './tolerance.ts';

export type Status = 'within' | 'near' | 'beyond' | 'missing';

/** What is said of a target in a word or two. */
export type Verdict = 'right' | 'nearly' | 'partly' | 'not-yet' | 'missing';

/** What the red pencil draws for one check: the band of what is allowed, and an arrow from where it is to where it should be. */
export interface RedMark {
  readonly arrow: { readonly from: Point; readonly to: Point } | null;
  /** The right shape, and half the width of the band about it, mm. */
  readonly band: { readonly about: Drawn; readonly half: number } | null;
}

export interface CheckResult {
  readonly target: Name;
  readonly check: MeasureName;
  readonly status: Status;
  readonly measured: number | null;
  readonly expected: number | null;
  /** How far off, never negative; null when missing. */
  readonly off: number | null;
  readonly tolerance: number;
  readonly unit: MeasureUnit;
  readonly marks: number;
  readonly of: number;
  /** True when an earlier slip moved what was expected here. */
  readonly carried: boolean;
  /** The misreading's id, when the answer lands on one. */
  readonly misreading: string | null;
  readonly red: RedMark;
}

/** What the marker writes under the sheet about one target. */
export interface TargetReport {
  readonly target: Name;
  /** How its worst check stands. */
  readonly status: Status;
  /** How much of it is right, all its checks together. */
  readonly verdict: Verdict;
  /** The step that was to make the answer and could not be carried out, from 0; null where there is none. */
  readonly notMade: number | null;
  /** Sentences in order: what, how much and which way; why; what to do; what it was judged from. */
  readonly sentences: readonly Message[];
  /** The same, to be set in a paragraph each: of several faults one each, and last what goes for all of them. */
  readonly paragraphs: readonly (readonly Message[])[];
}

/** The step at which a draft lets go on other figures. */
export interface LetGo {
  readonly target: Name;
  /** Position of the step in the draft, from 0, and its name. */
  readonly step: number;
  readonly name: Name;
  readonly message: Message;
}

export interface OtherFigures {
  readonly tried: number;
  readonly held: number;
  readonly letGo: readonly LetGo[];
}

export interface Grade {
  readonly exercise: string;
  readonly strictness: Strictness;
  readonly marks: number;
  readonly of: number;
  /** Steps that could not be carried out, and targets that they answer twice or that there are none of. */
  readonly problems: readonly Message[];
  readonly checks: readonly CheckResult[];
  readonly reports: readonly TargetReport[];
  readonly otherFigures: OtherFigures;
}

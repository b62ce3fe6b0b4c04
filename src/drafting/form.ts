import type * as Steps from './step.ts';
import { type Form, type FormId, forms } from './verbs.ts';

/** The step that each form writes. */
export interface StepOf extends Record<FormId, Steps.Step> {
  readonly pencil: Steps.Pencil;
  readonly along: Steps.Along;
  readonly cross: Steps.Cross;
  readonly compass: Steps.Compass;
  readonly foot: Steps.Foot;
  readonly part: Steps.PartWay;
  readonly rule: Steps.Rule;
  readonly square: Steps.Square;
  readonly parallel: Steps.Parallel;
  readonly 'parallel-through': Steps.ParallelThrough;
  readonly slant: Steps.Slant;
  readonly curve: Steps.CurveThrough;
  readonly offset: Steps.Offset;
  readonly seam: Steps.Seam;
  readonly fold: Steps.Fold;
  readonly swing: Steps.Swing;
  readonly 'swing-angle': Steps.SwingAngle;
  readonly tape: Steps.Tape;
  readonly 'tape-between': Steps.TapeBetween;
  readonly 'tape-set': Steps.TapeSet;
  readonly protractor: Steps.Protractor;
  readonly 'protractor-along': Steps.ProtractorAlong;
}

/** A step as it may stand while it is being filled, or as it comes from a file: any field may be missing or wrong. */
export type HalfStep = Readonly<Record<string, unknown>> & {
  readonly verb?: unknown;
  readonly name?: unknown;
  readonly answers?: unknown;
  readonly what?: unknown;
};

/** Fields that every step may carry beside those of its form. */
export const commonFields: readonly string[] = ['verb', 'name', 'answers'];

const formsByVerb: ReadonlyMap<unknown, readonly Form[]> = Map.groupBy(forms, (form) => form.verb);

/** The form with this id. */
export function formById(id: FormId): Form {
  return forms.find((form) => form.id === id) as Form;
}

/** The forms of a verb; none when there is no such verb. */
export function formsOfVerb(verb: unknown): readonly Form[] {
  return formsByVerb.get(verb) ?? [];
}

/**
 * Which of its verb's forms a step is written in: the first whose blanks are all filled and that has a blank for every
 * field of the step; failing that the first with a blank for every field; failing that the verb's first form.
 * Null when the verb is unknown.
 */
export function formOf(step: HalfStep): Form | null {
  const candidates = formsOfVerb(step.verb);
  if (candidates.length < 2) return candidates[0] ?? null;
  const present = Object.keys(step).filter((field) => !commonFields.includes(field) && step[field] !== undefined);
  const fitting = candidates.filter((form) => present.every((field) => form.fields.some((own) => own.field === field)));
  const whole = fitting.find((form) => form.fields.every((own) => own.optional || present.includes(own.field)));
  return whole ?? fitting[0] ?? candidates[0] ?? null;
}

import type { HalfStep } from '../form.ts';
import type { Input } from '../input.ts';
import { makers } from '../make/make.ts';
import type { Outcome } from '../outcome.ts';
import { whyOffSheet } from '../reach.ts';
import type { Shape } from '../shape.ts';
import type { Name, Step } from '../step.ts';
import type { Form } from '../verbs.ts';
import { takerOf } from './taker.ts';
import type { Taker } from './takes.ts';

/** Carries out a construction on the things it uses, by their numbers; null where it cannot be carried out, and `carryOut` says why. */
export type Ready = (inputs: readonly Input[]) => Shape | null;

/** A step made ready: what stands in its blanks is looked at once, for all tables and for all steps of the same construction. */
export function madeReady(step: HalfStep, form: Form, uses: readonly Name[]): Ready {
  const fields: string[] = [];
  const takers: Taker[] = [];
  for (const { field, blank, optional } of form.fields) {
    const value = step[field];
    if (optional && (value === undefined || value === null)) continue;
    const taker = takerOf(blank, value, uses);
    if (taker === null) return () => null;
    fields.push(field);
    takers.push(taker);
  }
  // The blanks are taken by the form, so they are what its maker is typed for.
  const make = makers[form.id] as (given: unknown, step: Step) => Outcome<Shape>;
  return (inputs) => {
    const given: Record<string, unknown> = {};
    for (let at = 0; at < takers.length; at++) {
      const taken = (takers[at] as Taker)(inputs);
      if (taken === undefined) return null;
      given[fields[at] as string] = taken;
    }
    const outcome = make(given, step as unknown as Step);
    return outcome.ok && whyOffSheet(outcome.value) === null ? outcome.value : null;
  };
}

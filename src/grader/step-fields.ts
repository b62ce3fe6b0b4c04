import type { Step } from '../drafting/step.ts';
import { forms } from '../drafting/verbs.ts';

/** The fields of a step that hold an expression, with what is written in them. */
export function stepFields(step: Step): readonly { readonly field: string; readonly text: string }[] {
  const written = step as unknown as Readonly<Record<string, unknown>>;
  return (byVerb.get(step.verb) ?? []).flatMap((field) => {
    const text = written[field];
    return typeof text === 'string' ? [{ field, text }] : [];
  });
}

/** Verb to its fields that hold an expression, each once: every wrong answer asks for those of all the steps it comes from. */
const byVerb: ReadonlyMap<string, readonly string[]> = new Map(
  forms.map(({ verb }) => [verb, [...new Set(forms.filter((one) => one.verb === verb).flatMap(expressionsOf))]]),
);

function expressionsOf({ fields }: (typeof forms)[number]): readonly string[] {
  return fields
    .filter(({ blank }) => blank.takes === 'length' || blank.takes === 'angle' || blank.takes === 'number')
    .map(({ field }) => field);
}

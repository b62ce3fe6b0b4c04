import type { Step } from '../drafting/step.ts';
import { forms } from '../drafting/verbs.ts';

/** The fields of a step that hold an expression, with what is written in them. */
export function stepFields(step: Step): readonly { readonly field: string; readonly text: string }[] {
  const written = step as unknown as Readonly<Record<string, unknown>>;
  const fields = new Set(
    forms
      .filter(({ verb }) => verb === step.verb)
      .flatMap(({ fields: all }) =>
        all.filter(({ blank }) => blank.takes === 'length' || blank.takes === 'angle' || blank.takes === 'number'),
      )
      .map(({ field }) => field),
  );
  return [...fields].flatMap((field) => {
    const text = written[field];
    return typeof text === 'string' ? [{ field, text }] : [];
  });
}

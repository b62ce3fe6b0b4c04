import { evaluate } from '../drafting/expression.ts';
import type { Quantity } from '../drafting/quantity.ts';
import type { Expression, Name } from '../drafting/step.ts';
import { statedText } from '../words/length.ts';
import { say } from '../words/say.ts';
import { unbroken } from '../words/unbroken.ts';
import { AuthoringError } from './authoring-error.ts';
import { builtReader } from './reader.ts';

/** A length as both kinds of reader want it: their own unit first, the other behind it. */
export interface BothUnits {
  readonly cm: string;
  readonly in: string;
}

/** `2.5 cm (1 in)` and `1 in (2.5 cm)`: a line may end between the two, and not inside one. */
export function bothUnits(mm: number): BothUnits {
  const cm = unbroken(statedText(mm, 'cm'));
  const inches = unbroken(statedText(mm, 'in'));
  return { cm: `${cm} (${inches})`, in: `${inches} (${cm})` };
}

/** The millimetres an author's expression comes to; an authoring error when it is no length. */
export function lengthFrom(text: Expression, measures: ReadonlyMap<Name, Quantity> = new Map()): number {
  const worked = evaluate(text, measures);
  if (!worked.ok) throw new AuthoringError(`“${text}” is not a length. ${say(worked.message, builtReader)}`);
  if (worked.quantity.dimension !== 'length') {
    throw new AuthoringError(`“${text}” is not a length. Write it with its unit, for example “1 1/4 in” or “32 mm”.`);
  }
  return worked.quantity.value;
}

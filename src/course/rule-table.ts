import { evaluate, namesIn } from '../drafting/expression.ts';
import { millimetres } from '../drafting/quantity.ts';
import type { Expression, Name } from '../drafting/step.ts';
import { houseRules } from '../garment/house-rules.ts';
import type { Key } from '../words/message.ts';
import { nameText, say, textOf } from '../words/say.ts';
import { AuthoringError, lookUp } from './authoring-error.ts';
import { lengthFrom } from './both-units.ts';
import { builtReader } from './reader.ts';

/** A house rule worked out: one column a choice that follows from the measure or is one length for all, one row a value of it. Lengths in mm. */
export interface RuleTable {
  readonly head: string;
  readonly choices: readonly { readonly says: string; readonly source: string }[];
  readonly rows: readonly { readonly given: number; readonly gives: readonly number[] }[];
}

const rules = new Map(houseRules.map((rule) => [rule.name, rule]));

/** The table of a rule for some values of a measure; an authoring error where there is no such rule, or nothing follows from the measure. */
export function ruleTable(name: string, of: Name, values: readonly Expression[]): RuleTable {
  const rule = lookUp(rules, name, { written: '<RuleTable rule="…">', kept: 'src/garment/house-rules.ts' });
  const choices = rule.choices.filter(({ gives }) => namesIn(gives).every((needed) => needed === of));
  if (!choices.some(({ gives }) => namesIn(gives).length > 0))
    throw new AuthoringError(`No choice of the house rule “${name}” follows from “${of}”.`);
  return {
    head: capital(nameText(of, builtReader)),
    choices: choices.map((choice) => ({
      // A sentence in the catalogue, a heading here; its lengths stay in braces, to be shown in both units.
      says: textOf(`house.${name}.${choice.name}` as Key).replace(/\.$/, ''),
      source: choice.source,
    })),
    rows: values.map((value) => {
      const given = lengthFrom(value);
      return { given, gives: choices.map((choice) => lengthOf(choice.gives, of, given)) };
    }),
  };
}

function lengthOf(gives: Expression, of: Name, given: number): number {
  const worked = evaluate(gives, new Map([[of, millimetres(given)]]));
  if (!worked.ok) throw new AuthoringError(say(worked.message, builtReader));
  return worked.quantity.value;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

import { evaluate } from '../drafting/expression.ts';
import type { Quantity } from '../drafting/quantity.ts';
import type { Expression, Name } from '../drafting/step.ts';
import { type Message, message } from '../words/message.ts';
import { houseRules } from './house-rules.ts';

export type HouseChoices = Readonly<Record<string, string>>;

export type HouseMeasures =
  | { readonly ok: true; readonly measures: ReadonlyMap<Name, Quantity> }
  | { readonly ok: false; readonly message: Message };

/**
 * The measures, and with them what each house rule gives: `overlap-by-rule`, `stand-by-rule`. A rule left open takes its
 * usual choice. A rule whose inputs are not among the measures adds nothing: the exercise has no use for it.
 */
export function houseMeasures(choices: HouseChoices, measures: ReadonlyMap<Name, Quantity>): HouseMeasures {
  const all = new Map(measures);
  for (const name of Object.keys(choices)) {
    // Is it a house rule?
    if (!houseRules.some((rule) => rule.name === name)) {
      return { ok: false, message: message('garment.rule-unknown', { rule: name, known: houseRules.map((rule) => rule.name).join(', ') }) };
    }
  }
  for (const rule of houseRules) {
    const chosen = choices[rule.name] ?? rule.usual;
    const choice = rule.choices.find((one) => one.name === chosen);
    // Is it one of its choices?
    if (!choice) {
      const known = rule.choices.map((one) => one.name).join(', ');
      return { ok: false, message: message('garment.choice-unknown', { rule: rule.name, choice: chosen, known }) };
    }
    // Are its inputs there?
    if (!choice.uses.every((name) => measures.has(name))) continue;
    const worked = evaluate(choice.gives, measures);
    if (!worked.ok) {
      const why = { said: worked.message };
      return { ok: false, message: message('garment.rule-unreadable', { rule: rule.name, choice: choice.name, why }) };
    }
    all.set(rule.makes, worked.quantity);
  }
  return { ok: true, measures: all };
}

/** What the chosen rule is, as an expression: `button / 2 + 1/4 in`; null when there is no such rule or choice. */
export function ruleExpression(rule: string, choice: string): Expression | null {
  return houseRules.find((one) => one.name === rule)?.choices.find((one) => one.name === choice)?.gives ?? null;
}

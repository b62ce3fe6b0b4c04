import { evaluate } from '../drafting/expression.ts';
import type { Quantity } from '../drafting/quantity.ts';
import type { Name } from '../drafting/step.ts';
import { type Message, message } from '../words/message.ts';
import { type HouseChoice, type HouseRule, houseRules } from './house-rules.ts';

/** Rule to choice, as a teacher sets them: `{ 'stand-rule': 'full' }`. Rules left out take their usual choice. */
export type HouseChoices = Readonly<Record<string, string>>;

export type HouseMeasures =
  | { readonly ok: true; readonly measures: ReadonlyMap<Name, Quantity> }
  | { readonly ok: false; readonly message: Message };

/**
 * The measures, and with them what each house rule gives: `overlap-by-rule`, `stand-by-rule`. A rule whose inputs are
 * not among the measures adds nothing: the exercise has no use for it. Refuses a rule or a choice there is none of.
 */
export function houseMeasures(choices: HouseChoices, measures: ReadonlyMap<Name, Quantity>): HouseMeasures {
  const unknown = Object.keys(choices).find((name) => !houseRules.some((rule) => rule.name === name));
  // Is there a rule for every choice?
  if (unknown !== undefined)
    return refuse(message('garment.rule-unknown', { rule: unknown, known: namesOf(houseRules) }));
  const all = new Map(measures);
  for (const rule of houseRules) {
    const chosen = choices[rule.name] ?? rule.usual;
    const choice = rule.choices.find((one) => one.name === chosen);
    // Is it one of the rule's choices?
    if (!choice) {
      return refuse(
        message('garment.choice-unknown', { rule: rule.name, choice: chosen, known: namesOf(rule.choices) }),
      );
    }
    // Has the exercise what the choice needs?
    if (!choice.uses.every((name) => measures.has(name))) continue;
    const worked = evaluate(choice.gives, measures);
    if (!worked.ok) {
      const why = { said: worked.message };
      return refuse(message('garment.rule-unreadable', { rule: rule.name, choice: choice.name, why }));
    }
    all.set(rule.makes, worked.quantity);
  }
  return { ok: true, measures: all };
}

function refuse(said: Message): HouseMeasures {
  return { ok: false, message: said };
}

function namesOf(named: readonly (HouseRule | HouseChoice)[]): string {
  return named.map((one) => one.name).join(', ');
}

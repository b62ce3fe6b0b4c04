import { type Key, type Message, message } from '../words/message.ts';
import type { HouseChoices } from './house.ts';
import { type HouseChoice, type HouseRule, houseRules } from './house-rules.ts';

/** What a rule says by one of its choices, as it stands inside a sentence: “the overlap is twice the button’s diameter”. */
export function ruleInWords(rule: HouseRule, choice: HouseChoice): Message {
  return { key: `rule.${rule.name}.${choice.name}` as Key, values: {} };
}

/** The house rules in force, a sentence each, in the order of the rules. A rule or a choice there is none of is left out. */
export function rulesInForce(choices: HouseChoices): readonly Message[] {
  return houseRules.flatMap((rule) => {
    const choice = rule.choices.find(({ name }) => name === choices[rule.name]);
    return choice === undefined
      ? []
      : [message('garment.rule-in-force', { rule: { said: ruleInWords(rule, choice) } })];
  });
}

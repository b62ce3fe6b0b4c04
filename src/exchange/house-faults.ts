import { houseRules } from '../garment/house-rules.ts';
import type { Fault, Place } from '../grader/reading/fault.ts';
import { unknownName } from '../grader/reading/unknown.ts';

/** House rules and choices that nobody knows. A choice that is no text is the form's own fault. */
export function houseFaults(house: Readonly<Record<string, unknown>>, at: Place): readonly Fault[] {
  return Object.entries(house).flatMap(([rule, choice]) => faultsAt([...at, rule], rule, choice));
}

function faultsAt(at: Place, name: string, choice: unknown): readonly Fault[] {
  const rule = houseRules.find((one) => one.name === name);
  const names = ({ name: called }: { readonly name: string }): string => called;
  if (rule === undefined) return [{ at, message: unknownName('what.house-rule', name, houseRules.map(names)) }];
  const known = rule.choices.map(names);
  if (typeof choice !== 'string' || known.includes(choice)) return [];
  return [{ at, message: unknownName('what.house-choice', choice, known) }];
}

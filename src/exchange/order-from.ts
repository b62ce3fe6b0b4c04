import type { Figure } from '../garment/figure.ts';
import { houseRules } from '../garment/house-rules.ts';
import { personNamed } from '../garment/people.ts';
import { sampleFigure } from '../garment/sample.ts';
import type { Exercise } from '../grader/exercise.ts';
import { layOut } from '../grader/lay-out.ts';
import type { Order } from '../grader/order.ts';
import type { Fault } from '../grader/reading/fault.ts';
import { unknownName } from '../grader/reading/unknown.ts';
import { type Message, message } from '../words/message.ts';
import type { FigureRecipe, HandIn, OrderRecipe } from './hand-in.ts';

export type OrderMade =
  | { readonly ok: true; readonly order: Order }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** The order of a hand-in for the exercise it names. Refuses targets the exercise has not, and an order that cannot be laid on the table. */
export function orderFrom(handIn: HandIn, exercise: Exercise): OrderMade {
  const targets = exercise.targets.map(({ name }) => name);
  const strayTargets = (field: 'shown' | 'hints', names: readonly string[]): readonly Fault[] =>
    names.flatMap((name, index) =>
      targets.includes(name)
        ? []
        : [{ at: [field, field === 'shown' ? index : name], message: unknownName('what.target', name, targets) }],
    );
  const faults = [...strayTargets('shown', handIn.shown), ...strayTargets('hints', Object.keys(handIn.hints))];
  if (faults.length > 0) return { ok: false, faults };
  const made = orderOf(handIn.order, exercise);
  return made.ok ? made : { ok: false, faults: [{ at: ['order'], message: made.message }] };
}

/** The order a recipe comes to: what it leaves out is as the exercise states it. Refuses what cannot be laid on the table. */
export function orderOf(
  recipe: OrderRecipe,
  exercise: Exercise,
): { readonly ok: true; readonly order: Order } | { readonly ok: false; readonly message: Message } {
  const order: Order = {
    figure: figureOf(recipe.figure),
    style: withChanges(statedStyle(exercise), recipe.style),
    house: withChanges(exercise.house, recipe.house),
  };
  const unmet = unmetRule(order);
  if (unmet !== null) return { ok: false, message: unmet };
  const dealt = layOut(exercise, order);
  return dealt.ok ? { ok: true, order } : dealt;
}

type Words = Readonly<Record<string, string>>;

/** What is stated, changed where the recipe says so; the very same object where it changes nothing. */
function withChanges(stated: Words, changes: Words): Words {
  return Object.keys(changes).length === 0 ? stated : { ...stated, ...changes };
}

const styles = new WeakMap<Exercise, Words>();

/** The style as the exercise states it, written out once. */
function statedStyle(exercise: Exercise): Words {
  const known = styles.get(exercise);
  if (known !== undefined) return known;
  const style = Object.fromEntries(Object.entries(exercise.style).map(([name, { value }]) => [name, value]));
  styles.set(exercise, style);
  return style;
}

function figureOf(recipe: FigureRecipe): Figure {
  if ('measures' in recipe) return recipe.measures;
  if ('sampled' in recipe) return sampleFigure(recipe.seed, recipe.sampled);
  // The reader has seen to it that there is such a person.
  return personNamed(recipe.named)?.figure ?? sampleFigure(recipe.named, 'anyone');
}

/** A house rule in force whose choice needs a style measure that the order does not state. */
function unmetRule(order: Order): Message | null {
  for (const [rule, chosen] of Object.entries(order.house)) {
    const choice = houseRules.find(({ name }) => name === rule)?.choices.find(({ name }) => name === chosen);
    const missing = choice?.uses.find((name) => !Object.hasOwn(order.style, name));
    if (missing !== undefined) return message('files.house-unmet', { rule, choice: chosen, missing });
  }
  return null;
}

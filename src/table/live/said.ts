import type { Quantity } from '../../drafting/quantity.ts';
import { lengthText } from '../../words/length.ts';
import { type Message, type Value, written } from '../../words/message.ts';
import type { Unit } from '../../words/unit.ts';
import type { LiveScene } from './live-scene.ts';

/** What is said under a figure as its draft now stands: its author's sentence with every measure at hand. Null where it says nothing. */
export function saidUnder(
  { says, compares = {} }: Pick<LiveScene, 'says' | 'compares'>,
  measures: ReadonlyMap<string, Quantity>,
  unit: Unit,
): Message | null {
  if (says === undefined) return null;
  const amounts = [...measures].map(([name, quantity]) => [name, amountOf(quantity)] as const);
  const choices = Object.entries(compares).map(([name, [one, other]]) => {
    const [a, b] = [measures.get(one), measures.get(other)];
    return [name, a && b ? comparedAs(a.value, b.value, unit) : 'same'] as const;
  });
  return written(says, Object.fromEntries([...amounts, ...choices]));
}

/** As the reader sees them: two lengths that are shown alike are the same. */
function comparedAs(one: number, other: number, unit: Unit): 'more' | 'less' | 'same' {
  if (lengthText(Math.abs(one - other), unit) === lengthText(0, unit)) return 'same';
  return one > other ? 'more' : 'less';
}

function amountOf({ dimension, value }: Quantity): Value {
  if (dimension === 'length') return { mm: value };
  return dimension === 'angle' ? { radians: value } : value;
}

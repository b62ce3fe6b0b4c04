import type { Name } from '../../drafting/step.ts';
import type { Onward } from '../../table/onward.ts';
import type { SetInHand } from '../../table/set-in-hand.ts';
import { message } from '../../words/message.ts';
import { inSetHash } from './in-set.ts';

/** What comes after an exercise of a set: the next in its order, and after the last the set itself, to hand it in. Exercises lie beside each other. `here` is what stands behind the `#` of this page. */
export function onwardIn(
  { set, mark }: SetInHand,
  exercise: Name,
  titles: Readonly<Record<Name, string>>,
  wayBack: string,
  here: string,
): Onward {
  const place = set.exercises.findIndex((one) => one.exercise === exercise);
  const next = set.exercises[place + 1]?.exercise;
  if (next === undefined) return { href: wayBack, says: message('table.last-in-set') };
  const title = titles[next] ?? next;
  return { href: `../${next}/${inSetHash(mark.id, here)}`, says: message('table.next-in-set', { title }) };
}

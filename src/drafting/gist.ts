import { isName } from './name.ts';
import type { Plan, Thing } from './plan.ts';
import type { PlannedDraft } from './planned.ts';

/**
 * What a draft does, whatever its things are called, told from its plan: another text for everything else that a draft may do on a
 * plan of the same base. Two drafts of one gist make the same on the same table, for the same targets. Null where it uses what no
 * table can have, for it has no name.
 */
export function gistOf(plan: Plan, { things, answers }: PlannedDraft): string | null {
  for (const name of plan.givens.keys()) if (!isName(name)) return null;
  let seen = plan.base?.size ?? 0;
  let text = '';
  for (const thing of things.values()) {
    if (thing.at < seen) text += `${thing.at} `;
    else text += madeText(thing);
    seen = Math.max(seen, thing.at + 1);
  }
  for (const [target, name] of answers) text += `${JSON.stringify(target)}=${things.get(name)?.at} `;
  return text;
}

/** What is done, and to what: what is made by its place in the plan, what is given by its name, which begins with a letter. */
function madeText(thing: Thing): string {
  if (thing.given !== null) return `${thing.given} `;
  let text = `${thing.making.number}(`;
  for (const { given, at } of thing.from) text += `${given ?? at},`;
  return `${text}) `;
}

import type { Name, Step } from '../drafting/step.ts';
import { wordOf } from '../drafting/word-of.ts';
import { type Message, message } from '../words/message.ts';
import type { Exercise } from './exercise.ts';
import { unknownName } from './reading/unknown.ts';

/** What is odd about the targets that the steps of a draft say they answer: one there is none of, or one answered twice. */
export function oddClaims({ targets }: Exercise, steps: readonly Step[]): readonly Message[] {
  const known = targets.map(({ name }) => name);
  return [...strangers(steps, known), ...twice(steps, known)];
}

function strangers(steps: readonly Step[], known: readonly Name[]): readonly Message[] {
  return steps.flatMap(({ answers }, index) => {
    if (answers === undefined || known.includes(answers)) return [];
    const problem = { said: unknownName('what.target', wordOf(answers), known) };
    return [message('grader.problem', { step: index + 1, problem })];
  });
}

function twice(steps: readonly Step[], known: readonly Name[]): readonly Message[] {
  const claiming = new Map<Name, string[]>();
  steps.forEach(({ answers }, index) => {
    if (answers === undefined) return;
    const claims = claiming.get(answers) ?? [];
    claims.push(String(index + 1));
    claiming.set(answers, claims);
  });
  return known.flatMap((target) => {
    const claims = claiming.get(target) ?? [];
    const last = claims.at(-1);
    if (last === undefined || claims.length === 1) return [];
    return [message('grader.claimed-twice', { target: { named: target }, steps: { listed: claims }, last })];
  });
}

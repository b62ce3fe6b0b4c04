import { replay } from '../../drafting/replay.ts';
import type { Name, Step } from '../../drafting/step.ts';
import type { Room } from './bench.ts';

/**
 * Targets that nothing answers yet though something on the sheet might: a line counts only when it is said to be the
 * answer. Empty where every target is answered, or nothing that was drawn is of a kind asked for.
 */
export function unanswered(steps: readonly Step[], { givens, targets }: Room): readonly Name[] {
  const { shapes, answers } = replay(givens, steps);
  const loose = new Set(steps.filter((step) => step.answers === undefined).map((step) => shapes.get(step.name)?.kind));
  const open = targets.filter(({ name }) => !answers.has(name));
  return open.some(({ makes }) => loose.has(makes)) ? open.map(({ name }) => name) : [];
}

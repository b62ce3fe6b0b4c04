import { replay } from '../../src/drafting/replay.ts';
import type { Givens, Sheet } from '../../src/drafting/sheet.ts';
import type { Step } from '../../src/drafting/step.ts';
import { say } from '../../src/words/say.ts';

/** A draft that has to be carried out whole; throws with what went wrong where it is not. */
export function replayed(givens: Givens, steps: readonly Step[]): Sheet {
  const sheet = replay(givens, steps);
  const problems = sheet.problems.map(
    ({ name, message }) => `${name}: ${say(message, { language: 'en', unit: 'in' })}`,
  );
  if (problems.length > 0) throw new Error(problems.join('\n'));
  return sheet;
}

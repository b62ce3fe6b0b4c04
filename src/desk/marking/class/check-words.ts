import type { CheckReport } from '../../../exchange/class/report.ts';
import type { Check, Exercise } from '../../../grader/exercise.ts';
import { type Message, message } from '../../../words/message.ts';

/** What a check looks at, in a few words, and its place among those of an exercise that are called alike; null where it is alone. */
export interface CheckName {
  readonly words: Message;
  readonly nth: number | null;
}

/**
 * The checks of an exercise by what each looks at, told apart: two distances of one mark by what they are measured from. Where
 * the exercise is not at hand, or was another when the work was marked, by the measure alone.
 */
export function checkNames(
  exercise: Pick<Exercise, 'checks'> | undefined,
  reports: readonly Pick<CheckReport, 'target' | 'check'>[],
): readonly CheckName[] {
  const named = reports.map(({ target, check }, place) => {
    const own = exercise?.checks[place];
    const words = own?.target === target && own.measure === check ? checkWords(own) : message(`class.check.${check}`);
    return { words, known: JSON.stringify([target, words]) };
  });
  return named.map(({ words, known }, place) => {
    const alike = named.filter((one) => one.known === known).length;
    const before = named.slice(0, place).filter((one) => one.known === known).length;
    return { words, nth: alike > 1 ? before + 1 : null };
  });
}

/** What one check looks at, and from where. */
function checkWords(check: Check): Message {
  switch (check.measure) {
    case 'distance':
      return message('class.check-from.distance', { from: { named: check.from } });
    case 'parallel':
      return message('class.check-from.parallel', { from: { named: check.from } });
    case 'squareness':
      return message('class.check-from.squareness', { to: { named: check.to } });
    case 'line': {
      const [from, to] = check.between;
      return message('class.check-from.line', { from: { named: from }, to: { named: to } });
    }
    case 'walk':
      return message('class.check-from.walk', { seam: { namedAll: check.against } });
    case 'through':
      return message(`class.check-from.${check.where}`, { point: { named: check.point } });
    case 'bend':
      return message(`class.check-over.${check.over}`);
    default:
      return message(`class.check.${check.measure}`);
  }
}

import type { Name } from '../drafting/step.ts';
import { message } from '../words/message.ts';
import { say } from '../words/say.ts';
import { spelled } from '../words/unseen.ts';
import type { Told } from './tell.ts';

/** So many exercises that there are none of are kept in mind, and of each so many places: a stream may name ever others. */
const NAMES = 100;
const PLACES = 10;

const reader = { language: 'en', unit: 'in' } as const;

interface Met {
  /** How many pieces more than the first. */
  readonly more: number;
  /** Where the first of these were found. */
  readonly places: readonly string[];
}

/**
 * Work of exercises that the course has not. One wrong set brings a line for every student that says the same: of the first it is
 * said, and of the others in the end how many there were.
 */
export class Strangers {
  private readonly met = new Map<Name, Met>();

  /** What is said on standard error of a piece as it comes. */
  hear({ err, strange }: Pick<Told, 'err' | 'strange'>): string {
    if (strange === null) return err;
    const { exercise, where } = strange;
    const before = this.met.get(exercise);
    if (before !== undefined) {
      const places = before.places.length < PLACES ? [...before.places, where] : before.places;
      this.met.set(exercise, { more: before.more + 1, places });
      return '';
    }
    if (this.met.size < NAMES) this.met.set(exercise, { more: 0, places: [] });
    return err;
  }

  /** What is left to be said of them in the end, a line an exercise. */
  inTheEnd(): string {
    return [...this.met]
      .filter(([, { more }]) => more > 0)
      .map(([name, { more, places }]) => `${say(againWords(name, more, places), reader)}\n`)
      .join('');
  }
}

function againWords(name: Name, more: number, places: readonly string[]) {
  const listed = { listed: places.map(spelled) };
  return message('command.strange-again', { name, count: more, places: listed, more: more - places.length });
}

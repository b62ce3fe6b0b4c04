import { spelled } from '../../../words/unseen.ts';
import type { Lone } from './together.ts';

/** A longer name, in characters, has no clear seat in a picture as wide as a phone. */
const LONGEST = 16;

/** A student as a picture has room for: of a long name the first word and the initials of the rest. Under it each stands in full. */
export function nameInPicture({ who: { student, number } }: Pick<Lone, 'who'>): string {
  const name = spelled(student.trim() === '' ? number : student.trim());
  if (name.length <= LONGEST) return name;
  const [first = '', ...rest] = name.split(/\s+/);
  const short = [first, ...rest.map((word) => `${[...word][0] ?? ''}.`)].join(' ');
  return short.length <= LONGEST ? short : `${[...first].slice(0, LONGEST - 1).join('')}…`;
}

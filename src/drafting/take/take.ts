import { message } from '../../words/message.ts';
import { wantedWords } from '../kinds.ts';
import { LIST_LENGTH } from '../limits.ts';
import { failed, made, type Outcome } from '../outcome.ts';
import type { Scope } from '../scope.ts';
import type { Blank } from '../verbs.ts';
import { takeAim, takeNear } from './aim.ts';
import { takeAmount } from './amount.ts';
import { takeHeading } from './heading.ts';
import { takeObject } from './object.ts';
import { takePassing } from './passing.ts';
import { takePlace } from './place.ts';
import { takeRunPiece } from './run.ts';
import { unreadable } from './unreadable.ts';

/**
 * Takes what stands in a blank: looks up its names, works out its expression. What comes is `Taken` of the blank; what
 * cannot be taken, whatever it is, is a message.
 */
export function take(blank: Blank, value: unknown, scope: Scope): Outcome<unknown> {
  switch (blank.takes) {
    case 'object':
      return takeObject(value, blank.kinds, scope);
    case 'objects':
      return takeList(blank, value, blank.least, (one) => takeObject(one, blank.kinds, scope));
    case 'run':
      return takeList(blank, value, 1, (one) => takeRunPiece(one, scope));
    case 'length':
    case 'angle':
    case 'number':
      return takeAmount(value, blank.takes, scope);
    case 'toward':
      return takeAim(value, blank, scope);
    case 'near':
      return takeNear(value, blank, scope);
    case 'turn':
      return value === 'clockwise' ? made(-1) : value === 'anticlockwise' ? made(1) : unreadable(blank);
    case 'place':
      return takePlace(value, blank);
    case 'heading':
      return takeHeading(value, blank, scope);
    case 'shape':
      return takeList(blank, value, 0, takePassing);
  }
}

function takeList<T>(
  blank: Blank,
  value: unknown,
  least: number,
  takeOne: (one: unknown) => Outcome<T>,
): Outcome<readonly T[]> {
  if (!Array.isArray(value)) return unreadable(blank);
  if (value.length < least) return failed(null, message('problem.too-few', { wanted: { said: wantedWords(blank) } }));
  if (value.length > LIST_LENGTH) return failed(null, message('problem.too-long-list', { limit: LIST_LENGTH }));
  const taken: T[] = [];
  for (const one of value) {
    const outcome = takeOne(one);
    if (!outcome.ok) return outcome;
    taken.push(outcome.value);
  }
  return made(taken);
}

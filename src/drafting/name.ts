import { NAME_LENGTH } from './limits.ts';
import type { Direction } from './step.ts';

/** The grammar of names: lower-case words and numbers joined by hyphens, beginning with a letter. */
export const NAME_PATTERN = /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/;

/** The four ways across the sheet, as words of the language. */
export const directions: readonly Direction[] = ['left', 'right', 'up', 'down'];

/** Words that expressions read as units. */
export const unitWords: readonly string[] = ['mm', 'cm', 'in', 'inch', 'inches', 'deg', 'rad'];

export function isName(value: unknown): value is string {
  return typeof value === 'string' && value.length <= NAME_LENGTH && NAME_PATTERN.test(value);
}

export function isDirection(value: unknown): value is Direction {
  return value === 'left' || value === 'right' || value === 'up' || value === 'down';
}

/** Whether a well-formed name is a word of the language (a direction or a unit), and so cannot name an object. */
export function isReserved(name: string): boolean {
  return isDirection(name) || unitWords.includes(name);
}

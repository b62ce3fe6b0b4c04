import type { Translation } from '../../src/words/say.ts';

/** A second language as it would lie beside the English one: one file, here with a part of the catalogue. */
export const de: Translation = {
  'grader.right-figure': '{target} stimmt: {figure}.',
  'grader.judged-from-right':
    '({judged} {count, plural, one {stimmt, und davon wurde ausgegangen} other {stimmen, und davon wurde ausgegangen}}.)',
  'figure.level': '{measured} über der Taille',
  'name.break-point': 'Brechpunkt',
  'name.stand-point': 'Stehpunkt',
  'name.overlap-edge': 'Vorderkante',
};

import { expect, test } from 'vitest';
import { inColumns } from '../../src/cli/columns.ts';

test.each([
  ['a name', 'Ilse', 'Ilse  '],
  ['an accent put on afterwards takes no column', 'Zoe\u0308', 'Zoe\u0308   '],
  ['wide letters take two', '李明', '李明  '],
  ['a picture of several characters is one letter of two columns', '👩‍🏫 A', '👩‍🏫 A  '],
  ['a text that fits to the last column', 'Maring', 'Maring'],
  ['a longer one is cut', 'Maringa', 'Marin…'],
  ['it is cut between two letters', 'Zoe\u0308 A. Be', 'Zoe\u0308 A…'],
  ['a wide letter that finds half its room is left out', '李明李明', '李明… '],
  ['a picture is not cut in two', 'Tam 👩‍🏫 B', 'Tam … '],
  ['nothing', '', '      '],
  ['a joiner by itself', '\u200D', '\u200D      '],
])('%s', (_, text, cell) => {
  expect(inColumns(text, 6)).toBe(cell);
});

import { expect, test } from 'vitest';
import { ALL, choiceOf, chosen } from '../../../../src/desk/marking/sheets/choice.ts';

test('all sheets are chosen or one student’s, whatever the student is called, or if by nothing at all', () => {
  const lines = ['', 'all', 'ana', '#17'].map((key) => ({ key }));
  expect(chosen(lines, ALL)).toBe(lines);
  for (const line of lines) expect(chosen(lines, choiceOf(line.key))).toEqual([line]);
  expect(chosen(lines, choiceOf('gone'))).toEqual([]);
});

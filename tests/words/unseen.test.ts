import { describe, expect, test } from 'vitest';
import { hasUnseen, spelled, spelledLines } from '../../src/words/unseen.ts';

describe('what is not seen', () => {
  test.each([
    ['an escape of the terminal', 'a\u001b[31mb', 'a\\u001b[31mb'],
    ['the end of a line', 'a\r\nb', 'a\\u000d\\u000ab'],
    ['a turn of the direction of writing', 'a\u202eb', 'a\\u202eb'],
    ['a mark of direction', '\u200fa', '\\u200fa'],
    ['an isolate', 'a\u2066b\u2069', 'a\\u2066b\\u2069'],
    ['a separator of lines', 'a\u2028b\u2029', 'a\\u2028b\\u2029'],
    ['a control beyond ASCII', 'a\u009bb', 'a\\u009bb'],
  ])('is spelled: %s', (_, text, shown) => {
    expect([hasUnseen(text), spelled(text)]).toEqual([true, shown]);
  });

  test.each(['Åsa Ó Néill', 'ירדן', 'محمد', '1 1/4 in – “edge”', 'a\u00a0b', ''])('is not in “%s”', (text) => {
    expect([hasUnseen(text), spelled(text)]).toEqual([false, text]);
  });

  test('is spelled in each line of a text of several, and the lines stay', () => {
    expect(spelledLines('Well done.\n\u202eNext: \u0007\r\n')).toBe('Well done.\n\\u202eNext: \\u0007\\u000d\n');
  });

  test('is the same again once JSON is read', () => {
    const text = 'a\u202e\u0007\u2028"\\';
    expect(JSON.parse(spelled(JSON.stringify(text)))).toBe(text);
  });
});

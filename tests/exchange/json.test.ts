import { expect, test } from 'vitest';
import { readJson } from '../../src/exchange/json.ts';

const whyNot = (text: string, longest?: number): unknown => {
  const read = readJson(text, longest);
  return read.ok ? read.json : 'key' in read.message && [read.message.key, read.message.values];
};

test.each([
  ['nothing', ' \n', ['files.empty', {}]],
  ['bytes that are no text, and begin with a mark of their own', '\uFFFD\uFFFD{"a":1}', ['files.not-utf8', {}]],
  ['two bytes a letter', '{\0"\0a\0', ['files.not-utf8', {}]],
  ['a text cut off in its second line', '{"a":\n[1,', ['files.not-json-at', { line: 2, column: 4 }]],
  ['a slip in its second line', '{"a":1\n "b":2}', ['files.not-json-at', { line: 2, column: 2 }]],
])('%s is refused with the reason', (_, text, why) => {
  expect(whyNot(text)).toEqual(why);
});

test('a text is read up to its limit, with or without a byte order mark', () => {
  expect(whyNot('\uFEFF{"a":1}')).toEqual({ a: 1 });
  expect(whyNot('[1024]', 6)).toEqual([1024]);
  expect(whyNot('[10240]', 6)).toEqual(['files.too-large', { limit: 6 / 1024 }]);
});

import { expect, test } from 'vitest';
import { steady } from '../../src/table/model/steady.ts';

const before = {
  parts: [
    { kind: 'mark', at: { x: 1, y: 2 } },
    { kind: 'line', at: { x: 3, y: 4 } },
  ],
  says: ['one', 'two'],
};

function again(): typeof before {
  return structuredClone(before);
}

test('data that are as they were are the very ones of before', () => {
  expect(steady(again(), before)).toBe(before);
});

test('what has changed is as it is now, and what lies beside it is the very thing of before', () => {
  const now = again();
  now.parts[0] = { kind: 'mark', at: { x: 1, y: 5 } };
  const kept = steady(now, before);
  expect(kept).toEqual(now);
  expect(kept.parts[1]).toBe(before.parts[1]);
  expect(kept.says).toBe(before.says);
});

test('a list that has grown or shrunk is a new one of the same things', () => {
  const longer = [...again().says, 'three'];
  expect(steady(longer, before.says)).toEqual(longer);
  const shorter = again().parts.slice(0, 1);
  const kept = steady(shorter, before.parts);
  expect(kept).toHaveLength(1);
  expect(kept[0]).toBe(before.parts[0]);
});

test('a field that is missing is not one that holds nothing', () => {
  const now: { readonly a?: undefined; readonly b?: number } = { a: undefined };
  const was: typeof now = { b: 1 };
  expect(Object.keys(steady(now, was))).toEqual(['a']);
});

test('nothing, and nothing known before, are what they are', () => {
  expect(steady<unknown>(null, before)).toBeNull();
  expect(steady<unknown>([], {})).toEqual([]);
  expect(steady(Number.NaN, Number.NaN)).toBeNaN();
  const made = again();
  expect(steady<unknown>(made, null)).toBe(made);
});

test('what is no plain data is taken as it is', () => {
  const [now, was] = [new Map([['a', 1]]), new Map([['a', 1]])];
  expect(steady(now, was)).toBe(now);
});

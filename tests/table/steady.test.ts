import { describe, expect, test } from 'vitest';
import { steady, steadyList } from '../../src/table/model/steady.ts';

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

describe('a list', () => {
  const [one, two] = [{ at: { x: 1, y: 2 } }, { at: { x: 3, y: 4 } }];

  test('is the very one of before where all in it is the same', () => {
    const before = [one, two];
    expect(steadyList([{ at: { x: 1, y: 2 } }, two], before)).toBe(before);
  });

  test('that has grown or shrunk, or has something changed in it, keeps the rest as the very things of before', () => {
    const before = [one, two];
    const changed = { at: { x: 9, y: 2 } };
    const now = steadyList([changed, { at: { x: 3, y: 4 } }], before);
    expect(now[0]).toBe(changed);
    expect(now[1]).toBe(two);
    expect(steadyList([{ at: { x: 1, y: 2 } }], before)).toEqual([one]);
    expect(steadyList([one, two, changed], before)).toEqual([one, two, changed]);
  });
});

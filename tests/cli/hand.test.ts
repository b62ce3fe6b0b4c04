import { describe, expect, test } from 'vitest';
import { hired } from '../../src/cli/hand.ts';
import type { Work } from '../../src/cli/work.ts';

const manner = { by: { set: null, strictness: null }, form: 'json' } as const;
const weak = new URL('weak-hand.ts', import.meta.url);

const batch = (...texts: readonly string[]): readonly Work[] =>
  texts.map((text) => ({ where: `a:${text}`, file: 'a', text }));

describe('a hand that breaks down', () => {
  test.each([
    ['throw', 'thrown in the hand'],
    ['fill', 'memory'],
  ])('over a piece (%s) loses that piece only, says why, and keeps the order', async (bad, why) => {
    const hand = hired(manner, weak);
    const told = (await Promise.all([hand.do(batch('1', bad, '2')), hand.do(batch('3')), hand.do(batch(bad))])).map(
      (one) => one.map(({ out, err }) => out.trim() || err.trim()),
    );
    await hand.leave();
    expect(told).toEqual([['1', expect.stringContaining(why), '2'], ['3'], [expect.stringContaining(why)]]);
    expect(told[0]?.[1]).toMatch(new RegExp(`^a:${bad}: This could not be marked`));
    expect(hand.waiting()).toBe(0);
  });
});

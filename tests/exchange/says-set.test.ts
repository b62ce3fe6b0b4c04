import { describe, expect, test } from 'vitest';
import { SET_LENGTH, saysSet } from '../../src/exchange/says-set.ts';
import { handInJson } from '../../src/exchange/write-hand-in.ts';
import { setJson, writeSet } from '../../src/exchange/write-set.ts';
import { rightOverlap } from './hand-ins.ts';
import { weekTwo } from './sets.ts';

describe('whether a text says of itself that it is a problem set', () => {
  test('is the same wherever in it that stands, and whether it can be used or not', () => {
    const { format, ...rest } = setJson(weekTwo);
    expect(saysSet(writeSet(weekTwo))).toBe(true);
    expect(saysSet(`\uFEFF${writeSet(weekTwo)}`)).toBe(true);
    expect(saysSet(JSON.stringify({ ...rest, format }))).toBe(true);
    expect(saysSet(JSON.stringify({ format }))).toBe(true);
  });

  test('is not told of a hand-in that has a set’s words in it, of what is cut off, or of what no set could be', () => {
    expect(saysSet(JSON.stringify({ ...handInJson(rightOverlap), student: '"format": "gorgeline problem set"' }))).toBe(
      false,
    );
    expect(saysSet(JSON.stringify({ ...handInJson(rightOverlap), student: 'gorgeline problem set' }))).toBe(false);
    expect(saysSet(writeSet(weekTwo).slice(0, -9))).toBe(false);
    expect(saysSet(writeSet({ ...weekTwo, note: 'x'.repeat(SET_LENGTH) }))).toBe(false);
  });
});

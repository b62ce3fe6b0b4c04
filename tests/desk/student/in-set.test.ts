import { expect, test } from 'vitest';
import { inSetHash, setIn, wayBackTo } from '../../../src/desk/student/in-set.ts';

const ID = '0a1b2c3d';

test('a page of a set that is only looked at leads to pages that are only looked at', () => {
  for (const here of ['#try=packed-set', `#try=${ID}`]) {
    expect(inSetHash(ID, here)).toBe(`#try=${ID}`);
    expect(wayBackTo('../set/', ID, here)).toBe(`../set/#try=${ID}`);
  }
  for (const here of ['', '#set=packed-set', `#in=${ID}`]) {
    expect(inSetHash(ID, here)).toBe(`#in=${ID}`);
    expect(wayBackTo('../set/', ID, here)).toBe('../set/');
  }
});

test('an address says which set is meant, or none', () => {
  expect([`#in=${ID}`, `#try=${ID}`].map(setIn)).toEqual([ID, ID]);
  expect(['', '#in=', '#in=0A1B2C3D', `#set=${ID}`, `#try=${ID}0`, 'try'].map(setIn)).toEqual([
    null,
    null,
    null,
    null,
    null,
    null,
  ]);
});

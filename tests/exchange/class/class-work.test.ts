import { expect, test } from 'vitest';
import { latestOf } from '../../../src/exchange/class/class-work.ts';
import { besideOf } from '../../../src/exchange/class/counting.ts';

const piece = (file: string, saved: string | null, exercise = 'overlap') => ({
  file,
  student: 'ilse',
  exercise,
  saved,
});

const files = (work: readonly { readonly file: string }[]) => work.map(({ file }) => file);

const ten = '2026-02-14T10:00:00Z';
const nine = '2026-02-14T09:00:00Z';

test('of work handed in again what was saved last counts, wherever it was found', () => {
  expect(files(latestOf([piece('a', nine), piece('b', ten)]))).toEqual(['b']);
  expect(files(latestOf([piece('b', ten), piece('a', nine)]))).toEqual(['b']);
  // An hour ahead of Greenwich it is the same moment: what was found last counts.
  expect(files(latestOf([piece('a', ten), piece('b', '2026-02-14T11:00:00+01:00')]))).toEqual(['b']);
  expect(files(latestOf([piece('a', nine), piece('b', nine, 'swing')]))).toEqual(['a', 'b']);
});

test('of work without a date what was found last counts, and a date is held against the last one that was told', () => {
  expect(files(latestOf([piece('a', null), piece('b', null)]))).toEqual(['b']);
  expect(files(latestOf([piece('a', ten), piece('b', null)]))).toEqual(['b']);
  const between = [piece('a', ten), piece('b', null), piece('c', nine)];
  expect(files(latestOf(between))).toEqual(['b']);
  expect(files(besideOf(between, latestOf(between)))).toEqual(['a', 'c']);
});

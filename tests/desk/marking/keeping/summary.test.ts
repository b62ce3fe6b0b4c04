import { expect, test } from 'vitest';
import { summaryFrom } from '../../../../src/desk/marking/keeping/summary.ts';

const whole = { title: 'Week 2', students: 3, pieces: 7, saved: '2026-03-05T10:00:00.000Z' };

test('a summary is told as it was kept, and no more of it', () => {
  expect(summaryFrom({ ...whole, more: '<b>' })).toEqual(whole);
});

test.each<[string, unknown]>([
  ['nothing', undefined],
  ['null', null],
  ['a text', 'Week 2'],
  ['a title that is none', { ...whole, title: 2 }],
  ['students that are no number', { ...whole, students: '3' }],
  ['pieces that are missing', { ...whole, pieces: undefined }],
  ['a moment that is none', { ...whole, saved: 'Sunday' }],
  ['a moment of another kind', { ...whole, saved: 5 }],
])('%s is no summary', (_, found) => {
  expect(summaryFrom(found)).toBeNull();
});

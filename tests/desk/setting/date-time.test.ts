import { expect, test } from 'vitest';
import { dateTimeOf, utcOf } from '../../../src/desk/setting/date-time.ts';
import { momentText } from '../../../src/words/moment.ts';

test('a moment in a field is that of this machine’s time zone, and comes back', () => {
  const utc = '2026-03-06T17:00:00.000Z';
  const local = new Date(utc);
  expect(dateTimeOf(utc)).toBe(
    `2026-03-0${local.getDate()}T${String(local.getHours()).padStart(2, '0')}:${String(local.getMinutes()).padStart(2, '0')}`,
  );
  expect(utcOf(dateTimeOf(utc))).toBe(utc);
});

test('an empty field is no moment', () => {
  expect([dateTimeOf(null), utcOf(''), utcOf('soon'), utcOf('12026-03-06T17:00')]).toEqual(['', null, null, null]);
  expect(dateTimeOf(utcOf('9999-12-30T12:00'))).toBe('9999-12-30T12:00');
});

test('a moment is told with its weekday, by the clock of this machine', () => {
  expect(momentText(utcOf('2026-03-06T12:00') ?? '', 'en')).toMatch(/^Friday,? 6 March 2026/);
});

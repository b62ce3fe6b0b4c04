import { expect, test } from 'vitest';
import { isRead, sayRead } from '../../src/course/read-lessons.ts';
import { bestMarks, hasDraft, keepMarks } from '../../src/table/store/marks.ts';

// There is no window here: what would be forbidden in a browser is kept in memory.
test('a lesson is read when the reader says so, and not when they take it back', () => {
  expect(isRead('overlap')).toBe(false);
  sayRead('overlap', true);
  expect(isRead('overlap')).toBe(true);
  expect(isRead('break-point')).toBe(false);
  sayRead('overlap', false);
  expect(isRead('overlap')).toBe(false);
});

test('the best marks are kept, not the last ones', () => {
  expect(bestMarks('overlap')).toBeNull();
  keepMarks('overlap', { marks: 4, of: 6 });
  keepMarks('overlap', { marks: 2, of: 6 });
  expect(bestMarks('overlap')).toEqual({ marks: 4, of: 6 });
  keepMarks('overlap', { marks: 6, of: 6 });
  expect(bestMarks('overlap')).toEqual({ marks: 6, of: 6 });
  expect(hasDraft('overlap')).toBe(false);
});

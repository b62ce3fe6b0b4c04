import { expect, test } from 'vitest';
import { studentKey } from '../../src/exchange/student.ts';

const key = (student: string, number = '') => studentKey({ student, number });

test('a student is the same however the name was typed', () => {
  const ada = key('Ada Lovén');
  // Capitals, spaces, an accent put on afterwards, wide letters from another keyboard, a ligature.
  for (const name of ['ada lovén', '  ADA \t LOVÉN ', 'Ada Love\u0301n', 'Ａｄａ　Ｌｏｖéｎ'])
    expect(key(name)).toBe(ada);
  expect(key('Griﬃn')).toBe(key('griffin'));
  expect(key('Ada Loven')).not.toBe(ada);
});

test('a number goes before the name, and an empty one does not', () => {
  expect(key('Ada', ' 17 ')).toBe(key('Somebody else', '１７'));
  expect(key('Ada', '  ')).toBe(key('Ada'));
  expect(key('Ada', '17')).not.toBe(key('17'));
});

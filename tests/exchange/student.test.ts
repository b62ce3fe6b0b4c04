import { expect, test } from 'vitest';
import { readHandInJson } from '../../src/exchange/read-hand-in.ts';
import { studentKey, writtenStudent } from '../../src/exchange/student.ts';
import { handInJson } from '../../src/exchange/write-hand-in.ts';
import { rightOverlap } from './hand-ins.ts';

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

test('whatever is pasted for a name and a number, a file takes it, and it is the same student’s', () => {
  const pasted = { student: `Ilse\tMaringa\u0007${'a'.repeat(300)}`, number: `1\t7${'0'.repeat(60)}` };
  const written = writtenStudent(pasted);
  expect(written.student).toMatch(/^Ilse Maringa a+$/);
  expect(written.number).toMatch(/^1 70+$/);
  expect(readHandInJson(handInJson({ ...rightOverlap, ...pasted })).ok).toBe(false);
  expect(readHandInJson(handInJson({ ...rightOverlap, ...written })).ok).toBe(true);
  expect(studentKey(writtenStudent({ student: 'Ilse\tMaringa', number: '' }))).toBe(key('Ilse\tMaringa'));
  expect(writtenStudent({ student: 'Ilse ', number: '' })).toEqual({ student: 'Ilse ', number: '' });
});

import { expect, test } from 'vitest';
import { unreadByStudent, unreadPiece } from '../../../src/exchange/class/unread.ts';

const ilse = { student: 'Ilse Maringa', number: '17' };

test('a piece that could not be read belongs to a file, whichever line of it', () => {
  expect(unreadPiece('class/ilse-maringa.hand-in.ndjson:12', '').file).toBe('class/ilse-maringa.hand-in.ndjson');
  expect(unreadPiece('class/12:30.json', '').file).toBe('class/12:30.json');
});

test('a file is somebody’s whose whole name it begins with, and not one’s whose name begins as it does', () => {
  const whose = (file: string): readonly string[] => [...unreadByStudent([unreadPiece(file, '')], [ilse]).keys()];
  expect(whose('Ilse-Maringa.week-2.hand-in.ndjson:3')).toEqual(['#17']);
  expect(whose('ilse-maringarena.week-2.hand-in.ndjson')).toEqual([]);
  expect(whose('ilse.week-2.hand-in.ndjson')).toEqual([]);
});

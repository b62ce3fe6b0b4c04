import type { MarkingFile } from '../../../src/exchange/marking-file/marking-file.ts';
import { rightOverlap } from '../hand-ins.ts';

/** The work on a desk, by an invented teacher, of a class that was given no set. */
export const evening: MarkingFile = {
  set: null,
  work: [
    {
      found: 'week 2/ilse.json',
      handIn: rightOverlap,
      marks: { 'overlap-edge': { marks: 4, of: 6, reason: 'Right, but two hints were taken in a test.' } },
      comment: 'Well squared.',
    },
  ],
  students: [
    {
      student: 'Ilse Maringa',
      number: '17',
      comment: 'Next week: the roll line.\nBring your own measures.',
      until: null,
    },
  ],
  unread: [
    { found: 'week 2/photo.jpg', begun: '', why: '' },
    {
      found: 'week 2/bo.json',
      begun: '{"format":"gorgeline hand-in","version":1,"student":"Bo","number":"","set":null,"exercise":"overl',
      why: 'This is not a whole file of the course: it can be read as far as line 1, column 101. It is cut off there, or was changed by hand. Save it again where it was made.',
    },
  ],
  list: 'Ilse Maringa, 17\nTam Okoro, 18',
  counts: 'last',
  saved: '2026-02-15T18:00:00.000Z',
};

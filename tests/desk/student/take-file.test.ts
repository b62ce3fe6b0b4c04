import { expect, test } from 'vitest';
import { loadExercise } from '../../../src/cli/exercises.ts';
import { takeFile } from '../../../src/desk/student/take-file.ts';
import type { Work } from '../../../src/desk/student/use-work.ts';
import { setOrder } from '../../../src/exchange/set-order.ts';
import type { Student } from '../../../src/exchange/student.ts';
import { writeHandIn } from '../../../src/exchange/write-hand-in.ts';
import { setMark } from '../../../src/exchange/write-set.ts';
import { exercises, weekTwo } from '../../exchange/sets.ts';

const ilse = { student: 'Ilse Maringa', number: '17' };
const roll = loadExercise('roll-line');
const handIn = writeHandIn({
  ...ilse,
  ...{ set: setMark(weekTwo), exercise: roll.id, order: setOrder(weekTwo, roll, ilse), strictness: 'workroom' },
  ...{ unit: 'cm', steps: roll.reference, shown: [], hints: {}, checks: 0, begun: null, saved: null },
}).replaceAll('\n', ' ');

/** Opens Ilse's hand-in where that name is written, and returns the names that were then written. */
function openedBy(student: Student): readonly Student[] {
  const written: Student[] = [];
  const work: Work = {
    ...{ set: weekTwo, awake: true, trial: false, trouble: null, kept: 'kept', student },
    ...{ open: () => undefined, look: () => undefined, setStudent: (next) => written.push(next) },
  };
  expect(takeFile(handIn, exercises, work)).toMatchObject({ key: 'work.opened-hand-in', values: { count: 1 } });
  return written;
}

test('a hand-in opened where no name is written brings the name with it', () => {
  expect(openedBy({ student: '', number: ' ' })).toEqual([ilse]);
});

test('a name that is written stays when a hand-in is opened', () => {
  expect(openedBy({ student: 'Tam', number: '' })).toEqual([]);
});

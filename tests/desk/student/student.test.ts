import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../../src/cli/exercises.ts';
import { keepSet, keptSet } from '../../../src/desk/student/kept-set.ts';
import { handInOf, progressOf } from '../../../src/desk/student/working-on.ts';
import type { HandIn } from '../../../src/exchange/hand-in.ts';
import { orderFrom } from '../../../src/exchange/order-from.ts';
import { readHandIn } from '../../../src/exchange/read-hand-in.ts';
import { isOwn, setOrder } from '../../../src/exchange/set-order.ts';
import { setMark } from '../../../src/exchange/write-set.ts';
import { keyOf, printRecord } from '../../../src/table/store/record.ts';
import { storageIn } from '../../../src/table/store/storage.ts';
import { exercises, weekTwo } from '../../exchange/sets.ts';

const mark = setMark(weekTwo);
const ilse = { student: ' Ilse Maringa ', number: '17' };
const rollLine = loadExercise('roll-line');

const draft: HandIn = {
  student: '',
  number: '',
  set: mark,
  exercise: 'roll-line',
  order: setOrder(weekTwo, rollLine, ilse),
  strictness: 'workroom',
  unit: 'cm',
  steps: [{ verb: 'parallel', name: 'line-1', to: 'centre-front', distance: 'overlap', side: 'left' }],
  shown: [],
  hints: {},
  checks: 1,
  begun: '2026-03-01T09:00:00.000Z',
  saved: null,
};

/** A browser's storage, in memory. */
function emptyStorage() {
  const kept = new Map<string, string>();
  return storageIn(() => ({
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, text) => kept.set(key, text),
    removeItem: (key) => kept.delete(key),
  }));
}

describe('a set that a student opened', () => {
  test('is found again, by itself and as the last one', () => {
    const local = emptyStorage();
    keepSet(local, weekTwo);
    keepSet(local, { ...weekTwo, title: 'Week 3' });
    expect(keptSet(local, exercises)?.title).toBe('Week 3');
    expect(keptSet(local, exercises, mark.id)).toEqual(weekTwo);
    expect(keptSet(emptyStorage(), exercises)).toBeNull();
  });
});

describe('the hand-in of a set', () => {
  test('has a line for each draft that was begun, each readable by itself, with the student’s name', () => {
    const local = emptyStorage();
    local.write(keyOf('roll-line', mark), printRecord({ handIn: draft, upTo: 1, checked: false }));
    local.write(
      keyOf('notch-level', mark),
      printRecord({ handIn: { ...draft, exercise: 'notch-level', steps: [] }, upTo: 0, checked: false }),
    );
    local.write(keyOf('overlap-button', mark), '{"upTo":');
    const { text, count } = handInOf(local, weekTwo, ilse, '2026-03-05T10:00:00.000Z');
    expect(count).toBe(1);
    const read = readHandIn(text.trimEnd());
    expect(read).toEqual({
      ok: true,
      handIn: { ...draft, student: 'Ilse Maringa', number: '17', saved: '2026-03-05T10:00:00.000Z' },
    });
    expect(read.ok && orderFrom(read.handIn, rollLine).ok).toBe(true);
    expect(progressOf(local, 'overlap-button', mark).state).toBe('damaged');
    expect(progressOf(local, 'notch-level', mark).state).toBe('fresh');
  });
});

test('a draft is told apart that was made for another name’s figure', () => {
  const { figure } = draft.order;
  expect(isOwn(weekTwo, figure, { student: 'I. M.', number: '17' })).toBe(true);
  expect(isOwn(weekTwo, figure, { student: 'Ilse Maringa', number: '' })).toBe(false);
  expect(isOwn({ ...weekTwo, figures: 'stated' }, figure, { student: 'Tam', number: '' })).toBe(true);
});

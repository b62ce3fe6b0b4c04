import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { loadExercise } from '../../../src/cli/exercises.ts';
import { takeFile } from '../../../src/desk/student/take-file.ts';
import type { Work } from '../../../src/desk/student/use-work.ts';
import { progressOf } from '../../../src/desk/student/working-on.ts';
import { setOrder } from '../../../src/exchange/set-order.ts';
import type { Student } from '../../../src/exchange/student.ts';
import { writeHandIn } from '../../../src/exchange/write-hand-in.ts';
import { setMark } from '../../../src/exchange/write-set.ts';
import { local } from '../../../src/table/store/own-storage.ts';
import { keyOf } from '../../../src/table/store/record.ts';
import type { Kept } from '../../../src/table/store/storage.ts';
import { exercises, weekTwo } from '../../exchange/sets.ts';

const ilse = { student: 'Ilse Maringa', number: '17' };
const roll = loadExercise('roll-line');
const handIn = writeHandIn({
  ...ilse,
  ...{ set: setMark(weekTwo), exercise: roll.id, order: setOrder(weekTwo, roll, ilse), strictness: 'workroom' },
  ...{ unit: 'cm', steps: roll.reference, shown: [], hints: {}, checks: 0, begun: null, saved: null },
});

/** Opens a file where that name is written; gives what came of it, the names that were written then, and how drafts were kept. */
function opened(text: string, student: Student = ilse) {
  const names: Student[] = [];
  const kept: Kept[] = [];
  const work: Work = {
    ...{ set: weekTwo, awake: true, trial: false, trouble: null, kept: 'kept', student },
    ...{ open: () => undefined, look: () => undefined, noteKept: (now) => kept.push(now) },
    setStudent: (next) => names.push(next),
  };
  return { ...takeFile(text, exercises, work), names, kept };
}

function openedBy(student: Student): readonly Student[] {
  const { says, names } = opened(handIn, student);
  expect(says).toMatchObject({ key: 'work.opened-hand-in', values: { count: 1 } });
  return names;
}

const lying = (): unknown => {
  const progress = progressOf(local, roll.id, setMark(weekTwo));
  return progress.state === 'begun' ? progress.handIn.steps.length : progress.state;
};

beforeEach(() => {
  const kept = new Map<string, string>();
  vi.stubGlobal('window', {
    location: { hash: '' },
    localStorage: {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, text: string) => kept.set(key, text),
      removeItem: (key: string) => kept.delete(key),
    },
  });
});
afterEach(() => vi.unstubAllGlobals());

test('a hand-in opened where no name is written brings the name with it', () => {
  expect(openedBy({ student: '', number: ' ' })).toEqual([ilse]);
});

test('a name that is written stays when a hand-in is opened', () => {
  expect(openedBy({ student: 'Tam', number: '' })).toEqual([]);
});

describe('a draft that lies there already', () => {
  const more = JSON.stringify({ ...JSON.parse(handIn), steps: [], checks: 2 });

  test('can be put back where that of the file took its place', () => {
    opened(handIn);
    const { says, putBack } = opened(more);
    expect(says).toMatchObject({ key: 'work.opened-over', values: { count: 1, over: 1 } });
    expect(lying()).toBe('fresh');
    putBack?.();
    expect(lying()).toBe(roll.reference.length);
  });

  test('is nothing to put back where it is the same', () => {
    opened(handIn);
    expect(opened(handIn.replace('"checks": 0', '"checks": 2')).putBack).toBeNull();
  });

  test('can be put back as it was, also where it could not be read', () => {
    const key = keyOf(roll.id, setMark(weekTwo));
    local.write(key, '{"handIn":');
    const { putBack } = opened(handIn);
    expect(lying()).toBe(roll.reference.length);
    putBack?.();
    expect(local.read(key)).toBe('{"handIn":');
  });
});

test('a hand-in is opened a line a draft, or set out over lines', () => {
  const line = JSON.stringify(JSON.parse(handIn));
  expect(opened(`\uFEFF${line}\r\n\r\n`).says).toMatchObject({ key: 'work.opened-hand-in', values: { count: 1 } });
  expect(opened(handIn).says).toMatchObject({ key: 'work.opened-hand-in' });
  expect(opened(' \n').says).toMatchObject({ key: 'desk.open-failed' });
});

test('what could not be kept is said', () => {
  const full = (): never => {
    throw new DOMException('full', 'QuotaExceededError');
  };
  vi.stubGlobal('window', { location: { hash: '' }, localStorage: { getItem: () => null, setItem: full } });
  expect(opened(handIn).kept).toEqual(['full']);
});

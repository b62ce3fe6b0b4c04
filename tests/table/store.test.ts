import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { HandIn } from '../../src/exchange/hand-in.ts';
import { writeHandIn } from '../../src/exchange/write-hand-in.ts';
import { fileName, openDraft } from '../../src/table/store/files.ts';
import { printRecord, readRecord } from '../../src/table/store/record.ts';
import { storageIn } from '../../src/table/store/storage.ts';
import { say } from '../../src/words/say.ts';

const exercise = loadExercise('roll-line');
const handIn: HandIn = {
  student: 'Ana Bücher-Åström',
  number: '',
  set: null,
  exercise: 'roll-line',
  order: { figure: { named: 'amara' }, style: {}, house: exercise.house },
  strictness: 'learner',
  unit: 'in',
  steps: [{ verb: 'parallel', name: 'line-1', to: 'centre-front', distance: 'overlap', side: 'left' }],
  shown: ['roll-line'],
  hints: { 'roll-line': 2 },
  checks: 3,
  begun: '2026-02-14T09:05:00.000Z',
  saved: null,
};

describe('a kept draft', () => {
  test('is read back as it was', () => {
    expect(readRecord(printRecord({ handIn, upTo: 0 }), exercise)).toEqual({ handIn, upTo: 0 });
  });

  test('that is damaged, or of another exercise, is not read', () => {
    expect(readRecord('{"upTo":1', exercise)).toBeNull();
    expect(readRecord('null', exercise)).toBeNull();
    expect(readRecord(JSON.stringify({ upTo: 1, handIn: { steps: [] } }), exercise)).toBeNull();
    expect(readRecord(printRecord({ handIn: { ...handIn, exercise: 'overlap' }, upTo: 0 }), exercise)).toBeNull();
  });

  test('stands at the end of its working where it cannot tell', () => {
    const text = printRecord({ handIn, upTo: 0 }).replace('"upTo":0', '"upTo":99');
    expect(readRecord(text, exercise)?.upTo).toBe(1);
  });
});

describe('a draft file', () => {
  const why = (text: string) => {
    const opened = openDraft(text, exercise);
    return opened.ok ? null : say(opened.message, { language: 'en', unit: 'cm' });
  };

  test('opens at its own exercise', () => {
    expect(openDraft(writeHandIn(handIn), exercise)).toEqual({ ok: true, handIn });
  });

  test('is refused with a reason', () => {
    expect(why(writeHandIn({ ...handIn, exercise: 'overlap' }))).toBe(
      'This file is a draft for another exercise: overlap.',
    );
    expect(why('not json')).toMatch(/^This file could not be opened\. ./);
    expect(why('{"format":"something else"}')).toMatch(/^This file could not be opened\. ./);
  });

  test('is called after the student and the exercise, in letters every system takes', () => {
    expect(fileName(handIn, 'hand-in.json')).toBe('ana-bucher-astrom.roll-line.hand-in.json');
    expect(fileName({ ...handIn, student: '' }, 'draft.json')).toBe('roll-line.draft.json');
  });
});

describe('storage', () => {
  const full = () => {
    throw new DOMException('', 'QuotaExceededError');
  };
  const place = (setItem: () => void) => () => ({ getItem: () => 'old', setItem, removeItem: () => undefined });

  test('that is full or forbidden says so, and keeps in memory what was written', () => {
    const store = storageIn(place(full));
    expect(store.write('draft', 'new')).toBe('full');
    expect(store.read('draft')).toBe('new');
    const forbidden = storageIn(() => {
      throw new DOMException('', 'SecurityError');
    });
    expect(forbidden.read('draft')).toBeNull();
    expect(forbidden.write('draft', 'new')).toBe('forbidden');
    expect(forbidden.read('draft')).toBe('new');
    forbidden.remove('draft');
    expect(forbidden.read('draft')).toBeNull();
  });

  test('keeps what it can', () => {
    const store = storageIn(place(() => undefined));
    expect(store.write('draft', 'new')).toBe('kept');
    expect(store.read('draft')).toBe('old');
  });
});

import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { HandIn } from '../../src/exchange/hand-in.ts';
import { writeHandIn } from '../../src/exchange/write-hand-in.ts';
import { fileName, openDraft } from '../../src/table/store/files.ts';
import { KeptDraft } from '../../src/table/store/kept-draft.ts';
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
    for (const checked of [true, false]) {
      const record = { handIn, upTo: 0, checked };
      expect(readRecord(printRecord(record), exercise)).toEqual(record);
    }
  });

  test('counts as checked only where it says so in so many words', () => {
    const text = printRecord({ handIn, upTo: 0, checked: true });
    expect(readRecord(text.replace('"checked":true,', ''), exercise)?.checked).toBe(false);
    expect(readRecord(text.replace('"checked":true', '"checked":1'), exercise)?.checked).toBe(false);
  });

  test('that is damaged, or of another exercise, is not read', () => {
    expect(readRecord('{"upTo":1', exercise)).toBeNull();
    expect(readRecord('null', exercise)).toBeNull();
    expect(readRecord(JSON.stringify({ upTo: 1, handIn: { steps: [] } }), exercise)).toBeNull();
    expect(
      readRecord(printRecord({ handIn: { ...handIn, exercise: 'overlap' }, upTo: 0, checked: false }), exercise),
    ).toBeNull();
  });

  test('stands at the end of its working where it cannot tell', () => {
    const text = printRecord({ handIn, upTo: 0, checked: false }).replace('"upTo":0', '"upTo":99');
    expect(readRecord(text, exercise)?.upTo).toBe(1);
  });
});

describe('the draft that a browser keeps for a table', () => {
  const record = { handIn, upTo: 1, checked: false };
  const text = printRecord(record);
  const other = printRecord({ handIn: { ...handIn, steps: [] }, upTo: 0, checked: false });
  /** A table, and another tab that writes to the same place. */
  const opened = (lying: string | null) => {
    const there = new Map(lying === null ? [] : [['draft', lying]]);
    const storage = storageIn(() => ({
      getItem: (key) => there.get(key) ?? null,
      setItem: (key, kept) => there.set(key, kept),
      removeItem: (key) => there.delete(key),
    }));
    return { kept: new KeptDraft(storage, 'draft', exercise), there };
  };

  test('is taken up as it lies there, and is then no other tab’s', () => {
    const { kept } = opened(text);
    expect(kept.take()).toEqual({ state: 'draft', record });
    expect([
      kept.hasWritten(text),
      kept.isOthers({ handIn: { ...handIn, steps: [] }, upTo: 0, checked: false }),
    ]).toEqual([true, false]);
  });

  test('is another’s once another tab has written something else there, and not where it wrote the same', () => {
    const { kept, there } = opened(null);
    expect(kept.take()).toEqual({ state: 'nothing' });
    expect(kept.write(text)).toBe('kept');
    there.set('draft', other);
    expect(kept.isOthers(record)).toBe(true);
    there.set('draft', printRecord({ handIn: { ...handIn, checks: 9, unit: 'cm' }, upTo: 1, checked: false }));
    expect(kept.isOthers(record)).toBe(false);
    there.delete('draft');
    expect(kept.isOthers(record)).toBe(false);
  });

  test('that is damaged is neither taken up nor written over before it is forgotten', () => {
    const { kept, there } = opened('{"upTo":1');
    expect(kept.take()).toEqual({ state: 'damaged', raw: '{"upTo":1' });
    expect([kept.hasWritten(text), kept.isOthers(record)]).toEqual([false, true]);
    expect(kept.keepAsFound()).toBe('kept');
    expect(there.get('draft')).toBe('{"upTo":1');
    kept.forget();
    expect(there.has('draft')).toBe(false);
  });

  test('is not written for a page that is only looked at', () => {
    const { kept, there } = opened(null);
    kept.begin(text);
    expect([kept.hasWritten(text), kept.keepAsFound(), there.size]).toEqual([true, 'kept', 0]);
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

import { describe, expect, test } from 'vitest';
import type { Blank } from '../../src/drafting/verbs.ts';
import { optionsFor } from '../../src/table/model/options.ts';
import { readingOf } from '../../src/table/model/reading.ts';
import { sheetOf } from '../../src/table/model/reduce.ts';
import { readTyped } from '../../src/table/model/typed.ts';
import { say } from '../../src/words/say.ts';
import { benchAfter, edge, level, room } from './room.ts';

const reader = { language: 'en', unit: 'cm' } as const;
const sheet = sheetOf(benchAfter([...edge, ...level]), room);
const speak = (words: Parameters<typeof say>[0]) => say(words, reader);
const typed = (text: string, blank: Blank) =>
  readTyped(
    text,
    blank,
    sheet,
    optionsFor(blank, sheet, () => true, undefined),
    speak,
  );
const trouble = (text: string, blank: Blank) => {
  const read = typed(text, blank);
  return read.ok ? null : speak(read.message);
};

describe('what is typed into a blank', () => {
  const line: Blank = { takes: 'object', kinds: ['line'] };

  test('names an object as it is called or as it is spelt', () => {
    expect(typed('Centre front', line)).toMatchObject({ ok: true, value: 'centre-front' });
    expect(typed('centre-front', line)).toMatchObject({ ok: true, value: 'centre-front' });
    expect(trouble('neck point', line)).toMatchInlineSnapshot(
      `"“neck point” is not on the sheet, or does not fit this blank. Choose one from the list, or point at it."`,
    );
  });

  test('names a measure as it is read, with spaces, alone or in an expression', () => {
    expect(typed('neck base', { takes: 'length' })).toMatchObject({ ok: true, value: 'neck-base' });
    expect(typed('Front waist / 2 - overlap', { takes: 'length' })).toMatchObject({
      ok: true,
      value: 'front-waist / 2 - overlap',
    });
    expect(typed('front waist length', { takes: 'length' })).toMatchObject({ ok: true, value: 'front-waist' });
    expect(typed('front-waist', { takes: 'length' })).toMatchObject({ ok: true, value: 'front-waist' });
  });

  test('is worth what its expression comes to', () => {
    expect(typed('overlap + 6 mm', { takes: 'length' })).toMatchObject({
      ok: true,
      worth: { dimension: 'length', value: 36 },
    });
    expect(typed('1 1/4 in', { takes: 'length' })).toMatchObject({ ok: true, worth: { value: 31.75 } });
  });

  test('says what stands in the way of an amount', () => {
    expect(trouble('3', { takes: 'length' })).toMatchInlineSnapshot(
      `"“3” is a bare number, and a length is wanted. Give it a unit: 3 cm or 3 in."`,
    );
    expect(trouble('30 deg', { takes: 'length' })).toMatchInlineSnapshot(
      `"“30 deg” is an angle, and a length is wanted here."`,
    );
  });

  test('has its decimals with a comma or a point, and keeps the point', () => {
    expect(typed('overlap + 0,5 cm', { takes: 'length' })).toMatchObject({
      ok: true,
      value: 'overlap + 0.5 cm',
      worth: { value: 35 },
    });
    expect(typed('22,5 deg', { takes: 'angle' })).toMatchObject({ ok: true, value: '22.5 deg' });
    expect(typed('-2,5 cm,3 cm', { takes: 'place' })).toMatchObject({ ok: true, value: [-25, 30] });
    expect(trouble('3, 2 cm', { takes: 'length' })).not.toBeNull();
  });

  test('says a way as the sentence says it, or begins to', () => {
    const toward: Blank = { takes: 'toward' };
    expect(typed('above it', toward)).toMatchObject({ ok: true, value: 'up' });
    expect(typed('Above', toward)).toMatchObject({ ok: true, value: 'up' });
    expect(typed('to the left', toward)).toMatchObject({ ok: true, value: 'left' });
    expect(typed('downward', toward)).toMatchObject({ ok: true, value: 'down' });
    expect(typed('the lowest', { takes: 'near' })).toMatchObject({ ok: true, value: 'down' });
    expect(trouble('to the', toward)).not.toBeNull();
    expect(trouble('be', toward)).not.toBeNull();
    expect(trouble('above', { takes: 'turn' })).not.toBeNull();
  });

  test('gives a place as two lengths', () => {
    expect(typed('-2.5 cm, 3 cm', { takes: 'place' })).toMatchObject({ ok: true, value: [-25, 30] });
    expect(trouble('3 cm', { takes: 'place' })).toMatchInlineSnapshot(
      `"Write two lengths, to the right of the centre front and above the waist: -2.5 cm, 3 cm."`,
    );
  });
});

describe('lists', () => {
  test('offer measures with what they are worth', () => {
    const words = optionsFor({ takes: 'length' }, sheet, () => true, undefined).map((option) => speak(option.words));
    expect(words.slice(0, 2)).toEqual(['overlap (3 cm)', 'stand (3.2 cm)']);
  });

  test('offer parts of a line between the marks on it', () => {
    const parts = optionsFor({ takes: 'run' }, sheet, () => true, undefined).map((option) => speak(option.words));
    expect(parts).toContain('shoulder line, from neck point to shoulder tip');
  });
});

describe('the tape laid on without a step', () => {
  const reads = (one: string, other?: string) => {
    const reading = readingOf(
      { tool: 'measure', filled: other === undefined ? { one } : { one, other }, at: null, answers: null },
      sheet,
    );
    return reading && speak(reading);
  };

  test('reads between any two things, and one alone', () => {
    expect(reads('line-1', 'centre-front')).toBe('They are 3 cm apart.');
    expect(reads('front-neck-point', 'waist')).toBe('They are 35.4 cm apart.');
    expect(reads('waist', 'centre-front')).toBe('They cross at 90°.');
    expect(reads('front-neck-point')).toMatch(/^It lies on /);
    expect(reads('shoulder-line')).toBe('It runs at 22.5° to the waist.');
    expect(reads('front-neckline', 'waist')).toBe(
      'There is no one distance between these. Choose a mark and one of them.',
    );
  });
});

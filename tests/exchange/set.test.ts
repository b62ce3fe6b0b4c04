import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { setSchema } from '../../src/cli/file-schemas.ts';
import { readSet, readSetJson } from '../../src/exchange/read-set.ts';
import { refusalOf } from '../../src/exchange/refusal.ts';
import type { ProblemSet } from '../../src/exchange/set.ts';
import { setJson, setMark, writeSet } from '../../src/exchange/write-set.ts';
import { placeText } from '../../src/grader/reading/fault.ts';
import { say } from '../../src/words/say.ts';
import type { Loose } from './hand-ins.ts';
import { exercises, weekTwo } from './sets.ts';

const reader = { language: 'en', unit: 'cm' } as const;

function faultsAfter(change: (json: Loose) => void): string {
  const json = JSON.parse(JSON.stringify(setJson(weekTwo)));
  change(json);
  const read = readSetJson(json, exercises);
  if (read.ok) return 'no fault';
  return read.faults.map(({ at, message }) => `${placeText(at) || '(file)'}: ${say(message, reader)}`).join('\n');
}

describe('a problem set', () => {
  test('that was written is read back the same', () => {
    expect(readSet(writeSet(weekTwo), exercises)).toEqual({ ok: true, set: weekTwo });
  });

  test.each(['stated', { named: 'amara' }, { sampled: 'anyone' }, { each: 'men' }] as const)(
    'keeps %o for its figures',
    (figures) => {
      const set = { ...weekTwo, figures };
      expect(readSet(writeSet(set), exercises)).toEqual({ ok: true, set });
    },
  );

  test('is what the schema says, and the schema is the one the reader works by', () => {
    const schema = JSON.parse(readFileSync(new URL('../../docs/set.schema.json', import.meta.url), 'utf8'));
    expect(schema).toEqual(JSON.parse(JSON.stringify(setSchema())));
    const fits = new Ajv2020({ formats: { 'date-time': true } }).compile(schema);
    expect([fits(setJson(weekTwo)), fits.errors]).toEqual([true, null]);
    expect(fits({ ...setJson(weekTwo), exercises: [] })).toBe(false);
    expect(fits({ ...setJson(weekTwo), checks: 0 })).toBe(false);
  });

  test('stands in docs/files.md as one that is read', () => {
    const text = readFileSync(new URL('../../docs/files.md', import.meta.url), 'utf8');
    const shown = /```json\n(\{\n {2}"format": "gorgeline problem set"[\s\S]*?)```/.exec(text)?.[1] ?? '';
    expect(readSet(shown, exercises)).toEqual({ ok: true, set: weekTwo });
  });
});

describe('the mark by which hand-ins know a set', () => {
  test('is the same however its house rules were listed', () => {
    const house = Object.fromEntries(Object.entries(weekTwo.house).reverse());
    expect(setMark({ ...weekTwo, house })).toEqual(setMark(weekTwo));
  });

  test.each<Partial<ProblemSet>>([
    { note: '' },
    { seed: 'autumn-c' },
    { exercises: weekTwo.exercises.slice(1) },
    { strictness: 'learner' },
    { due: null },
  ])('is another after %o', (change) => {
    expect(setMark({ ...weekTwo, ...change }).id).not.toBe(setMark(weekTwo).id);
  });
});

describe('what does not fit', () => {
  test('is said field by field', () => {
    expect(
      faultsAfter((json) => {
        json.title = ' ';
        json.note = 'bell\u0007';
        json.exercises[1].marks = 0.5;
        json.figures = { each: 'children' };
        json.seed = '';
        json.strictness = 'strict';
        json.feedback = 'all';
        json.checks = 0;
        json.hints = 'yes';
        json.due = 'Friday';
        json.prize = 'shears';
      }),
    ).toMatchSnapshot();
  });

  test.each<[string, (json: Loose) => void]>([
    ['an exercise nobody knows', (json) => Object.assign(json.exercises[0], { exercise: 'roll-lin' })],
    ['an exercise twice', (json) => Object.assign(json.exercises[2], { exercise: 'roll-line' })],
    ['no exercise', (json) => Object.assign(json, { exercises: [] })],
    ['a person nobody knows', (json) => Object.assign(json, { figures: { named: 'amarra' } })],
    ['a house rule nobody knows', (json) => Object.assign(json.house, { 'overlap-rul': 'given' })],
    ['a choice nobody knows', (json) => Object.assign(json.house, { 'overlap-rule': 'thrice-the-button' })],
    ['a hand-in', (json) => Object.assign(json, { format: 'gorgeline hand-in' })],
    ['a later version', (json) => Object.assign(json, { version: 9, exercises: 'all' })],
    ['a field of every object', (json) => Reflect.defineProperty(json, '__proto__', { value: {}, enumerable: true })],
  ])('%s', (_, change) => {
    expect(faultsAfter(change)).toMatchSnapshot();
  });

  test.each([
    ['2026-02-30T17:00:00.000Z', false],
    ['2026-04-31T17:00:00Z', false],
    ['2025-02-29T17:00:00Z', false],
    ['2028-02-29T17:00:00Z', true],
    ['2026-12-31T23:59:59.999Z', true],
  ])('a day is one of the calendar: %s, %s', (due, isDay) => {
    expect(readSetJson({ ...setJson(weekTwo), due }, exercises).ok).toBe(isDay);
  });

  test.each([
    ['2026-03-06T17:00:00+01:00', true],
    ['2026-03-06T17:00:00+01', false],
    ['2026-03-06T17:00:00+0100', false],
    ['2026-03-06 17:00:00Z', false],
    ['2026-03-06T17:00:00', false],
  ])('a time is written so that every machine reads the same moment: %s, %s', (due, isMoment) => {
    expect(readSetJson({ ...setJson(weekTwo), due }, exercises).ok).toBe(isMoment);
    if (isMoment) expect(Date.parse(due)).not.toBeNaN();
  });

  test('is refused in a sentence, whatever is written where', () => {
    const paths = Object.keys(setJson(weekTwo));
    fc.assert(
      fc.property(fc.constantFrom(...paths), fc.jsonValue(), (field, value) => {
        const read = readSetJson({ ...setJson(weekTwo), [field]: value }, exercises);
        if (!read.ok) expect(say(refusalOf(read.faults), reader)).toMatch(/^\S.*\S$/s);
      }),
    );
  });
});

import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { markingSchema } from '../../../src/cli/file-schemas.ts';
import type { MarkingFile } from '../../../src/exchange/marking-file/marking-file.ts';
import { WHY_LENGTH } from '../../../src/exchange/marking-file/marking-form.ts';
import { readMarking, readMarkingJson } from '../../../src/exchange/marking-file/read-marking.ts';
import { writeMarking } from '../../../src/exchange/marking-file/write-marking.ts';
import { COMMENT_LENGTH, type OwnMark, REASON_LENGTH } from '../../../src/exchange/notes/notes.ts';
import { refusalOf } from '../../../src/exchange/refusal.ts';
import { studentKey } from '../../../src/exchange/student.ts';
import { placeText } from '../../../src/grader/reading/fault.ts';
import { say } from '../../../src/words/say.ts';
import { spelled, spelledLines } from '../../../src/words/unseen.ts';
import { type Loose, rightOverlap } from '../hand-ins.ts';
import { exercises, weekTwo } from '../sets.ts';
import { evening } from './marking-files.ts';

const reader = { language: 'en', unit: 'cm' } as const;

function faultsAfter(change: (json: Loose) => void): string {
  const json = JSON.parse(writeMarking(evening));
  change(json);
  const read = readMarkingJson(json, exercises);
  if (read.ok) return 'no fault';
  return read.faults.map(({ at, message }) => `${placeText(at) || '(file)'}: ${say(message, reader)}`).join('\n');
}

const lines = (most: number) =>
  fc.string({ unit: 'grapheme', maxLength: 60 }).map((text) => text.replaceAll(/[^\P{Cc}\n]/gu, '').slice(0, most));
const line = fc.string({ unit: 'grapheme', maxLength: 30 }).map((text) => text.replaceAll(/\p{Cc}/gu, ''));
const mark: fc.Arbitrary<OwnMark> = fc
  .record({
    of: fc.double({ min: 0, max: 1000, noNaN: true }),
    part: fc.double({ min: 0, max: 1, noNaN: true }),
    reason: lines(REASON_LENGTH).filter((text) => /\S/.test(text)),
  })
  .map(({ of, part, reason }) => ({ marks: of * part, of, reason }));
const target = fc.constantFrom('overlap-edge', 'roll-line', 'break-point');
const files: fc.Arbitrary<MarkingFile> = fc.record({
  set: fc.constantFrom(null, weekTwo),
  work: fc.array(
    fc.record({
      found: line.map(spelled),
      handIn: line.map((student) => ({ ...rightOverlap, student })),
      marks: fc.dictionary(target, mark, { noNullPrototype: true }),
      comment: lines(COMMENT_LENGTH),
    }),
    { maxLength: 5 },
  ),
  students: fc.uniqueArray(
    fc.record({
      student: line,
      number: fc.constant(''),
      comment: lines(COMMENT_LENGTH),
      until: fc.constantFrom(null, '2026-03-13T17:00:00.000Z'),
    }),
    {
      selector: studentKey,
      maxLength: 4,
    },
  ),
  unread: fc.array(
    fc.record({
      found: line.map(spelled),
      begun: fc.oneof(fc.constant(''), fc.string()),
      why: lines(WHY_LENGTH).map(spelledLines),
    }),
    {
      maxLength: 3,
    },
  ),
  list: lines(COMMENT_LENGTH),
  counts: fc.constantFrom('last', 'best'),
  saved: fc.constantFrom(null, '2026-02-15T18:00:00.000Z'),
});

describe('a marking file', () => {
  test('that was written is read back the same, whatever was written in it', () => {
    fc.assert(
      fc.property(files, (file) => {
        expect(readMarking(writeMarking(file), exercises)).toEqual({ ok: true, file });
      }),
    );
  });

  test('is written the same again, once it was read', () => {
    const again = (text: string): string => {
      const read = readMarking(text, exercises);
      return read.ok ? writeMarking(read.file) : 'refused';
    };
    const once = again(writeMarking({ ...evening, set: weekTwo }));
    expect(once).toContain('Ilse Maringa');
    expect(again(once)).toBe(once);
  });

  test('of before there was more time and a choice of attempts is read as one in which neither was given', () => {
    const json = JSON.parse(writeMarking(evening));
    expect([json.counts, json.students[0].until]).toEqual([undefined, undefined]);
    expect(readMarkingJson(json, exercises)).toMatchObject({
      ok: true,
      file: { counts: 'last', students: [{ until: null }] },
    });
  });

  test('holds no mark that the grader gave', () => {
    const text = writeMarking({ ...evening, work: evening.work.map((piece) => ({ ...piece, marks: {} })) });
    expect(text.replaceAll('"marks":{}', '')).not.toMatch(/"(?:marks?|score|grade|of|status)"/);
  });

  test('spells the name of a file that no line could hold', () => {
    const odd = writeMarking({ ...evening, unread: [{ found: `a\nb${'x'.repeat(2000)}`, begun: '', why: '' }] });
    const read = readMarking(odd, exercises);
    expect(read.ok && read.file.unread[0]?.found.slice(0, 9)).toBe('a\\u000abx');
  });

  test('is what the schema says, and the schema is the one the reader works by', () => {
    const docs = new URL('../../../docs/', import.meta.url);
    const schemaIn = (file: string) => JSON.parse(readFileSync(new URL(file, docs), 'utf8'));
    const schema = schemaIn('marking.schema.json');
    expect(schema).toEqual(JSON.parse(JSON.stringify(markingSchema())));
    const ajv = new Ajv2020({ formats: { 'date-time': true } });
    for (const name of ['drafting-language', 'hand-in', 'set'].map((one) => `${one}.schema.json`))
      ajv.addSchema(schemaIn(name), name);
    const fits = ajv.compile(schema);
    const json = () => JSON.parse(writeMarking({ ...evening, set: weekTwo }));
    expect([fits(json()), fits.errors]).toEqual([true, null]);
    expect(fits({ ...json(), version: 2 })).toBe(false);
    expect(fits({ ...json(), work: [{ ...json().work[0], handIn: { student: 'Ilse' } }] })).toBe(false);
    expect(fits({ ...json(), set: { title: 'Week 2' } })).toBe(false);
  });

  test('stands in docs/files.md as one that is read', () => {
    const text = readFileSync(new URL('../../../docs/files.md', import.meta.url), 'utf8');
    const shown = /```json\n(\{\n {2}"format": "gorgeline marking"[\s\S]*?)```/.exec(text)?.[1] ?? '';
    expect(readMarking(shown, exercises)).toEqual({ ok: true, file: evening });
  });
});

describe('what does not fit', () => {
  test('is said field by field', () => {
    expect(
      faultsAfter((json) => {
        json.work[0].found = 'a\nb';
        json.work[0].marks['overlap-edge'] = { marks: -1, of: 'six', reason: '  ' };
        json.work[0].comment = 'bell\u0007';
        json.students[0].comment = 5;
        json.unread = 'photo.jpg';
        json.saved = 'Sunday';
        json.total = 60;
      }),
    ).toMatchSnapshot();
  });

  test.each<[string, (json: Loose) => void]>([
    ['a hand-in that is none', (json) => Object.assign(json.work[0], { handIn: 'ilse.json' })],
    ['a hand-in with a fault in it', (json) => Object.assign(json.work[0].handIn, { unit: 'ell', marks: 6 })],
    ['a draft with a fault in it', (json) => Object.assign(json.work[0].handIn.steps[0], { verb: 'paralel' })],
    [
      'a set with a fault in it',
      (json) => Object.assign(json, { set: { format: 'gorgeline problem set', version: 1 } }),
    ],
    ['more marks than can be earned', (json) => Object.assign(json.work[0].marks['overlap-edge'], { marks: 7 })],
    ['a mark without a reason', (json) => Reflect.deleteProperty(json.work[0].marks['overlap-edge'], 'reason')],
    ['a mark that is no number', (json) => Object.assign(json.work[0].marks['overlap-edge'], { marks: '6' })],
    ['a target with a name that is none', (json) => Object.assign(json.work[0].marks, { 'Overlap edge': {} })],
    ['a student who is written to twice', (json) => json.students.push({ ...json.students[0], student: 'Ilse' })],
    ['a hand-in in its place', (json) => Object.assign(json, { format: 'gorgeline hand-in' })],
    ['more time until no moment', (json) => Object.assign(json.students[0], { until: '2026-02-30T17:00:00.000Z' })],
    ['a way of counting there is none of', (json) => Object.assign(json, { counts: 'mean' })],
    ['a later version', (json) => Object.assign(json, { version: 9, work: 'all' })],
    [
      'a field of every object',
      (json) => Reflect.defineProperty(json.work[0].marks, '__proto__', { value: {}, enumerable: true }),
    ],
  ])('%s', (_, change) => {
    expect(faultsAfter(change)).toMatchSnapshot();
  });

  test('far too many entries', () => {
    const said = faultsAfter((json) => Object.assign(json, { unread: Array.from({ length: 20_001 }, () => 'a') }));
    expect(said).toMatchSnapshot();
  });

  test('is refused in a sentence, whatever is written where', () => {
    const json = JSON.parse(writeMarking(evening));
    fc.assert(
      fc.property(fc.constantFrom(...Object.keys(json)), fc.jsonValue(), (field, value) => {
        const read = readMarkingJson({ ...json, [field]: value }, exercises);
        if (!read.ok) expect(say(refusalOf(read.faults), reader)).toMatch(/^\S.*\S$/s);
      }),
    );
  });
});

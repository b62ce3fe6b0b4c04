import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { handInSchema } from '../../src/cli/file-schemas.ts';
import { readHandIn, readHandInJson } from '../../src/exchange/read-hand-in.ts';
import { refusalOf } from '../../src/exchange/refusal.ts';
import { handInJson, writeHandIn } from '../../src/exchange/write-hand-in.ts';
import { say } from '../../src/words/say.ts';
import { faultsAfter, type Loose, refusalAfter, rightOverlap } from './hand-ins.ts';

const reader = { language: 'en', unit: 'cm' } as const;

function refusal(text: string): string {
  const read = readHandIn(text);
  return read.ok ? 'not refused' : say(refusalOf(read.faults), reader);
}

describe('a hand-in', () => {
  test('that was written is read back the same', () => {
    expect(readHandIn(writeHandIn(rightOverlap))).toEqual({ ok: true, handIn: rightOverlap });
  });

  test('may start with a byte order mark, as some editors leave one', () => {
    expect(readHandIn(`\uFEFF${writeHandIn(rightOverlap)}`).ok).toBe(true);
  });

  test.each([
    { sampled: 'women', seed: 'week 2/Ilse Maringa' },
    { measures: { 'neck-base': 372, shoulder: 134, 'shoulder-slope': 21, 'front-waist': 360, 'back-waist': 420 } },
  ] as const)('keeps a figure given as %o', (figure) => {
    const handIn = { ...rightOverlap, order: { ...rightOverlap.order, figure } };
    expect(readHandIn(writeHandIn(handIn))).toEqual({ ok: true, handIn });
  });

  test('never carries a mark', () => {
    const words = JSON.stringify(handInJson(rightOverlap));
    expect(words).not.toMatch(/"(?:marks?|score|grade|of)"/);
    expect(faultsAfter((json) => Object.assign(json, { marks: 6 }))).toMatchInlineSnapshot(
      `"marks: There is no such field here. Take it out; the fields are: format, version, student, number, set, exercise, order, strictness, unit, steps, shown, hints, checks, begun, saved."`,
    );
  });

  test('is what the schema says, and the schema is the one the reader works by', () => {
    const docs = new URL('../../docs/', import.meta.url);
    const schemaIn = (file: string) => JSON.parse(readFileSync(new URL(file, docs), 'utf8'));
    const schema = schemaIn('hand-in.schema.json');
    expect(schema).toEqual(JSON.parse(JSON.stringify(handInSchema())));
    const fits = new Ajv2020({ formats: { 'date-time': true } })
      .addSchema(schemaIn('drafting-language.schema.json'), 'drafting-language.schema.json')
      .compile(schema);
    expect([fits(handInJson(rightOverlap)), fits.errors]).toEqual([true, null]);
    expect(fits({ ...handInJson(rightOverlap), version: 2 })).toBe(false);
    expect(fits({ ...handInJson(rightOverlap), steps: [{ verb: 'paralel', name: 'x' }] })).toBe(false);
  });
});

test('the hand-in shown in docs/files.md is one', () => {
  const text = readFileSync(new URL('../../docs/files.md', import.meta.url), 'utf8');
  const shown = /```json\n(\{\n {2}"format"[\s\S]*?)```/.exec(text)?.[1] ?? '';
  expect(readHandIn(shown)).toEqual({ ok: true, handIn: rightOverlap });
});

describe('a file that is no hand-in', () => {
  test.each([
    ['nothing', ''],
    ['blank', ' \n'],
    ['cut off', writeHandIn(rightOverlap).slice(0, 90)],
    ['a stray character', writeHandIn(rightOverlap).replace('"set"', 'set')],
    ['a letter', 'Dear teacher,'],
    ['a number', '5'],
    ['a list', `[${writeHandIn(rightOverlap)}]`],
    ['another format', '{"format": "something else"}'],
    ['a later version', '{"format": "gorgeline hand-in", "version": 7, "order": 3}'],
    ['no version', '{"format": "gorgeline hand-in"}'],
    ['an odd version', '{"format": "gorgeline hand-in", "version": "1"}'],
    ['far too much', `{"format": "gorgeline hand-in", "x": "${'x'.repeat(600_000)}"}`],
  ])('%s', (_, text) => {
    expect(refusal(text)).toMatchSnapshot();
  });
});

describe('what does not fit', () => {
  test('is said field by field, with what was wanted and what was found', () => {
    const change = (json: Loose) => {
      json.student = 7;
      json.set = 'two\nlines';
      json.exercise = 'Roll Line';
      json.strictness = 'workrom';
      json.unit = 'mm';
      json.shown = 'all';
      json.hints = { 'overlap-edge': 4 };
      json.saved = 'yesterday';
      Reflect.deleteProperty(json, 'steps');
    };
    expect(faultsAfter(change)).toMatchInlineSnapshot(`
      "student: This should be the student’s name, in one line of at most 200 characters; the number 7 was found.
      set: This should be the problem set, by its title and id, or null; “two\\u000alines” was found.
      exercise: This should be a name: lower-case words and numbers joined by hyphens, beginning with a letter; “Roll Line” was found.
      strictness: This should be a strictness: one of learner, workroom, sample-room; “workrom” was found. Did you mean “workroom”?
      unit: This should be a unit of length: one of cm, in; “mm” was found. Did you mean “cm”?
      steps: This is missing: a list of steps.
      shown: This should be a list of the targets whose right place was asked for; “all” was found.
      hints.overlap-edge: This should be 1, 2 or 3; the number 4 was found.
      saved: This should be a date and time such as 2026-02-14T09:30:00.000Z, or null; “yesterday” was found."
    `);
  });

  test('in the style: a measure of an exercise’s own, which the exercise states and nobody changes', () => {
    const read = readHandIn(
      JSON.stringify(
        handInJson({ ...rightOverlap, order: { ...rightOverlap.order, style: { 'facing-reach': '9 cm' } } }),
      ),
    );
    if (read.ok) throw new Error('It was read.');
    expect(read.faults).toHaveLength(1);
    expect(say(read.faults[0]?.message ?? { text: '', values: {} }, { language: 'en', unit: 'cm' })).toMatch(
      /^“facing-reach” is no style measure that a hand-in may change: .* A measure of an exercise’s own is always as the exercise states it; leave it out\.$/,
    );
  });

  test('in the order: people, bodies, style measures, house rules', () => {
    const change = (json: Loose) => {
      json.order.figure = { named: 'amra' };
      json.order.style = { overlap: '3', stnd: '1 in', fall: '9 in' };
      json.order.house = { 'stand-rule': 'ful', 'roll-rule': 'x' };
    };
    expect(faultsAfter(change)).toMatchInlineSnapshot(`
      "order.figure.named: No invented figure is called “amra”. Did you mean “amara”?
      order.style.overlap: The overlap, “overlap”, has to come to a length; “3” does not. Write it with its unit, for example “1 1/4 in” or “32 mm”.
      order.style.stnd: “stnd” is no style measure that a hand-in may change: those are overlap, button, button-to-edge, break-rise, break-rise-high, top-button-rise, break-above-button, stand, fall, cloth-turn, gorge-depth, notch-width, notch-drop, lapel-width, peak-rise and collar-end. A measure of an exercise’s own is always as the exercise states it; leave it out.
      order.style.fall: The fall, “fall”, comes to 22.9 cm. It should lie between 1.5 cm and 12 cm.
      order.house.stand-rule: No choice of this house rule is called “ful”. Did you mean “full”?
      order.house.roll-rule: No house rule is called “roll-rule”. There are: overlap-rule, stand-rule, cover-rule, swing-rule."
    `);
    const body = { 'neck-base': 37, shoulder: 'wide', 'back-waist': 420, bust: 900 };
    expect(faultsAfter((json) => Object.assign(json.order, { figure: { measures: body } }))).toMatchInlineSnapshot(`
      "order.figure.measures.bust: “bust” is not a measure of a figure. The measures are: neck-base, shoulder, shoulder-slope, front-waist, back-waist.
      order.figure.measures.neck-base: The neck-base girth, “neck-base”, is 37 mm. An adult’s lies between 270 and 600 mm: look at the tape again, and at the unit.
      order.figure.measures.shoulder: The shoulder length, “shoulder”, has to be a plain number, in mm; "wide" was found.
      order.figure.measures.front-waist: The front waist length is missing. Give “front-waist” in mm, between 260 and 545."
    `);
    expect(faultsAfter((json) => Object.assign(json.order, { figure: { sampled: 'women' } }))).toMatchInlineSnapshot(
      `"order.figure: This should be a figure: either “named” with an invented figure, or “sampled” and “seed”, or “measures” with the body’s measures; a group of fields was found."`,
    );
  });

  test('in the steps: by number, name and field', () => {
    const change = (json: Loose) => {
      json.steps.push({ verb: 'cross', name: 'top', one: 'edge' }, { verb: 'cut', name: 'x' }, null);
    };
    expect(faultsAfter(change)).toMatchInlineSnapshot(`
      "steps[1].other: Step 2 (top), “other”: This is missing. It takes a line or a curve.
      steps[2].verb: Step 3 (x), “verb”: A verb of the language is expected, and “cut” was found. The verbs are pencil, along, cross, compass, foot, part, rule, square, parallel, slant, curve, offset, seam, fold, swing, tape, protractor.
      steps[3]: Step 4: A step is an object with a verb and a name, and nothing was found."
    `);
  });

  test('more steps than anybody draws', () => {
    const change = (json: Loose) => {
      json.steps = Array.from({ length: 501 }, (_, i) => ({ ...json.steps[0], name: `edge-${i}` }));
    };
    expect(faultsAfter(change)).toMatchInlineSnapshot(
      `"steps: The draft has 501 steps, and no more than 500 are read. Take out steps that nothing needs."`,
    );
  });

  test('is put in one line for a list of files', () => {
    const change = (json: Loose) => {
      json.unit = 'mm';
      json.hints = [];
      json.set = 4;
    };
    expect(refusalAfter(change)).toMatchInlineSnapshot(
      `"set: This should be the problem set, by its title and id, or null; the number 4 was found. (2 more places do not fit.)"`,
    );
    expect(refusalAfter((json) => Object.assign(json, { unit: 'mm' }))).toMatchInlineSnapshot(
      `"unit: This should be a unit of length: one of cm, in; “mm” was found. Did you mean “cm”?"`,
    );
  });
});

describe('a hostile file', () => {
  test('cannot reach what every object has', () => {
    const text = JSON.stringify(handInJson(rightOverlap));
    for (const [where, put] of [
      ['{"format"', '{"__proto__":{"student":"x"},"format"'],
      ['"style":{', '"style":{"__proto__":"1 in",'],
      ['"hints":{', '"hints":{"constructor":1,'],
      ['"house":{', '"house":{"prototype":"full"'],
    ] as const) {
      expect(text).toContain(where);
      const read = readHandIn(text.replace(where, put));
      expect(read.ok).toBe(false);
    }
    expect(Object.prototype).not.toHaveProperty('student');
  });

  test('nested deeper than any file of ours is refused and not followed', () => {
    const deep = `${'{"a":'.repeat(50_000)}1${'}'.repeat(50_000)}`;
    expect(refusal(`{"format":"gorgeline hand-in","version":1,"order":${deep}}`)).toMatch(/^student: This is missing/);
    expect(refusal(`{"format":"gorgeline hand-in","version":1,"steps":[${deep}]}`)).toMatch(
      /^student: This is missing/,
    );
  });

  test('of any JSON whatever is refused with a sentence and never throws', () => {
    fc.assert(
      fc.property(
        fc.jsonValue({ maxDepth: 4 }),
        fc.constantFrom(...Object.keys(handInJson(rightOverlap))),
        (value, field) => {
          const read = readHandInJson({ ...handInJson(rightOverlap), [field]: value });
          const whole = readHandInJson(value);
          expect(whole.ok).toBe(false);
          if (!read.ok) expect(say(refusalOf(read.faults), reader)).toMatch(/\.\)?$|\?$|\./);
        },
      ),
      { numRuns: 500 },
    );
  });

  test('with one character lost or changed anywhere is read, or refused with a sentence', () => {
    const text = writeHandIn(rightOverlap);
    fc.assert(
      fc.property(fc.nat(text.length - 1), fc.string({ maxLength: 2 }), (at, instead) => {
        const read = readHandIn(text.slice(0, at) + instead + text.slice(at + 1));
        if (!read.ok) expect(say(refusalOf(read.faults), reader).length).toBeGreaterThan(20);
      }),
      { numRuns: 1000 },
    );
  });
});

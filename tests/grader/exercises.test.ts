import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { exerciseSchema } from '../../src/cli/file-schemas.ts';
import { evaluate } from '../../src/drafting/expression.ts';
import type { Quantity } from '../../src/drafting/quantity.ts';
import { replay } from '../../src/drafting/replay.ts';
import { people } from '../../src/garment/people.ts';
import { judge } from '../../src/grader/judge.ts';
import { lessons } from '../../src/grader/lessons.ts';
import { type Value, written } from '../../src/words/message.ts';
import { say } from '../../src/words/say.ts';
import { authored } from './authored.ts';
import { exercises, orderOn, tableFor } from './tables.ts';

const docs = new URL('../../docs/', import.meta.url);
const schemaIn = (file: string) => JSON.parse(readFileSync(new URL(file, docs), 'utf8'));

const INCH = 25.4;

describe('the exercises', () => {
  test('name nobody in a brief, because every student of a set may be given another figure', () => {
    const named = new RegExp(`\\b(?:${people.map(({ name }) => name).join('|')}|he|she|his|her|him)\\b`, 'i');
    expect(exercises.filter(({ brief }) => named.test(brief)).map(({ id }) => id)).toEqual([]);
  });

  // Written afresh with `npm run unit -- tests/grader/exercises -u`, as the guide for authors says.
  test('are these, ask for these targets, and belong to a lesson each', () => {
    expect(
      Object.fromEntries(
        exercises.map(({ id, lesson, targets }) => [id, `${lesson}: ${targets.map(({ name }) => name)}`]),
      ),
    ).toMatchInlineSnapshot(`
      {
        "back-neck": "stand-and-fall: back-neck,neck-line,back-end",
        "break-point": "break-point: overlap-edge,break-level,break-point",
        "break-point-button": "break-point: overlap-edge,top-button,break-point",
        "centre-back": "outer-edge: collar-back,collar-centre-back,outer-back",
        "collar-double": "from-draft-to-pattern: overlap-edge,break-point,roll-line,notch,gorge-corner,lapel-point,lapel-edge,collar-centre-back,collar-neck-edge,collar-point,outer-edge",
        "collar-outline": "truing-and-walking: collar-point,outer-back,outer-edge",
        "collar-single": "from-draft-to-pattern: overlap-edge,break-point,roll-line,notch,gorge-corner,lapel-point,lapel-edge,collar-centre-back,collar-neck-edge,collar-point,outer-edge",
        "edge-ease": "outer-edge: neck-seam,fall-line,edge-ease",
        "lapel-folded": "lapel-and-fold: lapel-point,lapel-edge",
        "lapel-worn": "lapel-and-fold: gorge-worn,lapel-point-worn,lapel-edge-worn",
        "neck-edge": "truing-and-walking: front-neck-seam,collar-centre-back,collar-neck-edge",
        "notch-gorge": "notch-placement: notch-worn,notch,gorge-corner,gorge",
        "notch-level": "notch-placement: collarbone,notch-level",
        "overlap": "overlap: overlap-edge",
        "overlap-button": "overlap: overlap-edge",
        "overlap-double": "overlap: overlap-edge,button-line,second-button-line",
        "plan-muslin": "from-form-to-table: front-cut,side-cut,top-cut,piece-width,piece-height",
        "roll-line": "roll-line: overlap-edge,break-point,stand-point,roll-line",
        "roll-line-pair": "roll-line: overlap-edge,break-point,break-point-high,stand-point,roll-line,roll-line-high",
        "shawl": "from-draft-to-pattern: overlap-edge,break-point,roll-line,gorge-corner,lapel-point,collar-centre-back,collar-neck-edge,outer-edge",
        "stand-fall": "stand-and-fall: crease-point,collar-fall,edge-point,collar-width",
        "stand-point": "roll-line: stand-point",
        "swing": "outer-edge: back-line,collar-back",
        "true-draped": "from-form-to-table: collar-neck-edge,collar-centre-back,outer-edge",
      }
    `);
    expect(new Set(exercises.map(({ lesson }) => lesson))).toEqual(new Set(lessons));
  });

  test('use these style measures', () => {
    const used = new Set(exercises.flatMap(({ style }) => Object.keys(style)));
    expect([...used].sort()).toEqual([
      'break-above-button',
      'break-rise',
      'break-rise-high',
      'button',
      'button-to-edge',
      'cloth-turn',
      'collar-end',
      'fall',
      'gorge-depth',
      'lapel-width',
      'notch-drop',
      'notch-width',
      'overlap',
      'peak-rise',
      'stand',
      'top-button-rise',
    ]);
  });

  test('are what the schema says, and the schema is the one the reader works by', () => {
    const ajv = new Ajv2020({ allErrors: true }).addSchema(
      schemaIn('drafting-language.schema.json'),
      'drafting-language.schema.json',
    );
    const schema = schemaIn('exercise.schema.json');
    expect(schema).toEqual(JSON.parse(JSON.stringify(exerciseSchema())));
    const fits = ajv.compile(schema);
    for (const { id } of exercises) expect([id, fits(authored(id)), fits.errors]).toEqual([id, true, null]);
    expect(fits({ ...authored('overlap'), tittle: 'x' })).toBe(false);
  });
});

describe.each(exercises.map((exercise) => [exercise.id, exercise] as const))('%s', (_, exercise) => {
  test('knows at least three misreadings', () => {
    expect(exercise.misreadings.length, 'misreadings in the file').toBeGreaterThanOrEqual(3);
  });

  test('looks twice at every target, but for lengths, and for lines ruled from mark to mark, of which the whole is looked at', () => {
    const looks = (name: string) => exercise.checks.filter(({ target }) => target === name);
    const once = exercise.targets.filter(({ name, makes }) => looks(name).length < 2 && makes !== 'length');
    const short = once.map(({ name }) => name).filter((name) => looks(name).some(({ measure }) => measure !== 'line'));
    expect(short, 'targets that only one check looks at').toEqual([]);
  });

  test.each(['cm', 'in'] as const)('speaks in %s, with no brace left over and no length left unsaid', (unit) => {
    const givens = tableFor(exercise, orderOn(exercise, people[0]?.figure ?? never()));
    const values: Record<string, Value> = { off: { mm: 5 }, measured: { mm: 25 }, expected: { mm: 30 }, way: 'other' };
    for (const [name, quantity] of givens.measures) values[name] = shown(quantity);
    const texts = [
      exercise.title,
      exercise.brief,
      ...exercise.targets.flatMap(({ hints }) => hints),
      ...exercise.checks.flatMap(({ why, mend }) => [why, mend]),
      ...exercise.misreadings.map(({ says }) => says),
    ];
    for (const text of texts) {
      const spoken = say(written(text, values), { language: 'en', unit });
      expect(spoken, 'a text of the file').not.toMatch(/[{}]|undefined|\[object/);
      expect(spoken, 'a text that begins with a capital').toMatch(/^[A-Z(]/);
    }
    const brief = say(written(exercise.brief, values), { language: 'en', unit });
    expect(brief, 'a brief that names a measure').toMatch(unit === 'cm' ? /\d cm/ : /\d in/);
  });

  test('does not tell the answer in the first hint', () => {
    for (const { hints } of exercise.targets) expect(hints[0]).not.toContain('{');
  });
});

/** Common practice, no source, unless one is named. */
describe('what the trade says', () => {
  const mm = (text: string): number => {
    const worked = evaluate(text, new Map());
    return worked.ok ? worked.quantity.value : Number.NaN;
  };
  const named = (name: string) => exercises.find(({ id }) => id === name) ?? never();

  test('a jacket wants an overlap of at least an inch, on every order', () => {
    const overlaps = exercises.flatMap(({ style }) => (style['overlap'] === undefined ? [] : [style['overlap']]));
    expect(overlaps.length).toBeGreaterThan(5);
    expect(Math.min(...overlaps.map(({ from }) => mm(from)))).toBeGreaterThanOrEqual(INCH);
  });

  test('an inch carries a half-inch button: twice the smallest button is an inch', () => {
    expect(named('overlap-button').house).toEqual({ 'overlap-rule': 'twice-the-button' });
    expect(2 * mm(named('overlap-button').style['button']?.from ?? '')).toBeCloseTo(INCH, 9);
  });

  test('a double-breasted edge lies 3 to 3 1/2 in beyond the centre front (Vincent 1898, p. 21)', () => {
    const { value } = named('overlap-double').style['overlap'] ?? never();
    expect(mm(value)).toBeGreaterThanOrEqual(3 * INCH);
    expect(mm(value)).toBeLessThanOrEqual(3.5 * INCH + 1e-9);
  });

  test('the two rows of buttons are even about the centre front (Vincent, Systems, p. 136)', () => {
    const exercise = named('overlap-double');
    const { shapes } = replay(tableFor(exercise, orderOn(exercise, people[6]?.figure ?? never())), exercise.reference);
    const across = ['button-line', 'second-button-line'].map((name) => {
      const shape = shapes.get(name);
      return shape?.kind === 'line' ? shape.line.through.x : Number.NaN;
    });
    expect(across[0]).toBeLessThan(0);
    expect((across[0] ?? 0) + (across[1] ?? 0)).toBeCloseTo(0, 9);
  });

  test('the break point lies on the overlap edge, never on the centre front', () => {
    for (const id of ['break-point', 'break-point-button', 'roll-line', 'roll-line-pair']) {
      const exercise = named(id);
      const ids = exercise.misreadings.filter(({ target }) => target === 'break-point').map((one) => one.id);
      expect(ids).toContain('on-centre-front');
      const givens = tableFor(exercise, orderOn(exercise, people[3]?.figure ?? never()));
      const judged = judge(exercise, givens, replay(givens, exercise.reference), 'sample-room');
      const onEdge = judged
        .flatMap(({ checks }) => checks)
        .filter(({ check }) => check.target.startsWith('break-point') && check.measure === 'distance');
      expect(onEdge.length).toBeGreaterThan(0);
      for (const { reading } of onEdge) expect(reading?.expected).toBeCloseTo(0, 9);
    }
  });

  test('the front edge keeps its overlap all the way: it is looked at for running as the centre front does', () => {
    for (const { id, checks } of exercises.filter(({ targets }) =>
      targets.some(({ name }) => name === 'overlap-edge'),
    )) {
      const along = checks.filter((check) => check.measure === 'squareness' && check.target === 'overlap-edge');
      expect([id, along.map((check) => ('to' in check ? check.to : ''))]).toEqual([id, ['centre-front']]);
    }
  });

  test('1 1/4 to 1 3/4 in above the waist is usual for the break', () => {
    const heights = [
      ...['break-point', 'roll-line', 'roll-line-pair'].map((id) => mm(named(id).style['break-rise']?.value ?? '')),
      mm(named('break-point-button').style['top-button-rise']?.value ?? '') +
        mm(named('break-point-button').style['break-above-button']?.value ?? ''),
    ];
    for (const height of heights) {
      expect(height).toBeGreaterThanOrEqual(1.25 * INCH - 1e-9);
      expect(height).toBeLessThanOrEqual(1.75 * INCH + 1e-9);
    }
  });

  test('a fall is deeper than its stand on every order', () => {
    for (const { style } of exercises.filter((one) => one.style['fall'] !== undefined)) {
      const { stand, fall } = { stand: style['stand'] ?? never(), fall: style['fall'] ?? never() };
      expect(mm(fall.value)).toBeGreaterThan(mm(stand.value));
      expect(mm(fall.to)).toBeGreaterThan(mm(stand.to));
      expect(mm(fall.from)).toBeGreaterThan(mm(stand.from));
    }
  });
});

function shown({ dimension, value }: Quantity): Value {
  if (dimension === 'length') return { mm: value };
  return dimension === 'angle' ? { radians: value } : value;
}

function never(): never {
  throw new Error('not there');
}

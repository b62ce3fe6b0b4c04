import { describe, expect, test } from 'vitest';
import { millimetres, type Quantity } from '../../src/drafting/quantity.ts';
import { instructionOf, type SentencePart, sentenceOf, sentenceParts } from '../../src/drafting/sentence.ts';
import type { Step } from '../../src/drafting/step.ts';
import { forms } from '../../src/drafting/verbs.ts';
import { en } from '../../src/words/en/index.ts';
import { steps as stepWords } from '../../src/words/en/steps.ts';
import { block, inCentimetres, inInches } from './block.ts';

const measures = new Map<string, Quantity>([...block.measures, ['back-length', millimetres(85)]]);
const told = (step: object, reader = inCentimetres) =>
  sentenceOf({ name: 'n', ...step } as unknown as Step, reader, measures);

describe('a step reads as a drafting instruction', () => {
  test('marks', () => {
    expect(
      [
        { verb: 'pencil', at: [-25, 120] },
        { verb: 'pencil', at: [70.2, -30] },
        { verb: 'pencil', at: [0, 0] },
        { verb: 'along', on: 'edge', from: 'foot', distance: 'break-rise', toward: 'up' },
        { verb: 'along', on: 'shoulder-line', from: 'neck-point', distance: '3 cm', toward: 'shoulder-tip' },
        { verb: 'cross', one: 'edge', other: 'break-level' },
        { verb: 'cross', one: 'edge', other: 'wave', near: 'up' },
        { verb: 'cross', one: 'edge', other: 'wave', near: 'neck-point' },
        { verb: 'cross', one: 'edge', other: 'wave', near: [-20, 35] },
        { verb: 'compass', about: 'neck-point', radius: 'stand + fall', on: 'edge', near: 'left' },
        { verb: 'foot', from: 'neck-point', on: 'centre-front' },
        { verb: 'part', from: 'neck-point', to: 'shoulder-tip', fraction: '1/3' },
        { verb: 'part', from: 'neck-point', to: 'shoulder-tip', fraction: 'stand / fall' },
      ].map((step) => told(step)),
    ).toMatchInlineSnapshot(`
      [
        "Mark by eye, 2.5 cm left of centre front and 12 cm above the waist.",
        "Mark by eye, 7 cm right of centre front and 3 cm below the waist.",
        "Mark by eye, on centre front and on the waist.",
        "Mark along edge from foot, break rise (4 cm), upward.",
        "Mark along shoulder line from neck point, 3 cm, toward shoulder tip.",
        "Mark where edge crosses break level.",
        "Mark where edge crosses wave, taking the highest.",
        "Mark where edge crosses wave, taking the one nearest neck point.",
        "Mark where edge crosses wave, taking the one nearest the place 2 cm left of centre front and 3.5 cm above the waist.",
        "Compass at neck point, opened stand + fall (7.2 cm): mark where it cuts edge, taking the furthest left.",
        "Mark the foot of the square from neck point to centre front.",
        "Mark 1/3 of the way from neck point to shoulder tip.",
        "Mark stand ÷ fall (0.714) of the way from neck point to shoulder tip.",
      ]
    `);
  });

  test('lines', () => {
    expect(
      [
        { verb: 'rule', from: 'break-point', to: 'stand-point' },
        { verb: 'square', to: 'centre-front', through: 'break-point' },
        { verb: 'parallel', to: 'centre-front', distance: 'overlap', side: 'left' },
        { verb: 'parallel', to: 'centre-front', distance: '1¼"', side: 'left' },
        { verb: 'parallel', to: 'roll-line', distance: '(fall - stand) * 1.42', side: 'neck-point' },
        { verb: 'parallel', to: 'roll-line', through: 'neck-point' },
        { verb: 'slant', to: 'waist', angle: '22.5 deg', turn: 'anticlockwise', through: 'neck-point' },
        { verb: 'slant', to: 'waist', angle: '90 deg - shoulder-slope', turn: 'clockwise', through: 'neck-point' },
      ].map((step) => told(step)),
    ).toMatchInlineSnapshot(`
      [
        "Rule a line from break point through stand point.",
        "Line square to centre front through break point.",
        "Line parallel to centre front, overlap (2.5 cm), to the left.",
        "Line parallel to centre front, 1 1/4 in, to the left.",
        "Line parallel to roll line, (fall − stand) × 1.42 (1.7 cm), on the side of neck point.",
        "Line parallel to roll line through neck point.",
        "Line turned 22.5° anticlockwise from waist, through neck point.",
        "Line turned 90° − shoulder slope (67.5°) clockwise from waist, through neck point.",
      ]
    `);
  });

  test('curves', () => {
    expect(
      [
        { verb: 'curve', through: ['break-point', 'lapel-point'] },
        { verb: 'curve', through: ['a', 'b', 'c'], leave: { square: 'centre-back' }, arrive: { along: 'roll-line' } },
        {
          verb: 'curve',
          through: ['a', 'b'],
          arrive: { square: 'centre-front' },
          shape: [null, { turn: 0, before: 1, after: 1 }],
        },
        { verb: 'curve', through: ['a', 'b'], leave: { along: 'waist' }, shape: [null, null] },
        { verb: 'offset', of: 'neck-seam', distance: 'fall - stand', side: 'down' },
        { verb: 'seam', run: ['back-neckline', 'neck-point', { along: 'gorge', from: 'gorge-corner', to: 'notch' }] },
      ].map((step) => told(step)),
    ).toMatchInlineSnapshot(`
      [
        "Curve through break point and lapel point.",
        "Curve through a, b and c, leaving square to centre back, arriving along roll line.",
        "Curve through a and b, arriving square to centre front, shaped by its handles.",
        "Curve through a and b, leaving along waist.",
        "Curve parallel to neck seam, fall − stand (1.2 cm), below it.",
        "Seam joining, end to end: back neckline, neck point and gorge from gorge corner to notch.",
      ]
    `);
  });

  test('moves and lengths', () => {
    expect(
      [
        { verb: 'fold', what: 'notch-worn', over: 'roll-line' },
        {
          verb: 'swing',
          what: 'collar-edge',
          about: 'neck-point',
          by: 'edge-ease',
          at: 'stand + fall',
          turn: 'clockwise',
        },
        { verb: 'swing', what: 'collar-edge', about: 'neck-point', angle: '0.2 rad', turn: 'anticlockwise' },
        { verb: 'tape', along: 'back-neckline' },
        { verb: 'tape', along: 'roll-line', from: 'break-point', to: 'stand-point' },
        { verb: 'tape', from: 'neck-point', to: 'shoulder-tip' },
      ].map((step) => told(step)),
    ).toMatchInlineSnapshot(`
      [
        "Fold notch as worn over roll line.",
        "Swing collar edge about neck point, edge ease at stand + fall (7.2 cm) from it, clockwise.",
        "Swing collar edge about neck point, 0.2 rad, anticlockwise.",
        "Tape back neckline.",
        "Tape roll line from break point to stand point.",
        "Tape straight from neck point to shoulder tip.",
      ]
    `);
  });
});

describe('an expression in a sentence', () => {
  const parallel = (distance: string) => ({ verb: 'parallel', to: 'waist', distance, side: 'up' });

  test('shows as typed, with its value in the reader’s unit where it is more than a number', () => {
    expect(told(parallel('1 1/4 in'))).toBe('Line parallel to waist, 1 1/4 in, above it.');
    expect(told(parallel('back-length + 6 mm'))).toBe('Line parallel to waist, back length + 6 mm (9.1 cm), above it.');
    expect(told(parallel('stand'), inInches)).toBe('Line parallel to waist, stand (1 3/16 in), above it.');
    expect(told(parallel('1 cm + 2 mm'), inInches)).toBe('Line parallel to waist, 1 cm + 2 mm (1/2 in), above it.');
  });

  test('has the lengths an author typed in the reader’s unit, and angles and bare numbers as they are', () => {
    const authored = (distance: string, reader = inCentimetres) =>
      instructionOf({ name: 'n', ...parallel(distance) } as Step, reader, measures);
    expect(authored('3/8 in')).toBe('Line parallel to waist, 1 cm, above it.');
    expect(authored('3/8 in', inInches)).toBe('Line parallel to waist, 3/8 in, above it.');
    // Worked out from what was written, not from what is shown: 8.5 + 1.27, and not 8.5 + 1.3.
    expect(authored('back-length + 1/2 in')).toBe('Line parallel to waist, back length + 1.3 cm (9.8 cm), above it.');
    expect(authored('back-length * 3 / 4 - 10 mm', inInches)).toBe(
      'Line parallel to waist, back length × 3 ÷ 4 − 3/8 in (2 1/8 in), above it.',
    );
    const swing = { name: 'n', verb: 'swing', what: 'edge', about: 'neck-point', angle: '4 deg', turn: 'clockwise' };
    expect(instructionOf(swing as unknown as Step, inInches, measures)).toContain('4°');
  });

  test('shows no value without the measures, or where it has none', () => {
    const step = { name: 'n', ...parallel('stand - fall / 2') } as Step;
    expect(sentenceOf(step, inCentimetres)).toBe('Line parallel to waist, stand − fall ÷ 2, above it.');
    expect(told(parallel('no-such-thing * 2'))).toBe('Line parallel to waist, no such thing × 2, above it.');
  });

  test('shows what was typed where it cannot be understood', () => {
    expect(told(parallel('stand plus 2'))).toBe('Line parallel to waist, stand plus 2, above it.');
    expect(told(parallel('  '))).toBe('Line parallel to waist, …, above it.');
  });
});

describe('the sentence of a step half filled', () => {
  const shown = (parts: readonly SentencePart[]) =>
    parts.map((part) => (part.kind === 'text' ? part.text : `[${part.field}: ${part.text}]`)).join('');

  test('has a blank for every field, where it stands', () => {
    expect(shown(sentenceParts({ verb: 'parallel', to: 'waist', side: 'up' }, inCentimetres))).toBe(
      'Line parallel to [to: waist], [distance: …], [side: above it].',
    );
    expect(shown(sentenceParts({ verb: 'cross', one: 'edge' }, inCentimetres))).toBe(
      'Mark where [one: edge] crosses [other: …][near: ].',
    );
    expect(shown(sentenceParts({ verb: 'tape', along: 'c', from: 'a' }, inCentimetres))).toBe(
      'Tape [along: c] from [from: a][to: ].',
    );
  });

  test('says of each blank whether it is filled, may stay empty, and what it takes', () => {
    expect(
      sentenceParts({ verb: 'cross', one: 'edge' }, inCentimetres).filter((part) => part.kind === 'blank'),
    ).toEqual([
      { kind: 'blank', field: 'one', text: 'edge', filled: true, optional: false, wanted: 'a line or a curve' },
      { kind: 'blank', field: 'other', text: '…', filled: false, optional: false, wanted: 'a line or a curve' },
      {
        kind: 'blank',
        field: 'near',
        text: '',
        filled: false,
        optional: true,
        wanted: 'left, right, up, down, the name of a point, or a place',
      },
    ]);
  });

  test('follows the form asked for where the fields do not tell yet', () => {
    const parts = sentenceParts({ verb: 'swing' }, inCentimetres, { form: 'swing-angle' });
    expect(shown(parts)).toBe('Swing [what: …] about [about: …], [angle: …], [turn: …].');
  });

  test('of no known verb is a row of dots', () => {
    expect(shown(sentenceParts({ verb: 'snip' }, inCentimetres))).toBe('…');
  });
});

test('every form has a sentence with a place for each of its fields', () => {
  for (const { id, fields } of forms) {
    const key = `step.${id}` as const;
    expect([...stepWords[key].needs].sort(), id).toEqual(fields.map(({ field }) => field).sort());
    expect(en[key].text).toBe(stepWords[key].text);
  }
});

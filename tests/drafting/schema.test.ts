import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readSteps } from '../../src/drafting/read.ts';
import { draftSchema } from '../../src/drafting/schema.ts';
import { drafts, spoilt } from './arbitrary.ts';

const FILE = new URL('../../docs/drafting-language.schema.json', import.meta.url);

// Oracle: Ajv, an independent implementation of JSON Schema.
const fits = new Ajv2020({ allErrors: true, strict: true }).compile(draftSchema());

const namesDiffer = (steps: unknown): boolean => {
  const names = (Array.isArray(steps) ? steps : [])
    .map((step: { name?: unknown } | null) => step?.name)
    .filter((name) => typeof name === 'string');
  return new Set(names).size === names.length;
};

describe('the JSON Schema of a draft', () => {
  test('as published is the one made from the forms (mend: node src/cli/drafting-schema.ts)', () => {
    expect(JSON.parse(readFileSync(FILE, 'utf8'))).toEqual(draftSchema());
  });

  test('accepts what the reader accepts', () => {
    fc.assert(
      fc.property(drafts(5), (steps) => {
        expect([fits(steps), readSteps(steps).ok]).toEqual([true, true]);
      }),
      { numRuns: 2000 },
    );
  });

  test('refuses what the reader refuses, and the other way round, but for names given twice', () => {
    let refused = 0;
    fc.assert(
      fc.property(fc.oneof(fc.array(spoilt, { maxLength: 3 }), fc.jsonValue()), (steps) => {
        const json: unknown = JSON.parse(JSON.stringify(steps));
        const read = readSteps(json).ok;
        if (!read) refused += 1;
        expect(read).toBe(fits(json) && namesDiffer(json));
      }),
      { numRuns: 10_000 },
    );
    expect(refused).toBeGreaterThan(2000);
  });

  const edge = { verb: 'parallel', name: 'edge', to: 'centre-front', distance: 'overlap', side: 'left' };
  const curve = { verb: 'curve', name: 'c', through: ['a', 'b'] };
  test.each([
    ['a form of its own', edge, true],
    ['fields of two forms', { ...edge, through: 'neck-point' }, false],
    ['a unit for a name', { ...edge, name: 'cm' }, false],
    ['a name of 60 letters', { ...edge, name: 'x'.repeat(60) }, true],
    ['a name of 61 letters', { ...edge, name: 'x'.repeat(61) }, false],
    ['an expression of 200 wide characters', { ...edge, distance: '😀'.repeat(200) }, true],
    ['an expression of 201 characters', { ...edge, distance: '1'.repeat(201) }, false],
    ['an expression that turns the direction of writing', { ...edge, distance: '3 \u202ecm' }, false],
    ['an expression in two lines', { ...edge, distance: 'stand\n+ fall' }, false],
    ['an empty expression', { ...edge, distance: '' }, false],
    ['a field that is null', { ...edge, answers: null }, false],
    ['a heading of two kinds', { ...curve, leave: { along: 'a', square: 'b' } }, false],
    ['a heading that is a list', { ...curve, leave: [] }, false],
    ['handles at their limits', { ...curve, shape: [{ turn: -6.28, before: 0.01, after: 10 }] }, true],
    ['a handle too short', { ...curve, shape: [{ turn: 0, before: 0.009, after: 1 }] }, false],
    ['a place at the reach of the sheet', { verb: 'pencil', name: 'p', at: [-1e5, 1e5] }, true],
    ['a place beyond it', { verb: 'pencil', name: 'p', at: [-1e5, 1e5 + 1] }, false],
    ['a run of a part', { verb: 'seam', name: 's', run: [{ along: 'a', from: 'b', to: 'c' }] }, true],
    ['one end of a tape, which replay objects to', { verb: 'tape', name: 't', along: 'a', from: 'b' }, true],
  ])('and the reader agree on %s', (_, step, accepted) => {
    expect([fits([step]), readSteps([step]).ok]).toEqual([accepted, accepted]);
  });
});

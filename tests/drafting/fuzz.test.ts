import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ancestorsOf, namesUsedBy } from '../../src/drafting/dependencies.ts';
import { CURVE_PIECES, SHEET_REACH } from '../../src/drafting/limits.ts';
import { readSteps } from '../../src/drafting/read.ts';
import { renameObject } from '../../src/drafting/rename.ts';
import { sentenceOf } from '../../src/drafting/sentence.ts';
import type { Shape } from '../../src/drafting/shape.ts';
import type { Step } from '../../src/drafting/step.ts';
import { drafts, passing, place, spoilt, wellFormed } from './arbitrary.ts';
import { block, draft, inInches, spoken } from './block.ts';

/** Every number of a shape. */
function numbersIn(shape: Shape): readonly number[] {
  return Array.from(
    JSON.stringify(shape, (_, value) => (typeof value === 'number' ? String(value) : value)).matchAll(
      /"(-?[\d.e+-]+|NaN|-?Infinity)"/g,
    ),
    ([, text]) => Number(text),
  );
}

/** Replays, and checks what always holds of a sheet. */
function sound(steps: readonly unknown[]): void {
  const sheet = draft(steps);
  const troubled = new Set(sheet.problems.map(({ step }) => step));
  expect(troubled.size).toBe(sheet.problems.length);
  expect(sheet.shapes.size).toBe(block.shapes.size + steps.length - troubled.size);
  for (const problem of sheet.problems) expect(spoken(problem.message)).toMatch(/^[A-Z“0-9a-z−].*[.?]$/s);
  for (const shape of sheet.shapes.values()) {
    for (const number of numbersIn(shape)) expect(Math.abs(number)).toBeLessThanOrEqual(SHEET_REACH);
    if (shape.kind === 'curve') expect(shape.path.length).toBeLessThanOrEqual(CURVE_PIECES);
  }
}

/** Objects of every kind, for the steps after them to name. */
const prelude = (a: unknown, b: unknown, shape: unknown) => [
  { verb: 'pencil', name: 'a', at: a },
  { verb: 'pencil', name: 'b', at: b },
  { verb: 'rule', name: 'edge', from: 'a', to: 'b' },
  { verb: 'curve', name: 'c-1', through: ['a', 'neck-point', 'b'], shape },
  { verb: 'tape', name: 'len', along: 'c-1' },
];
const passings = fc.tuple(fc.option(passing), fc.option(passing), fc.option(passing));

describe('whatever the steps hold, nothing throws and the sheet is sound', () => {
  test('well-formed steps that name anything', () => {
    fc.assert(fc.property(drafts(8), sound), { numRuns: 3000 });
  });

  test('steps that name what is there, anywhere on a very large sheet', () => {
    const others = fc.constantFrom('mark-1', 'mark-2', 'roll', 'm-3', 'm-4', 'm-5');
    const steps = fc.uniqueArray(wellFormed(others), { maxLength: 6, selector: (step) => step.name });
    fc.assert(
      fc.property(place, place, passings, steps, (a, b, shape, rest) => {
        sound([...prelude(a, b, shape), ...rest]);
      }),
      { numRuns: 4000 },
    );
  });

  test('steps with something wrong', () => {
    fc.assert(fc.property(fc.array(spoilt, { maxLength: 6 }), sound), { numRuns: 3000 });
  });

  test('anything at all', () => {
    fc.assert(fc.property(fc.array(fc.anything(), { maxLength: 6 }), sound), { numRuns: 2000 });
  });

  test('sentences, dependencies, renaming and reading do not throw either', () => {
    const any = fc.oneof(spoilt, fc.dictionary(fc.constantFrom('verb', 'name', 'to', 'run', 'at'), fc.jsonValue()));
    fc.assert(
      fc.property(fc.array(any, { maxLength: 5 }), (loose) => {
        const steps = loose as readonly Step[];
        for (const step of steps) {
          expect(sentenceOf(step, inInches, block.measures)).not.toBe('');
          expect(Array.isArray(namesUsedBy(step))).toBe(true);
        }
        renameObject(steps, 'mark-1', 'mark-9');
        ancestorsOf(steps, 'mark-1');
        const read = readSteps(loose);
        if (!read.ok) for (const { message } of read.errors) expect(spoken(message)).toMatch(/[.?]$/);
      }),
      { numRuns: 3000 },
    );
  });
});

test('a replay is the same every time', () => {
  fc.assert(
    fc.property(drafts(6), (steps) => {
      expect(draft(steps)).toEqual(draft(structuredClone(steps)));
    }),
    { numRuns: 500 },
  );
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Step } from '../../src/drafting/step.ts';
import { beginningOf, begunSteps, begunText } from '../../src/exchange/beginning.ts';
import type { HandIn } from '../../src/exchange/hand-in.ts';
import { readHandIn } from '../../src/exchange/read-hand-in.ts';
import { isWholeOf } from '../../src/exchange/whole.ts';
import { handInJson, writeHandIn } from '../../src/exchange/write-hand-in.ts';
import { rightOverlap } from './hand-ins.ts';

const line = JSON.stringify(handInJson(rightOverlap));
const whole = writeHandIn(rightOverlap);
const read = (handIn: HandIn): HandIn => {
  const again = readHandIn(writeHandIn(handIn));
  if (!again.ok) throw new Error('It cannot be read.');
  return again.handIn;
};
const upTo = (text: string, mark: string): string => text.slice(0, text.indexOf(mark));

describe('the beginning of a hand-in that was cut off', () => {
  test('tells whose it is as soon as the number stands there, and the exercise further on', () => {
    for (const text of [line, whole, `\uFEFF${whole}`]) {
      expect(beginningOf(begunText(upTo(text, '"17"')))).toBeNull();
      const who = { student: 'Ilse Maringa', number: '17' };
      expect(beginningOf(begunText(upTo(text, '"exercise"')))).toEqual({ ...who, exercise: null });
      expect(beginningOf(begunText(upTo(text, '"steps"')))).toEqual({ ...who, exercise: 'overlap' });
    }
  });

  test('is told from no other text, and no name is taken that no hand-in could have', () => {
    expect(begunText('{"format":"gorgeline problem set","version":1,"student":"Ilse","number":""')).toBe('');
    expect(begunText('photo of a hand-in')).toBe('');
    for (const name of ['two\\nlines', 'x'.repeat(201), '\\u00', 7])
      expect(begunText(line.replace('"Ilse Maringa"', typeof name === 'string' ? `"${name}"` : String(name)))).toBe('');
    expect(beginningOf(begunText(line.replace('"Ilse Maringa"', '"a \\"b\\\\"')))?.student).toBe('a "b\\');
  });

  test('has its whole in the same draft, however it is set out and whenever it was saved', () => {
    const again = read({ ...rightOverlap, checks: 9, saved: '2026-03-01T08:00:00.000Z' });
    for (const text of [line, whole])
      for (const cut of ['"side"', '"hints"', '"saved"']) {
        const begun = begunText(upTo(text, cut));
        expect(isWholeOf(again, begun)).toBe(true);
        expect(isWholeOf({ ...again, number: '18' }, begun)).toBe(false);
      }
    const [step] = rightOverlap.steps;
    const other = read({ ...again, steps: [{ ...step, distance: '3 cm' } as Step] });
    expect(isWholeOf(other, begunText(upTo(line, '"hints"')))).toBe(false);
    // Cut off within the only step there is nothing yet in which they differ.
    expect(isWholeOf(other, begunText(upTo(line, '"answers"')))).toBe(true);
    // Before the exercise is named, anything of the student's would do.
    expect(isWholeOf(again, begunText(upTo(line, '"exercise"')))).toBe(false);
  });

  test('has so many steps as stand there whole, wherever within the next it was cut off', () => {
    const curve = {
      ...{ verb: 'curve', name: 'c', through: ['neck-point', 'shoulder-point'] },
      shape: [null, { turn: 0.1, before: 0.3, after: 0.3 }],
    };
    const list = JSON.stringify([...rightOverlap.steps, curve]).slice(1, -1);
    const first = JSON.stringify(rightOverlap.steps).length - 2;
    for (let end = first; end < list.length; end += 1)
      expect(begunSteps(`{"steps":[${list.slice(0, end)}`), list.slice(first, end)).toEqual(rightOverlap.steps);
  });

  test('of anything at all is a beginning of it or nothing', () => {
    const cut = fc.nat(line.length).map((at) => line.slice(0, at));
    fc.assert(
      fc.property(
        fc.oneof(
          cut,
          fc.string(),
          fc.tuple(cut, fc.string()).map((both) => both.join('')),
        ),
        (text) => {
          const begun = begunText(text);
          expect(begunText(begun)).toBe(begun);
          expect(begun === '' || beginningOf(begun) !== null).toBe(true);
        },
      ),
    );
  });
});

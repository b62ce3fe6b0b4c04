import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import { orderOf } from '../../src/exchange/order-from.ts';
import { readHandInJson } from '../../src/exchange/read-hand-in.ts';
import { setOrder } from '../../src/exchange/set-order.ts';
import { studentKey } from '../../src/exchange/student.ts';
import { handInJson } from '../../src/exchange/write-hand-in.ts';
import { rightOverlap } from './hand-ins.ts';
import { weekTwo } from './sets.ts';

const rollLine = loadExercise('roll-line');
const ilse = { student: 'Ilse Maringa', number: '' };
const tam = { student: 'Tam Okoro', number: '' };

const figureOf = (student: { student: string; number: string }, set = weekTwo): unknown => {
  const made = orderOf(setOrder(set, rollLine, student), rollLine);
  return made.ok ? made.order.figure : null;
};

describe('figures of a set', () => {
  test('one each: the same for a student however the name is typed, and another for another', () => {
    expect(figureOf({ ...ilse, student: '  ilse   MARINGA ' })).toEqual(figureOf(ilse));
    expect(figureOf(tam)).not.toEqual(figureOf(ilse));
  });

  test('one each: a number counts before the name', () => {
    expect(figureOf({ student: 'I. Maringa', number: '17' })).toEqual(
      figureOf({ student: 'Ilse Maringa', number: ' 17' }),
    );
    expect(figureOf({ ...ilse, number: '18' })).not.toEqual(figureOf({ ...ilse, number: '17' }));
  });

  test('one each: other in another set', () => {
    expect(figureOf(ilse, { ...weekTwo, seed: 'autumn-c' })).not.toEqual(figureOf(ilse));
  });

  test('one each: of a name that grows long when it is tidied, a hand-in that can be read', () => {
    // One letter in Unicode, and a sentence of eighteen in NFKC.
    const student = '\uFDFA'.repeat(200);
    const order = setOrder(weekTwo, rollLine, { student, number: '' });
    const handIn = { ...rightOverlap, student, order };
    expect(readHandInJson(handInJson(handIn))).toMatchObject({ ok: true, handIn: { student, order } });
  });

  test('the same for all', () => {
    const set = { ...weekTwo, figures: { sampled: 'men' } } as const;
    expect(figureOf(tam, set)).toEqual(figureOf(ilse, set));
  });

  test('of a named person, and as the exercise states', () => {
    expect(setOrder({ ...weekTwo, figures: { named: 'sione' } }, rollLine, ilse).figure).toEqual({ named: 'sione' });
    const stated = setOrder({ ...weekTwo, figures: 'stated' }, rollLine, ilse).figure;
    expect(stated).toEqual('named' in rollLine.figure ? rollLine.figure : { ...rollLine.figure, seed: weekTwo.seed });
  });
});

test('a set’s house rules hold in the exercises that have them, and in no others', () => {
  expect(setOrder(weekTwo, rollLine, ilse).house).toEqual({ 'stand-rule': 'quarter-inch-less' });
  expect(setOrder(weekTwo, loadExercise('notch-level'), ilse).house).toEqual({});
});

test('a student is known by the number, or by the name without regard to how it was typed', () => {
  expect(studentKey({ student: 'Zoë  Ångström ', number: '' })).toBe(
    studentKey({ student: 'zoe\u0308 a\u030angstro\u0308m', number: '' }),
  );
  expect(studentKey({ student: 'Zoë', number: '4' })).not.toBe(studentKey({ student: '4', number: '' }));
});

import { describe, expect, expectTypeOf, test } from 'vitest';
import { commonFields, formOf, type StepOf } from '../../src/drafting/form.ts';
import type { Step } from '../../src/drafting/step.ts';
import { type FormId, forms, type table } from '../../src/drafting/verbs.ts';

type FieldsOf<I extends FormId> = Extract<(typeof table)[number], { id: I }>['fields'][number]['field'];

test('the forms and the types of steps name the same fields', () => {
  expectTypeOf<{ [I in FormId]: FieldsOf<I> }>().toEqualTypeOf<{
    [I in FormId]: Exclude<keyof StepOf[I], 'verb' | 'name' | 'answers'>;
  }>();
  expectTypeOf<StepOf[FormId]>().toEqualTypeOf<Step>();
});

test('the seventeen verbs of a pattern table', () => {
  expect([...new Set(forms.map(({ verb }) => verb))]).toEqual([
    'pencil',
    'along',
    'cross',
    'compass',
    'foot',
    'part',
    'rule',
    'square',
    'parallel',
    'slant',
    'curve',
    'offset',
    'seam',
    'fold',
    'swing',
    'tape',
    'protractor',
  ]);
});

test('no field of a form is one that every step may carry', () => {
  expect(forms.flatMap(({ fields }) => fields.filter(({ field }) => commonFields.includes(field)))).toEqual([]);
});

describe('which form a step is written in', () => {
  test.each([
    ['parallel', {}, 'parallel'],
    ['parallel', { to: 'a' }, 'parallel'],
    ['parallel', { to: 'a', through: 'b' }, 'parallel-through'],
    ['parallel', { through: 'b' }, 'parallel-through'],
    ['parallel', { to: 'a', through: 'b', side: 'up' }, 'parallel'],
    ['swing', { angle: '1 deg' }, 'swing-angle'],
    ['swing', { by: '1 mm' }, 'swing'],
    ['tape', {}, 'tape'],
    ['tape', { along: 'a' }, 'tape'],
    ['tape', { along: 'a', from: 'b', to: 'c' }, 'tape'],
    ['tape', { from: 'b', to: 'c' }, 'tape-between'],
    ['tape', { from: 'b' }, 'tape'],
    ['tape', { length: 'a' }, 'tape-set'],
    ['protractor', {}, 'protractor'],
    ['protractor', { from: 'a' }, 'protractor'],
    ['protractor', { along: 'a' }, 'protractor-along'],
    ['rule', { odd: 1 }, 'rule'],
  ])('%s with %j is %s', (verb, fields, id) => {
    expect(formOf({ verb, name: 'n', answers: 't', ...fields })?.id).toBe(id);
  });

  test('none, of a verb that is none', () => {
    expect(formOf({ verb: 'sew' })).toBe(null);
    expect(formOf({})).toBe(null);
  });
});

import { expect, test } from 'vitest';
import { constructionOf } from '../../src/drafting/construction.ts';
import { formOf, type HalfStep } from '../../src/drafting/form.ts';
import type { Form } from '../../src/drafting/verbs.ts';

const construction = (step: Record<string, unknown>) => constructionOf(step as HalfStep, formOf(step) as Form);

const edge = { verb: 'parallel', name: 'edge', to: 'centre-front', distance: 'overlap + 2 mm', side: 'left' };

test('a construction names nothing, and keeps what it uses apart', () => {
  expect(construction(edge)).toEqual({
    making: {
      number: expect.any(Number),
      pattern: 'parallel|$0|"$1 + 2 mm"|left',
      makes: 'line',
      make: expect.any(Function),
    },
    uses: ['centre-front', 'overlap'],
  });
  const run = ['back', { along: 'back', from: 'a', to: 'b' }];
  expect(construction({ verb: 'seam', name: 's', run })?.uses).toEqual(['back', 'a', 'b']);
});

test('steps that do different things are never one construction', () => {
  const curve = { verb: 'curve', name: 'c', through: ['a', 'b'] };
  const different = [
    edge,
    { ...edge, side: 'right' },
    { ...edge, side: 'edge-2' },
    { ...edge, distance: 'overlap + 2 cm' },
    { ...edge, distance: '2 mm + overlap' },
    { ...edge, distance: 'overlap - 2 mm' },
    { verb: 'parallel', name: 'edge', to: 'centre-front', through: 'neck-point' },
    { verb: 'pencil', name: 'p', at: [1, 2] },
    { verb: 'pencil', name: 'p', at: [12, 2] },
    { verb: 'pencil', name: 'p', at: [1, 22] },
    curve,
    { ...curve, through: ['a', 'a'] },
    { ...curve, leave: { along: 'l' } },
    { ...curve, leave: { square: 'l' } },
    { ...curve, arrive: { square: 'l' } },
    { ...curve, shape: [null, { turn: 0.1, before: 0.3, after: 0.3 }] },
    { ...curve, shape: [{ turn: 0.1, before: 0.3, after: 0.3 }, null] },
    { verb: 'seam', name: 's', run: ['a', 'b'] },
    { verb: 'seam', name: 's', run: [{ along: 'a', from: 'b', to: 'c' }] },
    { verb: 'seam', name: 's', run: [{ along: 'a', from: 'c', to: 'c' }] },
  ];
  const patterns = different.map((step) => construction(step)?.making.pattern);
  expect(patterns).not.toContain(undefined);
  expect(new Set(patterns).size).toBe(different.length);
});

test('a direction is no name where a way may stand, and a unit none in an amount', () => {
  expect(construction({ ...edge, side: 'neck-point' })?.uses).toEqual(['centre-front', 'overlap', 'neck-point']);
  expect(construction({ ...edge, distance: '2 in' })?.uses).toEqual(['centre-front']);
});

test('a measure is used however its name was typed: in capitals, or with another hyphen', () => {
  for (const distance of ['Roll-Width + 2 mm', 'roll\u2011width + 2 mm', ' ROLL\u2010WIDTH  +  2 MM'])
    expect(construction({ ...edge, distance })).toEqual({
      making: {
        number: expect.any(Number),
        pattern: 'parallel|$0|"$1 + 2 mm"|left',
        makes: 'line',
        make: expect.any(Function),
      },
      uses: ['centre-front', 'roll-width'],
    });
});

test('what no step has in a blank has no construction, and breaks nothing', () => {
  const endless: unknown[] = [];
  endless.push(endless);
  for (const at of [() => 1, Symbol('here'), [-0, 1], endless, 10n, true])
    expect(construction({ verb: 'pencil', name: 'p', at })).toBeNull();
});

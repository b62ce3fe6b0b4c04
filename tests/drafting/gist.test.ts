import { expect, test } from 'vitest';
import { gistOf } from '../../src/drafting/gist.ts';
import type { Step } from '../../src/drafting/step.ts';

const draft = [
  { verb: 'parallel', name: 'edge', to: 'centre-front', distance: 'overlap', side: 'left' },
  { verb: 'tape', name: 'width', length: 'overlap * 2' },
  { verb: 'along', name: 'mark', on: 'edge', from: 'neck-point', distance: 'width', toward: 'down', answers: 'top' },
] as const satisfies readonly Step[];
const [edge, width, mark] = draft;

const numberOf = (steps: readonly unknown[]) => gistOf(steps as readonly Step[])?.number;

test('drafts that differ in names alone have one gist', () => {
  const others = [
    { ...edge, name: 'line-1' },
    { ...width, name: 'length-1' },
    { ...mark, name: 'point-1', on: 'line-1', distance: 'length-1' },
  ];
  expect(numberOf(others)).toBe(numberOf(draft));
  expect(gistOf(others as readonly Step[])?.names).toEqual(new Set(['line-1', 'length-1', 'point-1']));
});

test('drafts that do different things have different ones', () => {
  const different = [
    draft,
    [edge, width],
    [width, edge, mark],
    [edge, width, { ...mark, answers: undefined }],
    [edge, width, { ...mark, answers: 'other' }],
    [edge, width, { ...mark, on: 'centre-front' }],
    [edge, width, { ...mark, from: 'waist-point' }],
    [edge, width, { ...mark, distance: 'overlap' }],
    [edge, { ...width, length: 'overlap * 3' }, mark],
    [edge, { ...width, name: 'neck-point' }, mark],
  ];
  const numbers = different.map(numberOf);
  expect(numbers).not.toContain(undefined);
  expect(new Set(numbers).size).toBe(different.length);
});

test('a draft that cannot be told has none: a name given twice or not well-formed, no step, a use that is no name', () => {
  for (const steps of [
    [edge, edge],
    [{ ...edge, name: 'left' }],
    [{ ...edge, name: 'Edge 1' }],
    [{ verb: 'weave', name: 'edge' }],
    [{ ...edge, distance: [[[['overlap']]]] }],
    [{ ...edge, to: '0 1' }],
  ])
    expect(gistOf(steps as unknown as readonly Step[])).toBeNull();
});

import { expect, test } from 'vitest';
import { blockOf } from '../../src/garment/block.ts';
import { blockLengths } from '../../src/garment/lengths.ts';
import { people } from '../../src/garment/people.ts';
import { measureBlock } from './block-oracle.ts';

test.each(people)('the lengths of $name’s block are what another library measures', ({ figure }) => {
  const block = blockOf(figure);
  const lengths = block.ok ? blockLengths(block.shapes) : null;
  const { front, back, points } = measureBlock(figure);
  expect(lengths?.neckWidth).toBe(points('neck-point').x);
  expect(lengths?.frontNeck).toBeCloseTo(front.length(), 6);
  expect(lengths?.backNeck).toBeCloseTo(back.length(), 6);
});

test('there are none without a block', () => {
  expect(blockLengths(new Map())).toBeNull();
});

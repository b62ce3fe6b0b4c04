import { expect, test } from 'vitest';
import { readSteps } from '../../src/drafting/read.ts';

const edge = { verb: 'parallel', name: 'edge', to: 'centre-front', distance: 'overlap', side: 'left' };
const seam = { verb: 'seam', name: 'seam', run: ['a', { along: 'edge', from: 'a', to: 'b' }] };

function only(step: unknown): unknown {
  const read = readSteps([step]);
  return read.ok ? read.steps[0] : read.errors;
}

test('a step that says the very same as one read before is that one, in whatever order its fields stand', () => {
  for (const step of [edge, seam]) {
    const backwards = Object.fromEntries(Object.entries(step).toReversed());
    expect(only(backwards)).toBe(only(step));
    expect(only(step)).toEqual(step);
  }
});

test('one that says anything else is read for itself', () => {
  const others = [
    { ...edge, distance: 'overlap * 2' },
    { ...edge, answers: 'edge' },
    { ...seam, run: ['a'] },
    { ...seam, run: ['a', { along: 'edge', from: 'a', to: 'c' }] },
    { ...seam, run: ['a', 'edge'] },
  ];
  for (const other of others) {
    only(edge);
    only(seam);
    expect(only(other)).toEqual(other);
  }
});

test('what does not fit is refused after the very same name was read without a fault', () => {
  const strange = [
    { ...edge, side: ['left'] },
    { ...edge, side: { 0: 'l' } },
    JSON.parse(`{ "__proto__": {}, ${JSON.stringify(edge).slice(1)}`),
    JSON.parse(JSON.stringify(edge).replace('"side":"left"', '"__proto__":"left"')),
    { ...edge, constructor: 'left' },
    { ...seam, run: { 0: 'a', 1: { along: 'edge', from: 'a', to: 'b' } } },
    { ...seam, run: ['a', { along: 'edge', from: 'a', toString: 'b' }] },
  ];
  for (const step of strange) {
    only(edge);
    only(seam);
    expect(readSteps([step]).ok).toBe(false);
  }
});

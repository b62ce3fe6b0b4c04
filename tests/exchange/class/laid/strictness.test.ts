import { expect, test } from 'vitest';
import { usualStrictness } from '../../../../src/exchange/class/laid/strictness.ts';
import type { Strictness } from '../../../../src/grader/tolerance.ts';

const by = (...all: readonly Strictness[]) => usualStrictness(all.map((strictness) => ({ strictness })));

test('the chalk of a class goes by what the most were marked by, and by the finer of two that are as many', () => {
  expect(by('learner', 'workroom', 'workroom')).toEqual({ strictness: 'workroom', count: 2 });
  expect(by('sample-room', 'learner', 'learner')).toEqual({ strictness: 'learner', count: 2 });
  expect(by('learner', 'sample-room', 'workroom')).toEqual({ strictness: 'sample-room', count: 1 });
  expect(by()).toBeNull();
});

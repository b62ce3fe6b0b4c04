import { describe, expect, test } from 'vitest';
import type { ClassWork } from '../../../src/exchange/class/class-work.ts';
import { teachFirst } from '../../../src/exchange/class/teach-first.ts';

type Checked = ClassWork['checks'][number];

function check(target: string, more: Partial<Checked> = {}): Checked {
  return { target, check: 'line', share: 1, status: 'within', misreading: null, ...more };
}

/** Pieces of one exercise, each by another student, from the checks of each. */
function work(exercise: string, drafts: readonly (readonly Checked[])[]): readonly ClassWork[] {
  return drafts.map((checks, at) => {
    const student = `student ${at}`;
    return { student, who: { student, number: '' }, exercise, saved: null, share: 1, checks, freeHand: null };
  });
}

const misread = (target: string, misreading: string) => check(target, { share: 0, status: 'beyond', misreading });
const missing = (target: string) => check(target, { share: 0, status: 'missing' });
const off = (target: string) => check(target, { share: 0.5, status: 'near' });
const times = <T>(count: number, one: T): readonly T[] => Array.from({ length: count }, () => one);

describe('what is to be taught again first', () => {
  test('is the fault that most made, over all exercises, whether read wrong, not pointed out or drawn off', () => {
    const told = teachFirst([
      ...work('roll-line', [
        ...times(4, [misread('roll-line', 'through-neck-point')]),
        ...times(2, [misread('roll-line', 'to-front-neck-point')]),
        ...times(3, [missing('roll-line')]),
        [check('roll-line')],
      ]),
      ...work('swing', times(5, [off('back-line')])),
    ]);
    expect(told).toEqual([
      { exercise: 'swing', target: 'back-line', fault: 'off', count: 5, worked: 5 },
      { exercise: 'roll-line', target: 'roll-line', fault: { way: 'through-neck-point' }, count: 4, worked: 10 },
      { exercise: 'roll-line', target: 'roll-line', fault: 'none', count: 3, worked: 10 },
      { exercise: 'roll-line', target: 'roll-line', fault: { way: 'to-front-neck-point' }, count: 2, worked: 10 },
    ]);
  });

  test('counts a target once, however many of its checks are off, and a wrong way before what else is off with it', () => {
    const both = [off('stand-point'), misread('stand-point', 'level')];
    expect(teachFirst(work('roll-line', [both, both]))).toEqual([
      { exercise: 'roll-line', target: 'stand-point', fault: { way: 'level' }, count: 2, worked: 2 },
    ]);
  });

  test('tells of a draft that breaks off the first answer that is not there, and not all that hang on it', () => {
    const broken = [check('a'), missing('b'), off('c'), missing('d')];
    expect(teachFirst(work('swing', [broken, broken])).map(({ target }) => target)).toEqual(['b', 'c']);
  });

  test('is nothing that one student did alone, and no more than a lesson has room for', () => {
    const targets = ['a', 'b', 'c', 'd', 'e', 'f'];
    expect(teachFirst(work('swing', [targets.map(off)]))).toEqual([]);
    expect(teachFirst(work('swing', times(2, targets.map(off)))).map(({ target }) => target)).toEqual([
      ...['a', 'b', 'c', 'd', 'e'],
    ]);
    expect(teachFirst([])).toEqual([]);
  });
});

import { expect, test } from 'vitest';
import type { ClassWork } from '../../../src/exchange/class/class-work.ts';
import { since } from '../../../src/exchange/class/since.ts';

type Checked = ClassWork['checks'][number];

/** An attempt, a check a target: right or wrong; two of one target where it has two marks. */
function attempt(targets: Readonly<Record<string, readonly boolean[]>>): Pick<ClassWork, 'checks'> {
  const checks = Object.entries(targets).flatMap(([target, all]) =>
    all.map((right): Checked => {
      const status = right ? 'within' : 'beyond';
      return { target, check: 'line', share: right ? 1 : 0, status, misreading: null };
    }),
  );
  return { checks };
}

test('two attempts are held against each other answer by answer', () => {
  const before = attempt({ a: [false], b: [true], c: [true, false], d: [true, true], e: [false] });
  const now = attempt({ a: [true], b: [false], c: [false, true], d: [true, true], f: [true] });
  expect(since(before, now)).toEqual({ mended: ['a'], spoilt: ['b'], still: ['c'] });
  expect(since(attempt({}), now)).toEqual({ mended: [], spoilt: [], still: [] });
});

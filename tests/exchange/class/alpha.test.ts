import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cronbachAlpha } from '../../../src/exchange/class/alpha.ts';

describe('Cronbach’s alpha', () => {
  test('is null where there is nothing to compare', () => {
    expect(cronbachAlpha([])).toBeNull();
    expect(cronbachAlpha([[1, 2]])).toBeNull();
    expect(cronbachAlpha([[1], [2]])).toBeNull();
    expect(
      cronbachAlpha([
        [1, 2],
        [2, 1],
      ]),
    ).toBeNull();
    // Two ways to add up 0.6, which differ in the last bit.
    expect(
      cronbachAlpha([
        [0.1, 0.2, 0.3],
        [0.3, 0.2, 0.1],
      ]),
    ).toBeNull();
  });

  test('is 1 where every part says the same, and 0 where no two parts go together', () => {
    expect(
      cronbachAlpha([
        [1, 1, 1],
        [4, 4, 4],
        [2, 2, 2],
      ]),
    ).toBeCloseTo(1, 12);
    expect(
      cronbachAlpha([
        [0, 0],
        [0, 1],
        [1, 0],
        [1, 1],
      ]),
    ).toBeCloseTo(0, 12);
  });

  test('is Kuder and Richardson’s formula 20 where answers are right or wrong (1937)', () => {
    const answers = fc.array(fc.array(fc.constantFrom<number>(0, 1), { minLength: 4, maxLength: 4 }), {
      minLength: 3,
      maxLength: 40,
    });
    fc.assert(
      fc.property(answers, (rows) => {
        const n = rows.length;
        const sums = rows.map((row) => row.reduce((a, b) => a + b, 0));
        const mean = sums.reduce((a, b) => a + b, 0) / n;
        const whole = sums.reduce((sum, one) => sum + (one - mean) ** 2, 0) / n;
        fc.pre(whole > 0);
        const pq = [0, 1, 2, 3].reduce((sum, part) => {
          const p = rows.reduce((count, row) => count + (row[part] ?? 0), 0) / n;
          return sum + p * (1 - p);
        }, 0);
        expect(cronbachAlpha(rows)).toBeCloseTo((4 / 3) * (1 - pq / whole), 9);
      }),
    );
  });
});

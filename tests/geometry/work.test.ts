import { describe, expect, test } from 'vitest';
import { arcPath } from '../../src/geometry/arc.ts';
import { offsetPath } from '../../src/geometry/offset.ts';
import { metered, spend } from '../../src/geometry/work.ts';

const arc = arcPath({ x: 0, y: 0 }, 100, 0, 2);

describe('work under a limit', () => {
  test('costs the same every time, and something', () => {
    const once = metered(1e6, () => offsetPath(arc, 20));
    const again = metered(1e6, () => offsetPath(arc, 20));
    expect(once).toEqual(again);
    expect(once.done && once.spent).toBeGreaterThan(1);
  });

  test('is given up where it would cost more', () => {
    const whole = metered(1e6, () => offsetPath(arc, 20));
    const spent = whole.done ? whole.spent : 0;
    expect(metered(spent, () => offsetPath(arc, 20)).done).toBe(true);
    expect(metered(spent - 1, () => offsetPath(arc, 20)).done).toBe(false);
  });

  test('is no limit on what comes after it', () => {
    metered(1, () => spend(5));
    expect(() => spend(1e9)).not.toThrow();
  });

  test('inside other work counts toward both, and the one that is reached gives up', () => {
    expect(metered(10, () => metered(3, () => spend(4)))).toEqual({ done: true, value: { done: false }, spent: 4 });
    expect(metered(3, () => metered(10, () => spend(4)))).toEqual({ done: false });
  });

  test('lets other errors through', () => {
    const broken = () => {
      throw new RangeError('other');
    };
    expect(() => metered(10, broken)).toThrow('other');
  });
});

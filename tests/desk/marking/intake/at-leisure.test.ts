import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { atLeisure } from '../../../../src/desk/marking/intake/at-leisure.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

/** Even numbers are final. */
function teller() {
  const told: number[] = [];
  return {
    told,
    tell: atLeisure(
      (state: number) => told.push(state),
      (state) => state % 2 === 0,
      250,
    ),
  };
}

describe('telling at leisure', () => {
  test('tells the first at once, and of those that follow the latest after a pause', () => {
    const { told, tell } = teller();
    for (const state of [1, 3, 5]) tell(state);
    expect(told).toEqual([1]);
    vi.advanceTimersByTime(250);
    expect(told).toEqual([1, 5]);
    tell(7);
    expect(told).toEqual([1, 5]);
    vi.advanceTimersByTime(250);
    expect(told).toEqual([1, 5, 7]);
  });

  test('tells a final state at once, and nothing older after it', () => {
    const { told, tell } = teller();
    for (const state of [1, 3, 4]) tell(state);
    vi.advanceTimersByTime(1000);
    expect(told).toEqual([1, 4]);
  });

  test('rests when there is nothing to tell', () => {
    const { told, tell } = teller();
    tell(1);
    vi.advanceTimersByTime(1000);
    tell(3);
    expect(told).toEqual([1, 3]);
    expect(vi.getTimerCount()).toBe(1);
    tell(5);
    vi.advanceTimersByTime(1000);
    expect(told).toEqual([1, 3, 5]);
    expect(vi.getTimerCount()).toBe(0);
  });
});

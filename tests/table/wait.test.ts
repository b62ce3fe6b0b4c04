import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { Wait } from '../../src/table/wait.ts';

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'performance'] });
});

afterEach(() => {
  vi.useRealTimers();
});

test('who asks again and again is called back once, a while after asking last, for what was asked last', () => {
  const wait = new Wait(100);
  const calls: number[] = [];
  for (let asked = 0; asked < 5; asked += 1) {
    wait.ask(() => calls.push(asked));
    vi.advanceTimersByTime(60);
  }
  expect(calls).toEqual([]);
  vi.advanceTimersByTime(39);
  expect(calls).toEqual([]);
  vi.advanceTimersByTime(1);
  expect(calls).toEqual([4]);
  vi.advanceTimersByTime(1000);
  expect(calls).toEqual([4]);
});

test('who was called back may ask again, also from within', () => {
  const wait = new Wait(100);
  const calls: string[] = [];
  wait.ask(() => {
    calls.push('first');
    wait.ask(() => calls.push('second'));
  });
  vi.advanceTimersByTime(100);
  expect(calls).toEqual(['first']);
  vi.advanceTimersByTime(100);
  expect(calls).toEqual(['first', 'second']);
});

test('what was dropped is not called back, and what is asked after it is', () => {
  const wait = new Wait(100);
  const calls: string[] = [];
  wait.ask(() => calls.push('dropped'));
  wait.drop();
  vi.advanceTimersByTime(50);
  wait.ask(() => calls.push('kept'));
  vi.advanceTimersByTime(99);
  expect(calls).toEqual([]);
  vi.advanceTimersByTime(1);
  expect(calls).toEqual(['kept']);
});

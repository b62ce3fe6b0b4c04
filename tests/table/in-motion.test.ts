import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { InMotion, type Motion } from '../../src/table/in-motion.ts';
import type { Move } from '../../src/table/model/moved.ts';

/** A mark that a drag has brought to a place, as far as it matters who is told of it. */
function at(x: number): Motion {
  return { move: { do: 'move', name: 'mark-1', at: [x, 0] } } as unknown as Motion;
}

function inMotion() {
  const told: Move[] = [];
  const seen: (Motion | null)[] = [];
  const motion = new InMotion((move) => told.push(move));
  motion.watch((now) => seen.push(now));
  return { motion, told, seen };
}

describe('what is dragged', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  test('is seen at each move, and told as the last move alone, once the hand is still', () => {
    const { motion, told, seen } = inMotion();
    for (const x of [1, 2, 3]) motion.go(at(x));
    expect(told).toEqual([]);
    expect(motion.now()).toEqual(at(3));
    vi.advanceTimersByTime(500);
    expect(told).toEqual([at(3).move]);
    expect(seen).toEqual([at(1), at(2), at(3), null]);
    expect(motion.now()).toBeNull();
    expect(motion.rests()).toBe(true);
  });

  test('goes on after the hand was still', () => {
    const { motion, told } = inMotion();
    motion.go(at(1));
    vi.advanceTimersByTime(500);
    motion.go(at(2));
    motion.settle();
    expect(told).toEqual([at(1).move, at(2).move]);
  });

  test('is told once where the hand lets go, and not a second time when it would have been still', () => {
    const { motion, told } = inMotion();
    motion.go(at(1));
    motion.settle();
    motion.settle();
    vi.advanceTimersByTime(500);
    expect(told).toEqual([at(1).move]);
    expect(motion.rests()).toBe(false);
  });

  test('is seen no more by who has stopped watching', () => {
    const { motion } = inMotion();
    const seen: (Motion | null)[] = [];
    const end = motion.watch((now) => seen.push(now));
    motion.go(at(1));
    end();
    motion.go(at(2));
    expect(seen).toEqual([at(1)]);
  });
});

import { describe, expect, test } from 'vitest';
import { DRAFT_WORK } from '../../src/drafting/limits.ts';
import { replay } from '../../src/drafting/replay.ts';
import type { Step } from '../../src/drafting/step.ts';
import { block, spoken } from './block.ts';
import { greedySteps } from './greedy.ts';

const edge = { verb: 'parallel', name: 'edge', to: 'centre-front', distance: 'overlap', side: 'left' } as Step;

describe('a draft that asks for more work than it may', () => {
  const sheet = replay(block, [...greedySteps, edge]);

  test('gives up the steps that do, and says so on them', () => {
    const [first] = sheet.problems;
    expect(first && spoken(first.message)).toMatch(/^This takes more working out than a draft may ask for:/);
    expect(sheet.work).toBeGreaterThanOrEqual(DRAFT_WORK);
  });

  test('still draws what costs next to nothing', () => {
    expect(sheet.shapes.has('edge')).toBe(true);
  });

  test('costs little more than the limit, however many steps ask', () => {
    expect(sheet.work).toBeLessThan(2 * DRAFT_WORK);
  });

  test('comes out the same when some of it is remembered', () => {
    const steps = [...greedySteps, edge];
    const again = replay(block, steps);
    expect(replay(block, steps)).toEqual(again);
    expect(again.problems).toEqual(sheet.problems);
  });
});

describe('a draft that asks for little', () => {
  test('costs little', () => {
    expect(replay(block, [edge]).work).toBeLessThan(10);
  });
});

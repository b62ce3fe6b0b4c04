import { describe, expect, test } from 'vitest';
import { replay } from '../../src/drafting/replay.ts';
import type { Step } from '../../src/drafting/step.ts';
import { runWith } from '../../src/table/model/run-with.ts';
import { room } from './room.ts';

const midway: Step = {
  verb: 'along',
  name: 'midway',
  on: 'front-neckline',
  from: 'neck-point',
  distance: '3 cm',
  toward: 'front-neck-point',
};
const sheet = replay(room.givens, [midway]);
const pointed = (...names: readonly string[]) =>
  names.reduce<readonly unknown[]>((run, name) => runWith(run, name, sheet), []);
const part = (along: string, from: string, to: string) => ({ along, from, to });

describe('a run that is pointed at', () => {
  test('takes the part of a curve or line between the marks before and after it', () => {
    expect(pointed('midway', 'front-neckline', 'neck-point')).toEqual([
      part('front-neckline', 'midway', 'neck-point'),
      'neck-point',
    ]);
    expect(pointed('shoulder-tip', 'shoulder-line', 'neck-point', 'front-neckline', 'midway')).toEqual([
      part('shoulder-line', 'shoulder-tip', 'neck-point'),
      'neck-point',
      part('front-neckline', 'neck-point', 'midway'),
      'midway',
    ]);
  });

  test('keeps the mark that a part begins at where something comes to it from elsewhere', () => {
    expect(pointed('shoulder-tip', 'midway', 'front-neckline', 'neck-point')).toEqual([
      'shoulder-tip',
      'midway',
      part('front-neckline', 'midway', 'neck-point'),
      'neck-point',
    ]);
  });

  test('takes a curve whole that runs from mark to mark, and one whose marks lie elsewhere', () => {
    const whole = ['neck-point', 'front-neckline', 'front-neck-point'];
    expect(pointed(...whole)).toEqual(whole);
    expect(pointed(...whole.toReversed())).toEqual(whole.toReversed());
    const elsewhere = ['shoulder-tip', 'front-neckline', 'midway'];
    expect(pointed(...elsewhere)).toEqual(elsewhere);
    const same = ['midway', 'front-neckline', 'midway'];
    expect(pointed(...same)).toEqual(same);
  });

  test('can be drawn, on from one part into the next', () => {
    const run = pointed('shoulder-tip', 'shoulder-line', 'neck-point', 'front-neckline', 'midway', 'front-neck-point');
    const drawn = replay(room.givens, [midway, { verb: 'seam', name: 'joined', run } as Step]);
    expect(drawn.problems).toEqual([]);
    expect(drawn.shapes.get('joined')?.kind).toBe('curve');
  });
});

import { describe, expect, test } from 'vitest';
import { ancestorsOf, namesUsedBy } from '../../src/drafting/dependencies.ts';
import { renameObject } from '../../src/drafting/rename.ts';
import type { Step } from '../../src/drafting/step.ts';

const steps: readonly Step[] = [
  { verb: 'parallel', name: 'edge', to: 'centre-front', distance: 'overlap', side: 'left' },
  { verb: 'pencil', name: 'up-there', at: [1, 2] },
  { verb: 'tape', name: 'depth', along: 'centre-front', from: 'up-there', to: 'neck-point' },
  { verb: 'along', name: 'mark', on: 'edge', from: 'up-there', distance: '(depth - stand) / 2', toward: 'up' },
  { verb: 'compass', name: 'arc', about: 'mark', radius: 'depth', on: 'edge', near: 'neck-point' },
  { verb: 'cross', name: 'x', one: 'edge', other: 'waist', near: [3, 4] },
  { verb: 'curve', name: 'c', through: ['mark', 'arc'], leave: { square: 'edge' }, shape: [null, null] },
  { verb: 'seam', name: 's', run: ['mark', { along: 'edge', from: 'mark', to: 'x' }, 'c'] },
  { verb: 'swing', name: 'w', what: 's', about: 'mark', by: 'depth', at: 'depth', turn: 'clockwise', answers: 'mark' },
];

describe('the names a step uses', () => {
  test('are those of objects and measures, without directions and places', () => {
    expect(steps.map(namesUsedBy)).toEqual([
      ['centre-front', 'overlap'],
      [],
      ['centre-front', 'up-there', 'neck-point'],
      ['edge', 'up-there', 'depth', 'stand'],
      ['mark', 'depth', 'edge', 'neck-point'],
      ['edge', 'waist'],
      ['mark', 'arc', 'edge'],
      ['mark', 'edge', 'x', 'c'],
      ['s', 'mark', 'depth'],
    ]);
  });

  test('are none where a step is half filled or an expression is not finished', () => {
    expect(namesUsedBy({ verb: 'parallel', name: 'a', distance: 'stand +' } as unknown as Step)).toEqual([]);
    expect(namesUsedBy({ verb: 'sew', name: 'a', to: 'b' } as unknown as Step)).toEqual([]);
  });
});

describe('where an object comes from', () => {
  test('is every step it needs, its own last', () => {
    expect(ancestorsOf(steps, 'mark')).toEqual([0, 1, 2, 3]);
    expect(ancestorsOf(steps, 'x')).toEqual([0, 5]);
    expect(ancestorsOf(steps, 'w')).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8]);
    expect(ancestorsOf(steps, 'neck-point')).toEqual([]);
  });

  test('looks at earlier steps only', () => {
    const circle = [
      { verb: 'foot', name: 'a', from: 'b', on: 'waist' },
      { verb: 'foot', name: 'b', from: 'a', on: 'waist' },
    ] as const;
    expect(ancestorsOf(circle, 'a')).toEqual([0]);
    expect(ancestorsOf(circle, 'b')).toEqual([0, 1]);
  });
});

describe('calling an object otherwise', () => {
  test('changes its step and every use, in expressions too, and nothing else', () => {
    const renamed = renameObject(renameObject(steps, 'mark', 'break'), 'depth', 'deep-2');
    expect(renamed.flatMap(namesUsedBy)).not.toContain('mark');
    expect(renamed[3]).toEqual({ ...steps[3], name: 'break', distance: '(deep-2 - stand) / 2' });
    expect(renamed[7]).toEqual({ ...steps[7], run: ['break', { along: 'edge', from: 'break', to: 'x' }, 'c'] });
    expect(renamed[8]).toMatchObject({ about: 'break', by: 'deep-2', at: 'deep-2', answers: 'mark' });
    expect(renamed[0]).toBe(steps[0]);
  });

  test('and back again gives the same draft', () => {
    for (const { name } of steps) {
      expect(renameObject(renameObject(steps, name, 'something-else'), 'something-else', name)).toEqual(steps);
    }
  });

  test('does not take a direction for a name', () => {
    const along = { verb: 'along', name: 'm', on: 'up', from: 'up', distance: '1 cm', toward: 'up' } as const;
    expect(renameObject([along], 'up', 'p')).toEqual([{ ...along, on: 'p', from: 'p' }]);
  });
});

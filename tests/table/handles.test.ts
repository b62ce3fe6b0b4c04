import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CurveThrough } from '../../src/drafting/step.ts';
import { distance } from '../../src/geometry/point.ts';
import { dragged, gripsOf } from '../../src/table/model/grips.ts';
import { reduce, sheetOf } from '../../src/table/model/reduce.ts';
import { benchAfter, room, step } from './room.ts';

const drawn = benchAfter([
  ...step('pencil', { at: [0, 0] }),
  ...step('pencil', { at: [60, 40] }),
  ...step('pencil', { at: [140, 20] }),
  ...step('curve', { through: ['mark-1', 'mark-2', 'mark-3'] }),
]);

describe('the handles of a curve', () => {
  test('are two to each point but its ends', () => {
    expect(gripsOf(drawn, sheetOf(drawn, room)).filter(({ handle }) => handle)).toHaveLength(4);
  });

  test('come to lie where they are dragged, and the curve still runs through its points', () => {
    const away = fc.tuple(
      fc.double({ min: 12, max: 90, noNaN: true }),
      fc.double({ min: -1.2, max: 1.2, noNaN: true }),
    );
    fc.assert(
      fc.property(fc.nat(3), away, (index, [far, turn]) => {
        const sheet = sheetOf(drawn, room);
        const held = gripsOf(drawn, sheet).filter(({ handle }) => handle)[index];
        if (!held?.handle) throw new Error('There is no such handle.');
        const { root } = held.handle;
        const now = Math.atan2(held.at.y - root.y, held.at.x - root.x) + turn;
        const to = { x: root.x + far * Math.cos(now), y: root.y + far * Math.sin(now) };
        const action = dragged(held, to, drawn.steps, sheet);
        const bent = action ? reduce(drawn, action, room) : drawn;
        const after = sheetOf(bent, room);
        const moved = gripsOf(bent, after).find(({ key }) => key === held.key);
        expect(distance(moved?.at ?? { x: Number.NaN, y: 0 }, to)).toBeLessThan(1e-6);
        const curve = after.shapes.get('curve-1');
        const path = curve?.kind === 'curve' ? curve.path : [];
        expect(path.map(({ p3 }) => p3)).toEqual([
          { x: 60, y: 40 },
          { x: 140, y: 20 },
        ]);
      }),
      { numRuns: 300 },
    );
  });

  test('keep the other points as they were set', () => {
    const sheet = sheetOf(drawn, room);
    const [first, second] = gripsOf(drawn, sheet).filter(({ handle }) => handle);
    const one = first && dragged(first, { x: 10, y: 30 }, drawn.steps, sheet);
    const bent = one ? reduce(drawn, one, room) : drawn;
    const other = second && dragged(second, { x: 40, y: 45 }, bent.steps, sheetOf(bent, room));
    const twice = other ? reduce(bent, other, room) : bent;
    const curve = twice.steps[3] as CurveThrough;
    expect(curve.shape?.[0]).toEqual((bent.steps[3] as CurveThrough).shape?.[0]);
    expect(curve.shape?.[2]).toBeNull();
  });
});

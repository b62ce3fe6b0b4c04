import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { walkOf } from '../../../src/garment/collar/walk.ts';
import { people } from '../../../src/garment/people.ts';
import { paperOf, paperPoint } from '../../geometry/oracle.ts';
import { drafted, drawnCollar, lapel, markOn, swung, toRollLine, wholeCollar } from './collar-draft.ts';

function walked(steps: Parameters<typeof drafted>[0] = wholeCollar, figure = people[0]?.figure) {
  const walk = walkOf(drafted(steps, {}, figure));
  if (!walk) throw new Error('There is nothing to walk.');
  return walk;
}

/** The whole collar with its neck edge run otherwise. */
function withEdge(run: readonly string[], at = drawnCollar.findIndex(({ name }) => name === 'collar-neck-edge')) {
  return [
    ...toRollLine,
    ...lapel,
    ...swung(),
    ...drawnCollar.slice(0, at),
    { verb: 'seam', name: 'collar-neck-edge', run } as const,
    ...drawnCollar.slice(at + 1),
  ];
}

describe('walking the collar along the neck seam', () => {
  test.each(people)('has match marks at the centre back, the shoulder and the notch, on $name', ({ figure }) => {
    const { marks, stretches } = walked(wholeCollar, figure);
    expect(marks.map(({ name }) => name)).toEqual(['centre-back', 'neck-point', 'notch']);
    expect(marks[0]).toMatchObject({ seam: 0, collar: 0 });
    // In front of the shoulder both were drawn in one place, the edge with the last breath of its bend.
    expect(Math.abs(stretches[1]?.over ?? 9)).toBeLessThan(0.1);
    // The smooth back part is a little longer than the swung line it was drawn along.
    expect(Math.abs(stretches[0]?.over ?? 9)).toBeLessThan(1);
  });

  // paper.js measures the seam and the edge between the same marks.
  test('measures each stretch as another library does', () => {
    const sheet = drafted(wholeCollar);
    const { seam, collar, stretches } = walked();
    const [neck, notch] = [markOn(sheet, 'neck-point'), markOn(sheet, 'notch')];
    const [onSeam, onCollar] = [paperOf(seam), paperOf(collar)];
    const station = (path: typeof onSeam, p: typeof neck) => path.getOffsetOf(path.getNearestPoint(paperPoint(p)));
    expect(stretches[0]?.seam).toBeCloseTo(station(onSeam, neck), 3);
    expect(stretches[0]?.collar).toBeCloseTo(station(onCollar, neck), 3);
    expect(stretches[1]?.seam).toBeCloseTo(station(onSeam, notch) - station(onSeam, neck), 3);
    expect(onSeam.length).toBeCloseTo((stretches[0]?.seam ?? 0) + (stretches[1]?.seam ?? 0), 3);
  });

  test('says what is left over and what is short', () => {
    const back = ['collar-back', 'neck-point', 'gorge-corner', 'notch'];
    expect(walked(withEdge(back)).stretches[0]?.over).toBeCloseTo(0, 6);
    fc.assert(
      fc.property(fc.double({ min: -12, max: 12, noNaN: true }), (more) => {
        const longer = withEdge(back).map((step) =>
          step.name === 'collar-back' ? { ...step, distance: `back-neck + ${more.toFixed(3)} mm` } : step,
        );
        expect(walked(longer).stretches[0]?.over).toBeCloseTo(Number(more.toFixed(3)), 6);
        expect(walked(longer).stretches[1]?.over).toBeCloseTo(0, 6);
      }),
      { numRuns: 20 },
    );
  });

  test('an edge that runs on past the notch is left over at the end', () => {
    const sheet = drafted(wholeCollar);
    const [notch, point] = [markOn(sheet, 'notch'), markOn(sheet, 'lapel-point')];
    const { past, stretches } = walked(withEdge(['true-back', 'gorge-corner', 'lapel-point']));
    expect(past).toBeCloseTo(Math.hypot(point.x - notch.x, point.y - notch.y), 6);
    expect(Math.abs(stretches[1]?.over ?? 9)).toBeLessThan(0.1);
  });

  test('does not mind from which end the edge was drawn', () => {
    const other = walked(withEdge(['notch', 'gorge-corner', 'true-back'])).marks;
    for (const [index, mark] of walked().marks.entries()) {
      expect(other[index]?.collar).toBeCloseTo(mark.collar, 6);
      expect(other[index]?.seam).toBeCloseTo(mark.seam, 6);
    }
  });

  test('waits until there is a neck edge', () => {
    expect(walkOf(drafted([...toRollLine, ...lapel, ...swung()]))).toBeNull();
  });
});

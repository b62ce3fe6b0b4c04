import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foldPath } from '../../../src/garment/collar/fold-over.ts';
import { wornOf } from '../../../src/garment/collar/worn.ts';
import { usualWorn } from '../../../src/garment/collar/worn-plan.ts';
import { people } from '../../../src/garment/people.ts';
import { signedDistance } from '../../../src/geometry/line.ts';
import { endOf, startOf } from '../../../src/geometry/path.ts';
import { distance } from '../../../src/geometry/point.ts';
import { drafted, drawnCollar, lapel, markOn, swung, toRollLine, wholeCollar } from './collar-draft.ts';

describe('a draft as it is worn', () => {
  // The notch is drafted where it will be seen and folded over; folded back by the view it must come out there again.
  test.each(people)('has its notch on $name where it was designed to sit', ({ figure }) => {
    fc.assert(
      fc.property(fc.double({ min: -10, max: 40, noNaN: true }), (drop) => {
        // A distance to be laid off is never less than nothing; above the level is laid off upward.
        const up = { ...lapel[0], side: 'up' } as (typeof lapel)[number];
        const steps = [...toRollLine, ...(drop < 0 ? [up, ...lapel.slice(1)] : lapel)];
        const sheet = drafted(steps, { 'notch-drop': Math.abs(drop) }, figure);
        const worn = wornOf(sheet, usualWorn);
        expect(worn?.notch?.below).toBeCloseTo(drop, 8);
        expect(distance(worn?.notch?.worn ?? { x: 0, y: 0 }, markOn(sheet, 'notch-worn'))).toBeLessThan(1e-8);
      }),
      { numRuns: 10 },
    );
  });

  test('folds the lapel from the break point to the gorge over to the body side', () => {
    const sheet = drafted(wholeCollar);
    const worn = wornOf(sheet, usualWorn);
    if (!worn?.lapel) throw new Error('There is no lapel.');
    expect(distance(startOf(worn.lapel.edge), markOn(sheet, 'break-point'))).toBeLessThan(1e-6);
    expect(signedDistance(worn.fold, endOf(worn.lapel.edge))).toBeCloseTo(0, 6);
    const over = foldPath(worn.lapel.outline, worn.fold, 1);
    for (const { p0 } of over) expect(signedDistance(worn.fold, p0)).toBeLessThan(1e-6);
    // As wide, worn, as the order says.
    const widest = Math.min(...over.map(({ p0 }) => signedDistance(worn.fold, p0)));
    expect(widest).toBeCloseTo(-85, 6);
    expect(distance(startOf(worn.lapel.outline), endOf(worn.lapel.outline))).toBeLessThan(1e-6);
  });

  test('turns the collar down as far as the square to the fold through the shoulder, and no further', () => {
    const sheet = drafted(wholeCollar);
    const worn = wornOf(sheet, usualWorn);
    if (!worn?.collar) throw new Error('There is no collar.');
    const shoulder = markOn(sheet, 'neck-point');
    const { direction } = worn.fold;
    const up = (p: { x: number; y: number }) => (p.x - shoulder.x) * direction.x + (p.y - shoulder.y) * direction.y;
    expect(up(endOf(worn.collar.edge))).toBeCloseTo(0, 6);
    for (const { p0 } of worn.collar.outline) expect(up(p0)).toBeLessThan(1e-6);
    // Turned down there, the edge lies about the fall less the stand outside the neck seam.
    const turned = foldPath(worn.collar.edge, worn.fold, 1);
    const seam = signedDistance(worn.fold, shoulder);
    const cover = seam - signedDistance(worn.fold, endOf(turned));
    expect(cover).toBeGreaterThan(10);
    expect(cover).toBeLessThan(25);
  });

  test('shows what there is: nothing before the lapel, the lapel before the collar', () => {
    expect(wornOf(drafted(toRollLine), usualWorn)).toBeNull();
    const half = wornOf(drafted([...toRollLine, ...lapel]), usualWorn);
    expect(half?.lapel).not.toBeNull();
    expect(half?.front).not.toBeNull();
    expect(half?.collar).toBeNull();
    expect(half?.stand).toBeNull();
  });

  test('goes by what answers the targets, whatever the learner calls it', () => {
    const renamed = [...toRollLine, ...lapel].map((step) =>
      step.name === 'roll-line' || step.name === 'notch' ? { ...step, answers: step.name } : step,
    );
    const text = JSON.stringify(renamed).replaceAll(/"(name|over|to|other|from)":"(roll-line|notch)"/g, '"$1":"my-$2"');
    const own = wornOf(drafted(JSON.parse(text)), usualWorn);
    expect(own).toEqual(wornOf(drafted([...toRollLine, ...lapel]), usualWorn));
  });

  test('does not mind which way the roll line was ruled', () => {
    const down = wholeCollar.map((step) =>
      step.name === 'roll-line' ? { ...step, from: 'stand-point', to: 'break-point' } : step,
    );
    const [one, other] = [wornOf(drafted(down), usualWorn), wornOf(drafted(wholeCollar), usualWorn)];
    expect(one?.notch?.below).toBeCloseTo(other?.notch?.below ?? Number.NaN, 8);
    expect(one?.lapel?.edge).toHaveLength(other?.lapel?.edge.length ?? -1);
  });

  test('a collar cut in one with its lapel turns over on one line, from the break point', () => {
    const shawl = wornOf(
      drafted([
        ...toRollLine,
        ...lapel,
        ...swung(),
        ...drawnCollar.slice(0, -1),
        {
          verb: 'curve',
          name: 'outer-edge',
          through: ['outer-back', 'over-shoulder', 'lapel-point', 'break-point'],
          leave: { square: 'collar-centre-back' },
        },
      ]),
      { over: 'roll-line', turns: ['break-point', 'outer-edge'], until: 'neck-point', stays: usualWorn.stays ?? [] },
    );
    expect(shawl?.lapel).toBeNull();
    expect(shawl?.notch).toBeNull();
    expect(shawl?.collar?.edge.length).toBeGreaterThanOrEqual(2);
    expect(shawl?.front).not.toBeNull();
  });
});

import { describe, expect, test } from 'vitest';
import { scenes } from '../../src/course/figures/index.ts';
import { paint, type Scene, sceneSheet } from '../../src/course/figures/scene.ts';
import { readOff, workedSteps } from '../../src/course/worked.ts';
import { markOn } from '../../src/table/live/live-sheet.ts';

const scene = (id: string): Scene => scenes.get(id) as Scene;
const mm = (id: string, is: string): number => {
  const read = readOff(scene(id), { says: '', is });
  return 'mm' in read ? read.mm : Number.NaN;
};
const INCH = 25.4;

describe('the worked overlap', () => {
  test('is twice the button, and clears its rim by what is left of it', () => {
    // Twice the diameter: common practice, no source.
    expect(mm('worked-overlap', 'overlap-by-rule')).toBeCloseTo(1.25 * INCH, 9);
    expect(mm('worked-overlap', 'rim-to-edge')).toBeCloseTo((1.25 - 0.3125) * INCH, 9);
  });

  test('is more than the least that ASDP, Standards of Quality for Custom Clothing, accepts: half the button and 1/4 in', () => {
    expect(mm('worked-overlap', 'button / 2 + 1/4 in')).toBeCloseTo((0.3125 + 0.25) * INCH, 9);
  });
});

test('the worked break point lies where the order says, and the opening is what is left of the front waist', () => {
  expect(mm('worked-break-point', 'beyond')).toBeCloseTo(INCH, 9);
  expect(mm('worked-break-point', 'above')).toBeCloseTo(1.5 * INCH, 9);
  expect(mm('worked-break-point', 'opening')).toBeCloseTo(341 - 1.5 * INCH, 9);
});

describe('the worked roll line', () => {
  const worked = scene('worked-roll-line');
  const neck = markOn(sceneSheet(worked), 'neck-point') ?? { x: 0, y: 0 };
  // Laid off by hand: from the neck point up the slope of 24 degrees toward the centre front, by the stand of 1 1/4 in.
  const slope = (24 * Math.PI) / 180;
  const stand = 1.25 * INCH;
  const across = neck.x - stand * Math.cos(slope) + INCH;
  const up = neck.y + stand * Math.sin(slope) - 1.5 * INCH;

  test('passes the neck point by the full stand (MTOC 1949, Diagram 25 A; Rosenfeld 1918, p. 135)', () => {
    expect(mm('worked-roll-line', 'past')).toBeCloseTo(stand, 9);
  });

  test('is as long, and leans as much, as plain trigonometry says', () => {
    expect(mm('worked-roll-line', 'roll-length')).toBeCloseTo(Math.hypot(across, up), 6);
    const lean = readOff(worked, { says: '', between: ['centre-front', 'roll-line'] });
    const degrees = Math.round((Math.atan2(across, up) * 1800) / Math.PI) / 10;
    expect(lean).toEqual({ says: '', angle: `${degrees}°` });
  });

  test('reads as drafting instructions in either unit', () => {
    const [inches, centimetres] = (['in', 'cm'] as const).map((unit) =>
      workedSteps(worked, unit).map(({ says }) => says),
    );
    expect(inches).toHaveLength(worked.steps.length);
    expect(inches?.[0]).toMatch(/parallel.*centre front.*\b1 in\b/);
    expect(centimetres?.[0]).toMatch(/parallel.*centre front.*\b2\.5 cm\b/);
    expect(inches?.[3]).toMatch(/shoulder line.*neck point.*\b1 1\/4 in\b/);
  });

  test('refuses a reading of a line the draft does not have', () => {
    expect(() =>
      readOff(worked, { says: '', between: ['centre-front', 'rol-line'] }),
    ).toThrowErrorMatchingInlineSnapshot(
      '[AuthoringError: A reading of “worked-roll-line” names the line “rol-line”, and the draft has none.]',
    );
  });
});

describe('the worked lapel', () => {
  const worked = scene('worked-lapel');

  test('is as wide flat as it was designed, and its edge as long', () => {
    expect(mm('worked-lapel', 'across')).toBeCloseTo(3.5 * INCH, 9);
    expect(mm('worked-lapel', 'edge-length')).toBeCloseTo(mm('worked-lapel', 'edge-worn-length'), 9);
  });

  test('lists only what is drawn in it, from the step it begins with', () => {
    const steps = workedSteps(worked, 'cm');
    expect(steps[0]).toEqual({ says: 'Fold gorge over roll line.', called: 'gorge as worn', reads: null });
    expect(steps.length).toBeLessThan(worked.steps.length);
  });

  test('says what a tape comes to, and calls it by name only where a later step goes on with it', () => {
    const taped = workedSteps(worked, 'cm').filter(({ reads }) => reads !== null);
    expect(taped.map(({ called, reads }) => [called, reads])).toEqual([
      [null, '8.9 cm'],
      [null, '36 cm'],
      [null, '36 cm'],
    ]);
    const named = workedSteps(scene('worked-swing'), 'cm').filter(({ called, reads }) => called && reads);
    expect(named.length).toBeGreaterThan(0);
  });

  test('refuses to begin with a step it does not have', () => {
    expect(() => workedSteps({ ...worked, begins: 'gorg-worn' }, 'cm')).toThrowErrorMatchingInlineSnapshot(
      '[AuthoringError: The worked figure “worked-lapel” begins with “gorg-worn”, and has no such step.]',
    );
  });
});

test.each([
  ['cm', /\d in\b/],
  ['in', /\d (?:cm|mm)\b/],
] as const)('no step of a figure has a length in another unit than the reader’s, %s', (unit, other) => {
  const said = [...scenes.values()].flatMap((one) => workedSteps(one, unit).map(({ says }) => says));
  expect(said.length).toBeGreaterThan(100);
  expect(said.filter((says) => other.test(says))).toEqual([]);
});

test('a figure whose view has nothing to show is refused', () => {
  const bare: Scene = { ...scene('worked-break-point'), view: { shows: 'walk', alone: true } };
  expect(() => paint(bare, 'cm')).toThrowErrorMatchingInlineSnapshot(
    '[AuthoringError: The figure “worked-break-point” has not drafted what its view shows.]',
  );
});

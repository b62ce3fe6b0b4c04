import { describe, expect, test } from 'vitest';
import { rollReport } from '../../../src/garment/collar/roll-report.ts';
import { walkOf } from '../../../src/garment/collar/walk.ts';
import { isTrouble, saySum, sayVerdict, sayWhy } from '../../../src/table/views/roll-words.ts';
import { sayReached, sayWalk } from '../../../src/table/views/walk-words.ts';
import type { Message } from '../../../src/words/message.ts';
import { say } from '../../../src/words/say.ts';
import { referenceOf, swungBy } from './reference.ts';

const spoken = (message: Message, unit: 'cm' | 'in' = 'cm') => say(message, { language: 'en', unit });

function rolls(part: number, house: Readonly<Record<string, string>> = {}) {
  const { sheet, plan } = referenceOf('collar-single', swungBy(part), house);
  const report = rollReport(sheet, 3, plan);
  if (!report) throw new Error('There is no report.');
  return {
    trouble: isTrouble(report),
    says: [sayVerdict(report), ...sayWhy(report)].map((one) => spoken(one)),
    report,
  };
}

describe('how a collar will roll, in words', () => {
  test('when it lies', () => {
    expect(rolls(1).trouble).toBe(false);
    expect(rolls(1).says).toMatchInlineSnapshot(`
      [
        "It will lie.",
        "From the centre back to the shoulder the outer edge has to be 1.6 cm longer than the neck edge, and it is 1.6 cm longer.",
      ]
    `);
    expect(spoken(saySum(rolls(1).report), 'in')).toMatchInlineSnapshot(
      `"Needed: the fall less the stand, 1 7/8 in − 1 1/4 in, times the 56.8° that the neck seam turns through, taken in radians. That is 5/8 in."`,
    );
  });

  test('when it pulls', () => {
    expect(rolls(0.4).trouble).toBe(true);
    expect(rolls(0.4).says).toMatchInlineSnapshot(`
      [
        "It will pull: the outer edge is 0.9 cm too short.",
        "From the centre back to the shoulder the outer edge has to be 1.6 cm longer than the neck edge, and it is 0.6 cm longer. Stress lines run across the shoulder.",
        "An edge of this length lies 0.7 cm below the neck seam, where 1.6 cm is wanted.",
      ]
    `);
  });

  test('when it is swung the wrong way', () => {
    expect(rolls(-0.5).says).toMatchInlineSnapshot(`
      [
        "It will pull: the outer edge is 2.3 cm too short.",
        "From the centre back to the shoulder the outer edge has to be 1.6 cm longer than the neck edge, and it is 0.8 cm shorter. Stress lines run across the shoulder.",
        "An edge of this length does not come down over the neck seam at all, where 1.6 cm below it is wanted.",
      ]
    `);
  });

  test('when it ripples', () => {
    expect(rolls(2).trouble).toBe(true);
    expect(rolls(2).says).toMatchInlineSnapshot(`
      [
        "It will ripple: the outer edge is 1.6 cm too long.",
        "From the centre back to the shoulder the outer edge has to be 1.6 cm longer than the neck edge, and it is 3.2 cm longer. It stands off in waves, and the stand drops.",
        "That leaves a stand of 2.4 cm in place of 3.2 cm.",
      ]
    `);
  });

  test('when its edge is long enough, and the stand was forgotten in its width', () => {
    const { sheet, plan } = referenceOf('collar-outline', (step) =>
      step.name === 'outer-back' && 'distance' in step ? { ...step, distance: 'fall' } : step,
    );
    const report = rollReport(sheet, 30, plan);
    if (!report) throw new Error('There is no report.');
    expect(isTrouble(report)).toBe(true);
    expect([sayVerdict(report), ...sayWhy(report)].map((one) => spoken(one))).toMatchInlineSnapshot(`
      [
        "Its outer edge is long enough, but its width is not right.",
        "From the centre back to the shoulder the outer edge has to be 1.6 cm longer than the neck edge, and it is 2.2 cm longer.",
        "At the centre back the collar is 4.8 cm wide, where stand and fall together are 7.9 cm. Turned down over its stand, its edge comes to lie 3.1 cm higher than the picture has it.",
      ]
    `);
  });

  test('when the order leaves the rest to the iron', () => {
    const ironed = rolls(0.5, { 'swing-rule': 'fall-less-stand' });
    expect(ironed.trouble).toBe(false);
    expect(ironed.says).toMatchInlineSnapshot(`
      [
        "It has to be stretched: the iron has to work 0.9 cm into the outer edge.",
        "From the centre back to the shoulder the outer edge has to be 1.6 cm longer than the neck edge, and it is 0.7 cm longer.",
        "An edge of this length lies 0.7 cm below the neck seam, where 1.6 cm is wanted.",
        "This order has the edge worked with the iron. In cloth that is not stretched it would pull.",
      ]
    `);
  });

  test('while it is only swung', () => {
    const { sheet, plan } = referenceOf('swing');
    const report = rollReport(sheet, 3, plan);
    expect(
      report &&
        sayWhy(report)
          .map((one) => spoken(one))
          .at(-1),
    ).toBe('No outer edge is drawn yet. This is the strip as it has been swung.');
  });
});

describe('a collar that is walked, in words', () => {
  const { sheet, plan } = referenceOf('collar-single', (step) =>
    step.name === 'edge-start' ? { ...step, distance: 'back-neck - 6 mm' } : step,
  );
  const [right, short] = [walkOf(referenceOf('collar-single').sheet), walkOf(sheet, plan)];
  if (!right || !short) throw new Error('There is nothing to walk.');

  test('whether it walks', () => {
    expect(sayWalk(right, 1.5).map((one) => spoken(one))).toMatchInlineSnapshot(`
      [
        "It walks: every match mark meets its own, within 1.5 mm.",
      ]
    `);
    expect(sayWalk(short, 1.5).map((one) => spoken(one))).toMatchInlineSnapshot(`
      [
        "From the centre back to the neck point the collar is 0.6 cm too short.",
      ]
    `);
    expect(sayWalk({ ...right, past: 12 }, 1.5).map((one) => spoken(one, 'in'))).toMatchInlineSnapshot(`
      [
        "Past the notch 1/2 in of the collar is left over.",
      ]
    `);
  });

  test('where it has come to', () => {
    const at = (fraction: number) => spoken(sayReached(short, [0, 0.4, 1], fraction));
    expect([0, 0.2, 0.4, 0.9, 1].map(at)).toMatchInlineSnapshot(`
      [
        "Laid together at the centre back.",
        "Laid together at the centre back.",
        "Walked to the neck point. The collar’s mark lies 0.6 cm short of the seam’s.",
        "Walked to the neck point. The collar’s mark lies 0.6 cm short of the seam’s.",
        "Walked to the notch. The collar’s mark lies 0.6 cm short of the seam’s.",
      ]
    `);
  });
});

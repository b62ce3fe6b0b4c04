import { describe, expect, test } from 'vitest';
import { faults } from '../../src/course/figures/faults.ts';
import { asLive, type Scene, sceneSheet } from '../../src/course/figures/scene.ts';
import { wornOf } from '../../src/garment/collar/worn.ts';
import { usualWorn } from '../../src/garment/collar/worn-plan.ts';
import { people } from '../../src/garment/people.ts';
import { atRest } from '../../src/table/live/live-scene.ts';
import { liveSheet } from '../../src/table/live/live-sheet.ts';
import { INCH, measured, scene } from './replayed.ts';

/** How far below its level the notch of a fault's figure sits when it is worn. */
function notchBelow(figure: Scene | undefined): number {
  const worn = figure && wornOf(sceneSheet(figure), figure.view?.plan ?? usualWorn);
  return worn?.notch?.below ?? Number.NaN;
}

describe('what the lesson on notch placement says', () => {
  test('folded over, a mark climbs by twice its distance times the sine of the lean: an exact mirror', () => {
    for (const rise of [0, 40, 90, 190]) {
      const at = measured('notch-lean', { 'break-rise': rise });
      expect(at('higher')).toBeCloseTo(2 * 2.25 * INCH * Math.sin(at('lean')), 6);
    }
  });

  test('a high break makes the roll line lean more, and the notch as cut climb more', () => {
    const [low, high] = [measured('notch-lean', { 'break-rise': 20 }), measured('notch-lean', { 'break-rise': 180 })];
    expect(high('lean')).toBeGreaterThan(low('lean'));
    expect(high('higher')).toBeGreaterThan(low('higher'));
  });

  test('a high gorge corner makes the gorge steep, a low one makes it flat', () => {
    const slants = [25, 50, 75].map((depth) => measured('gorge-slant', { 'gorge-depth': depth })('slant'));
    expect(slants).toEqual([...slants].sort((a, b) => b - a));
  });

  test('on Mateo’s front the notch as cut lies above the collarbone level', () => {
    const at = measured('worked-notch');
    expect(at('higher')).toBeGreaterThan(at('notch-drop'));
  });

  test('measured on the flat it drops by as much as it should have climbed', () => {
    const { right, wrong } = faults.get('fault-notch-flat') ?? {};
    const climbed = measured('notch-lean')('higher');
    expect(notchBelow(right)).toBeCloseTo(INCH / 2, 6);
    expect(notchBelow(wrong)).toBeCloseTo(INCH / 2 + climbed, 6);
    expect(notchBelow(faults.get('fault-notch-high')?.wrong)).toBeCloseTo(-INCH, 6);
  });

  test('the collar end and the top edge shown together are about 2 in and 1 3/4 in (common practice, no source)', () => {
    const at = measured('notch-step');
    expect(at('collar-end')).toBeCloseTo(2 * INCH, 6);
    expect(Math.abs(at('top-edge') - 1.75 * INCH)).toBeLessThan(INCH / 4);
  });
});

describe('what the lesson on stand and fall says', () => {
  test('by the first house rule the edge passes the seam by 1/8 in, whatever the cloth (common practice, no source)', () => {
    for (const turn of [2, 6.35, 12]) {
      const at = measured('turn-section', { 'cloth-turn': turn });
      expect(at('passes')).toBeCloseTo(INCH / 8, 9);
      expect(at('fall-here')).toBeCloseTo(at('stand') + INCH / 8 + turn, 9);
    }
  });

  test('in a heavy coating the first two house rules agree, and the third gives more', () => {
    const at = measured('worked-stand-fall');
    expect(at('collar-fall')).toBeCloseTo(at('stand') + INCH / 2, 9);
    expect(at('collar-width')).toBeCloseTo(2 * at('stand') + INCH / 2, 9);
  });

  test('the front neckline is longer than the back one, on every invented figure', () => {
    for (const { figure } of people) {
      const of = (along: string): number => {
        const { order } = scene('back-laid');
        const steps = [{ verb: 'tape', name: 'taped', along }] as const;
        return (
          liveSheet(asLive({ ...scene('back-laid'), order: { ...order, figure }, steps }), atRest).measures.get('taped')
            ?.value ?? 0
        );
      };
      expect(of('front-neckline')).toBeGreaterThan(of('back-neckline') + 5);
    }
  });
});

test('Mateo’s front is short beside a regular figure’s', () => {
  const of = (id: string): number => people.find((one) => one.id === id)?.figure['front-waist'] ?? Number.NaN;
  expect(of('mateo')).toBeLessThan(of('tane'));
});

import { describe, expect, test } from 'vitest';
import { faults } from '../../src/course/figures/faults.ts';
import { asLive, type Scene, sceneSheet } from '../../src/course/figures/scene.ts';
import { rollReport } from '../../src/garment/collar/roll-report.ts';
import { people } from '../../src/garment/people.ts';
import { type Point, turnAbout } from '../../src/geometry/point.ts';
import { atRest } from '../../src/table/live/live-scene.ts';
import { liveSheet, markOn } from '../../src/table/live/live-sheet.ts';
import { INCH, measured, scene } from './replayed.ts';

describe('what the lesson on the outer edge says', () => {
  const onAll = (): readonly ((name: string) => number)[] => {
    const worked = scene('worked-swing');
    return people.map(({ figure }) => {
      const { measures } = sceneSheet({ ...worked, order: { ...worked.order, figure } });
      return (name) => measures.get(name)?.value ?? Number.NaN;
    });
  };
  const bookGain = (at: (name: string) => number, radius: number): number =>
    ((at('fall') - at('stand')) * (at('stand') + at('fall'))) / radius;

  test('outside a bend a line is longer by its distance times the turn, however long the two are (Steiner 1840)', () => {
    const lanes = scene('edge-lanes');
    for (const [x, y] of [
      [-75, 8],
      [-75, 40],
    ] as const) {
      for (const foot of [-95, -55]) {
        const marks = { outside: [x, y], finish: [30, foot] } as const;
        const { measures } = liveSheet(asLive(lanes), { ...atRest, marks });
        expect(measures.get('longer')?.value).toBeCloseTo((y * Math.PI) / 2, 3);
      }
    }
  });

  test('a whole turn makes a bit more than six times the distance, and 57° once', () => {
    expect(2 * Math.PI).toBeGreaterThan(6);
    expect(2 * Math.PI).toBeLessThan(6.5);
    expect((57 * Math.PI) / 180).toBeCloseTo(1, 1);
  });

  test('cut through, the edge lies fall less stand from the seam, what it hangs down and what it lies out taken together', () => {
    for (const [fall, turn] of [
      [41.275, 6.35],
      [50, 3],
      [58, 10],
    ] as const) {
      const at = measured('fall-section', { fall, 'cloth-turn': turn });
      expect(at('passes') + at('out')).toBeCloseTo(fall - at('stand'), 6);
    }
  });

  test('the parallel of the joined seam is as much longer as the edge ease says', () => {
    for (const fall of [34, 50.8, 82]) {
      const at = measured('edge-needed', { fall });
      expect(Math.abs(at('longer') - at('edge-ease'))).toBeLessThan(0.1);
    }
  });

  test('most neck seams turn through about 57°, so that most edge eases are near fall less stand', () => {
    const near = onAll().filter((at) => Math.abs(at('edge-ease') / (at('fall') - at('stand')) - 1) < 0.15);
    expect(near.length).toBeGreaterThan(people.length / 2);
  });

  test('square shoulders make the seam turn further, sloping ones less', () => {
    const bySlope = onAll().toSorted((one, other) => one('shoulder-slope') - other('shoulder-slope'));
    const [squarest, most] = [bySlope[0], bySlope.at(-1)];
    expect(squarest?.('neck-turn')).toBe(Math.max(...bySlope.map((at) => at('neck-turn'))));
    expect(most?.('neck-turn')).toBe(Math.min(...bySlope.map((at) => at('neck-turn'))));
  });

  test('the book’s swing opens the edge less than it needs, by little on Kerttu and by more on a full square neck', () => {
    const left = onAll().map((at) => at('edge-ease') - bookGain(at, at('back-neck') + INCH / 2));
    expect(Math.min(...left)).toBeGreaterThan(0);
    const of = (id: string): number => left[people.findIndex((one) => one.id === id)] ?? Number.NaN;
    expect(of('kerttu')).toBeLessThan(INCH / 8);
    expect(measured('worked-swing')('edge-ease')).toBeCloseTo(INCH / 2, 0);
    expect(of('oluwaseun')).toBeGreaterThan(2 * of('kerttu'));
  });

  test.each([
    ['cm', 1],
    ['in', INCH / 16],
  ] as const)(
    'what the book leaves to the iron is the difference of the two figures before it as they are shown, %s',
    (_, grain) => {
      const at = measured('worked-swing');
      const shown = (mm: number): number => Math.round(mm / grain);
      const [needed, opened] = [at('edge-ease'), bookGain(at, at('back-neck') + INCH / 2)];
      expect(shown(needed - opened)).toBe(shown(needed) - shown(opened));
    },
  );

  test('laid off at the centre back, fall less stand is too little on most people', () => {
    const short = onAll().filter((at) => bookGain(at, at('back-neck')) < at('edge-ease'));
    expect(short.length).toBeGreaterThan(people.length / 2);
  });

  test('an ordinary collar is about as wide as the back neck is long, and a broad one wider', () => {
    const at = measured('worked-swing');
    expect(Math.abs(at('stand') + at('fall') - at('back-neck'))).toBeLessThan(INCH / 8);
    const broad = sceneSheet(faults.get('fault-at-neck-edge')?.wrong as Scene).measures;
    const of = (name: string): number => broad.get(name)?.value ?? Number.NaN;
    expect(of('stand') + of('fall')).toBeGreaterThan(1.5 * of('back-neck'));
  });

  test('what is wrong in its pairs pulls or ripples, and what is right lies', () => {
    const verdict = (figure: Scene | undefined) => figure && rollReport(sceneSheet(figure), 3)?.verdict;
    expect(verdict(faults.get('fault-not-swung')?.wrong)).toBe('pulls');
    expect(verdict(faults.get('fault-wrong-way')?.wrong)).toBe('pulls');
    expect(verdict(faults.get('fault-at-neck-edge')?.wrong)).toBe('ripples');
    for (const id of ['fault-not-swung', 'fault-wrong-way', 'fault-at-neck-edge'])
      expect(verdict(faults.get(id)?.right)).toBe('lies');
  });

  test('the collar that is swung by hand does not lie at rest, lies at its edge ease, and ripples past it', () => {
    const drag = scene('swing-drag');
    const at = (turn: number) => {
      const sheet = sceneSheet(drag);
      const [neck, back] = ['neck-point', 'back-end'].map((name) => markOn(sheet, name)) as [Point, Point];
      const of = (name: string): number => sheet.measures.get(name)?.value ?? Number.NaN;
      const { x, y } = turnAbout(back, neck, (-turn * of('edge-ease')) / (of('stand') + of('fall')));
      return rollReport(liveSheet(asLive(drag), { ...atRest, marks: { 'collar-back': [x, y] } }), 3)?.verdict;
    };
    expect([0, 1, 1.6].map(at)).toEqual(['pulls', 'lies', 'ripples']);
  });
});

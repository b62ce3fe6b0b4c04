import { describe, expect, test } from 'vitest';
import { faults } from '../../src/course/figures/faults.ts';
import { asLive, type Scene, sceneSheet } from '../../src/course/figures/scene.ts';
import type { Sheet } from '../../src/drafting/sheet.ts';
import { pathCalled } from '../../src/garment/collar/called.ts';
import { rollReport } from '../../src/garment/collar/roll-report.ts';
import { walkOf } from '../../src/garment/collar/walk.ts';
import { people } from '../../src/garment/people.ts';
import type { Path } from '../../src/geometry/cubic.ts';
import { nearestOn } from '../../src/geometry/nearest.ts';
import { distance, type Point } from '../../src/geometry/point.ts';
import { atRest } from '../../src/table/live/live-scene.ts';
import { liveSheet, markOn } from '../../src/table/live/live-sheet.ts';
import { INCH, measured, scene } from './replayed.ts';

const place = (sheet: Sheet, name: string): Point => markOn(sheet, name) as Point;

/** The sheet of a live figure with marks dragged onto other marks of it. */
function dragged(id: string, onto: Readonly<Record<string, string>>): Sheet {
  const rest = sceneSheet(scene(id));
  const marks = Object.entries(onto).map(([mark, to]) => {
    const { x, y } = place(rest, to);
    return [mark, [x, y] as const] as const;
  });
  return liveSheet(asLive(scene(id)), { ...atRest, marks: Object.fromEntries(marks) });
}

/** What the collar is over, between match marks, and in all; mm. */
function left(sheet: Sheet): { readonly over: readonly number[]; readonly past: number } {
  const walk = walkOf(sheet);
  return { over: walk?.stretches.map(({ over }) => over) ?? [], past: walk?.past ?? Number.NaN };
}

/** Near enough for a tape. */
const NOTHING = 0.05;

describe('what the lesson on truing and walking says', () => {
  test('at rest the collar walks: each side of the shoulder mark fits by itself', () => {
    const { over, past } = left(sceneSheet(scene('walk-drag')));
    expect(Math.max(...over.map(Math.abs), past)).toBeLessThan(NOTHING);
  });

  test('too long behind and as much too short before: the ends meet, and the shoulder mark does not', () => {
    const [behind, before] = left(
      dragged('walk-drag', { 'collar-back': 'back-too-far', 'collar-front': 'front-too-near' }),
    ).over as [number, number];
    expect(behind).toBeGreaterThan(INCH / 4);
    expect(Math.abs(behind + before)).toBeLessThan(NOTHING);
  });

  test('past the notch what is too much is left over', () => {
    expect(left(dragged('walk-drag', { 'collar-front': 'front-too-far' })).past).toBeGreaterThan(INCH / 4);
  });

  test('the worked collar fits behind the shoulder mark and before it, and on nobody does the seam turn further', () => {
    const at = measured('worked-truing');
    expect(at('collar-behind')).toBeCloseTo(at('back-neck'), 3);
    expect(at('collar-before')).toBeCloseTo(at('front-neck'), 3);
    const worked = scene('worked-truing');
    const turns = people.map(
      ({ figure }) =>
        sceneSheet({ ...worked, order: { ...worked.order, figure } }).measures.get('neck-turn')?.value ?? Number.NaN,
    );
    expect(at('neck-turn')).toBeCloseTo(Math.max(...turns), 9);
  });

  test('a curve is not quite as long as the corner it replaces', () => {
    const sheet = sceneSheet(scene('worked-truing'));
    const corner = distance(place(sheet, 'mid-back'), place(sheet, 'neck-point'));
    const edge = pathCalled(sheet, 'back-edge') as Path;
    const [mid, neck] = ['mid-back', 'neck-point'].map((name) => nearestOn(edge, place(sheet, name)).station);
    const off = Math.abs((neck ?? 0) - (mid ?? 0) - corner);
    expect(off).toBeGreaterThan(0.01);
    expect(off).toBeLessThan(1);
  });

  test('filled in, the edge misses the neck point, and the collar is wider there than its outer edge has grown for', () => {
    const { right, wrong } = faults.get('fault-dip-filled') ?? {};
    const [trued, filled] = [right, wrong].map((figure) => sceneSheet(figure as Scene)) as [Sheet, Sheet];
    const missed = nearestOn(pathCalled(filled, 'collar-neck-edge') as Path, place(filled, 'neck-point')).distance;
    expect(missed).toBeGreaterThan(INCH / 8);
    const [before, after] = [rollReport(trued, 3), rollReport(filled, 3)];
    const grown = (after?.drawn ?? 0) - (before?.drawn ?? 0);
    // Wider by what it misses, the edge lies so much further out, where the way round is longer by that times the turn.
    expect(missed * (before?.turn ?? 0)).toBeGreaterThan(grown + 3);
  });

  test('narrowed over the shoulder the collar no longer covers its seam; let out, its edge ripples', () => {
    const narrow = dragged('shoulder-drag', { 'over-shoulder': 'too-narrow' });
    const of = (name: string): number => narrow.measures.get(name)?.value ?? Number.NaN;
    expect(of('across')).toBeLessThan(2 * of('stand'));
    expect(measured('shoulder-drag')('across')).toBeCloseTo(of('width'), 6);
    expect(rollReport(sceneSheet(scene('shoulder-drag')), 3)?.verdict).toBe('lies');
    expect(rollReport(dragged('shoulder-drag', { 'over-shoulder': 'too-full' }), 3)?.verdict).toBe('ripples');
  });

  test('changing over to the other side of the tape, the line jumps by its width, 1/8 in (common practice, no source)', () => {
    const sheet = sceneSheet(faults.get('fault-tape-sides')?.wrong as Scene);
    expect(distance(place(sheet, 'change-over'), place(sheet, 'change-under'))).toBeCloseTo(INCH / 8, 3);
  });
});

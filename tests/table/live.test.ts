import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { personNamed } from '../../src/garment/people.ts';
import { dragTo, nudge, standing } from '../../src/table/live/constrain.ts';
import { atRest, type LiveScene } from '../../src/table/live/live-scene.ts';
import { liveSheet, markOn } from '../../src/table/live/live-sheet.ts';

const person = personNamed('amara');
if (!person) throw new Error('There is nobody to draw for.');

const scene: LiveScene = {
  order: { figure: person.figure, style: { overlap: '3 cm', 'break-rise': '4 cm' }, house: {} },
  steps: [
    { verb: 'parallel', name: 'edge', to: 'centre-front', distance: 'overlap', side: 'left' },
    { verb: 'parallel', name: 'level', to: 'waist', distance: 'break-rise', side: 'up' },
    { verb: 'cross', name: 'break-point', one: 'edge', other: 'level' },
    { verb: 'pencil', name: 'free', at: [50, 50] },
  ],
  shows: ['centre-front', 'waist'],
  labels: [],
  box: { min: { x: -100, y: -20 }, max: { x: 100, y: 400 } },
  handles: [],
};
const rise = { drags: 'measure', measure: 'break-rise', by: 'break-point', from: 0, to: 150 } as const;

describe('dragging a measure by its mark', () => {
  test('brings the mark as near the pointer as the measure lets it, on the grain and in its range', () => {
    fc.assert(
      fc.property(fc.integer({ min: -100, max: 100 }), fc.integer({ min: -80, max: 300 }), (x, y) => {
        const value = standing(scene, dragTo(scene, atRest, rise, { x, y }, 'cm'), 'break-rise');
        expect(value).toBe(Math.min(150, Math.max(0, y)));
      }),
      { numRuns: 200 },
    );
  });

  test('goes by sixteenths for a reader of inches', () => {
    const value = standing(scene, dragTo(scene, atRest, rise, { x: 0, y: 51 }, 'in'), 'break-rise');
    expect((value / 25.4) * 16).toBeCloseTo(32, 9);
  });

  test('goes the way the arrow points, one grain at a time', () => {
    const up = nudge(scene, atRest, rise, { x: 0, y: 1 }, 'cm');
    expect(standing(scene, up, 'break-rise')).toBe(41);
    expect(standing(scene, nudge(scene, up, rise, { x: 0, y: -10 }, 'cm'), 'break-rise')).toBe(31);
  });
});

describe('dragging a free mark', () => {
  test('keeps it in its box or on its line', () => {
    const boxed = { drags: 'mark', mark: 'free', within: { min: { x: 0, y: 0 }, max: { x: 60, y: 60 } } } as const;
    expect(markOn(liveSheet(scene, dragTo(scene, atRest, boxed, { x: 90, y: -5 }, 'cm')), 'free')).toEqual({
      x: 60,
      y: 0,
    });
    const lined = { drags: 'mark', mark: 'free', along: 'edge' } as const;
    expect(markOn(liveSheet(scene, dragTo(scene, atRest, lined, { x: 90, y: 70 }, 'cm')), 'free')).toEqual({
      x: -30,
      y: 70,
    });
  });
});

import { expect, test } from 'vitest';
import { authored, faultsAfter, faultsIn } from './authored.ts';

/** An exercise whose reference draws a lapel, given this plan of what turns over. */
function withPlan(worn: unknown): string {
  return faultsAfter('lapel-folded', (exercise) => {
    exercise.worn = worn;
  });
}

const folds = ['break-point', 'lapel-edge', 'lapel-point', 'notch-flat', 'gorge-corner'];

test('a plan of what turns over may be left out, or stated', () => {
  expect(faultsIn('lapel-folded', authored('lapel-folded'))).toBe('no fault');
  expect(withPlan({ over: 'roll-line', folds, notch: 'notch-flat', level: 'collarbone-level' })).toBe('no fault');
});

test('names what the reference does not make, and what cannot turn over', () => {
  expect(
    withPlan({ over: 'notch-flat', folds: [...folds.slice(0, 4), 'gorge-cornr'], level: 'gorge-flt' }),
  ).toMatchInlineSnapshot(`
    "worn.over: “notch-flat” is a point, and a line is wanted here.
    worn.folds[4]: No object of the block or the reference is called “gorge-cornr”. Did you mean “gorge-corner”?
    worn.level: No object of the block or the reference is called “gorge-flt”. Did you mean “gorge-flat”?"
  `);
});

test('something has to turn over', () => {
  expect(withPlan({ over: 'roll-line' })).toMatchInlineSnapshot(
    `"worn: Nothing turns over: “folds” or “turns” has to be a run of points and curves that meet, and reach past the fold line on the side of the front edge."`,
  );
  expect(withPlan({ over: 'roll-line', folds: ['neck-point', 'shoulder-tip'] })).toMatchInlineSnapshot(
    `"worn: Nothing turns over: “folds” or “turns” has to be a run of points and curves that meet, and reach past the fold line on the side of the front edge."`,
  );
});

test('the fields are these', () => {
  expect(withPlan({ folds: ['break-point'], turn: [] })).toMatchInlineSnapshot(`
    "worn.over: This is missing: the name of an object.
    worn.folds: This should be a list of at least two points and curves, in order; a list of 1 was found.
    worn.turn: There is no such field here. Did you mean “turns”? The fields are: over, folds, turns, until, stays, seam, notch, level."
  `);
});

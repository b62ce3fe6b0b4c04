import { describe, expect, test } from 'vitest';
import { exerciseNames, loadExercise } from '../../../../src/cli/exercises.ts';
import type { Step } from '../../../../src/drafting/step.ts';
import { footingOf } from '../../../../src/exchange/class/laid/footing.ts';
import { laidOver, type Stray, sizeOf, strayOf } from '../../../../src/exchange/class/laid/stray.ts';
import { underSheetOf } from '../../../../src/exchange/class/laid/under-sheet.ts';
import { straight } from '../../../../src/geometry/cubic.ts';
import { signedDistance } from '../../../../src/geometry/line.ts';
import { startOf } from '../../../../src/geometry/path.ts';
import { distance, type Point, scale } from '../../../../src/geometry/point.ts';
import { splitAtStation } from '../../../../src/geometry/station.ts';
import { turnLine } from '../../../../src/geometry/transform.ts';
import { gradeDraft } from '../../../../src/grader/grade.ts';
import { misread } from '../../../../src/grader/misreading.ts';
import { orderOfSeat, sketchAt } from './strays.ts';

const seats = [1, 2, 3, 4, 5, 6];
const roll = loadExercise('roll-line');

/** The reference with one step's field changed. */
function changed(exercise: typeof roll, name: string, change: object): readonly Step[] {
  expect(exercise.reference.some((step) => step.name === name)).toBe(true);
  return exercise.reference.map((step) => (step.name === name ? ({ ...step, ...change } as Step) : step));
}

/** A target's footing on the sheet of seat 0, and its stray at another seat. */
function bothOf(exercise: typeof roll, seat: number, steps: readonly Step[], target: string) {
  const footing = underSheetOf(exercise, orderOfSeat(exercise, 0))?.footings.get(target);
  const stray = sketchAt(exercise, seat, steps).strays[target];
  if (!footing || !stray) throw new Error(`${target} is gone.`);
  return { footing, stray };
}

describe('an answer laid over another figure', () => {
  test.each(exerciseNames())('of %s lies on the reference, whoever it was drafted for, where it is right', (name) => {
    const exercise = loadExercise(name);
    const under = underSheetOf(exercise, orderOfSeat(exercise, 0));
    const targets = [...(under?.footings.keys() ?? [])];
    for (const seat of seats) {
      const { strays } = sketchAt(exercise, seat, exercise.reference);
      expect(Object.keys(strays)).toEqual(targets);
      expect(Math.max(0, ...Object.values(strays).map(sizeOf))).toBeLessThan(1e-6);
      for (const [target, footing] of under?.footings ?? []) {
        const laid = laidOver(strays[target] as Stray, footing);
        expect(Math.max(...footing.spots.map(({ at }, index) => distance(at, laid[index] as Point)))).toBeLessThan(
          1e-6,
        );
      }
    }
  });

  test('lies 6 mm off, to the same side, where it is 6 mm off across', () => {
    const steps = changed(roll, 'overlap-edge', { distance: 'overlap + 6 mm' });
    for (const seat of seats) {
      const { footing, stray } = bothOf(roll, seat, steps, 'overlap-edge');
      for (const [index, at] of laidOver(stray, footing).entries()) {
        expect(at.x - (footing.spots[index]?.at.x ?? Number.NaN)).toBeCloseTo(-6, 9);
        expect(at.y).toBeCloseTo(footing.spots[index]?.at.y ?? Number.NaN, 9);
      }
    }
  });

  test('that is a curve 6 mm beside the right one lies 6 mm beside the other figure’s', () => {
    const ease = loadExercise('edge-ease');
    const steps: readonly Step[] = [
      ...ease.reference.map(({ answers, ...step }) => (answers === 'fall-line' ? step : { ...step, answers }) as Step),
      { verb: 'offset', name: 'beside', of: 'fall-line', distance: '6 mm', side: 'down', answers: 'fall-line' },
    ];
    for (const seat of seats) {
      const { footing, stray } = bothOf(ease, seat, steps, 'fall-line');
      const spots = footing.spots.map(({ at }) => at);
      const away = laidOver(stray, footing).map((at, index) => distance(at, spots[index] ?? at));
      for (const one of away) expect(one).toBeCloseTo(6, 3);
      // To one side all along.
      expect(new Set(stray.offs.map(({ across }) => Math.sign(across))).size).toBe(1);
    }
  });

  test('keeps to what a mark is made on: 6 mm too far along the shoulder lies on the other figure’s shoulder line', () => {
    const steps = changed(roll, 'stand-point', { distance: 'stand-by-rule + 6 mm' });
    const order = orderOfSeat(roll, 0);
    const under = underSheetOf(roll, { ...order, figure: { ...order.figure, 'shoulder-slope': 29 } });
    const footing = under?.footings.get('stand-point');
    const shoulder = under?.givens.shapes.get('shoulder-line');
    if (!footing || shoulder?.kind !== 'line') throw new Error('The stand point is gone.');
    const [at] = laidOver(bothOf(roll, 3, steps, 'stand-point').stray, footing) as [Point];
    expect(distance(at, footing.spots[0]?.at ?? at)).toBeCloseTo(6, 9);
    expect(signedDistance(shoulder.line, at)).toBeCloseTo(0, 9);
  });

  test('of a line lies as far off as its check read, in mm, at the end where it is furthest', () => {
    const steps = changed(roll, 'roll-line', { to: 'neck-point' });
    for (const seat of seats) {
      const order = orderOfSeat(roll, seat);
      const [check] = gradeDraft(roll, order, steps, 'workroom').checks.filter((one) => one.check === 'line');
      expect(sizeOf(bothOf(roll, seat, steps, 'roll-line').stray)).toBeCloseTo(check?.off ?? Number.NaN, 9);
    }
  });

  test('is judged from where the student stood: a slip shows at its own target and at no later one', () => {
    const { strays } = sketchAt(roll, 2, changed(roll, 'break-level', { distance: 'break-rise + 20 mm' }));
    expect(sizeOf(strays['break-point'] ?? { kind: 'point', offs: [] })).toBeCloseTo(20, 9);
    expect(sizeOf(strays['roll-line'] ?? { kind: 'line', offs: [] })).toBeLessThan(1e-6);
  });

  test('of a line is read at the marks where the student has them, though they are wrong', () => {
    const steps = changed(roll, 'break-level', { distance: 'break-rise + 20 mm' }).map((step) =>
      step.name === 'roll-line' ? ({ ...step, to: 'neck-point' } as Step) : step,
    );
    const [low, high] = sketchAt(roll, 2, steps).strays['roll-line']?.offs ?? [];
    // It was ruled from that break point.
    expect(low?.across).toBeCloseTo(0, 9);
    expect(Math.abs(high?.across ?? 0)).toBeGreaterThan(5);
  });

  test('of a line keeps its sides when the right one comes out the other way round', () => {
    const under = underSheetOf(roll, orderOfSeat(roll, 0));
    const footing = under?.footings.get('roll-line');
    if (!under || footing?.right.kind !== 'line') throw new Error('The roll line is gone.');
    const { line } = footing.right;
    const right = { kind: 'line', line: { ...line, direction: scale(line.direction, -1) } } as const;
    const { reference } = under;
    const turned = footingOf({ exercise: roll, target: 'roll-line', right, reference, own: reference });
    expect(turned?.spots.map(({ along }) => along)).toEqual(footing.spots.map(({ along }) => along));
  });

  test('of a misreading lies with the others who misread it so, and apart from those who are right', () => {
    const [wrong] = roll.misreadings.filter(({ id }) => id === 'through-neck-point');
    const footing = underSheetOf(roll, orderOfSeat(roll, 0))?.footings.get('roll-line');
    if (!wrong || !footing) throw new Error('The misreading is gone.');
    const steps = misread(roll.reference, wrong);
    const tops = seats.map((seat) => laidOver(bothOf(roll, seat, steps, 'roll-line').stray, footing)[1] as Point);
    const right = footing.spots[1]?.at ?? { x: Number.NaN, y: 0 };
    const apart = Math.max(...tops.flatMap((one) => tops.map((other) => distance(one, other))));
    expect(Math.min(...tops.map((top) => distance(top, right)))).toBeGreaterThan(3 * apart);
  });

  test('shows where it was drawn too short at its beginning, and where too long', () => {
    const ease = loadExercise('edge-ease');
    const right = underSheetOf(ease, orderOfSeat(ease, 0))?.footings.get('fall-line');
    if (right?.right.kind !== 'curve') throw new Error('The fall line is gone.');
    const { path } = right.right;
    for (const answer of [splitAtStation(path, 12)?.[1], [straight({ x: 0, y: 0 }, startOf(path)), ...path]]) {
      const [first, ...others] = strayOf({ kind: 'curve', path: answer ?? path }, right)?.offs ?? [];
      expect(Math.hypot(first?.along ?? 0, first?.across ?? 0)).toBeGreaterThan(10);
      for (const { along, across } of others.slice(3)) expect(Math.hypot(along, across)).toBeLessThan(1e-6);
    }
  });

  test('of a line has no place where it runs across the right one', () => {
    const right = underSheetOf(roll, orderOfSeat(roll, 0))?.footings.get('roll-line');
    if (right?.right.kind !== 'line') throw new Error('The roll line is gone.');
    const { line } = right.right;
    const turned = (degrees: number) =>
      strayOf({ kind: 'line', line: turnLine(line, line.through, (degrees * Math.PI) / 180) }, right);
    expect([turned(45), turned(-45)]).not.toContain(null);
    expect([turned(75), turned(-75), turned(105)]).toEqual([null, null, null]);
  });

  test('is left out where it has no place: not made, another kind of thing, or a line across the right one', () => {
    const across = roll.reference.map((step) =>
      step.name === 'overlap-edge' ? ({ ...step, to: 'waist', side: 'up' } as Step) : step,
    );
    const { strays } = sketchAt(
      roll,
      1,
      across.filter(({ name }) => name !== 'stand-point'),
    );
    expect(strays).not.toHaveProperty('overlap-edge');
    expect(strays).not.toHaveProperty('stand-point');
  });
});

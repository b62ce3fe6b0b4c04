import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { HalfStep } from '../../src/drafting/form.ts';
import { renamed } from '../../src/drafting/references.ts';
import { memoryOf } from '../../src/drafting/remember.ts';
import { replay } from '../../src/drafting/replay.ts';
import { sameShape } from '../../src/drafting/same-shape.ts';
import type { Shape } from '../../src/drafting/shape.ts';
import type { Givens, Pins } from '../../src/drafting/sheet.ts';
import type { Step } from '../../src/drafting/step.ts';
import { drafts } from './arbitrary.ts';
import { block } from './block.ts';

/** A table nobody has drawn on yet. */
const fresh = (): Givens => ({ shapes: new Map(block.shapes), measures: new Map(block.measures) });

const pin = (x: number, y: number): Pins =>
  new Map<string, Shape>([['break-point', { kind: 'point', point: { x, y } }]]);

/** The draft with all that it makes called otherwise. */
const byOtherNames = (steps: readonly Step[]): readonly Step[] =>
  steps.reduce<readonly Step[]>(
    (all, { name }) =>
      all.map((step) => ({
        ...renamed(step as unknown as HalfStep, name, `other-${name}`),
        name: step.name === name ? `other-${name}` : step.name,
      })) as unknown as readonly Step[],
    steps,
  );

test('what is remembered of a draft changes nothing: on a table drawn on before it comes out as on a fresh one', () => {
  fc.assert(
    fc.property(drafts(12), fc.array(fc.nat(11), { maxLength: 6 }), (draft, left) => {
      const steps = draft as unknown as readonly Step[];
      const table = fresh();
      // Drawn on: whole, pinned, and with steps left out, in turn.
      replay(table, steps);
      replay(table, steps, pin(-20, 80));
      for (const index of left) replay(table, steps.toSpliced(index, 1));
      replay(table, steps, pin(14, 300));
      replay(table, byOtherNames(steps));
      for (const pins of [new Map(), pin(-20, 80), pin(3, 4)]) {
        expect(replay(table, steps, pins)).toEqual(replay(fresh(), structuredClone(steps), pins));
      }
    }),
  );
});

test('the same step gives the same thing again, and another where what it is made from has changed', () => {
  const steps: readonly Step[] = [
    { verb: 'parallel', name: 'edge', to: 'centre-front', distance: 'overlap', side: 'left' },
    { verb: 'cross', name: 'mark', one: 'edge', other: 'waist', answers: 'break-point' },
    { verb: 'square', name: 'upright', to: 'waist', through: 'mark' },
  ];
  const table = fresh();
  const [once, again, moved] = [replay(table, steps), replay(table, steps), replay(table, steps, pin(5, 5))];
  expect(again.shapes.get('upright')).toBe(once.shapes.get('upright'));
  expect(moved.shapes.get('edge')).toBe(once.shapes.get('edge'));
  expect(moved.shapes.get('upright')).not.toEqual(once.shapes.get('upright'));
});

test('the same construction gives the same thing again, whatever it and what it is made from are called', () => {
  const steps: readonly Step[] = [
    { verb: 'parallel', name: 'edge', to: 'centre-front', distance: 'overlap + 2 mm', side: 'left' },
    { verb: 'tape', name: 'width', length: 'overlap * 2' },
    { verb: 'along', name: 'mark', on: 'edge', from: 'neck-point', distance: 'width / 2', toward: 'down' },
  ];
  const others: readonly Step[] = [
    { verb: 'tape', name: 'length-1', length: 'overlap * 2' },
    { verb: 'parallel', name: 'line-1', to: 'centre-front', distance: 'overlap + 2 mm', side: 'left' },
    { verb: 'along', name: 'mark-1', on: 'line-1', from: 'neck-point', distance: 'length-1 / 2', toward: 'down' },
    { verb: 'along', name: 'mark-2', on: 'line-1', from: 'neck-point', distance: 'length-1 / 2', toward: 'up' },
  ];
  const table = fresh();
  const [one, other] = [replay(table, steps), replay(table, others)];
  expect(one.problems).toEqual([]);
  expect(other.shapes.get('mark-1')).toBe(one.shapes.get('mark'));
  expect(other.shapes.get('mark-2')).not.toEqual(one.shapes.get('mark'));
});

test('a draft that names its own measure in capitals is drawn by that measure, and not by another draft’s', () => {
  const wide = (length: string): readonly Step[] => [
    { verb: 'tape', name: 'width', length },
    { verb: 'parallel', name: 'edge', to: 'centre-front', distance: 'Width', side: 'left' },
  ];
  const table = fresh();
  replay(table, wide('10 mm'));
  expect(replay(table, wide('50 mm'))).toEqual(replay(fresh(), wide('50 mm')));
});

test('what is remembered of all tables together has an end, however many drafts are made to fill them', () => {
  const marks = [0, 1, 2, 3].map((at): Step => ({ verb: 'pencil', name: `m-${at}`, at: [60 * at, (37 * at) % 50] }));
  const through = Array.from({ length: 60 }, (_, at) => `m-${(at * 3) % 4}`);
  const curves = (draft: number): readonly Step[] =>
    Array.from({ length: 100 }, (_, at): Step => {
      const first = { turn: 0.1 + at / 1000 + draft / 1e6, before: 0.3, after: 0.3 };
      return { verb: 'curve', name: `c-${at}`, through, shape: [first, ...through.slice(1).map(() => null)] };
    });
  const table = fresh();
  replay(table, marks);
  expect(memoryOf(table).size).toBe(4);
  const others: Givens[] = [];
  while (memoryOf(table).size > 0 && others.length < 50) {
    const other = fresh();
    others.push(other);
    expect(replay(other, [...marks, ...curves(others.length)]).problems).toEqual([]);
  }
  expect(others.length).toBeLessThan(50);
  expect(others.slice(0, -1).every((other) => memoryOf(other).size === 0)).toBe(true);
});

test('shapes are the same only to the last digit, and of one kind', () => {
  const point = (x: number): Shape => ({ kind: 'point', point: { x, y: 2 } });
  const length: Shape = { kind: 'length', length: 1 };
  const angle: Shape = { kind: 'angle', angle: 1 };
  expect(sameShape(point(1), point(1))).toBe(true);
  expect(sameShape(point(1), point(1 + 2 ** -52))).toBe(false);
  expect(sameShape(length, { ...length })).toBe(true);
  expect(sameShape(length, angle)).toBe(false);
  for (const [one, other] of [
    ['centre-front', 'waist'],
    ['neckline', 'neck-point'],
  ]) {
    const [a, b] = [block.shapes.get(one ?? ''), block.shapes.get(other ?? '')];
    if (!a || !b) throw new Error('no such thing on the block');
    expect(sameShape(a, structuredClone(a))).toBe(true);
    expect(sameShape(a, b)).toBe(false);
  }
});

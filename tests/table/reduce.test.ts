import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { About } from '../../src/table/model/about.ts';
import type { Action } from '../../src/table/model/action.ts';
import { emptyBench } from '../../src/table/model/bench.ts';
import { reduce, sheetOf } from '../../src/table/model/reduce.ts';
import type { Setting } from '../../src/table/model/setting.ts';
import { message } from '../../src/words/message.ts';
import { about, benchAfter, crossing, edge, level, room, step } from './room.ts';

const names = (bench: ReturnType<typeof benchAfter>) => bench.steps.map(({ name }) => name);
const point = (bench: ReturnType<typeof benchAfter>, name: string) => {
  const shape = sheetOf(bench, room).shapes.get(name);
  return shape?.kind === 'point' ? shape.point : null;
};

const orderFor = (named: string): Setting => ({ ...about.setting, figure: { named } });
const somebodys = (student: string): About => ({
  ...about,
  setting: orderFor('sione'),
  student: student || about.student,
  shown: ['overlap-edge'],
  hints: { 'overlap-edge': 2 },
});

describe('a tool in hand', () => {
  test('opens at its first blank, and goes on to the next one that is filled', () => {
    const bench = benchAfter([{ do: 'take', tool: 'parallel' }]);
    expect(bench.hand?.at).toBe('to');
    expect(benchAfter([{ do: 'fill', field: 'to', value: 'waist' }], bench).hand?.at).toBe('distance');
  });

  test('keeps what both ways of using it have a blank for', () => {
    const bench = benchAfter([
      { do: 'take', tool: 'parallel' },
      { do: 'fill', field: 'to', value: 'waist' },
      { do: 'fill', field: 'distance', value: 'overlap' },
      { do: 'take', tool: 'parallel-through' },
    ]);
    expect(bench.hand).toMatchObject({ tool: 'parallel-through', filled: { to: 'waist' }, at: 'through' });
  });

  test('draws nothing while a blank is empty', () => {
    const bench = benchAfter([
      { do: 'take', tool: 'rule' },
      { do: 'fill', field: 'from', value: 'neck-point' },
      { do: 'draw' },
    ]);
    expect(bench.steps).toEqual([]);
    expect(bench.hand?.tool).toBe('rule');
  });

  test('goes on taking marks for a curve until it is drawn', () => {
    const bench = benchAfter([
      { do: 'take', tool: 'curve' },
      { do: 'fill', field: 'through', value: ['neck-point'] },
      { do: 'fill', field: 'through', value: ['neck-point', 'front-neck-point'] },
    ]);
    expect(bench.hand?.at).toBe('through');
    expect(names(benchAfter([{ do: 'draw' }], bench))).toEqual(['curve-1']);
  });

  test('makes no step when it only measures', () => {
    const bench = benchAfter(step('measure', { one: 'neck-point', other: 'waist' }));
    expect(bench.steps).toEqual([]);
  });
});

describe('names', () => {
  test('count up by kind, past what is taken', () => {
    const bench = benchAfter([
      ...edge,
      ...level,
      ...step('cross', { one: 'line-1', other: 'line-2' }),
      ...step('tape-between', { from: 'mark-1', to: 'neck-point' }),
    ]);
    expect(names(bench)).toEqual(['line-1', 'line-2', 'mark-1', 'length-1']);
  });

  test('follow the target a step answers, while nothing else is called so', () => {
    const bench = benchAfter([...edge, ...level, ...crossing, ...crossing]);
    expect(names(bench)).toEqual(['line-1', 'line-2', 'break-point', 'mark-1']);
    expect(bench.steps.map(({ answers }) => answers)).toEqual([undefined, undefined, undefined, 'break-point']);
  });

  test('are changed wherever they are mentioned, inside expressions too', () => {
    const bench = benchAfter([
      ...step('tape-between', { from: 'neck-point', to: 'shoulder-tip' }),
      ...step('parallel', { to: 'waist', distance: 'length-1 / 2', side: 'up' }),
      { do: 'rename', index: 0, name: 'seam-length' },
    ]);
    expect(bench.steps[1]).toMatchObject({ distance: 'seam-length / 2' });
    expect(sheetOf(bench, room).problems).toEqual([]);
  });

  test('that are taken, or no names, change nothing and say why', () => {
    const bench = benchAfter(edge);
    expect(benchAfter([{ do: 'rename', index: 0, name: 'waist' }], bench)).toMatchObject({
      steps: bench.steps,
      said: message('problem.name-given', { name: 'waist' }),
    });
    expect(benchAfter([{ do: 'rename', index: 0, name: 'My line' }], bench).steps).toEqual(bench.steps);
  });
});

describe('the working', () => {
  test('follows when a number in an earlier step changes', () => {
    const bench = benchAfter([
      ...edge,
      ...level,
      ...crossing,
      { do: 'amend', index: 1, field: 'distance', value: '6 cm' },
    ]);
    expect(point(bench, 'break-point')?.y).toBeCloseTo(60, 9);
  });

  test('keeps what still stands when a step is rubbed out, and says what no longer does', () => {
    const bench = benchAfter([...edge, ...level, ...crossing, { do: 'erase', index: 0 }]);
    expect(names(bench)).toEqual(['line-2', 'break-point']);
    const sheet = sheetOf(bench, room);
    expect(sheet.shapes.has('line-2')).toBe(true);
    expect(sheet.problems.map(({ name }) => name)).toEqual(['break-point']);
  });

  test('is replayed as far as one has stepped, and a step drawn there goes in between', () => {
    const back = benchAfter([...edge, ...level, ...crossing, { do: 'go', upTo: 1 }]);
    expect(sheetOf(back, room).shapes.has('line-2')).toBe(false);
    const bench = benchAfter(step('foot', { from: 'neck-point', on: 'waist' }), back);
    expect(names(bench)).toEqual(['line-1', 'mark-1', 'line-2', 'break-point']);
    expect(bench.upTo).toBe(2);
    expect(sheetOf(benchAfter([{ do: 'go', upTo: 4 }], bench), room).problems).toEqual([]);
  });

  test('stands whole, with no tool in hand, where it is to be marked', () => {
    const bench = benchAfter([...edge, ...level, { do: 'go', upTo: 1 }, { do: 'take', tool: 'rule' }, { do: 'whole' }]);
    expect(bench).toMatchObject({ upTo: 2, hand: null });
  });

  test('gives a target to one step at a time', () => {
    const bench = benchAfter([
      ...edge,
      ...level,
      { do: 'answer', index: 0, target: 'overlap-edge' },
      { do: 'answer', index: 1, target: 'overlap-edge' },
    ]);
    expect(bench.steps.map(({ answers }) => answers)).toEqual([undefined, 'overlap-edge']);
    const none = benchAfter([{ do: 'answer', index: 1, target: null }], bench);
    expect(none.steps.map(({ answers }) => answers)).toEqual([undefined, undefined]);
  });
});

describe('dragging', () => {
  const mark = step('pencil', { at: [10, 20] });

  test('moves a free mark and what is built on it, as one change to undo', () => {
    const bench = benchAfter([
      ...mark,
      ...step('square', { to: 'waist', through: 'mark-1' }),
      { do: 'move', name: 'mark-1', at: [30, 20] },
      { do: 'move', name: 'mark-1', at: [50, 20] },
      { do: 'let-go' },
    ]);
    const line = sheetOf(bench, room).shapes.get('line-1');
    expect(line?.kind === 'line' && line.line.through.x).toBe(50);
    expect(point(benchAfter([{ do: 'undo' }], bench), 'mark-1')).toEqual({ x: 10, y: 20 });
  });

  test('goes on as one change when the record is noted in the middle of it', () => {
    const bench = benchAfter([
      ...mark,
      { do: 'move', name: 'mark-1', at: [30, 20] },
      { do: 'note', about: { begun: '2026-03-02T09:00:00.000Z' } },
      { do: 'move', name: 'mark-1', at: [50, 20] },
    ]);
    expect(point(benchAfter([{ do: 'undo' }], bench), 'mark-1')).toEqual({ x: 10, y: 20 });
  });

  test('leaves alone what was constructed', () => {
    const bench = benchAfter([...edge, ...level, ...crossing]);
    expect(reduce(bench, { do: 'move', name: 'break-point', at: [0, 0] }, room)).toBe(bench);
  });
});

describe('undo', () => {
  const somewhere = fc.integer({ min: -200, max: 400 });
  const actions = fc.oneof(
    fc.constantFrom(edge, level, crossing),
    fc.tuple(somewhere, somewhere).map((at) => step('pencil', { at })),
    fc.tuple(somewhere, somewhere).map((at): Action[] => [{ do: 'move', name: 'mark-1', at }, { do: 'let-go' }]),
    fc.nat(6).map((index): Action[] => [{ do: 'erase', index }]),
    fc.nat(6).map((upTo): Action[] => [{ do: 'go', upTo }]),
    fc.nat(6).map((index): Action[] => [{ do: 'answer', index, target: 'overlap-edge' }]),
    fc
      .tuple(fc.nat(6), fc.constantFrom('wide', 'mark-1', 'waist'))
      .map(([index, name]): Action[] => [{ do: 'rename', index, name }]),
    fc.constantFrom('sione', 'runa').map((named): Action[] => [{ do: 'order', setting: orderFor(named) }]),
    fc.constantFrom('', 'Bo Lind').map((student): Action[] => [{ do: 'open', steps: [], about: somebodys(student) }]),
  );

  test('brings back the empty sheet, and redo the whole draft, whatever was done', () => {
    fc.assert(
      fc.property(fc.array(actions, { maxLength: 12 }), (done) => {
        const bench = benchAfter(done.flat());
        const undone = benchAfter(
          bench.past.map(() => ({ do: 'undo' as const })),
          bench,
        );
        expect(undone.steps).toEqual([]);
        expect(undone.about).toEqual(about);
        const redone = benchAfter(
          undone.future.map(() => ({ do: 'redo' as const })),
          undone,
        );
        expect(redone.steps).toEqual(bench.steps);
        expect(redone.about).toEqual(bench.about);
      }),
      { numRuns: 300 },
    );
  });

  test('takes an opened draft off the table with its order, its name and the help it had', () => {
    const opened = benchAfter([...edge, { do: 'open', steps: [], about: somebodys('Bo Lind') }]);
    expect(opened.about).toEqual(somebodys('Bo Lind'));
    const back = benchAfter([{ do: 'undo' }], opened);
    expect(names(back)).toEqual(['line-1']);
    expect(back.about).toEqual(about);
    expect(benchAfter([{ do: 'redo' }], back).about).toEqual(somebodys('Bo Lind'));
  });

  test('goes back to the figure before, and leaves what was written down since', () => {
    const hints = { 'break-point': 1 } as const;
    const bench = benchAfter([...edge, { do: 'order', setting: orderFor('sione') }, { do: 'note', about: { hints } }]);
    expect(bench.about.setting).toEqual(orderFor('sione'));
    const back = benchAfter([{ do: 'undo' }], bench);
    expect(back.about).toEqual({ ...about, hints });
    expect(names(back)).toEqual(['line-1']);
    // Undoing a step takes no hint back.
    expect(benchAfter([{ do: 'undo' }], back).about.hints).toEqual(hints);
  });

  test('whatever is done, no name is given twice and no target answered twice', () => {
    fc.assert(
      fc.property(fc.array(actions, { maxLength: 15 }), (done) => {
        const { steps, upTo } = benchAfter(done.flat());
        expect(new Set(steps.map(({ name }) => name)).size).toBe(steps.length);
        const answered = steps.flatMap(({ answers }) => answers ?? []);
        expect(new Set(answered).size).toBe(answered.length);
        expect(upTo).toBeGreaterThanOrEqual(0);
        expect(upTo).toBeLessThanOrEqual(steps.length);
      }),
      { numRuns: 300 },
    );
  });

  test('a new change takes what could be redone off the table', () => {
    const bench = benchAfter([...edge, { do: 'undo' }, ...level]);
    expect(bench.future).toEqual([]);
    expect(names(bench)).toEqual(['line-1']);
  });
});

test('an action that makes no sense leaves the bench as it is', () => {
  const silly: Action[] = [
    { do: 'draw' },
    { do: 'undo' },
    { do: 'redo' },
    { do: 'put-down' },
    { do: 'erase', index: 3 },
    { do: 'fill', field: 'to', value: 'waist' },
    { do: 'move', name: 'nothing', at: [0, 0] },
  ];
  expect(benchAfter(silly)).toEqual(emptyBench(about));
});

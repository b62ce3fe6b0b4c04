import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { HEADS, placeOf, walkedTo } from '../../../../src/desk/marking/book/grid-walk.ts';

const from = { row: 5, col: 2 };
const to = (key: string, ctrl = false) => walkedTo(from, key, ctrl, 31, 6);

describe('a table walked by keyboard', () => {
  test('goes a cell by an arrow, ten lines by a page, and to the ends by Home and End', () => {
    expect(to('ArrowUp')).toEqual({ row: 4, col: 2 });
    expect(to('ArrowDown')).toEqual({ row: 6, col: 2 });
    expect(to('ArrowLeft')).toEqual({ row: 5, col: 1 });
    expect(to('ArrowRight')).toEqual({ row: 5, col: 3 });
    expect(to('Home')).toEqual({ row: 5, col: 0 });
    expect(to('End')).toEqual({ row: 5, col: 5 });
    expect(to('Home', true)).toEqual({ row: 0, col: 0 });
    expect(to('End', true)).toEqual({ row: 30, col: 5 });
    expect(to('PageDown')).toEqual({ row: 15, col: 2 });
    expect(to('PageUp')).toEqual({ row: 0, col: 2 });
  });

  test('leaves every other key alone', () => {
    for (const key of ['Enter', ' ', 'Tab', 'Escape', 'a']) expect(to(key)).toBeNull();
  });

  test('never leaves the table, wherever it is walked', () => {
    const keys = fc.constantFrom(
      'ArrowUp',
      'ArrowDown',
      'ArrowLeft',
      'ArrowRight',
      'Home',
      'End',
      'PageUp',
      'PageDown',
    );
    const size = fc.integer({ min: 1, max: 40 });
    fc.assert(
      fc.property(size, size, fc.array(fc.tuple(keys, fc.boolean()), { maxLength: 60 }), (rows, cols, walk) => {
        let at = { row: 0, col: 0 };
        for (const [key, ctrl] of walk) {
          at = walkedTo(at, key, ctrl, rows, cols) ?? at;
          expect(at.row >= 0 && at.row < rows && at.col >= 0 && at.col < cols).toBe(true);
        }
      }),
    );
  });
});

test('the line of whoever gave neither name nor number is a line, and not the heads', () => {
  const shown = [{ key: '' }, { key: '#17' }];
  expect(placeOf('', shown)).toBe(0);
  expect(placeOf('#17', shown)).toBe(1);
  expect(placeOf('#18', shown)).toBe(-1);
  expect(placeOf(HEADS, shown)).toBe(-1);
});

import { describe, expect, test } from 'vitest';
import type { Filling, ToolId } from '../../src/table/model/bench.ts';
import { catchObject, catchPlace } from '../../src/table/model/catch.ts';
import { pointAt, takenUp } from '../../src/table/model/point-at.ts';
import { sheetOf } from '../../src/table/model/reduce.ts';
import { benchAfter, edge, level, room } from './room.ts';

const bench = benchAfter([...edge, ...level]);
const sheet = sheetOf(bench, room);
const pointing = { sheet, shown: () => true, radius: 8 };

describe('what the pointer catches', () => {
  test('is a mark before the lines that run through it', () => {
    expect(catchObject(pointing, { x: 1, y: 353 }, ['point', 'line'])?.name).toBe('front-neck-point');
  });

  test('is the nearest line where only lines fit', () => {
    expect(catchObject(pointing, { x: -28, y: 200 }, ['line'])?.name).toBe('line-1');
    expect(catchObject(pointing, { x: 3, y: 200 }, ['line'])?.name).toBe('centre-front');
  });

  test('is nothing out of reach, of another kind, or hidden', () => {
    expect(catchObject(pointing, { x: -15, y: 200 }, ['line'])).toBeNull();
    expect(catchObject(pointing, { x: 3, y: 200 }, ['point', 'curve'])).toBeNull();
    expect(
      catchObject({ ...pointing, shown: (name) => name !== 'centre-front' }, { x: 3, y: 200 }, ['line']),
    ).toBeNull();
  });

  test('snaps a free mark onto a crossing, a line, or nothing', () => {
    expect(catchPlace(pointing, { x: -27, y: 43 })?.at).toEqual({ x: -30, y: 40 });
    expect(catchPlace(pointing, { x: -27, y: 200 })?.at).toEqual({ x: -30, y: 200 });
    expect(catchPlace(pointing, { x: 100, y: 200 })).toBeNull();
  });
});

describe('pointing fills a blank', () => {
  const at = (tool: ToolId, filled: Readonly<Record<string, Filling>>, field: string, x: number, y: number) =>
    pointAt({ tool, filled, at: field, answers: null }, { ...pointing, draft: bench, room, unit: 'cm' }, { x, y })
      ?.value ?? null;

  test('with the object under the pointer', () => {
    expect(at('rule', {}, 'from', 1, 353)).toBe('front-neck-point');
    expect(at('rule', {}, 'from', 120, 100)).toBeNull();
  });

  test('with both lines of a crossing at once, while neither is said', () => {
    const aim = { ...pointing, draft: bench, room, unit: 'cm' } as const;
    const hand = { tool: 'cross', filled: {}, at: 'one', answers: null } as const;
    const pointed = pointAt(hand, aim, { x: -28, y: 42 });
    expect(pointed && takenUp(hand, pointed)).toMatchObject({ filled: { one: 'line-1', other: 'line-2' }, at: 'near' });
    // Where only one line is near, and where one is said already, the blank in hand is filled.
    expect(at('cross', {}, 'one', -28, 200)).toBe('line-1');
    const next = pointAt({ ...hand, filled: { one: 'line-1' }, at: 'other' }, aim, { x: 60, y: 42 });
    expect(next).toMatchObject({ field: 'other', value: 'line-2' });
    expect(next?.also).toBeUndefined();
  });

  test('with the side on which the line would come nearest the pointer', () => {
    const parallel = { to: 'centre-front', distance: 'overlap' };
    expect(at('parallel', parallel, 'side', -80, 100)).toBe('left');
    expect(at('parallel', parallel, 'side', 80, 100)).toBe('right');
    expect(at('parallel', { to: 'waist', distance: '5 cm' }, 'side', 20, -30)).toBe('down');
  });

  test('with the way along a slanting line', () => {
    const along = { on: 'shoulder-line', from: 'neck-point', distance: 'stand' };
    expect(at('along', along, 'toward', -20, 480)).toBe('left');
    expect(at('along', along, 'toward', 200, 380)).toBe('right');
    // Up and left come to the same there; what the pointer went is said.
    const neck = sheet.shapes.get('neck-point');
    if (neck?.kind !== 'point') throw new Error('There is no neck point.');
    expect(at('along', along, 'toward', neck.point.x - 5, neck.point.y + 40)).toBe('up');
  });

  test('with the turn that comes nearest the pointer', () => {
    const slant = { to: 'waist', angle: '30 deg', through: 'front-neck-point' };
    expect(at('slant', slant, 'turn', 100, 420)).toBe('anticlockwise');
    expect(at('slant', slant, 'turn', 100, 280)).toBe('clockwise');
  });

  test('with a length by eye, in the reader’s unit, where nothing better is chosen', () => {
    expect(at('parallel', { to: 'centre-front' }, 'distance', -41, 100)).toBe('4.1 cm');
  });

  test('with one more mark of a list, and takes the last one out again', () => {
    expect(at('curve', {}, 'through', 1, 353)).toEqual(['front-neck-point']);
    expect(at('curve', { through: ['front-neck-point'] }, 'through', 1, 353)).toEqual([]);
  });

  test('with a place: by eye to a tenth of a millimetre, or exactly on what it snaps to', () => {
    expect(at('pencil', {}, 'at', 100.123, 200.456)).toEqual([100.1, 200.5]);
    expect(at('pencil', {}, 'at', -29, 41)).toEqual([-30, 40]);
  });

  test('not when every blank is filled', () => {
    expect(
      pointAt(
        { tool: 'rule', filled: {}, at: null, answers: null },
        { ...pointing, draft: { steps: [], upTo: 0 }, room, unit: 'cm' },
        { x: 0, y: 0 },
      ),
    ).toBeNull();
  });
});

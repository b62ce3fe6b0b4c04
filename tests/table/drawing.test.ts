import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { replay } from '../../src/drafting/replay.ts';
import type { Step } from '../../src/drafting/step.ts';
import { blockLines } from '../../src/garment/block.ts';
import { withAspect } from '../../src/table/drawing/box.ts';
import { draw } from '../../src/table/drawing/draw.ts';
import { keyOf } from '../../src/table/drawing/key.ts';
import { placeLabels } from '../../src/table/drawing/labels.ts';
import { pathData } from '../../src/table/drawing/path-data.ts';
import { overlap, runWithin } from '../../src/table/drawing/rectangle.ts';
import { sheetOf } from '../../src/table/model/reduce.ts';
import { homeOf, sheetBox } from '../../src/table/model/sheet-box.ts';
import { say } from '../../src/words/say.ts';
import { benchAfter, crossing, edge, level, room } from './room.ts';

const sheet = sheetOf(benchAfter([...edge, ...level, ...crossing]), room);
const given = new Set(room.givens.shapes.keys());
const drawing = draw(sheet, { given, unit: 'cm' });
const speak = (words: Parameters<typeof say>[0]) => say(words, { language: 'en', unit: 'cm' });

describe('a drawing', () => {
  test('shows the block in graphite, answers firmly and help lines finely', () => {
    const tones = Object.fromEntries(drawing.parts.map((part) => [part.name, part.tone]));
    expect(tones).toMatchObject({ waist: 'given', 'neck-point': 'given', 'break-point': 'made' });
    const helped = draw(sheet, { given, unit: 'cm', help: new Set(['line-1', 'break-point']) });
    // What answers a target is never only help.
    expect(Object.fromEntries(helped.parts.map((part) => [part.name, part.tone]))).toMatchObject({
      'line-1': 'help',
      'break-point': 'made',
    });
  });

  test('ends a line of the block at its marks', () => {
    const shoulder = drawing.parts.find((part) => part.name === 'shoulder-line');
    const tip = room.givens.shapes.get('shoulder-tip');
    if (shoulder?.kind !== 'line' || tip?.kind !== 'point') throw new Error('The block has no shoulder.');
    expect(shoulder.to.x).toBeCloseTo(tip.point.x, 9);
    expect(shoulder.to.y).toBeCloseTo(tip.point.y, 9);
  });

  test('runs a line that an exercise lays on it to both sides of its only mark, and the block’s from where they begin', () => {
    const laid: Step = { verb: 'square', name: 'across', to: 'centre-front', through: 'front-neck-point' };
    const table = replay(room.givens, [laid]);
    const part = (name: string) => {
      const found = draw(table, { given: new Set(table.shapes.keys()), unit: 'cm' }).parts.find(
        (one) => one.name === name,
      );
      if (found?.kind !== 'line') throw new Error(`${name} is not drawn as a line.`);
      return [found.from.x, found.to.x].sort((a, b) => a - b);
    };
    expect(part('across')[0]).toBeLessThan(-1);
    expect(part('across')[1]).toBeGreaterThan(100);
    expect(part('collarbone-level')[0]).toBeCloseTo(0, 9);
    expect([...blockLines].toSorted()).toEqual(
      [...room.givens.shapes]
        .filter(([, { kind }]) => kind === 'line')
        .map(([name]) => name)
        .toSorted(),
    );
  });

  test('rules in inches when the reader does', () => {
    expect(draw(sheet, { given, unit: 'in' }).dots).toBe(25.4);
  });

  test('tells its parts apart', () => {
    expect(new Set(drawing.parts.map(keyOf)).size).toBe(drawing.parts.length);
  });

  test('says what it shows', () => {
    expect(drawing.says.map(speak).at(-1)).toMatch(/^Drawn so far: line 1, line 2,? and break point\.$/);
  });

  test('turns the sheet’s y over for SVG, to a hundredth of a millimetre', () => {
    const path = [{ p0: { x: 0, y: 1.234 }, p1: { x: 1, y: 2 }, p2: { x: 3, y: 4 }, p3: { x: 5, y: -6 } }];
    expect(pathData(path)).toBe('M0 -1.23C1 -2 3 -4 5 6');
    expect(pathData([])).toBe('');
  });
});

describe('words on the sheet', () => {
  test('lie on no other words and inside the sheet, at every scale', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 4, noNaN: true }), (scale) => {
        const placed = placeLabels(drawing, scale, speak).map(({ text, anchor, shift }) => ({
          at: {
            x: (anchor.x - drawing.box.min.x) * scale + shift.x,
            y: (drawing.box.max.y - anchor.y) * scale + shift.y,
          },
          halfWide: (text.length * 6.9) / 2,
          halfHigh: 8,
        }));
        for (const [index, one] of placed.entries())
          for (const other of placed.slice(index + 1)) expect(overlap(one, other)).toBe(0);
      }),
      { numRuns: 60 },
    );
  });

  test('are all written where there is room', () => {
    expect(placeLabels(drawing, 2, speak)).toHaveLength(drawing.labels.length);
  });

  test('keep clear of a ring by which a mark can be held', () => {
    const rings = drawing.labels.flatMap(({ by }) => ('x' in by ? [by] : []));
    const placed = placeLabels(drawing, 2, speak, { rings });
    const words = placed.map(({ text, anchor, shift }) => ({
      at: { x: (anchor.x - drawing.box.min.x) * 2 + shift.x, y: (drawing.box.max.y - anchor.y) * 2 + shift.y },
      halfWide: (text.length * 6.9) / 2,
      halfHigh: 8,
    }));
    for (const ring of rings) {
      const at = { x: (ring.x - drawing.box.min.x) * 2, y: (drawing.box.max.y - ring.y) * 2 };
      for (const one of words) expect(overlap(one, { at, halfWide: 9, halfHigh: 9 })).toBe(0);
    }
  });
});

test('a run through a rectangle is measured inside it only', () => {
  const rectangle = { at: { x: 0, y: 0 }, halfWide: 2, halfHigh: 1 };
  expect(runWithin(rectangle, { x: -10, y: 0 }, { x: 10, y: 0 })).toBeCloseTo(4, 12);
  expect(runWithin(rectangle, { x: -10, y: 3 }, { x: 10, y: 3 })).toBe(0);
  expect(runWithin(rectangle, { x: 0, y: 0 }, { x: 0, y: 0 })).toBe(0);
});

test('the sheet of the table is never so wide that its frame is not filled to its height', () => {
  const box = sheetBox({ ...room.givens, answers: new Map(), problems: [] }, () => true);
  expect((box.max.x - box.min.x) / (box.max.y - box.min.y)).toBeLessThanOrEqual(0.84 + 1e-9);
  const wide = withAspect({ min: { x: 0, y: 0 }, max: { x: 100, y: 10 } }, 0.5);
  expect(wide).toEqual({ min: { x: 0, y: -95 }, max: { x: 100, y: 105 } });
});

test('the whole of a sheet reaches a little beyond a line that passes its block by, on either side', () => {
  const everything = () => true;
  const home = (x: number) => {
    const { shapes, ...sheet } = replay(room.givens, []);
    const line = { through: { x: x, y: 77 }, direction: { x: 0, y: 1 } };
    return homeOf(room.givens, { ...sheet, shapes: new Map([...shapes, ['far', { kind: 'line', line }]]) }, everything);
  };
  const block = homeOf(room.givens, replay(room.givens, []), everything);
  const [left, right] = [home(-600), home(600)];
  expect([left.min.x, right.max.x]).toEqual([expect.closeTo(-615, 6), expect.closeTo(615, 6)]);
  expect([left.max.x, right.min.x]).toEqual([block.max.x, block.min.x]);
  expect(home(20)).toEqual(block);
});

import { describe, expect, test } from 'vitest';
import { fitView, movedView, resizedView, slideBetween, toPixels, toSheet } from '../../src/table/board/view.ts';

const box = { min: { x: -100, y: -50 }, max: { x: 100, y: 450 } };
const desk = { width: 700, height: 460 };
const none = { width: 0, height: 0 };

describe('paper that is moved and stretched by hand', () => {
  const view = fitView(box, desk);
  const [from, to] = [
    { x: 200, y: 300 },
    { x: 260, y: 270 },
  ];

  test('has what lay under the hand under it still, so many times as large', () => {
    const held = toSheet(view, from);
    const moved = movedView(view, from, to, 1.5);
    expect(moved.scale).toBeCloseTo(view.scale * 1.5, 12);
    expect(toPixels(moved, held).x).toBeCloseTo(to.x, 9);
    expect(toPixels(moved, held).y).toBeCloseTo(to.y, 9);
  });

  test('goes no nearer and no further than one may zoom, and still goes along', () => {
    const held = toSheet(view, from);
    for (const factor of [1e6, 1e-6]) {
      const moved = movedView(view, from, to, factor);
      expect(moved.scale).toBe(factor > 1 ? 40 : 0.2);
      expect(toPixels(moved, held).x).toBeCloseTo(to.x, 6);
      expect(toPixels(moved, held).y).toBeCloseTo(to.y, 6);
    }
  });

  test('lies as it lay where the hand does nothing', () => {
    expect(movedView(view, from, from, 1)).toEqual(view);
  });
});

describe('paper that is slid', () => {
  const laid = fitView(box, desk);
  const at = (x: number, y: number, factor = 1) => movedView(laid, { x: 0, y: 0 }, { x, y }, factor);

  test('is slid by what its origin moved, as far as half a frame each way', () => {
    for (const [x, y] of [
      [0, 0],
      [-12, 7.5],
      [350, -230],
    ] as const) {
      const by = slideBetween(laid, at(x, y), desk);
      expect(by?.x).toBeCloseTo(x, 9);
      expect(by?.y).toBeCloseTo(y, 9);
    }
  });

  test('is laid anew beyond that, and where it is nearer or further', () => {
    for (const view of [at(351, 0), at(-351, 0), at(0, 231), at(0, -231), at(3, 3, 1.01)])
      expect(slideBetween(laid, view, desk)).toBeNull();
  });
});

describe('a frame that takes another size', () => {
  test('goes on showing the whole where it showed that', () => {
    const narrower = { width: 350, height: 420 };
    expect(resizedView(fitView(box, desk), box, desk, narrower)).toEqual(fitView(box, narrower));
  });

  test('keeps what was in its middle there, and the scale, where one has gone closer', () => {
    const closer = { scale: 3, origin: { x: 350, y: 800 } };
    const middle = toSheet(closer, { x: 350, y: 230 });
    const wider = resizedView(closer, box, desk, { width: 900, height: 400 });
    expect(wider?.scale).toBe(3);
    expect(wider && toPixels(wider, middle)).toEqual({ x: 450, y: 200 });
  });

  test('gives no view while it has no room, and the whole when it has some at last', () => {
    const view = fitView(box, desk);
    expect(resizedView(view, box, desk, none)).toBeNull();
    expect(resizedView(view, box, desk, { width: 700, height: 0 })).toBeNull();
    expect(resizedView(view, box, none, desk)).toEqual(view);
  });
});

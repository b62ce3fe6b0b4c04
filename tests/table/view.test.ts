import { describe, expect, test } from 'vitest';
import { fitView, resizedView, toPixels } from '../../src/table/board/view.ts';

const box = { min: { x: -100, y: -50 }, max: { x: 100, y: 450 } };
const desk = { width: 700, height: 460 };
const none = { width: 0, height: 0 };

describe('a frame that takes another size', () => {
  test('keeps what was in its middle there, and the scale', () => {
    const view = fitView(box, desk);
    const wider = resizedView(view, desk, { width: 900, height: 400 });
    expect(wider?.scale).toBe(view.scale);
    expect(wider && toPixels(wider, { x: 0, y: 200 })).toEqual({ x: 450, y: 200 });
  });

  test('gives no view while it has no room, nor from a size that had none', () => {
    const view = fitView(box, desk);
    expect(resizedView(view, desk, none)).toBeNull();
    expect(resizedView(view, none, desk)).toBeNull();
    expect(resizedView(view, { width: 700, height: 0 }, desk)).toBeNull();
  });
});

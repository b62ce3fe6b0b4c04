import { expect, test } from 'vitest';
import { exerciseNames, loadExercise } from '../../../../src/cli/exercises.ts';
import { markedDrawing } from '../../../../src/desk/marking/piece/marked-drawing.ts';
import { FEEDBACK_ASPECT, WIDTHS } from '../../../../src/desk/marking/sheets/FeedbackDrawing.tsx';
import { markHandIn } from '../../../../src/exchange/mark-work.ts';
import { misread } from '../../../../src/grader/misreading.ts';
import { widthOf } from '../../../../src/table/drawing/box.ts';
import type { Drawing } from '../../../../src/table/drawing/drawing.ts';
import { type Placed, placeLabels } from '../../../../src/table/drawing/labels.ts';
import { say } from '../../../../src/words/say.ts';
import { rightOverlap } from '../../../exchange/hand-ins.ts';

/** As wide as drawings are on the sheets, px. */
const WIDE = (WIDTHS.off * 96) / 25.4;
const speak = (words: Parameters<typeof say>[0]) => say(words, { language: 'en', unit: 'cm' });

interface Lying {
  readonly red: number;
  readonly on: readonly string[];
}

/** How much of what is drawn firmly runs under the red words, looked at every half pixel. */
function lyingIn(drawing: Drawing): Lying {
  const scale = WIDE / widthOf(drawing.box);
  const red = placeLabels(drawing, scale, speak).filter(({ tone }) => tone === 'red');
  return { red: red.length, on: red.filter((words) => liesOnALine(words, drawing, scale)).map(({ text }) => text) };
}

function liesOnALine({ text, anchor, shift }: Placed, { parts, box }: Drawing, scale: number): boolean {
  const px = (x: number, y: number) => ({ x: (x - box.min.x) * scale, y: (box.max.y - y) * scale });
  const at = px(anchor.x, anchor.y);
  const [x, y, wide] = [at.x + shift.x, at.y + shift.y, (text.length * 6.9) / 2];
  return parts.some((part) => {
    if (part.kind !== 'line' || part.faint) return false;
    const [from, to] = [px(part.from.x, part.from.y), px(part.to.x, part.to.y)];
    const steps = Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) * 2);
    return Array.from({ length: steps + 1 }, (_, index) => index / steps).some((t) => {
      const [px_, py] = [from.x + (to.x - from.x) * t, from.y + (to.y - from.y) * t];
      return Math.abs(px_ - x) < wide && Math.abs(py - y) < 7;
    });
  });
}

test('how far off it is stands clear of the lines on the feedback sheets, whatever was misread', () => {
  const all = exerciseNames().flatMap((id) => {
    const exercise = loadExercise(id);
    return exercise.misreadings.flatMap((misreading) =>
      ['amara', 'tane', 'bram'].flatMap((named) => {
        const order = { figure: { named }, style: {}, house: {} };
        const steps = misread(exercise.reference, misreading);
        const marked = markHandIn(
          { ...rightOverlap, exercise: id, order, steps },
          { load: () => exercise, set: null, strictness: null },
        );
        if (!marked.ok) return [];
        const drawing = markedDrawing(marked, 'cm', undefined, FEEDBACK_ASPECT);
        return 'message' in drawing ? [] : [{ id: `${id}/${misreading.id}/${named}`, ...lyingIn(drawing) }];
      }),
    );
  });
  const red = all.reduce((sum, one) => sum + one.red, 0);
  expect(red).toBeGreaterThan(400);
  // In a whole collar there is not always a clear place: there they lie on the least.
  expect(all.flatMap(({ on }) => on).length / red).toBeLessThan(0.01);
});

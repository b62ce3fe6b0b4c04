import { expect, test } from 'vitest';
import { exerciseNames, loadExercise } from '../../../../src/cli/exercises.ts';
import { ASPECT, classDrawing } from '../../../../src/desk/marking/class/class-drawing.ts';
import { classSheet } from '../../../../src/desk/marking/class/class-sheet.ts';
import { classTarget, straysOf } from '../../../../src/desk/marking/class/class-target.ts';
import type { Step } from '../../../../src/drafting/step.ts';
import { chanceOf } from '../../../../src/garment/seed.ts';
import type { Exercise } from '../../../../src/grader/exercise.ts';
import { misread } from '../../../../src/grader/misreading.ts';
import { widthOf } from '../../../../src/table/drawing/box.ts';
import type { Drawing } from '../../../../src/table/drawing/drawing.ts';
import { type Placed, placeLabels } from '../../../../src/table/drawing/labels.ts';
import { say } from '../../../../src/words/say.ts';
import { piecesOf } from '../class-pieces.ts';

const WIDE = 352;
const speak = (words: Parameters<typeof say>[0]) => say(words, { language: 'en', unit: 'cm' });

/** The reference with one of its lengths off by so much, written as no known slip is. */
function off(reference: readonly Step[], at: number, mm: number): readonly Step[] {
  const lengths = reference.filter((step) => 'distance' in step);
  const changed = lengths[at % Math.max(1, lengths.length)];
  return reference.map((step) =>
    step === changed && 'distance' in step ? ({ ...step, distance: `${mm} mm + ${step.distance}` } as Step) : step,
  );
}

/** A class of thirty: a third right, a third misread, a third off by as much as chance has it. */
function draftsOf({ id, reference, misreadings }: Exercise): Readonly<Record<string, readonly Step[]>> {
  const chance = chanceOf(`crowded/${id}`);
  const drafts = Array.from({ length: 30 }, (_, at): [string, readonly Step[]] => {
    const misreading = misreadings[chance.whole(0, 3) % Math.max(1, misreadings.length)];
    if (at % 3 === 1 && misreading) return [`Student ${at}`, misread(reference, misreading)];
    return [`Student ${at}`, at % 3 === 2 ? off(reference, at, chance.whole(4, 30)) : reference];
  });
  return Object.fromEntries(drafts);
}

/** Whether words lie across the dotted line of the right answer, looked at every half pixel. */
function liesOnRight({ text, anchor, shift }: Placed, { parts, box }: Drawing): boolean {
  const scale = WIDE / widthOf(box);
  const px = ({ x, y }: { x: number; y: number }) => ({ x: (x - box.min.x) * scale, y: (box.max.y - y) * scale });
  const [at, half] = [px(anchor), (text.length * 6.9) / 2];
  return parts.some((part) => {
    if (part.kind !== 'line' || part.tone !== 'right') return false;
    const [from, to] = [px(part.from), px(part.to)];
    return Array.from({ length: 1600 }, (_, index) => index / 1600).some(
      (t) =>
        Math.abs(from.x + (to.x - from.x) * t - at.x - shift.x) < half &&
        Math.abs(from.y + (to.y - from.y) * t - at.y - shift.y) < 7,
    );
  });
}

test.each(['overlap', 'roll-line', 'notch-gorge', 'stand-fall', 'collar-outline', 'swing'])(
  'in a picture of thirty drafts of %s every bundle is named, clear of the right line, and dots are smaller than marks',
  async (id) => {
    expect(exerciseNames()).toContain(id);
    const exercise = loadExercise(id);
    const pieces = await piecesOf(exercise, draftsOf(exercise));
    const under = classSheet(exercise, pieces);
    if (under === null) throw new Error('The class has no sheet.');
    for (const [target, footing] of under.footings) {
      const answers = classTarget(pieces, target);
      const drawing = classDrawing({ under, shows: exercise.shows, footing, answers, half: 3, unit: 'cm' });
      const placed = placeLabels(drawing, WIDE / widthOf(drawing.box), speak);
      const written = placed.map(({ text }) => text);
      const must = drawing.labels.filter((label) => label.must);
      const bundles = must.filter(({ tone }) => tone !== 'made').map(({ words }) => speak(words));
      expect(bundles.filter((text) => !written.includes(text))).toEqual([]);
      const named = placed.filter(({ text }) => must.some(({ words }) => speak(words) === text));
      expect(named.filter((words) => liesOnRight(words, drawing)).map(({ text }) => text)).toEqual([]);
      expect(((drawing.dot ?? 0.6) * WIDE) / widthOf(drawing.box)).toBeLessThan(1);
      expect(drawing.parts.filter(({ group }) => group !== undefined)).toHaveLength(straysOf(answers).length);
    }
    expect(ASPECT).toBeLessThan(1);
  },
);

test('those who lie together where nothing known comes out are a bundle, and those by themselves are named, the furthest first', async () => {
  const exercise = loadExercise('overlap');
  const { reference } = exercise;
  const drafts = {
    ...{ Ana: reference, Bo: reference },
    ...{ Cem: off(reference, 0, 11), Dai: off(reference, 0, 11.5), Efe: off(reference, 0, 12) },
    ...{ Fay: off(reference, 0, -8), Gus: off(reference, 0, 40) },
  };
  const answers = classTarget(await piecesOf(exercise, drafts), 'overlap-edge');
  expect(answers.right).toHaveLength(2);
  expect(answers.together.map((bundle) => bundle.map(({ student }) => student))).toEqual([['cem', 'dai', 'efe']]);
  expect(answers.alone.map(({ student }) => student)).toEqual(['gus', 'fay']);
});

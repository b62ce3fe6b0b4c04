import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import { replay } from '../../src/drafting/replay.ts';
import { people } from '../../src/garment/people.ts';
import type { Point } from '../../src/geometry/point.ts';
import { boxIn, fitView, movedView, type Size, toPixels } from '../../src/table/board/view.ts';
import type { Drawing, Part } from '../../src/table/drawing/drawing.ts';
import { carryLabels, type Placed, placeLabels } from '../../src/table/drawing/labels.ts';
import { overlap, type Rectangle } from '../../src/table/drawing/rectangle.ts';
import { sampled } from '../../src/table/drawing/runs.ts';
import { lay } from '../../src/table/laid-orders.ts';
import { pictureOf } from '../../src/table/model/picture.ts';
import { noPencil } from '../../src/table/model/red-pencil.ts';
import { startSetting } from '../../src/table/model/setting.ts';
import { homeOf, shownOn } from '../../src/table/model/sheet-box.ts';
import { say } from '../../src/words/say.ts';

/** The frame of the sheet on a desktop and on a phone, px. */
const FRAMES: readonly Size[] = [
  { width: 680, height: 464 },
  { width: 356, height: 412 },
];
const exercises = readdirSync(new URL('../../exercises', import.meta.url)).map((file) => file.replace('.yaml', ''));
const speak = (words: Parameters<typeof say>[0]) => say(words, { language: 'en', unit: 'cm' });

/** The table with an exercise's reference drawn for somebody, and its words in place. */
function tableFor(id: string, person: string, size: Size) {
  const exercise = loadExercise(id);
  const laid = lay(exercise, { ...startSetting(exercise, 'first'), figure: { named: person } });
  if (!laid.ok) throw new Error(`The order of ${id} cannot be laid for ${person}.`);
  const sheet = replay(laid.marker, exercise.reference);
  const box = homeOf(laid.givens, sheet, shownOn(exercise.shows, laid.givens));
  const drawing = pictureOf({
    sheet,
    givens: laid.givens,
    shows: exercise.shows,
    box,
    unit: 'cm',
    red: noPencil,
    right: [],
  });
  const view = fitView(box, size);
  const placed = placeLabels(drawing, view.scale, speak, { within: boxIn(view, size) });
  return { drawing, placed, inks: drawing.parts.flatMap((part) => inkOf(part, (p) => toPixels(view, p))), view };
}

interface Ink {
  readonly of: string | null;
  readonly mark: boolean;
  readonly dots: readonly Point[];
}

/** What is drawn firmly, as dots some two pixels apart: a reckoning of its own, coarser than the placing and other. */
function inkOf(part: Part, toPixels: (p: Point) => Point): Ink[] {
  if (part.kind === 'mark') return [{ of: part.name, mark: true, dots: [toPixels(part.at)] }];
  if (part.kind === 'curve') return [{ of: part.name, mark: false, dots: sampled(part.path, 40).map(toPixels) }];
  if (part.kind !== 'line' || part.faint) return [];
  const [from, to] = [toPixels(part.from), toPixels(part.to)];
  const count = Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / 2);
  const dots = Array.from({ length: count + 1 }, (_, index) => ({
    x: from.x + ((to.x - from.x) * index) / count,
    y: from.y + ((to.y - from.y) * index) / count,
  }));
  return [{ of: part.name, mark: false, dots }];
}

function away({ at, halfWide, halfHigh }: Rectangle, { dots }: Pick<Ink, 'dots'>): number {
  return Math.min(
    ...dots.map(({ x, y }) =>
      Math.hypot(Math.max(0, Math.abs(x - at.x) - halfWide), Math.max(0, Math.abs(y - at.y) - halfHigh)),
    ),
  );
}

function rectangleOf({ text, anchor, shift }: Placed, view: ReturnType<typeof fitView>): Rectangle {
  const at = toPixels(view, anchor);
  return { at: { x: at.x + shift.x, y: at.y + shift.y }, halfWide: (text.length * 6.9) / 2, halfHigh: 8 };
}

function nameOf(drawing: Drawing, words: Placed): string {
  const label = drawing.labels.find(({ words: said }) => speak(said) === words.text);
  if (!label?.of) throw new Error(`Nothing is called ${words.text}.`);
  return label.of;
}

/** A place that is named, and what runs through it, px. */
const SAME = 1.6;

/** What else lies in the place that is named: it is near by its nature. */
function throughIt(ink: Ink, words: Placed, name: string, { view, inks }: ReturnType<typeof tableFor>): boolean {
  const about = (at: Point): Rectangle => ({ at, halfWide: SAME, halfHigh: SAME });
  if (away(about(toPixels(view, words.anchor)), ink) === 0) return true;
  const [dot] = ink.dots;
  return ink.mark && dot !== undefined && inks.some(({ of, dots }) => of === name && away(about(dot), { dots }) === 0);
}

/** Where words lie on something, or stand nearer to something they do not name. */
function faultsOf(words: Placed, table: ReturnType<typeof tableFor>): string[] {
  const { drawing, inks, view } = table;
  const name = nameOf(drawing, words);
  const rectangle = rectangleOf(words, view);
  const own = Math.min(...inks.filter(({ of }) => of === name).map((ink) => away(rectangle, ink)));
  return inks.flatMap((ink) => {
    const gap = away(rectangle, ink);
    if (gap === 0) return [`${words.text} lies on ${ink.of}`];
    // A leader says what is meant.
    const plain = ink.of === name || words.leader !== null || gap > own || throughIt(ink, words, name, table);
    return plain ? [] : [`${words.text} is nearer to ${ink.of}`];
  });
}

describe.each(exercises)('the words on the sheet of %s', (id) => {
  for (const person of ['amara', 'tane'])
    for (const size of FRAMES)
      test(`lie on nothing and mean one thing, for ${person} at ${size.width} px`, () => {
        const table = tableFor(id, person, size);
        const rectangles = table.placed.map((words) => rectangleOf(words, table.view));
        const pairs = rectangles.flatMap((one, index) =>
          rectangles.slice(index + 1).map((other) => overlap(one, other)),
        );
        expect(pairs.filter((area) => area > 0)).toEqual([]);
        expect(table.placed.flatMap((words) => faultsOf(words, table))).toEqual([]);
      });
});

test('the words on the sheet name every answer to a roll line and the block it is drawn on, at a desk', () => {
  for (const { id } of people) {
    const { drawing, placed } = tableFor('roll-line', id, FRAMES[0] as Size);
    const written = new Set(placed.map(({ text }) => text));
    expect(drawing.labels.map(({ words }) => speak(words)).filter((text) => !written.has(text))).toEqual([]);
  }
});

test('words on the sheet stay where they stand while something only shows for a moment', () => {
  const { drawing, placed, view } = tableFor('notch-gorge', 'amara', FRAMES[0] as Size);
  const lit: Part[] = drawing.parts
    .filter(({ name }) => name === 'roll-line')
    .map((part) => ({ ...part, tone: 'cue' }));
  const ahead: Part = {
    kind: 'line',
    name: null,
    tone: 'preview',
    from: { x: -80, y: 0 },
    to: { x: 150, y: 420 },
    faint: false,
  };
  const pointed = { ...drawing, parts: [...drawing.parts, ...lit, ahead] };
  const within = boxIn(view, FRAMES[0] as Size);
  expect(placeLabels(pointed, view.scale, speak, { within, before: placed })).toEqual(placed);
});

test('words carried along on a sheet that has not moved stand where they stood', () => {
  const { drawing, placed, view } = tableFor('collar-single', 'amara', FRAMES[0] as Size);
  expect(placed.some(({ leader }) => leader !== null)).toBe(true);
  const labels = drawing.labels.map((label) => ({ ...label }));
  expect(carryLabels({ ...drawing, labels }, view.scale, { before: placed })).toEqual(placed);
});

test('words carried along go with the mark they name, whatever they come to lie on, and the others stay', () => {
  const { drawing, placed, view } = tableFor('collar-single', 'amara', FRAMES[0] as Size);
  const moved = { x: 37, y: -21 };
  const labels = drawing.labels.map((label) =>
    label.of === 'break-point' && 'x' in label.by
      ? { ...label, by: { x: label.by.x + moved.x, y: label.by.y + moved.y } }
      : label,
  );
  const carried = carryLabels({ ...drawing, labels }, view.scale, { before: placed });
  expect(carried).toHaveLength(placed.length);
  for (const [index, before] of placed.entries()) {
    const gone = nameOf(drawing, before) === 'break-point' ? moved : { x: 0, y: 0 };
    const now = carried[index] as Placed;
    expect(now.anchor.x).toBeCloseTo(before.anchor.x + gone.x, 9);
    expect(now.anchor.y).toBeCloseTo(before.anchor.y + gone.y, 9);
    expect(now.shift).toEqual(before.shift);
  }
});

test('words that had no seat are not carried along', () => {
  const { drawing, placed, view } = tableFor('collar-single', 'amara', FRAMES[0] as Size);
  const [first, ...rest] = placed;
  const carried = carryLabels(drawing, view.scale, { before: rest });
  expect(carried.map(({ text }) => text)).toEqual(rest.map(({ text }) => text));
  expect(first).toBeDefined();
});

describe.each(FRAMES)('in a frame %o that shows a part of the sheet', (size) => {
  test.each(exercises)('no words of %s are cut off at its edge, and some are in sight', (id) => {
    const { drawing, placed: before, view: whole } = tableFor(id, 'amara', size);
    const middle = { x: size.width / 2, y: size.height / 2 };
    for (const to of [middle, { x: 0, y: middle.y }, { x: size.width, y: size.height }, { x: middle.x, y: 0 }]) {
      const view = movedView(whole, middle, to, 1.5);
      const placed = placeLabels(drawing, view.scale, speak, {
        before,
        within: boxIn(whole, size),
        shown: boxIn(view, size),
      });
      const cut = placed.filter(({ text, anchor, shift }) => {
        const at = toPixels(view, anchor);
        const [x, y] = [at.x + shift.x, at.y + shift.y];
        const half = (text.length * 6.9) / 2;
        const isSeen = x + half > 0 && x - half < size.width && y + 8 > 0 && y - 8 < size.height;
        return isSeen && (x - half < 0 || x + half > size.width || y - 8 < 0 || y + 8 > size.height);
      });
      expect(cut.map(({ text }) => text)).toEqual([]);
      if (to === middle) expect(placed.length).toBeGreaterThan(0);
    }
  });
});

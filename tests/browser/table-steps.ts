import type { Page } from '@playwright/test';
import { loadExercise } from '../../src/cli/exercises.ts';
import { formOf } from '../../src/drafting/form.ts';
import { replay } from '../../src/drafting/replay.ts';
import { type Drawn, isDrawn, type ShapeKind } from '../../src/drafting/shape.ts';
import type { Name, Part, Step } from '../../src/drafting/step.ts';
import type { Blank, Field } from '../../src/drafting/verbs.ts';
import { lengthOf } from '../../src/geometry/length.ts';
import { add, distance, type Point, scale } from '../../src/geometry/point.ts';
import { pointAtStation } from '../../src/geometry/station.ts';
import { lay } from '../../src/table/laid-orders.ts';
import { catchObject, nearestPlaceOn, type Pointing } from '../../src/table/model/catch.ts';
import { startSetting } from '../../src/table/model/setting.ts';
import { toolFor } from '../../src/table/model/tools.ts';
import { type Message, message } from '../../src/words/message.ts';
import { say } from '../../src/words/say.ts';
import { expect } from './fixture.ts';
import { act, byMouse, type SheetView, tool, viewOf } from './table-hand.ts';

/**
 * Makes the steps one after another at the table of an exercise as it opens: takes the tool, fills the blanks of its
 * sentence, says what the step answers, draws it and gives it its name. An object is pointed at wherever the sheet shows a
 * place that is its alone; where lines lie close together, and for amounts and ways, the blank is typed into.
 */
export async function makeSteps(page: Page, exercise: string, steps: readonly Step[]): Promise<void> {
  const asked = loadExercise(exercise);
  const laid = lay(asked, startSetting(asked, 'first'));
  if (!laid.ok) throw new Error(`The order of ${exercise} could not be laid.`);
  const { givens } = laid;
  const shown = (name: Name) => !givens.shapes.has(name) || asked.shows.includes(name);
  for (const [index, step] of steps.entries()) {
    const sheet = replay(givens, steps.slice(0, index));
    const view = await viewOf(page);
    await makeStep(page, step, { sheet, shown, radius: REACH / view.scale, view });
    await call(page, index, step.name);
  }
}

/** A hand that points between two lines nearer than this, mm, may take the wrong one. */
const APART = 3;

/** How near a mouse has to come, CSS pixels. */
const REACH = 14;

/** The sheet as the hand sees it. */
interface Seen extends Pointing {
  readonly view: SheetView;
}

async function makeStep(page: Page, step: Step, seen: Seen): Promise<void> {
  const form = formOf({ ...step });
  if (!form) throw new Error(`There is no sentence for ${step.name}.`);
  const { id, uses } = toolFor(form.id);
  await tool(page, id).click();
  if (uses[0] !== form.id) await page.locator('.ways input').nth(uses.indexOf(form.id)).check();
  const filled: Readonly<Record<string, unknown>> = { ...step };
  for (const field of form.fields)
    if (filled[field.field] !== undefined) await fill(page, field, filled[field.field], seen);
  if (step.answers) await page.locator('.call-it select').selectOption(step.answers);
  await act(page, 'draw').click();
}

/** Gives a step its name in the working, where it has another. */
async function call(page: Page, index: number, name: Name): Promise<void> {
  const box = page.locator('.step').nth(index).locator('.name-box input');
  if ((await box.inputValue()) === called(name)) return;
  await box.fill(name);
  await box.press('Enter');
  await expect(box).toHaveValue(called(name));
}

async function fill(page: Page, { field, blank }: Field, value: unknown, seen: Seen): Promise<void> {
  for (const entry of Array.isArray(value) ? (value as readonly unknown[]) : [value]) {
    const place = placeToPoint(entry, blank, seen);
    if (place) {
      await byMouse(page, place);
      continue;
    }
    const box = page.locator(`#blank-${field}`);
    await box.fill(wordsFor(entry, blank));
    await box.press('Enter');
  }
}

/** What the entry of a blank is typed as. */
function wordsFor(entry: unknown, { takes }: Blank): string {
  if (typeof entry === 'string')
    return takes === 'object' || takes === 'objects' || takes === 'run' ? called(entry) : entry;
  const { along, square, from, to } = entry as Partial<Part> & { readonly [K in 'along' | 'square']?: Name };
  if (along && from && to)
    return spoken(message('table.part-option', { along: { named: along }, from: { named: from }, to: { named: to } }));
  if (along) return spoken(message('table.heading-along', { name: { named: along } }));
  if (square) return spoken(message('table.heading-square', { name: { named: square } }));
  throw new Error(`There are no words for ${JSON.stringify(entry)}.`);
}

/** The place nearest the middle of the screen where pointing catches an object and no other; null where there is none. */
function placeToPoint(entry: unknown, blank: Blank, seen: Seen): Point | null {
  const kinds = kindsIn(blank);
  const shape = typeof entry === 'string' ? seen.sheet.shapes.get(entry) : undefined;
  if (!kinds || !shape || shape.kind === 'length' || shape.kind === 'angle') return null;
  const others = [...seen.sheet.shapes].filter(
    ([name, { kind }]) => name !== entry && seen.shown(name) && kinds.includes(kind),
  );
  // A mark takes all that is pointed at in its reach: well out of it, no pixel tips the scale.
  const wide = { ...seen, radius: seen.radius + APART };
  const isAlone = (p: Point) =>
    catchObject(wide, p, kinds)?.name === entry &&
    others.every(([, other]) => !isDrawn(other) || distance(nearestPlaceOn(other, p), p) > APART);
  const { frame, origin, scale: zoom } = seen.view;
  const middle = { x: (frame.width / 2 - origin.x) / zoom, y: (origin.y - frame.height / 2) / zoom };
  const nearFirst = placesOn(shape).toSorted((a, b) => distance(a, middle) - distance(b, middle));
  return nearFirst.find((p) => isSeen(p, seen.view) && isAlone(p)) ?? null;
}

function kindsIn(blank: Blank): readonly ShapeKind[] | null {
  if (blank.takes === 'run') return ['point', 'curve', 'line'];
  return blank.takes === 'object' || blank.takes === 'objects' ? blank.kinds : null;
}

/** A line is looked along as far as this, mm: across the sheet and more. */
const LONGEST = 1200;

function placesOn(shape: Drawn): readonly Point[] {
  if (shape.kind === 'point') return [shape.point];
  const parts = Array.from({ length: 60 }, (_, i) => (i + 0.5) / 60);
  if (shape.kind === 'line')
    return parts.map((part) => add(shape.line.through, scale(shape.line.direction, (part - 0.5) * LONGEST)));
  const length = lengthOf(shape.path);
  return parts.flatMap((part) => pointAtStation(shape.path, part * length) ?? []);
}

/** Whether a place lies well within the frame. */
function isSeen(p: Point, view: SheetView): boolean {
  const { frame } = view;
  const [x, y] = [view.origin.x + p.x * view.scale, view.origin.y - p.y * view.scale];
  return x > REACH && y > REACH && x < frame.width - REACH && y < frame.height - REACH;
}

const called = (name: Name): string => spoken(message('table.label', { name: { named: name } }));

const spoken = (words: Message): string => say(words, { language: 'en', unit: 'cm' });

import type { Locator, Page } from '@playwright/test';
import { loadExercise } from '../../src/cli/exercises.ts';
import { replay } from '../../src/drafting/replay.ts';
import type { Sheet } from '../../src/drafting/sheet.ts';
import type { Point } from '../../src/geometry/point.ts';
import { lay } from '../../src/table/laid-orders.ts';
import { startSetting } from '../../src/table/model/setting.ts';
import { awakeAll, expect } from './fixture.ts';

/** Opens an exercise and waits until its board is awake. */
export async function openTable(page: Page, exercise: string): Promise<void> {
  await page.goto(`/exercises/${exercise}/`);
  await awakeTable(page);
}

export async function awakeTable(page: Page): Promise<void> {
  await awakeAll(page);
  await expect(page.locator('.table-sheet')).toHaveAttribute('data-awake', 'true');
}

/** What the exercise's own steps come to on the figure it starts with: where a learner would point. */
export function referenceSheet(exercise: string): Sheet {
  const asked = loadExercise(exercise);
  const laid = lay(asked, startSetting(asked, 'first'));
  if (!laid.ok) throw new Error(`The order of ${exercise} could not be laid.`);
  return replay(laid.givens, asked.reference);
}

/** The place of a mark on a sheet, mm. */
export function placeOf(sheet: Sheet, name: string): Point {
  const shape = sheet.shapes.get(name);
  if (shape?.kind !== 'point') throw new Error(`There is no mark ${name}.`);
  return shape.point;
}

/** How the sheet lies in its frame: where the frame is, CSS pixels, the place of its origin in it, and pixels a millimetre. */
export interface SheetView {
  readonly frame: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  readonly origin: Point;
  readonly scale: number;
}

export async function viewOf(page: Page): Promise<SheetView> {
  const words = page.locator('.sheet-words');
  await words.scrollIntoViewIfNeeded();
  const frame = await words.boundingBox();
  const [scale, x, y] = ((await words.getAttribute('data-view')) ?? '').split(' ').map(Number);
  if (!frame || scale === undefined || x === undefined || y === undefined) throw new Error('The sheet is not awake.');
  return { frame, origin: { x, y }, scale };
}

/** Where a place of the sheet is on the screen, CSS pixels. A page scrolled past it is scrolled back. */
export async function onScreen(page: Page, p: Point): Promise<Point> {
  const at = await asScrolled(page, p);
  const height = page.viewportSize()?.height ?? 0;
  if (at.y > 0 && at.y < height) return at;
  await page.evaluate((far) => window.scrollBy({ top: far, behavior: 'instant' }), at.y - height / 2);
  return asScrolled(page, p);
}

async function asScrolled(page: Page, p: Point): Promise<Point> {
  const { frame, origin, scale } = await viewOf(page);
  return { x: frame.x + origin.x + p.x * scale, y: frame.y + origin.y - p.y * scale };
}

/** A way to point at the sheet. */
export type Pointer = (page: Page, p: Point) => Promise<void>;

export const byMouse: Pointer = async (page, p) => {
  const { x, y } = await onScreen(page, p);
  await page.mouse.click(x, y);
};

export const byFinger: Pointer = async (page, p) => {
  const { x, y } = await onScreen(page, p);
  await page.touchscreen.tap(x, y);
};

export function tool(page: Page, id: string): Locator {
  return page.locator(`.tool[data-tool="${id}"]`);
}

export function act(page: Page, what: string): Locator {
  return page.locator(`[data-do="${what}"]`);
}

/** Presses a button by mouse or finger, as the page has it. */
export async function press(button: Locator, finger: boolean): Promise<void> {
  if (finger) await button.tap();
  else await button.click();
}

/** What the live region said last. */
export function spoken(page: Page): Locator {
  return page.locator('[data-spoken]');
}

/** One step of a draft by pointing: the tool, what is pointed at or pressed in turn, and what it answers. */
export interface PointedStep {
  readonly tool: string;
  readonly does: readonly (Point | string)[];
  readonly answers?: string;
}

/** Draws a step by mouse or finger: places are pointed at, words are pressed under the sentence. */
export async function drawStep(page: Page, step: PointedStep, finger = false): Promise<void> {
  const point = finger ? byFinger : byMouse;
  await press(tool(page, step.tool), finger);
  for (const one of step.does) {
    if (typeof one === 'string') await press(page.locator('.chip', { hasText: one }).first(), finger);
    else await point(page, one);
  }
  if (step.answers) await page.locator('.call-it select').selectOption(step.answers);
  await press(act(page, 'draw'), finger);
}

/** The roll-line exercise, step by step, by pointing. `to` is where the roll line is ruled to; `sheet` has the marks that are pointed at. */
export function rollLineSteps(to = 'stand-point', sheet = referenceSheet('roll-line')): readonly PointedStep[] {
  const at = (name: string) => placeOf(sheet, name);
  const breakPoint = at('break-point');
  const besideFront = { x: 0, y: 200 };
  return [
    { tool: 'parallel', does: [besideFront, 'overlap', { x: -70, y: 200 }], answers: 'overlap-edge' },
    { tool: 'parallel', does: [{ x: 90, y: 0 }, 'break rise', { x: 90, y: 60 }] },
    {
      tool: 'pencil',
      does: [
        { x: breakPoint.x, y: 200 },
        { x: 90, y: breakPoint.y },
      ],
      answers: 'break-point',
    },
    {
      tool: 'tape',
      does: [midShoulder(sheet), at('neck-point'), 'stand by the house rule', 'left'],
      answers: 'stand-point',
    },
    { tool: 'rule', does: [breakPoint, at(to)], answers: 'roll-line' },
  ];
}

function midShoulder(sheet: Sheet): Point {
  const [neck, tip] = [placeOf(sheet, 'neck-point'), placeOf(sheet, 'shoulder-tip')];
  return { x: (neck.x + tip.x) / 2, y: (neck.y + tip.y) / 2 };
}

import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Browser, BrowserContextOptions, Locator } from '@playwright/test';
import { exerciseNames, loadExercise } from '../../src/cli/exercises.ts';
import { replay } from '../../src/drafting/replay.ts';
import type { Sheet } from '../../src/drafting/sheet.ts';
import type { Step } from '../../src/drafting/step.ts';
import { readSet } from '../../src/exchange/read-set.ts';
import type { ProblemSet } from '../../src/exchange/set.ts';
import { setMark } from '../../src/exchange/write-set.ts';
import { lay } from '../../src/table/laid-orders.ts';
import { freshAbout } from '../../src/table/set-in-hand.ts';
import { awakeAll, expect, type Page, test } from './fixture.ts';
import { act, awakeTable, drawStep, rollLineSteps, tool } from './table-hand.ts';
import { draw, fill, tabTo, take } from './table-keyboard.ts';
import { watch } from './watch.ts';

const ROOT = path.resolve(import.meta.dirname, '../..');
const roll = loadExercise('roll-line');
const begin = 'Begin “The roll line, whole”';

test('a set goes out, three students work it, and it comes back marked: the desk and the command agree', async ({
  browser,
  baseURL,
}) => {
  test.slow();
  const folder = mkdtempSync(path.join(tmpdir(), 'loop-'));
  const drafts = path.join(folder, 'drafts');
  mkdirSync(drafts);
  const site = baseURL ?? '';

  // The teacher makes the set, keeps its file, and sends its link.
  const teacher = await machine(browser, site);
  const setFile = path.join(folder, 'roll-lines.set.json');
  await teacher.page.goto('/desk/set/');
  await teacher.page.getByLabel('Title').fill('Roll lines');
  await teacher.page.locator('.desk-pool').getByRole('checkbox', { name: 'The roll line, whole' }).check();
  await teacher.page.getByLabel('Marks for “The roll line, whole”').fill('50');
  await teacher.page.getByLabel('The jackets are drafted for').selectOption('each');
  await keep(teacher.page, act(teacher.page, 'save-set'), setFile);
  const link = new URL(await teacher.page.getByLabel('Link', { exact: true }).inputValue());
  const read = readSet(readFileSync(setFile, 'utf8'), exerciseNames());
  if (!read.ok) throw new Error('The set cannot be read.');
  const { set } = read;

  // One student draws it right, by mouse.
  const ilse = await machine(browser, site);
  await enter(ilse.page, link, 'Ilse Maringa');
  await ilse.page.getByRole('link', { name: begin }).click();
  await onTable(ilse.page);
  for (const step of rollLineSteps('stand-point', sheetOf(set, 'Ilse Maringa'))) await drawStep(ilse.page, step);
  await handIn(ilse.page, drafts);

  // One rules through the neck point, by keyboard alone.
  const bo = await machine(browser, site);
  await enter(bo.page, link, 'Bo Tarrant');
  await tabTo(bo.page, '[data-exercise="roll-line"] a');
  await bo.page.keyboard.press('Enter');
  await onTable(bo.page);
  await drawThroughNeckPoint(bo.page);
  await handIn(bo.page, drafts);

  // One takes the break point too high and goes on rightly from there, by finger on a phone.
  const tam = await machine(browser, site, {
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
    deviceScaleFactor: 3,
  });
  await enter(tam.page, link, 'Tam Osei-Lund');
  await tam.page.getByRole('link', { name: begin }).tap();
  await onTable(tam.page);
  const [edge, level, ...rest] = rollLineSteps('stand-point', sheetOf(set, 'Tam Osei-Lund', tooHigh));
  if (!edge || !level) throw new Error('The roll line has no steps.');
  await drawStep(tam.page, edge, true);
  await tool(tam.page, 'parallel').tap();
  await tam.page.locator('#blank-to').fill('waist');
  await tam.page.locator('#blank-to').press('Enter');
  await tam.page.locator('#blank-distance').fill('break rise + 2 cm');
  await tam.page.locator('#blank-distance').press('Enter');
  await tam.page.locator('.chip', { hasText: 'up' }).first().tap();
  await act(tam.page, 'draw').tap();
  for (const step of rest) await drawStep(tam.page, step, true);
  await handIn(tam.page, drafts);

  // The teacher lays the folder on the desk.
  const desk = teacher.page;
  await desk.goto('/desk/mark/');
  await awakeAll(desk);
  await desk.locator('.intray input[type=file]').nth(1).setInputFiles(folder);
  await expect(desk.locator('#mark-book')).toHaveText('The gradebook of “Roll lines”');
  await expect(desk.locator('.book tbody tr')).toHaveCount(3);
  await expect(desk.locator('.intray progress')).toHaveCount(0);
  const csvFile = path.join(folder, 'roll-lines.csv');
  await keep(desk, act(desk, 'csv'), csvFile);
  const csv = readFileSync(csvFile, 'utf8');

  // What each has earned: all of it; what hangs on the neck point lost; what hangs on the break level lost, once.
  const marks = marksIn(csv);
  expect(marks.get('Ilse Maringa')).toBe(50);
  const rows = grade(['--set', setFile, drafts]).trim().split('\n').map(asRow);
  for (const { student, marks: earned, of } of rows) expect(marks.get(student)).toBeCloseTo((earned / of) * 50, 9);
  const lost = (student: string) =>
    rows
      .find((row) => row.student === student)
      ?.checks.filter(({ status }) => status !== 'within')
      .map(({ target, misreading }) => ({ target, misreading }));
  expect(lost('Ilse Maringa')).toEqual([]);
  expect(new Set(lost('Bo Tarrant')?.map(({ misreading }) => misreading))).toEqual(new Set(['through-neck-point']));
  // The roll line was judged from the break point it was ruled from.
  expect(new Set(lost('Tam Osei-Lund')?.map(({ target }) => target))).toEqual(new Set(['break-point']));
  expect([teacher, ilse, bo, tam].flatMap(({ faults }) => faults)).toEqual([]);
  expect(csv).toBe(grade(['--csv', '--bom', '--set', setFile, drafts]));
});

/** A browser of its own, as on another machine; the page is held to the same quiet as every other. */
async function machine(
  browser: Browser,
  baseURL: string,
  options: BrowserContextOptions = {},
): Promise<{ readonly page: Page; readonly faults: readonly string[] }> {
  const context = await browser.newContext({ baseURL, locale: 'en-GB', ...options });
  const faults = await watch(context, new URL(baseURL).hostname);
  return { page: await context.newPage(), faults };
}

async function enter(page: Page, link: URL, name: string): Promise<void> {
  await page.goto(`/set/${link.hash}`);
  await page.getByLabel('Your name').fill(name);
  await expect(page.getByRole('link', { name: begin })).toBeVisible();
}

async function onTable(page: Page): Promise<void> {
  await page.waitForURL('**/exercises/roll-line/**');
  await awakeTable(page);
}

async function handIn(page: Page, folder: string): Promise<void> {
  await expect(page.locator('.step')).toHaveCount(roll.reference.length - 1);
  await page.getByRole('link', { name: 'Back to the set' }).click();
  await keep(page, act(page, 'hand-in-set'), folder);
}

/** Presses what saves a file, and puts the file where it is wanted: there, or in that folder under its own name. */
async function keep(page: Page, button: Locator, where: string): Promise<void> {
  const [download] = await Promise.all([page.waitForEvent('download'), button.click()]);
  await download.saveAs(path.extname(where) === '' ? path.join(where, download.suggestedFilename()) : where);
}

const tooHigh = (step: Step): Step =>
  step.name === 'break-level' ? ({ ...step, distance: 'break-rise + 2 cm' } as Step) : step;

/** The student's own sheet, with the reference drawn on it: where to point. */
function sheetOf(set: ProblemSet, student: string, change: (step: Step) => Step = (step) => step): Sheet {
  const inSet = { set, mark: setMark(set), student: { student, number: '' } };
  const laid = lay(roll, freshAbout(roll, inSet, '').setting);
  if (!laid.ok) throw new Error('The order cannot be laid.');
  return replay(laid.givens, roll.reference.map(change));
}

async function drawThroughNeckPoint(page: Page): Promise<void> {
  await take(page, 'parallel');
  for (const words of ['centre front', 'overlap', 'left']) await fill(page, words);
  await draw(page, 'overlap edge');
  await take(page, 'parallel');
  for (const words of ['waist', 'break-rise', 'up']) await fill(page, words);
  await draw(page, null);
  await take(page, 'pencil');
  for (const words of ['overlap edge', 'line 1']) await fill(page, words);
  await tabTo(page, '[data-do="draw"]');
  await draw(page, 'break point');
  await take(page, 'tape');
  for (const words of ['shoulder line', 'neck point', 'stand-by-rule', 'left']) await fill(page, words);
  await draw(page, 'stand point');
  await take(page, 'rule');
  for (const words of ['break point', 'neck point']) await fill(page, words);
  await draw(page, 'roll line');
}

interface Row {
  readonly student: string;
  readonly marks: number;
  readonly of: number;
  readonly checks: readonly { readonly target: string; readonly status: string; readonly misreading: string | null }[];
}

const asRow = (line: string): Row => JSON.parse(line) as Row;

function grade(words: readonly string[]): string {
  return execFileSync(process.execPath, ['src/cli/grade.ts', ...words], { cwd: ROOT, encoding: 'utf8' });
}

/** What each student of a gradebook has for the roll line. */
function marksIn(csv: string): ReadonlyMap<string, number> {
  const [head = '', ...rows] = csv.replaceAll('"', '').trim().split('\r\n');
  const column = head.split(',').indexOf('roll-line');
  return new Map(rows.map((row) => [row.split(',')[0] ?? '', Number(row.split(',')[column])]));
}

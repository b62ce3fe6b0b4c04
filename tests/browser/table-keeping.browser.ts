import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { axe, expect, moved, type Page, test } from './fixture.ts';
import { act, awakeTable, drawStep, openTable, rollLineSteps, spoken, tool } from './table-hand.ts';

const ROOT = path.resolve(import.meta.dirname, '../..');

test('a draft is there again after a reload, mid-way and where one stood', async ({ page }) => {
  await openTable(page, 'roll-line');
  const [first, second] = rollLineSteps();
  if (first) await drawStep(page, first);
  if (second) await drawStep(page, second);
  await act(page, 'step-back').click();
  await page.reload();
  await awakeTable(page);
  await expect(page.locator('.step')).toHaveCount(2);
  // Taking the draft up again moves nothing that stands there already.
  expect(await moved(page)).toEqual([]);
  await expect(page.locator('.walk-place')).toHaveText('1 of 2');
  await act(page, 'step-end').click();
  await expect(page.locator('.sheet-board .ink--made').first()).toBeAttached();
  // What was done before the reload is not undone by mistake.
  await expect(act(page, 'undo')).toBeDisabled();
});

test('a tab that is killed, after any step or in the middle of one, loses at most what the hand was doing', async ({
  context,
}) => {
  test.slow();
  const steps = rollLineSteps();
  for (const [drawn, step] of steps.entries()) {
    const page = await context.newPage();
    await openTable(page, 'roll-line');
    await expect(page.locator('.step')).toHaveCount(drawn);
    await drawStep(page, step);
    await expect(page.locator('.step')).toHaveCount(drawn + 1);
    // The next one is begun: a tool is in hand when the tab goes.
    const next = steps[drawn + 1];
    if (next) await tool(page, next.tool).click();
    await kill(page);
  }
  const page = await context.newPage();
  await openTable(page, 'roll-line');
  await expect(page.locator('.step')).toHaveCount(steps.length);
  await act(page, 'check').click();
  await expect(page.getByRole('heading', { name: '14 of 14 marks' })).toBeVisible();
});

/** Ends the process of a page, as a crash does: no handler of the page runs any more. */
async function kill(page: Page): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const crashed = page.waitForEvent('crash');
  // There is nobody left to answer.
  session.send('Page.crash').catch(() => undefined);
  await crashed;
  await page.close();
}

test('a number in an earlier step is changed in place, a step is rubbed out, and both can be undone', async ({
  page,
}) => {
  await openTable(page, 'roll-line');
  for (const step of rollLineSteps().slice(0, 3)) await drawStep(page, step);
  await page.locator('.step').nth(1).locator('.blank-words[data-field="distance"]').click();
  // What is typed takes the place of what stood there.
  await page.keyboard.type('5 cm');
  await page.keyboard.press('Enter');
  await expect(page.locator('.step').nth(1)).toContainText('5 cm');
  await expect(spoken(page)).toHaveText(/Line 1 changed\. Everything after it follows\./);
  await page.locator('.step').nth(0).locator('[data-do="erase"]').click();
  await expect(page.locator('.step')).toHaveCount(2);
  await expect(page.locator('.step-problem')).toHaveCount(1);
  await axe(page);
  await act(page, 'undo').click();
  await act(page, 'undo').click();
  await expect(page.locator('.step').nth(1)).toContainText('break rise');
  await expect(page.locator('.step-problem')).toHaveCount(0);
});

test('two tabs with one draft: neither writes over the other before one is chosen', async ({ page, context }) => {
  const [first, second, third] = rollLineSteps();
  if (!first || !second || !third) throw new Error('The exercise has too few steps.');
  await openTable(page, 'roll-line');
  await drawStep(page, first);
  const other = await context.newPage();
  await openTable(other, 'roll-line');
  await expect(other.locator('.step')).toHaveCount(1);
  // Having it open twice is no harm.
  await expect(page.locator('.notice')).toHaveCount(0);
  await drawStep(other, second);
  await expect(page.locator('.notice')).toContainText('changed in another tab');
  await axe(page);
  await act(page, 'erase').click();
  await other.reload();
  await awakeTable(other);
  await expect(other.locator('.step')).toHaveCount(2);

  // The first tab keeps its own, and the second is asked.
  await act(page, 'keep-mine').click();
  await expect(page.locator('.notice')).toHaveCount(0);
  await expect(other.locator('.notice')).toContainText('changed in another tab');
  await act(other, 'take-other').click();
  await expect(other.locator('.notice')).toHaveCount(0);
  await expect(other.locator('.step')).toHaveCount(0);
  // What it gave up can be had again.
  await act(other, 'undo').click();
  await expect(other.locator('.step')).toHaveCount(2);
  await expect(page.locator('.notice')).toContainText('changed in another tab');
  await act(page, 'take-other').click();
  await expect(page.locator('.step')).toHaveCount(2);
  await drawStep(page, third);
  await expect(other.locator('.notice')).toHaveCount(1);
});

test('a full storage is said, and the draft goes on', async ({ page }) => {
  await page.addInitScript(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await openTable(page, 'roll-line');
  for (const step of rollLineSteps().slice(0, 2)) await drawStep(page, step);
  await expect(page.locator('.notice')).toContainText('no room left');
  await expect(page.locator('.step')).toHaveCount(2);
  await axe(page);
});

test('a forbidden storage is said, and the draft goes on', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get: () => {
        throw new DOMException('denied', 'SecurityError');
      },
    });
  });
  await openTable(page, 'roll-line');
  for (const step of rollLineSteps().slice(0, 1)) await drawStep(page, step);
  await expect(page.locator('.notice')).toContainText('does not let the page keep anything');
  await expect(page.locator('.step')).toHaveCount(1);
});

test('a damaged record is offered as it is, and one starts clean', async ({ page }) => {
  await page.addInitScript(() => {
    if (!sessionStorage.getItem('laid')) localStorage.setItem('gorgeline.draft.roll-line', '{"upTo":2,"handIn":{"st');
    sessionStorage.setItem('laid', 'yes');
  });
  await openTable(page, 'roll-line');
  await expect(page.locator('.notice')).toContainText('damaged');
  await axe(page);
  const download = page.waitForEvent('download');
  await act(page, 'save-raw').click();
  const file = await (await download).path();
  expect(readFileSync(file, 'utf8')).toBe('{"upTo":2,"handIn":{"st');
  await act(page, 'start-clean').click();
  await expect(page.locator('.notice')).toHaveCount(0);
  for (const step of rollLineSteps().slice(0, 1)) await drawStep(page, step);
  await page.reload();
  await awakeTable(page);
  await expect(page.locator('.step')).toHaveCount(1);
});

test('what is handed in is marked by the command to the last digit as the page marks it', async ({ page }) => {
  await openTable(page, 'roll-line');
  // One slip, so that there is something to measure.
  for (const step of rollLineSteps('neck-point')) await drawStep(page, step);
  await act(page, 'check').click();
  const marks = await page.locator('#report-title').textContent();
  await act(page, 'show-right').click();
  await act(page, 'hand-in').click();
  await expect(page.locator('.files-note')).toContainText('Write your name first');
  await page.getByLabel('Your name, as your teacher knows it').fill('Ana\tLind');
  const download = page.waitForEvent('download');
  await act(page, 'hand-in').click();
  const saved = await download;
  expect(saved.suggestedFilename()).toBe('ana-lind.roll-line.hand-in.json');
  const file = await saved.path();
  const handIn: unknown = JSON.parse(readFileSync(file, 'utf8'));
  expect(handIn).toMatchObject({ student: 'Ana Lind', exercise: 'roll-line', shown: ['roll-line'] });
  const printed = execFileSync(process.execPath, [path.join(ROOT, 'src/cli/grade.ts'), '--json', file], {
    encoding: 'utf8',
  });
  const row = JSON.parse(printed) as { marks: number; of: number; checks: unknown; otherFigures: unknown };
  expect(`${row.marks} of ${row.of} marks`).toBe(marks);
  const onPage: unknown = JSON.parse((await page.locator('.report').getAttribute('data-row')) ?? '');
  expect({ checks: row.checks, otherFigures: row.otherFigures }).toEqual(onPage);

  // The name is there at the next exercise too.
  await openTable(page, 'overlap');
  await expect(page.getByLabel('Your name, as your teacher knows it')).toHaveValue('Ana Lind');
  await openTable(page, 'roll-line');

  // The same file opens at the table again.
  await act(page, 'clear-sheet').click();
  await page.locator('input[type="file"]').setInputFiles(file);
  await expect(page.locator('.step')).toHaveCount(5);
  await expect(page.locator('.files-note')).toHaveText('Draft opened: 5 steps.');
});

test('a file that is no draft is refused with a reason', async ({ page }) => {
  await openTable(page, 'roll-line');
  await page
    .locator('input[type="file"]')
    .setInputFiles({ name: 'notes.json', mimeType: 'application/json', buffer: Buffer.from('{"a":1}') });
  await expect(page.locator('.files-note')).toContainText('This file could not be opened.');
});

test.describe('when the script of the board does not arrive', () => {
  test.use({ expectedErrors: [[/lay-board/, /ERR_FAILED/], { scope: 'test' }] });

  test('that is said, the built sheet stays, and a draft can still be typed and marked', async ({ page }) => {
    await page.route(/lay-board/, (route) => route.abort());
    await page.goto('/exercises/roll-line/');
    await expect(page.locator('.sheet-asleep')).toContainText('Your draft is kept');
    await expect(page.locator('.sheet-still .drawing-sheet')).toBeVisible();
    await page.locator('.tool[data-tool="parallel"]').click();
    for (const [field, words] of Object.entries({ to: 'centre front', distance: 'overlap', side: 'left' })) {
      await page.locator(`#blank-${field}`).fill(words);
      await page.locator(`#blank-${field}`).press('Enter');
    }
    await page.locator('.call-it select').selectOption('overlap-edge');
    await act(page, 'draw').click();
    await act(page, 'check').click();
    await expect(page.locator('.report-right')).toHaveText('Right: overlap edge.');
  });
});

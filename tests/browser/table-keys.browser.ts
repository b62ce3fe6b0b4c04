import { axe, expect, layoutShift, type Page, test } from './fixture.ts';
import { act, drawStep, openTable, rollLineSteps, spoken } from './table-hand.ts';
import { draw, fill, tabTo, take } from './table-keyboard.ts';

test('a learner draws the roll line by keyboard alone, to full marks', async ({ page }) => {
  await openTable(page, 'roll-line');
  await take(page, 'parallel');
  await fill(page, 'centre front');
  await fill(page, 'overlap');
  await fill(page, 'left');
  await draw(page, 'overlap edge');
  await expect(spoken(page)).toHaveText(/^Overlap edge made/);
  // The keyboard keeps its place when the sentence closes.
  await expect(page.locator('.tools .tool:focus')).toHaveCount(1);

  await take(page, 'parallel');
  // From the list this time.
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await fill(page, 'break-rise');
  await fill(page, 'up');
  await draw(page, null);

  await take(page, 'pencil');
  await fill(page, 'overlap edge');
  await fill(page, 'line 1');
  // Which crossing is meant is left open: there is only one.
  await tabTo(page, '[data-do="draw"]');
  await draw(page, 'break point');
  await expect(spoken(page)).toHaveText(/^Break point made, on overlap edge and line 1, 3\.8\scm above the waist/);

  await take(page, 'tape');
  await fill(page, 'shoulder line');
  await fill(page, 'neck point');
  await fill(page, 'stand-by-rule');
  await fill(page, 'left');
  await draw(page, 'stand point');

  await take(page, 'rule');
  await fill(page, 'break point');
  await fill(page, 'stand point');
  await draw(page, 'roll line');

  await tabTo(page, '[data-do="check"]');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: '14 of 14 marks' })).toBeFocused();
  // All is right: what comes next is the first thing that Tab reaches.
  await page.keyboard.press('Tab');
  await expect(page.locator('.report :focus')).toHaveText(/^Next (at the table|lesson): /);
});

test('a few letters and Enter take the only entry there is, and names are typed with spaces', async ({ page }) => {
  await openTable(page, 'roll-line');
  await take(page, 'parallel');
  await fill(page, 'wai');
  await expect(page.locator('#blank-to')).toHaveValue('waist');
  await page.keyboard.type('break rise');
  await expect(page.locator('.blank-note')).toHaveText('= 3.8\u00a0cm');
  // What is typed and what comes of it hide nothing of the row one may press instead, once the page has stopped scrolling.
  for (const chip of await page.locator('.chip').all())
    await expect
      .poll(() =>
        chip.evaluate((one) => {
          const { left, top, width, height } = one.getBoundingClientRect();
          return document.elementFromPoint(left + width / 2, top + height / 2) === one;
        }),
      )
      .toBe(true);
  await page.keyboard.press('Enter');
  // Several entries have these letters, and one begins with them.
  await fill(page, 'u');
  await draw(page, null);
  await expect(page.locator('.step-words')).toHaveText(/^Line parallel to waist, break rise \(3\.8\scm\), above it\.$/);
});

test('the sheet is pointed at with the arrow keys, and says what is under the pointer', async ({ page }) => {
  await openTable(page, 'roll-line');
  await take(page, 'parallel');
  await page.locator('.sheet-frame').focus();
  // From the middle of the frame down to the waist, a centimetre at a time.
  for (let presses = 0; presses < 40 && !(await spoken(page).textContent())?.startsWith('Waist:'); presses++) {
    await page.keyboard.press('ArrowDown');
    await expect(spoken(page)).toHaveText(/the waist and/);
  }
  await page.keyboard.press('Enter');
  await expect(spoken(page)).toHaveText(/^Waist taken\./);
  await expect(page.locator('#blank-to')).toHaveValue('waist');
  const scale = () =>
    page.locator('.sheet-words').evaluate((words) => Number(words.getAttribute('data-view')?.split(' ')[0]));
  const before = await scale();
  await page.keyboard.press('+');
  expect(await scale()).toBeCloseTo(before * 1.25, 3);
  await page.keyboard.press('0');
  expect(await scale()).toBeCloseTo(before, 3);
});

test('a curve is drawn by keyboard: marks one by one, the last taken out again, squared at an end afterwards', async ({
  page,
}) => {
  await openTable(page, 'roll-line');
  await take(page, 'curve');
  await fill(page, 'front neck point');
  await fill(page, 'shoulder tip');
  await expect(page.locator('.blank-taken')).toHaveText('front neck point and shoulder tip');
  await page.locator('.blank-less').focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('.blank-taken')).toHaveText('front neck point');
  await tabTo(page, '#blank-through');
  await fill(page, 'neck point');
  // A line alone does not say whether along it or square to it: nothing is drawn as if it had not been written.
  await tabTo(page, '#blank-leave');
  await page.keyboard.type('centre front');
  await tabTo(page, '[data-do="draw"]');
  await expect(page.locator('.blank-note')).toHaveText(/^“centre front” can mean more than one thing here/);
  await page.keyboard.press('Enter');
  await expect(page.locator('#blank-leave')).toBeFocused();
  await expect(page.locator('.step')).toHaveCount(0);
  await page.keyboard.press('Escape');
  await page.locator('#blank-through').focus();
  // Enter in the empty blank draws what is complete.
  await page.keyboard.press('Enter');
  await expect(page.locator('.step')).toHaveCount(1);
  await expect(spoken(page)).toHaveText(/^Curve 1 made, through front neck point and neck point/);
  const leave = page.locator('.step .blank-words[data-field="leave"]');
  await leave.focus();
  await page.keyboard.press('Enter');
  // In the working it stays written too, until it can be read.
  await fill(page, 'centre front');
  await page.keyboard.press('Tab');
  await expect(page.locator('.step .blank-note')).toBeVisible();
  await page.locator('.step .blank-input').fill('');
  await fill(page, 'square to centre front');
  await expect(page.locator('.step')).toContainText('leaving square to centre front');
  // The keyboard stays where it mended the sentence.
  await expect(leave).toBeFocused();
  await expect(page.locator('.step-problem')).toHaveCount(0);
  await axe(page);
});

test('a free mark is moved by the arrow keys, and the change is said', async ({ page }) => {
  await openTable(page, 'roll-line');
  await take(page, 'pencil');
  await page.getByRole('radio', { name: 'by eye' }).focus();
  await page.keyboard.press('Space');
  await tabTo(page, '.blank-input');
  await fill(page, '5 cm, 10 cm');
  await draw(page, null);
  await tabTo(page, '.grip-key');
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Shift+ArrowRight');
  await expect(spoken(page)).toHaveText(/^Mark 1 moved, 10\.1\scm above the waist and 6\scm right of the centre front/);
  await expect(page.locator('.step')).toContainText('6 cm right of centre front');
  // All of it was one move.
  await act(page, 'undo').click();
  await expect(page.locator('.step')).toContainText('5 cm right of centre front and 10 cm above the waist');
  await axe(page);
});

test.describe('the sheet stays steady', () => {
  test('as the board takes over from the built picture', async ({ page }) => {
    // The board is held back until the built picture has been measured.
    let wake = (): void => undefined;
    const measured = new Promise<void>((resolve) => {
      wake = resolve;
    });
    await page.route(/lay-board/, async (route) => {
      await measured;
      await route.continue();
    });
    await page.goto('/exercises/roll-line/');
    const before = await middles(page, '.sheet-still .drawing-words--wide .mark');
    wake();
    await expect(page.locator('.table-sheet')).toHaveAttribute('data-awake', 'true');
    const after = await middles(page, '.sheet-board .mark');
    expect(before.length).toBeGreaterThan(2);
    expect(after).toEqual(before);
    expect(await layoutShift(page)).toBe(0);
  });

  test.describe('at 200 % zoom and with less motion', () => {
    // A window of 1280 by 800 at twice the size has room for 640 by 400.
    test.use({
      viewport: { width: 640, height: 400 },
      deviceScaleFactor: 2,
      contextOptions: { reducedMotion: 'reduce' },
    });

    test('nothing is lost', async ({ page }) => {
      await openTable(page, 'roll-line');
      for (const step of rollLineSteps().slice(0, 2)) await drawStep(page, step);
      await expect(page.locator('.step')).toHaveCount(2);
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
      ).toBe(0);
      await axe(page);
    });
  });
});

/** The middles of what matches, in whole pixels of the page, sorted. */
function middles(page: Page, selector: string): Promise<readonly string[]> {
  return page.locator(selector).evaluateAll((marks) =>
    marks
      .map((mark) => {
        const { x, y, width, height } = mark.getBoundingClientRect();
        return `${Math.round(x + width / 2 + scrollX)} ${Math.round(y + height / 2 + scrollY)}`;
      })
      .sort(),
  );
}

test('a step that is given another name by keyboard stays under the focus, and so does what has no more to do', async ({
  page,
}) => {
  await openTable(page, 'roll-line');
  for (const step of rollLineSteps().slice(0, 2)) await drawStep(page, step);
  const name = page.locator('.step').last().locator('.name-box input');
  await name.fill('break level');
  await name.press('Enter');
  await expect(spoken(page)).toHaveText(/break level/);
  await expect(name).toBeFocused();
  await expect(page.locator('.walk-place')).toHaveText('2 of 2');
  for (const does of ['step-back', 'step-end', 'undo']) {
    await act(page, does).focus();
    for (let presses = 0; presses < 4; presses++) await page.keyboard.press('Enter');
    await expect(act(page, does)).toBeDisabled();
    await expect(act(page, does)).toBeFocused();
  }
  // From there the keys go on working, and take back what was undone.
  await expect(page.locator('.step')).toHaveCount(0);
  await page.keyboard.press('Control+Shift+z');
  await expect(page.locator('.step')).toHaveCount(1);
});

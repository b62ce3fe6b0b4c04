import { axe, expect, layoutShift, type Page, test } from './fixture.ts';
import {
  act,
  byMouse,
  drawStep,
  onScreen,
  openTable,
  placeOf,
  referenceSheet,
  rollLineSteps,
  spoken,
  tool,
  viewOf,
} from './table-hand.ts';

test.describe('a learner draws the roll line', () => {
  test('by pointing, to full marks', async ({ page }) => {
    await openTable(page, 'roll-line');
    for (const step of rollLineSteps()) await drawStep(page, step);
    await expect(page.locator('.step')).toHaveCount(5);
    await act(page, 'check').click();
    await expect(page.getByRole('heading', { name: '14 of 14 marks' })).toBeFocused();
    await expect(page.locator('.report-right')).toHaveText('Everything is right.');
    await expect(page.locator('[data-target="others"]')).toContainText(/holds on all of them\.$/);
    await axe(page);
  });

  test('by touch on a phone, to full marks', { tag: '@phone' }, async ({ page }) => {
    await openTable(page, 'roll-line');
    for (const step of rollLineSteps()) await drawStep(page, step, true);
    await act(page, 'check').tap();
    await expect(page.getByRole('heading', { name: '14 of 14 marks' })).toBeVisible();
    expect(await layoutShift(page)).toBe(0);
    await axe(page);
    // No keyboard comes up under a blank for lines: what may stand there lies open as soon as the blank is pressed.
    const crossing = page.locator('.step').nth(2);
    await crossing.locator('.blank-words').first().tap();
    await crossing.locator('.blank-option', { hasText: 'centre front' }).tap();
    await expect(crossing.locator('.step-words')).toContainText('Mark where centre front crosses');
  });

  test('through the neck point, and is told what that does to the collar', async ({ page }) => {
    await openTable(page, 'roll-line');
    for (const step of rollLineSteps('neck-point')) await drawStep(page, step);
    await act(page, 'check').click();
    const note = page.locator('.note[data-target="roll-line"]');
    await expect(note).toContainText('Your roll line runs through the neck point');
    await expect(note).toContainText('no stand at the shoulder');
    await expect(page.locator('.report-right')).toHaveText(/^Right: overlap edge, break point,? and stand point\.$/);
    await expect(page.locator('.sheet-words .head--red')).not.toHaveCount(0);
    await expect(page.locator('.sheet-words .words--red').first()).toHaveText(/^off /);
    await axe(page);
    // The way back leads to the step that is at fault, and the notes stay until they are rubbed out.
    await act(page, 'mend').click();
    await expect(page.locator('.step', { hasText: 'Rule a line' }).locator('.blank-words').first()).toBeFocused();
    await expect(page.locator(':focus')).toBeInViewport();
    await expect(note).toBeVisible();
    await act(page, 'rub-out').click();
    await expect(note).toHaveCount(0);
    await expect(act(page, 'check')).toBeFocused();
  });
});

test('what is typed after pointing goes into the next blank', async ({ page }) => {
  await openTable(page, 'roll-line');
  await tool(page, 'parallel').click();
  await byMouse(page, { x: 90, y: 0 });
  await page.keyboard.type('0.5 in + 1 in');
  // Pressed too early, the drawing of it leads to the blank that is next.
  await press(page, 'draw');
  await expect(page.locator('#blank-side')).toBeFocused();
  await page.keyboard.type('up');
  // Pressed straight from typing, it takes what was typed and draws.
  await press(page, 'draw');
  await expect(page.locator('.step-words')).toHaveText(
    'Line parallel to waist, 0.5 in + 1 in (3.8\u00a0cm), above it.',
  );
  // What is drawn outside the frame is shown with the rest: it would seem not to be drawn.
  await tool(page, 'parallel').click();
  // After a tool was taken by mouse as well.
  await page.keyboard.type('waist');
  await page.keyboard.press('Enter');
  await expect(page.locator('#blank-distance')).toBeFocused();
  // And over what stands in a blank that is pressed.
  await page.locator('#blank-to').click();
  await page.keyboard.type('centre front');
  await page.keyboard.press('Enter');
  await expect(page.locator('#blank-to')).toHaveValue('centre front');
  await page.keyboard.type('60 cm');
  await page.keyboard.press('Enter');
  await page.keyboard.type('left');
  await press(page, 'draw');
  const leftOfIt = async () => (await viewOf(page)).origin.x - 600 * (await viewOf(page)).scale;
  await expect.poll(leftOfIt).toBeGreaterThan(0);
});

test('pointing at a crossing says both lines of it', async ({ page }) => {
  await openTable(page, 'roll-line');
  const [edge, level] = rollLineSteps();
  if (!edge || !level) throw new Error('There are no two lines.');
  await drawStep(page, edge);
  await drawStep(page, level);
  await tool(page, 'pencil').click();
  await byMouse(page, placeOf(referenceSheet('roll-line'), 'break-point'));
  await expect(page.locator('#blank-one')).toHaveValue('overlap edge');
  await expect(page.locator('#blank-other')).toHaveValue('line 1');
  await act(page, 'draw').click();
  await expect(spoken(page)).toHaveText(/^Mark 1 made, on overlap edge and line 1/);
});

test('a step shows ahead of being drawn, and pointing is snapped and said', async ({ page }) => {
  await openTable(page, 'roll-line');
  await tool(page, 'parallel').click();
  const { x, y } = await onScreen(page, { x: 3, y: 200 });
  await page.mouse.move(x, y);
  await expect(page.locator('.sheet-ahead .ink--cue')).toHaveCount(1);
  await page.mouse.click(x, y);
  await expect(spoken(page)).toHaveText(/^Centre front taken\./);
  await page.locator('.chip', { hasText: 'overlap' }).click();
  const side = await onScreen(page, { x: -80, y: 200 });
  await page.mouse.move(side.x, side.y);
  await expect(page.locator('.sheet-ahead .ink--preview')).toHaveCount(1);
  await expect(page.locator('.step')).toHaveCount(0);
});

/** Presses where a button is, whether or not it can be pressed yet. */
async function press(page: Page, what: string): Promise<void> {
  const box = await act(page, what).boundingBox();
  if (!box) throw new Error(`There is no ${what}.`);
  await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
}

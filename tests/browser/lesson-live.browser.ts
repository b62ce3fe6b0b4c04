import type { Locator } from '@playwright/test';
import { awakeAll, expect, type Page, test } from './fixture.ts';

/** The figure that shows how the break point opens the lapel: its ring, and what it says. */
async function breakFigure(
  page: Page,
): Promise<{ ring: Locator; says: Locator; back: Locator; roll: () => Promise<string> }> {
  await page.goto('/lessons/break-point/');
  await awakeAll(page);
  const figure = page.locator('figure', { hasText: 'The front with its lapel.' });
  await figure.scrollIntoViewIfNeeded();
  const roll = figure.locator('.drawing-sheet .ink--roll').first();
  return {
    ring: figure.getByRole('slider', { name: 'break rise' }),
    says: figure.locator('.live-says'),
    back: figure.getByRole('button', { name: 'Put it back' }),
    roll: async () => (await roll.getAttribute('d')) ?? '',
  };
}

async function middleOf(ring: Locator): Promise<{ x: number; y: number }> {
  const box = (await ring.locator('.live-ring').boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

test('a mark of a lesson’s figure is dragged by pointer, the draft follows, and it can be put back', async ({
  page,
}) => {
  const { ring, says, back, roll } = await breakFigure(page);
  await expect(says).toContainText('3.8 cm above the waist');
  const before = await roll();
  const from = await middleOf(ring);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + 30, from.y - 80, { steps: 6 });
  await page.mouse.up();
  await expect(says).not.toContainText('3.8 cm above the waist');
  expect(await roll()).not.toBe(before);
  // The mark stays on the overlap edge, however far to the side the pointer went.
  expect((await middleOf(ring)).x).toBeCloseTo(from.x, 0);
  expect((await middleOf(ring)).y).toBeLessThan(from.y - 60);
  await back.click();
  await expect(says).toContainText('3.8 cm above the waist');
  expect(await roll()).toBe(before);
});

test('a mark is moved by the arrow keys, a grain at a time, in the reader’s unit', async ({ page }) => {
  const { ring, says } = await breakFigure(page);
  await ring.focus();
  await page.keyboard.press('ArrowUp');
  await expect(says).toContainText('3.9 cm above the waist');
  await page.keyboard.press('Shift+ArrowUp');
  await expect(says).toContainText('4.9 cm above the waist');
  await page.getByRole('radio', { name: 'inches' }).check();
  await ring.focus();
  await page.keyboard.press('ArrowDown');
  await expect(ring).toHaveAttribute('aria-valuetext', '1 7/8 in');
  await expect(says).toContainText('1 7/8 in above the waist');
});

test('a mark is dragged by touch', { tag: '@phone' }, async ({ page, context }) => {
  const { ring, says } = await breakFigure(page);
  const { x, y } = await middleOf(ring);
  const touch = await context.newCDPSession(page);
  const at = (dy: number) => ({ touchPoints: [{ x, y: y - dy }] });
  await touch.send('Input.dispatchTouchEvent', { type: 'touchStart', ...at(0) });
  for (const dy of [10, 25, 45]) await touch.send('Input.dispatchTouchEvent', { type: 'touchMove', ...at(dy) });
  await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await expect(says).not.toContainText('3.8 cm above the waist');
  // The page stayed where it was: the finger held the mark, not the page.
  expect((await middleOf(ring)).y).toBeLessThan(y - 30);
});

test('the first page has a roll line to touch at once', async ({ page }) => {
  await page.goto('/');
  await awakeAll(page);
  const ring = page.getByRole('slider', { name: 'break rise' });
  await ring.focus();
  await page.keyboard.press('Shift+ArrowUp');
  await expect(page.locator('.live-says')).toContainText('4.8 cm above the waist');
});

import { expect, moved, type Page, test } from './fixture.ts';
import { awakeTable, openTable } from './table-hand.ts';
import { trickle } from './trickle.ts';

test('nothing moves while a page comes over a slow line', async ({ page, baseURL }) => {
  await slowlyOpened(page, baseURL ?? '');
});

test('nothing moves on a phone either', { tag: '@phone' }, async ({ page, baseURL }) => {
  await slowlyOpened(page, baseURL ?? '');
});

async function slowlyOpened(page: Page, site: string): Promise<void> {
  const slow = await trickle(site);
  try {
    await page.goto(`${slow.address}/exercises/break-point/`);
    await awakeTable(page);
    expect(await moved(page)).toEqual([]);
  } finally {
    slow.close();
  }
}

test('the choice of figure and house rules opens without widening the page', {
  tag: ['@desktop', '@phone'],
}, async ({ page }) => {
  await openTable(page, 'roll-line');
  await page.locator('.setup summary').click();
  await expect(page.getByLabel('Strictness')).toBeVisible();
  expect(await pageWidth(page)).toBe(page.viewportSize()?.width);
  await page.locator('.figure-choice select').selectOption('own');
  expect(await pageWidth(page)).toBe(page.viewportSize()?.width);
});

/** How wide what is on the page is, CSS pixels. A phone draws a page smaller rather than let it be scrolled. */
function pageWidth(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth);
}

import { awakeAll, axe, expect, keepFiguresAsleep, moved, type Page, scriptBytes, settled, test } from './fixture.ts';
import { sitePages } from './site-pages.ts';

/** Script that a page may load before its figures wake, and with all of them awake: bytes, gzipped. */
const ASLEEP = 60_000;
const AWAKE = 350_000;

for (const address of sitePages()) {
  test.describe(`page ${address}`, () => {
    test('loads little script before its figures wake', async ({ page }) => {
      await keepFiguresAsleep(page);
      const bytes = scriptBytes(page);
      await page.goto(address);
      await settled(page);
      withinBudget(address, 'asleep', await bytes(), ASLEEP);
    });

    test('keeps to its budget awake, nothing moves, and axe finds nothing, in the light and in the dark', async ({
      page,
    }) => {
      const bytes = scriptBytes(page);
      await page.goto(address);
      await awakeAll(page);
      withinBudget(address, 'awake', await bytes(), AWAKE);
      expect(await moved(page)).toEqual([]);
      await axe(page);
      // The same page in the dark: a page of its own for it would only be loaded and woken again.
      await page.emulateMedia({ colorScheme: 'dark' });
      await axe(page);
    });

    test('fits a phone, nothing moves, and axe finds nothing', { tag: '@phone' }, async ({ page }) => {
      await page.goto(address);
      await awakeAll(page);
      expect(await sidewaysScroll(page)).toBe(0);
      expect(await moved(page)).toEqual([]);
      await axe(page);
    });
  });
}

function withinBudget(address: string, state: string, bytes: number, most: number): void {
  console.log(`${address} ${state}: ${(bytes / 1000).toFixed(1)} KB of script, at most ${most / 1000}`);
  expect(bytes).toBeLessThanOrEqual(most);
}

/** How far the page scrolls sideways, CSS pixels. */
function sidewaysScroll(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
}

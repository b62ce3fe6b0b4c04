import {
  awakeAll,
  axe,
  axeColours,
  expect,
  moved,
  openAsleep,
  type Page,
  scriptBytes,
  wakeFigures,
} from './fixture.ts';
import { test } from './round.ts';
import { sitePages } from './site-pages.ts';

/** Script that a page may load before its figures wake, and with all of them awake: bytes, gzipped. */
const ASLEEP = 60_000;
const AWAKE = 350_000;

/** What a window of 1280 by 800 has room for at twice the size. */
const ZOOMED = { width: 640, height: 400 };

for (const address of sitePages()) {
  test.describe(`page ${address}`, () => {
    test('keeps to its budgets asleep and awake, nothing moves or is pushed sideways, and axe finds nothing', async ({
      page,
    }) => {
      const bytes = scriptBytes(page);
      await openAsleep(page, `.${address}`);
      withinBudget(address, 'asleep', await bytes(), ASLEEP);
      await wakeFigures(page);
      await awakeAll(page);
      withinBudget(address, 'awake', await bytes(), AWAKE);
      expect(await typefaces(page)).toContain('Source Serif 4 loaded');
      expect(await moved(page)).toEqual([]);
      await axe(page);
      // The same page in the dark and at 200 %: a page of its own for each would only be loaded and woken again.
      await page.emulateMedia({ colorScheme: 'dark' });
      await axeColours(page);
      await page.setViewportSize(ZOOMED);
      expect(await sidewaysScroll(page)).toBe(0);
    });

    test('fits a phone, nothing moves for a reader of inches, and axe finds nothing', { tag: '@phone' }, async ({
      page,
    }) => {
      await page.goto(`.${address}`);
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

/** The typefaces of the page, and how far each has come. */
function typefaces(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => Array.from(document.fonts, ({ family, status }) => `${family} ${status}`));
}

/** How far the page scrolls sideways, CSS pixels. */
function sidewaysScroll(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
}

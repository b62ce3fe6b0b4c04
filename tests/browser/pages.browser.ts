import { awakeAll, axe, expect, keepFiguresAsleep, layoutShift, scriptBytes, settled, test } from './fixture.ts';
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
      const asleep = await bytes();
      console.log(`${address} ${kilobytes(asleep)} of script asleep`);
      expect(asleep).toBeLessThanOrEqual(ASLEEP);
    });

    test('keeps to its budget awake, and nothing has moved', async ({ page }) => {
      const bytes = scriptBytes(page);
      await page.goto(address);
      await awakeAll(page);
      const awake = await bytes();
      console.log(`${address} ${kilobytes(awake)} of script awake`);
      expect(awake).toBeLessThanOrEqual(AWAKE);
      expect(await layoutShift(page)).toBe(0);
    });

    test('holds to WCAG 2.2 AA', { tag: ['@desktop', '@phone', '@dark'] }, async ({ page }) => {
      await page.goto(address);
      await awakeAll(page);
      await axe(page);
    });

    test('fits a phone without scrolling sideways', { tag: '@phone' }, async ({ page }) => {
      await page.goto(address);
      await awakeAll(page);
      const [wide, view] = await page.evaluate(
        () => [document.documentElement.scrollWidth, window.innerWidth] as const,
      );
      expect(wide).toBeLessThanOrEqual(view);
      expect(await layoutShift(page)).toBe(0);
    });
  });
}

function kilobytes(bytes: number): string {
  return `${(bytes / 1000).toFixed(1)} KB`;
}

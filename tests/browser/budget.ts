import { gzipSync } from 'node:zlib';
import type { Page } from '@playwright/test';
import { settled } from './network.ts';

/**
 * Counts the script a page loads, in bytes as a static host sends it (each file gzipped, the page's inline scripts
 * together). Call it before the page is opened; the count it gives is that of the moment it is asked.
 */
export function scriptBytes(page: Page): () => Promise<number> {
  const files: Promise<number>[] = [];
  page.on('response', (response) => {
    if (response.request().resourceType() === 'script') files.push(response.body().then(gzipped));
  });
  return async () => {
    const inline = await page
      .locator('script:not([src])')
      .evaluateAll((scripts) => scripts.map((script) => script.textContent).join('\n'));
    return (await Promise.all(files)).reduce(
      (sum, size) => sum + size,
      inline === '' ? 0 : gzipped(Buffer.from(inline)),
    );
  };
}

function gzipped(body: Buffer): number {
  return gzipSync(body).length;
}

/** Nothing on the page ever comes into view, so that no figure wakes. Call it before the page is opened. */
export async function keepFiguresAsleep(page: Page): Promise<void> {
  await page.addInitScript(() => {
    window.IntersectionObserver = class extends IntersectionObserver {
      override observe(): void {
        // Never told.
      }
    };
  });
}

/** Brings every sleeping figure into view in turn and waits until each is awake and has loaded what it needs. */
export async function awakeAll(page: Page): Promise<void> {
  // Handles are taken without waiting: a figure may wake by itself between two looks.
  const sleeping = () => page.$$('astro-island[ssr]');
  for (let [island] = await sleeping(); island; [island] = await sleeping()) {
    await island.evaluate((element) => (element.firstElementChild ?? element).scrollIntoView({ block: 'center' }));
    await page.waitForFunction((element) => !element.hasAttribute('ssr'), island);
  }
  await settled(page);
}

/** The layout shift of the page so far, as the Layout Instability API sums it, without shifts that follow a person's input. */
export function layoutShift(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        let sum = 0;
        new PerformanceObserver((list) => {
          for (const entry of list.getEntries() as (PerformanceEntry & { value: number; hadRecentInput: boolean })[])
            if (!entry.hadRecentInput) sum += entry.value;
        }).observe({ type: 'layout-shift', buffered: true });
        setTimeout(() => resolve(sum), 200);
      }),
  );
}

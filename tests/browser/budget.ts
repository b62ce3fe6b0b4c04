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

/**
 * Opens a page on which nothing comes into view, and so no figure wakes, before `wakeFigures`; waits until it has loaded
 * what it needs.
 */
export async function openAsleep(page: Page, address: string): Promise<void> {
  const hold = await page.addInitScript(() => {
    const held: (() => void)[] = [];
    const Watching = IntersectionObserver;
    window.IntersectionObserver = class extends Watching {
      override observe(target: Element): void {
        held.push(() => super.observe(target));
      }
    };
    window.addEventListener('wake-figures', () => {
      window.IntersectionObserver = Watching;
      for (const observe of held) observe();
    });
  });
  await page.goto(address);
  await hold.dispose();
  await settled(page);
}

/** Lets what is in view wake, as it would have by itself. */
export async function wakeFigures(page: Page): Promise<void> {
  await page.evaluate(() => window.dispatchEvent(new Event('wake-figures')));
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
export async function layoutShift(page: Page): Promise<number> {
  return (await shifts(page)).reduce((sum, { value }) => sum + value, 0);
}

/** What has moved on the page so far, a line each: by how much, when, and which elements from where to where. */
export async function moved(page: Page): Promise<readonly string[]> {
  return (await shifts(page)).map(({ value, at, what }) => `${value} after ${Math.round(at)} ms: ${what.join('; ')}`);
}

interface Shift {
  readonly value: number;
  readonly at: number;
  readonly what: readonly string[];
}

/** The part of the Layout Instability API used here, which the compiler's DOM does not know yet. */
interface ShiftEntry extends PerformanceEntry {
  readonly value: number;
  readonly hadRecentInput: boolean;
  readonly sources: readonly { node: Node | null; previousRect: DOMRectReadOnly; currentRect: DOMRectReadOnly }[];
}

function shifts(page: Page): Promise<readonly Shift[]> {
  return page.evaluate(() => {
    const found: Shift[] = [];
    const place = ({ x, y, width, height }: DOMRectReadOnly) => `${x},${y} ${width}×${height}`;
    const name = (node: Node | null) =>
      node instanceof Element
        ? `<${node.tagName.toLowerCase()} class="${node.getAttribute('class') ?? ''}">`
        : node?.nodeName;
    const observer = new PerformanceObserver((list) => {
      for (const { value, hadRecentInput, startTime: at, sources } of list.getEntries() as ShiftEntry[]) {
        const what = sources.map(
          ({ node, previousRect, currentRect }) => `${name(node)} ${place(previousRect)} → ${place(currentRect)}`,
        );
        if (!hadRecentInput) found.push({ value, at, what });
      }
    });
    observer.observe({ type: 'layout-shift', buffered: true });
    // What moved so far is told as soon as the page comes to it; what is on its way moves in the next frame.
    return new Promise<readonly Shift[]>((resolve) => {
      requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(() => resolve(found), 30)));
    });
  });
}

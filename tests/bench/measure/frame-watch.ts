import type { Page } from '@playwright/test';

/** What a page tells of one move of the pointer, ms. */
export interface Moved {
  /** From when its handlers began until the frame that shows it was painted. */
  readonly worked: number;
  /** From when the browser had it from the system: with the wait for the next frame. */
  readonly waited: number;
}

/** Has the page note every move of the pointer from now on. A frame counts as painted when a task that was asked for in it is run. */
export async function watchMoves(page: Page): Promise<void> {
  await page.evaluate(() => {
    const moves: Moved[] = [];
    Object.assign(window, { moves });
    const painted = new MessageChannel();
    let pending: { readonly begun: number; readonly stamp: number }[] = [];
    painted.port1.onmessage = () => {
      const now = performance.now();
      moves.push(...pending.map(({ begun, stamp }) => ({ worked: now - begun, waited: now - stamp })));
      pending = [];
    };
    window.addEventListener(
      'pointermove',
      (event) => {
        if (pending.length === 0) requestAnimationFrame(() => painted.port2.postMessage(null));
        pending.push({ begun: performance.now(), stamp: event.timeStamp });
      },
      { capture: true },
    );
  });
}

/** What was noted since `watchMoves`, or since this was asked last. */
export function movesOf(page: Page): Promise<readonly Moved[]> {
  return page.evaluate(() => (window as unknown as { readonly moves: Moved[] }).moves.splice(0));
}

import type { CDPSession, Page } from '@playwright/test';

/** What a page tells of one move of the pointer, ms. */
export interface Moved {
  /** From when its handlers began until the frame that shows it was painted. */
  readonly worked: number;
  /** From when the browser had it from the system: with the wait for the next frame. */
  readonly waited: number;
}

/** What the page calls once a frame with a move in it is painted. */
const PAINTED = 'benchPainted';

/** A move that the page has no part in is not painted, and not waited for longer than this, ms. */
const NO_MOVE = 300;

/** A page that notes every move of the pointer. */
export interface Watched {
  /** Waits for the next frame with a move in it. */
  readonly painted: () => Promise<void>;
  /** Ends it, so that nothing of it runs in the page; gives what was noted. */
  readonly end: () => Promise<readonly Moved[]>;
}

/**
 * Has the page note every move of the pointer from now on. A frame counts as painted when a task that was asked for in it is run.
 * Nothing is asked of the page meanwhile: it tells by itself, and after the clock was read.
 */
export async function watchMoves(page: Page, session: CDPSession): Promise<Watched> {
  await session.send('Runtime.enable');
  await session.send('Runtime.addBinding', { name: PAINTED });
  await page.evaluate((called) => {
    const moves: Moved[] = [];
    const over = new AbortController();
    const endWatch = (): readonly Moved[] => {
      over.abort();
      return moves;
    };
    Object.assign(window, { endWatch });
    const tell = (window as unknown as Readonly<Record<string, (text: string) => void>>)[called];
    const painted = new MessageChannel();
    let pending: { readonly begun: number; readonly stamp: number }[] = [];
    painted.port1.onmessage = () => {
      const now = performance.now();
      moves.push(...pending.map(({ begun, stamp }) => ({ worked: now - begun, waited: now - stamp })));
      pending = [];
      tell?.('');
    };
    window.addEventListener(
      'pointermove',
      (event) => {
        if (pending.length === 0) requestAnimationFrame(() => painted.port2.postMessage(null));
        pending.push({ begun: performance.now(), stamp: event.timeStamp });
      },
      { capture: true, signal: over.signal },
    );
  }, PAINTED);
  return {
    painted: () => nextPainted(session),
    end: () => page.evaluate(() => (window as unknown as { readonly endWatch: () => readonly Moved[] }).endWatch()),
  };
}

/** Resolves once the page tells of a frame, or tells nothing for so long that there was none. */
function nextPainted(session: CDPSession): Promise<void> {
  return new Promise((resolve) => {
    const settle = (): void => {
      clearTimeout(timer);
      session.off('Runtime.bindingCalled', settle);
      resolve();
    };
    const timer = setTimeout(settle, NO_MOVE);
    session.on('Runtime.bindingCalled', settle);
  });
}

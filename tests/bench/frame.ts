import { type CDPSession, chromium, type Page } from '@playwright/test';
import { host } from '../../src/cli/host.ts';
import { siteFolder } from '../../src/cli/site.ts';
import { distance, type Point } from '../../src/geometry/point.ts';
import { ensureChromium, findChromium } from '../browser/chromium.ts';
import { expect } from '../browser/fixture.ts';
import { openDraft } from '../browser/table-draft.ts';
import { act, byMouse, onScreen, placeOf, referenceSheet, tool } from '../browser/table-hand.ts';
import { watch } from '../browser/watch.ts';
import { type Moved, watchMoves } from './measure/frame-watch.ts';
import { shareBelow, short } from './measure/rounds.ts';

/**
 * How long it is from a move of the pointer until it is painted, at a table with a whole collar on it and the processor slowed
 * four times: while a blank is pointed out, while a handle of a curve is dragged, and while the paper is moved. Wants a built site (`npm run build`).
 */
const SLOWED = 4;
const MOVES = 240;

/** Where the pointer is at each of its moves, px. */
type Way = (at: number) => Point;

/** On a curl about a place that passes marks, lines and empty paper. */
function wide({ x, y }: Point): Way {
  return (at) => {
    const [angle, far] = [at / 9, 20 + 200 * Math.abs(Math.sin(at / 60))];
    return { x: x + far * Math.cos(angle), y: y + far * Math.sin(angle) };
  };
}

/** To and fro about a place. */
function near({ x, y }: Point): Way {
  return (at) => ({ x: x + 24 * Math.sin(at / 7), y: y + 16 * Math.sin(at / 4) });
}

/** The page, and the hand that moves the pointer over it. */
interface Hand {
  readonly page: Page;
  readonly session: CDPSession;
  /** The button it holds down. */
  readonly button: 'left' | 'none';
}

/**
 * Moves the pointer step by step. The moves are given to the browser as they are: Playwright's own mouse runs a script of its own in
 * the page before and after each move of a held button, which the frame would then wait for.
 * @param moved Carries out a step that is given to it, and waits until all is done that it comes to.
 */
async function go(
  { session, button }: Hand,
  way: Way,
  moved: (step: () => Promise<void>) => Promise<void>,
): Promise<void> {
  const buttons = button === 'left' ? 1 : 0;
  for (let at = 0; at < MOVES; at += 1)
    await moved(async () => {
      await session.send('Input.dispatchMouseEvent', { type: 'mouseMoved', ...way(at), button, buttons });
    });
}

/** The moves with the processor slowed, by the clock: one a frame. */
async function slowed(hand: Hand, way: Way): Promise<readonly Moved[]> {
  const { page, session } = hand;
  const watched = await watchMoves(page, session);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  await go(hand, way, async (step) => {
    const painted = watched.painted();
    await step();
    await painted;
  });
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  return watched.end();
}

/** By then all that a move comes to is done, ms. */
const DONE = 40;

/**
 * What each move takes of the processor as it is, ms, of the page's own thread: other work on the machine does not lengthen it. No
 * script but the page's own runs there.
 */
async function processorTimes(hand: Hand, way: Way): Promise<readonly number[]> {
  const { session } = hand;
  const busy = async (): Promise<number> => {
    const { metrics } = await session.send('Performance.getMetrics');
    return (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN) * 1000;
  };
  const times: number[] = [];
  let before = await busy();
  await go(hand, way, async (step) => {
    await step();
    await new Promise((resolve) => setTimeout(resolve, DONE));
    const now = await busy();
    times.push(now - before);
    before = now;
  });
  return times;
}

/** Presses the mouse on a handle of a curve; gives where. */
async function takeHold(page: Page, curve: string): Promise<Point> {
  await page.locator('.table-sheet').evaluate((sheet) => sheet.scrollIntoView({ block: 'start' }));
  const grip = page.locator(`[data-grip^="${curve}/"]`).first();
  const middle = async (): Promise<Point> => {
    const box = await grip.boundingBox();
    if (!box) throw new Error(`${curve} has no handle in sight.`);
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  };
  const at = await middle();
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x + 30, at.y, { steps: 3 });
  // Its button follows once the hand is still.
  const went = async (): Promise<number> => distance(await middle(), at);
  await expect.poll(went, `The handle of ${curve} goes with the pointer.`).toBeGreaterThan(5);
  return at;
}

/** Presses the mouse on an empty place of the paper; gives where. */
async function takePaper(page: Page): Promise<Point> {
  const frame = await page.locator('.sheet-frame').boundingBox();
  if (!frame) throw new Error('There is no sheet in sight.');
  const at = { x: frame.x + 80, y: frame.y + frame.height - 60 };
  const seen = async () => (await page.locator('.sheet-board .mark').first().boundingBox())?.x;
  const before = await seen();
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x + 30, at.y, { steps: 3 });
  if ((await seen()) === before) throw new Error('The paper does not go with the pointer.');
  return at;
}

async function rowOf(what: string, hand: Hand, way: Way) {
  const moves = await slowed(hand, way);
  const worked = moves.map((one) => one.worked);
  const processor = (await processorTimes(hand, way)).map((ms) => ms * SLOWED);
  return {
    'the pointer': what,
    moves: moves.length,
    'median, ms': short(shareBelow(worked, 0.5)),
    '95 %, ms': short(shareBelow(worked, 0.95)),
    'within a frame, %': shareWithin(worked),
    [`processor × ${SLOWED}, median, ms`]: short(shareBelow(processor, 0.5)),
    [`processor × ${SLOWED}, 95 %, ms`]: short(shareBelow(processor, 0.95)),
    [`processor × ${SLOWED} within a frame, %`]: shareWithin(processor),
  };
}

/** How many of a hundred are no longer than a frame of a screen that shows sixty a second. */
function shareWithin(times: readonly number[]): number {
  return Math.round((100 * times.filter((ms) => ms <= 1000 / 60).length) / times.length);
}

ensureChromium();
const { server, address } = await host({ folder: siteFolder(), under: '/' }, 0);
const executable = findChromium();
const browser = await chromium.launch({
  ...(executable === null ? {} : { executablePath: executable }),
  args: ['--no-sandbox', '--disable-gpu'],
});
const context = await browser.newContext({ baseURL: address, viewport: { width: 1280, height: 800 } });
const faults = await watch(context, new URL(address).hostname);
const page = await context.newPage();
await openDraft(page, 'collar-single');
const session = await context.newCDPSession(page);
await session.send('Performance.enable', { timeDomain: 'threadTicks' });
const open: Hand = { page, session, button: 'none' };
const holding: Hand = { ...open, button: 'left' };

await tool(page, 'rule').click();
const about = wide(await onScreen(page, placeOf(referenceSheet('collar-single'), 'neck-point')));
const seeking = await rowOf('seeks the first mark of a line', open, about);
await byMouse(page, placeOf(referenceSheet('collar-single'), 'break-point'));
const ahead = await rowOf('seeks the second: the line is seen ahead', open, about);
await act(page, 'put-down').click();
const dragging = await rowOf('drags a handle of the lapel edge', holding, near(await takeHold(page, 'lapel-edge')));
await page.mouse.up();
const moving = await rowOf('moves the paper', holding, near(await takePaper(page)));
await page.mouse.up();
if (faults.length > 0) throw new Error(`The page was not quiet: ${faults[0]}`);
console.table([seeking, ahead, dragging, moving]);
await browser.close();
server.close();

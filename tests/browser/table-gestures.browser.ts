import { expect, type Page, test } from './fixture.ts';
import { act, drawStep, onScreen, openTable, spoken, tool } from './table-hand.ts';

interface Seen {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

async function seen(page: Page): Promise<Seen> {
  const [scale = 0, x = 0, y = 0] = ((await page.locator('.sheet-words').getAttribute('data-view')) ?? '')
    .split(' ')
    .map(Number);
  return { scale, x, y };
}

/** Where a mark and a word on the sheet are on the screen, CSS pixels. */
async function lying(page: Page): Promise<readonly number[]> {
  const boxes = ['.sheet-board .mark', '.sheet-words .words'].map((one) => page.locator(one).first().boundingBox());
  return (await Promise.all(boxes)).flatMap((box) => (box ? [box.x, box.y] : []));
}

/** Whether all went along with a hand, within a pixel. */
function went(from: readonly number[], to: readonly number[], by: { readonly x: number; readonly y: number }): boolean {
  return from.every(
    (place, index) => Math.abs((to[index] ?? Number.NaN) - place - (index % 2 === 0 ? by.x : by.y)) < 1,
  );
}

test('the mouse moves the paper by an empty place, and the wheel brings it nearer where one works on it', async ({
  page,
}) => {
  await openTable(page, 'roll-line');
  const before = await seen(page);
  const { x, y } = await onScreen(page, { x: 120, y: 200 });
  await page.mouse.move(x, y);
  await page.mouse.wheel(0, 10);
  // Nobody works on the sheet yet: the page scrolled.
  expect((await seen(page)).scale).toBe(before.scale);
  const now = await onScreen(page, { x: 120, y: 200 });
  await page.mouse.move(now.x, now.y);
  const lay = await lying(page);
  expect(lay).toHaveLength(4);
  await page.mouse.down();
  // Also further than the paper lies ready around the frame, and back.
  for (const by of [
    { x: -90, y: 30 },
    { x: -430, y: 30 },
    { x: -120, y: 290 },
    { x: -90, y: 30 },
  ]) {
    await page.mouse.move(now.x + by.x, now.y + by.y, { steps: 9 });
    expect(went(lay, await lying(page), by)).toBe(true);
  }
  await page.mouse.up();
  const moved = await seen(page);
  expect(moved.scale).toBeCloseTo(before.scale, 6);
  expect(moved.x).toBeLessThan(before.x - 60);
  expect(went(lay, await lying(page), { x: -90, y: 30 })).toBe(true);
  await page.locator('.sheet-frame').focus();
  const at = await onScreen(page, { x: 120, y: 200 });
  await page.mouse.move(at.x, at.y);
  await page.mouse.wheel(0, -240);
  await expect.poll(async () => (await seen(page)).scale).toBeGreaterThan(before.scale * 1.2);
  await act(page, 'fit').click();
  expect((await seen(page)).scale).toBeCloseTo(before.scale, 6);
});

test('a free mark and the handle of a curve are dragged, and the draft follows', async ({ page }) => {
  await openTable(page, 'roll-line');
  for (const at of [
    { x: 40, y: 80 },
    { x: 110, y: 160 },
    { x: 180, y: 90 },
  ]) {
    await tool(page, 'pencil').click();
    await page.getByRole('radio', { name: 'by eye' }).check();
    const { x, y } = await onScreen(page, at);
    await page.mouse.click(x, y);
    await act(page, 'draw').click();
  }
  await drawStep(page, {
    tool: 'curve',
    does: [
      { x: 40, y: 80 },
      { x: 110, y: 160 },
      { x: 180, y: 90 },
    ],
  });
  await expect(page.locator('.grip-key')).toHaveCount(7);

  const from = await onScreen(page, { x: 110, y: 160 });
  const to = await onScreen(page, { x: 120, y: 190 });
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 6 });
  await page.mouse.up();
  // A pixel is nearly a millimetre here.
  await expect(spoken(page)).toHaveText(
    /^Mark 2 moved, on curve 1, (18\.[89]|19(\.[01])?)\scm above the waist and (11\.[89]|12(\.[12])?)\scm right/,
  );

  const handle = await page.locator('[data-grip="curve-1/0/after"]').boundingBox();
  if (!handle) throw new Error('The curve has no handle.');
  await page.mouse.move(handle.x + 14, handle.y + 14);
  await page.mouse.down();
  await page.mouse.move(handle.x - 30, handle.y - 20, { steps: 6 });
  await page.mouse.up();
  await expect(spoken(page)).toHaveText('Curve 1 bent.');
  await act(page, 'undo').click();
  await act(page, 'undo').click();
  await expect(page.locator('.step').nth(1)).toContainText(
    /11(\.1)?\scm right of centre front and 1(5\.9|6)\scm above the waist/,
  );
});

test('two fingers stretch the sheet, and one scrolls the page', { tag: '@phone' }, async ({ page }) => {
  await openTable(page, 'roll-line');
  const before = await seen(page);
  await page.locator('.sheet-frame').scrollIntoViewIfNeeded();
  const frame = await page.locator('.sheet-frame').boundingBox();
  if (!frame) throw new Error('There is no sheet.');
  const [x, y] = [frame.x + frame.width / 2, frame.y + frame.height / 2];
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Input.synthesizePinchGesture', { x, y, scaleFactor: 2, gestureSourceType: 'touch' });
  await expect.poll(async () => (await seen(page)).scale).toBeGreaterThan(before.scale * 1.3);
  expect(await page.evaluate(() => visualViewport?.scale)).toBe(1);
  const stretched = await seen(page);
  await devtools.send('Input.synthesizeScrollGesture', { x, y, yDistance: -150, gestureSourceType: 'touch' });
  expect(await page.evaluate(() => scrollY)).toBeGreaterThan(50);
  expect((await seen(page)).scale).toBeCloseTo(stretched.scale, 6);
});

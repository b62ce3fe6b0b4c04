import { expect, type Page, test } from './fixture.ts';
import { act, openTable, press, tool } from './table-hand.ts';

/** Where an element's edges are on the screen, and how high that is. */
async function edgesOf(page: Page, selector: string) {
  const box = await page.locator(selector).boundingBox();
  if (!box) throw new Error(`${selector} is not on the page.`);
  return { top: box.y, bottom: box.y + box.height };
}

test('the sheet and the sentence in hand are in sight together, to its last button', async ({ page }) => {
  for (const exercise of ['roll-line', 'collar-outline']) {
    await openTable(page, exercise);
    for (const id of ['parallel', 'tape', 'pencil', 'pin', 'curve']) {
      await tool(page, id).click();
      await expect(act(page, 'draw')).toBeInViewport({ ratio: 1 });
      await expect(page.locator('.sheet-frame')).toBeInViewport({ ratio: 0.97 });
    }
  }
});

test('a sheet that was hidden for a while shows the draft where it stood', async ({ page }) => {
  await openTable(page, 'roll-line');
  const words = page.locator('.sheet-words');
  const before = await words.getAttribute('data-view');
  const table = page.locator('.table').first();
  // The board hears of its size once a frame: two frames later it has.
  const display = (value: string) =>
    table.evaluate(async (one: HTMLElement, how) => {
      one.style.display = how;
      for (let frame = 0; frame < 2; frame += 1) await new Promise(requestAnimationFrame);
    }, value);
  await display('none');
  await display('');
  expect(await words.getAttribute('data-view')).toBe(before);
  // Where the page is scrolled to by then is another matter: waking the table scrolls it.
  await page.locator('.sheet-frame').scrollIntoViewIfNeeded();
  await expect(page.locator('.sheet-board .mark').first()).toBeInViewport();
});

test('with a tool in a thumb’s reach, the sentence covers neither the sheet nor its buttons @phone', async ({
  page,
}) => {
  for (const exercise of ['roll-line', 'collar-outline']) {
    await openTable(page, exercise);
    for (const id of ['parallel', 'tape', 'pin', 'curve', 'loupe']) {
      await press(tool(page, id), true);
      const [sentence, bar] = [await edgesOf(page, '.sentence'), await edgesOf(page, '.sheet-bar')];
      expect(bar.bottom).toBeLessThanOrEqual(sentence.top);
      const tools = await edgesOf(page, '.tools');
      expect(sentence.bottom).toBeLessThanOrEqual(tools.top + 1);
      await expect(page.locator('.sheet-frame')).toBeInViewport({ ratio: 0.97 });
      // Nothing is wider than the screen.
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    }
  }
});

test('every entry of a row under the sentence is reached with a finger @phone', async ({ page }) => {
  await openTable(page, 'collar-outline');
  await press(tool(page, 'parallel'), true);
  await page.locator('#blank-to').tap();
  await page.getByRole('option', { name: 'roll line' }).tap();
  // What is said of a blank at the end of the line is not cut off by the edge of the screen.
  await page.locator('#blank-distance').fill('2.1');
  await page.locator('#blank-distance').press('Enter');
  await expect(page.locator('.blank-note--trouble')).toBeInViewport({ ratio: 1 });
  const chips = page.locator('.chip');
  expect(await chips.count()).toBeGreaterThan(5);
  const last = (await chips.last().textContent()) ?? '';
  await chips.last().tap();
  await expect(page.locator('#blank-distance')).toHaveValue(last);
});

test('what is pressed on the table is large enough to press @desktop @phone', async ({ page }) => {
  await openTable(page, 'collar-outline');
  for (const details of await page.locator('.table details').all())
    await details.evaluate((one) => one.setAttribute('open', ''));
  await tool(page, 'curve').click();
  const small = await page.locator('.table :is(button, select, summary, input:not([type="file"]))').evaluateAll((all) =>
    all.flatMap((one) => {
      const pressed = one.matches('[type="radio"], [type="checkbox"]') ? (one.closest('label') ?? one) : one;
      const { width, height } = pressed.getBoundingClientRect();
      const unseen = width <= 1 || one.closest('.unseen') !== null;
      return unseen || (width >= 24 && height >= 24) ? [] : [`${one.textContent}: ${width} × ${height}`];
    }),
  );
  expect(small).toEqual([]);
});

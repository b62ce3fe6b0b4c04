import { distance } from '../../src/geometry/point.ts';
import { axe, expect, test } from './fixture.ts';
import { act, openTable, placeOf, referenceSheet } from './table-hand.ts';

/** Printer's points to a millimetre (PDF 32000-1, 8.3.2.3: a unit of user space is 1/72 in). */
const POINTS = 72 / 25.4;

test('a draft is printed at full size: on paper its marks are as far apart as on the sheet', async ({ page }) => {
  await page.addInitScript(() => {
    window.print = () => document.documentElement.setAttribute('data-printing', '');
  });
  await openTable(page, 'roll-line');
  await page.locator('.on-paper summary').click();
  await page.locator('.full-size').scrollIntoViewIfNeeded();
  await page.locator('.full-size select').selectOption('a3');
  const sheets = await page.locator('.paper-plan-sheet').count();
  expect(sheets).toBeGreaterThan(1);
  await axe(page);
  await act(page, 'print-full').click();
  await expect(page.locator('html')).toHaveAttribute('data-printing', '');

  // Two marks of the block on one of the sheets of paper, in the browser's own measure of print.
  await page.emulateMedia({ media: 'print' });
  const sheet = referenceSheet('roll-line');
  const apart = distance(placeOf(sheet, 'neck-point'), placeOf(sheet, 'shoulder-tip'));
  expect(await markDistances(page)).toContainEqual(expect.closeTo(apart, 0));
  await expect(page.locator('.table')).toBeHidden();

  // What the browser would send to the printer: so many pages, each of the paper's own size.
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  const boxes = [...pdf.matchAll(/\/MediaBox ?\[0 0 ([\d.]+) ([\d.]+)\]/g)].map(([, width, height]) => [width, height]);
  expect(boxes).toHaveLength(sheets);
  for (const [width, height] of boxes) {
    expect(Number(width) / POINTS).toBeCloseTo(297, 0);
    expect(Number(height) / POINTS).toBeCloseTo(420, 0);
  }

  // It is done with the sheets once it has printed, and the table lies there again.
  await page.emulateMedia({ media: 'screen' });
  await expect(page.locator('.paper-pages')).toHaveCount(0);
  await expect(page.locator('.table')).toBeVisible();
});

/** The distances of all marks of one sheet of paper from one another, mm, of which a CSS inch has 25.4. */
async function markDistances(page: Parameters<typeof axe>[0]): Promise<readonly number[]> {
  return await page.evaluate(() =>
    [...document.querySelectorAll('.paper-sheet')].flatMap((sheet) => {
      const places = [...sheet.querySelectorAll('.mark')].map((mark) => {
        const { left, top, width, height } = mark.getBoundingClientRect();
        return { x: left + width / 2, y: top + height / 2 };
      });
      return places.flatMap((a) => places.map((b) => (Math.hypot(a.x - b.x, a.y - b.y) / 96) * 25.4));
    }),
  );
}

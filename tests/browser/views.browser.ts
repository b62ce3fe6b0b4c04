import type { Locator } from '@playwright/test';
import { loadExercise } from '../../src/cli/exercises.ts';
import { replay } from '../../src/drafting/replay.ts';
import type { Step } from '../../src/drafting/step.ts';
import { add, type Point, scale, turnAbout } from '../../src/geometry/point.ts';
import { lay } from '../../src/table/laid-orders.ts';
import { startSetting } from '../../src/table/model/setting.ts';
import { axe, axeColours, expect, moved, type Page, test } from './fixture.ts';
import { openDraft } from './table-draft.ts';
import { act, onScreen, openTable, placeOf } from './table-hand.ts';

async function open(page: Page, view: 'worn' | 'roll' | 'walk'): Promise<Locator> {
  await act(page, `view-${view}`).click();
  await expect(act(page, `view-${view}`)).toHaveAttribute('aria-expanded', 'true');
  return page.locator('.view-panel');
}

/** The path of a curve in a view's picture. */
async function inkOf(panel: Locator, tone: string): Promise<string> {
  const paths = await panel.locator(`.ink--${tone}`).evaluateAll((all) => all.map((one) => one.getAttribute('d')));
  return paths.join(' ');
}

const swungBy = (part: number) => (step: Step) =>
  step.name === 'back-line' ? { ...step, by: `swing-by * ${part}` } : step;

test('an empty sheet offers no view of it', async ({ page }) => {
  await openTable(page, 'collar-single');
  await expect(page.locator('.view-row')).toHaveCount(0);
});

test('the lapel turns over when the worn view opens, and says where the notch sits', async ({ page }) => {
  await openDraft(page, 'collar-single');
  const panel = await open(page, 'worn');
  const first = await inkOf(panel, 'made');
  await expect(panel.locator('.stages-says')).toHaveText('Turned over, as it is worn.');
  expect(await inkOf(panel, 'made')).not.toBe(first);
  await expect(panel.locator('.view-says')).toHaveText('Worn, the notch sits 1.3 cm below the collarbone level.');
  await expect(panel.getByRole('img')).toHaveAttribute('aria-label', /turned over the roll line onto the body/);
  await act(page, 'stage-back').click();
  await expect(panel.locator('.stages-says')).toHaveText('Turned over by 135° of 180°.');
  await act(page, 'stage-run').click();
  await expect(panel.locator('.stages-says')).toHaveText('Turned over, as it is worn.');
  await page.getByRole('radio', { name: 'inches' }).check();
  await expect(panel.locator('.view-says')).toHaveText('Worn, the notch sits 1/2 in below the collarbone level.');
  await act(page, 'view-worn').click();
  await expect(panel).toHaveCount(0);
});

test.describe('for those who ask for less motion', () => {
  test.use({ contextOptions: { reducedMotion: 'reduce' } });

  test('nothing moves: the end stands, and steps lead to the rest by keyboard', async ({ page }) => {
    await openDraft(page, 'collar-single');
    const panel = await open(page, 'worn');
    const first = await inkOf(panel, 'made');
    await expect(act(page, 'stage-run')).toHaveCount(0);
    await page.waitForTimeout(400);
    expect(await inkOf(panel, 'made')).toBe(first);
    await expect(panel.locator('.stages-says')).toHaveText('Turned over, as it is worn.');
    await act(page, 'stage-back').focus();
    for (const says of ['Turned over by 135° of 180°.', 'Turned over by 90° of 180°.', 'Turned over by 45° of 180°.']) {
      await page.keyboard.press('Enter');
      await expect(panel.locator('.stages-says')).toHaveText(says);
    }
    await page.keyboard.press('Enter');
    await expect(panel.locator('.stages-says')).toHaveText('Flat, as it is cut.');
    await expect(act(page, 'stage-back')).toBeDisabled();
  });
});

test('on paper it stands at its end, without the buttons', async ({ page }) => {
  await openDraft(page, 'collar-single');
  const panel = await open(page, 'worn');
  await expect(panel.locator('.stages-says')).toHaveText('Turned over, as it is worn.');
  const end = await inkOf(panel, 'made');
  for (let i = 0; i < 4; i++) await act(page, 'stage-back').click();
  await expect(panel.locator('.stages-says')).toHaveText('Flat, as it is cut.');
  await page.emulateMedia({ media: 'print' });
  await expect(panel.locator('.stages-says')).toHaveText('Turned over, as it is worn.');
  expect(await inkOf(panel, 'made')).toBe(end);
  await expect(act(page, 'stage-back')).toBeHidden();
  await expect(act(page, 'view-worn')).toBeHidden();
});

test('the roll report goes round the half collar, and follows a changed step', async ({ page }) => {
  await openDraft(page, 'collar-single');
  const panel = await open(page, 'roll');
  await expect(panel.locator('.view-says')).toHaveText('It will lie.');
  await expect(panel.locator('tbody tr')).toHaveText([
    /^a quarter of the way/,
    /^half way/,
    /^three quarters/,
    /^the shoulder1\.5\scm1\.6\scm$/,
  ]);
  const swing = page.locator('.step', { has: page.getByRole('button', { name: 'Erase swung line', exact: true }) });
  await swing.locator('.blank-words[data-field="by"]').click();
  await swing.locator('.blank-input').fill('2 mm');
  await page.keyboard.press('Enter');
  await expect(panel.locator('.view-says')).toHaveText(/^It will pull: the outer edge is 1\.\d\scm too short\.$/);
});

/** The collar swung by eye: its back line ruled through a mark that can be dragged. */
function byEye(): { readonly steps: (step: Step) => readonly Step[]; readonly at: Point; readonly about: Point } {
  const asked = loadExercise('collar-single');
  const laid = lay(asked, { ...startSetting(asked, 'first'), figure: { named: 'amara' } });
  if (!laid.ok) throw new Error('The order could not be laid.');
  const sheet = replay(laid.givens, asked.reference);
  const line = sheet.shapes.get('back-line');
  if (line?.kind !== 'line') throw new Error('There is no back line.');
  const about = placeOf(sheet, 'neck-point');
  const way = line.line.direction.y > 0 ? 1 : -1;
  const at = add(about, scale(line.line.direction, 120 * way));
  return {
    about,
    at,
    steps: (step) =>
      step.name === 'back-line'
        ? [
            { verb: 'pencil', name: 'swing-mark', at: [at.x, at.y] },
            { verb: 'rule', name: 'back-line', from: 'neck-point', to: 'swing-mark' },
          ]
        : [step],
  };
}

test('the roll report is live while the swing is dragged', async ({ page }) => {
  const { steps, at, about } = byEye();
  await openDraft(page, 'collar-single', steps);
  const panel = await open(page, 'roll');
  const says = panel.locator('.view-says');
  await expect(says).toHaveText('It will lie.');
  const from = await onScreen(page, at);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  // The button stays down: the report does not wait for it.
  const swungTo = async (angle: number): Promise<void> => {
    const to = await onScreen(page, turnAbout(at, about, angle));
    await page.mouse.move(to.x, to.y, { steps: 4 });
  };
  await swungTo(-0.25);
  await expect(says).toHaveText(/^It will ripple: /);
  const rippled = await inkOf(panel, 'made');
  await swungTo(0.15);
  await expect(says).toHaveText(/^It will pull: /);
  expect(await inkOf(panel, 'made')).not.toBe(rippled);
  await swungTo(0);
  await page.mouse.up();
  await expect(says).toHaveText('It will lie.');
});

test('a collar swung too little pulls, and one swung too far ripples', async ({ page }) => {
  // Three tenths of the swing leave seven tenths of the edge ease of 1.6 cm missing, and nineteen tenths give nine tenths too much.
  await openDraft(page, 'collar-single', swungBy(0.3));
  let panel = await open(page, 'roll');
  await expect(panel.locator('.view-says')).toHaveText('It will pull: the outer edge is 1.1 cm too short.');
  await expect(panel).toContainText('Stress lines run across the shoulder.');
  expect(await panel.locator('.ink--red').count()).toBeGreaterThan(0);
  await openDraft(page, 'collar-single', swungBy(1.9));
  panel = await open(page, 'roll');
  await expect(panel.locator('.view-says')).toHaveText('It will ripple: the outer edge is 1.4 cm too long.');
  await expect(panel.locator('.ink--red')).toHaveCount(0);
  await expect(panel).toContainText('That leaves a stand of');
});

test('the collar is walked from mark to mark, and what is left over is said', async ({ page }) => {
  await openDraft(page, 'collar-single', (step) =>
    step.name === 'edge-start' ? { ...step, distance: 'back-neck + 8 mm' } : step,
  );
  const panel = await open(page, 'walk');
  await expect(panel.locator('.view-says')).toHaveText(
    'From the centre back to the neck point the collar is 0.8 cm too long.',
  );
  await expect(panel.locator('.stages-says')).toHaveText(/^Walked to the notch\. The collar’s mark lies 0\.8\scm past/);
  await act(page, 'stage-back').click();
  await act(page, 'stage-back').click();
  await expect(panel.locator('.stages-says')).toHaveText('Laid together at the centre back.');
  const first = await inkOf(panel, 'made');
  await act(page, 'stage-on').click();
  await expect(panel.locator('.stages-says')).toHaveText(
    'Walked to the neck point. The collar’s mark lies 0.8 cm past the seam’s.',
  );
  expect(await inkOf(panel, 'made')).not.toBe(first);
  await expect(panel.locator('tbody tr').first()).toHaveText(/centre back and neck point7\.9\scm8\.7\scm0\.8\scm/);
});

test('a shawl turns over in one', async ({ page }) => {
  await openDraft(page, 'shawl');
  const panel = await open(page, 'worn');
  await expect(panel.locator('.stages-says')).toHaveText('Turned over, as it is worn.');
  await expect(panel.locator('.cloth--other')).toHaveCount(1);
});

for (const tag of ['@desktop', '@phone'] as const) {
  test(`the views have nothing for axe to find and push nothing sideways (${tag.slice(1)})`, { tag }, async ({
    page,
  }) => {
    // Axe looks six times: a busy machine takes a minute for it.
    test.slow();
    await openDraft(page, 'collar-single');
    const opened = await moved(page);
    for (const view of ['worn', 'roll', 'walk'] as const) {
      const panel = await open(page, view);
      if (view !== 'roll') await expect(panel.locator('.stages-says')).toHaveText(/as it is worn|to the notch/);
      await axe(page);
      await page.emulateMedia({ colorScheme: 'dark' });
      await axeColours(page);
      await page.emulateMedia({ colorScheme: null });
      const sideways = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(sideways).toBeLessThanOrEqual(0);
    }
    // What moves, moves in its picture.
    expect((await moved(page)).slice(opened.length)).toEqual([]);
  });
}

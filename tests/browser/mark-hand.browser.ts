import { readFileSync } from 'node:fs';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { Step } from '../../src/drafting/step.ts';
import type { ProblemSet } from '../../src/exchange/set.ts';
import { setOrder } from '../../src/exchange/set-order.ts';
import { handInJson } from '../../src/exchange/write-hand-in.ts';
import { setMark, writeSet } from '../../src/exchange/write-set.ts';
import { misread } from '../../src/grader/misreading.ts';
import { awakeAll, axe, expect, type Page, test } from './fixture.ts';
import { act } from './table-hand.ts';
import { watch } from './watch.ts';

const roll = loadExercise('roll-line');
const set: ProblemSet = {
  ...{ title: 'Week 2', note: '', exercises: [{ exercise: 'roll-line', marks: 50 }], figures: { each: 'anyone' } },
  ...{ seed: 'autumn', strictness: 'workroom', house: {}, feedback: 'place', checks: null, hints: true },
  due: '2026-03-06T17:00:00.000Z',
};

function line(student: string, steps: readonly Step[]): string {
  const who = { student, number: '' };
  const mark = { set: setMark(set), exercise: roll.id, order: setOrder(set, roll, who) };
  const help = { strictness: 'workroom', unit: 'cm', shown: [], hints: {}, checks: 1 } as const;
  return JSON.stringify(
    handInJson({ ...who, ...mark, ...help, steps, begun: null, saved: '2026-03-05T10:00:00.000Z' }),
  );
}

const file = (name: string, text: string) => ({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
const tray = (page: Page) => page.locator('.intray input[type=file]').first();
const ilse = (page: Page) => page.locator('[data-cell="ilse/roll-line"]');
const bo = (page: Page) => page.locator('[data-cell="bo/roll-line"]');

async function openDesk(page: Page): Promise<void> {
  await page.goto('/desk/mark/');
  await awakeAll(page);
}

/** What the browser keeps of the desk, as text. */
function kept(page: Page): Promise<string> {
  return page.evaluate(
    () =>
      new Promise<string>((resolve) => {
        const open = indexedDB.open('gorgeline.desk.marking');
        open.onsuccess = () => {
          const read = open.result.transaction('work').objectStore('work').get('text');
          read.onsuccess = () => {
            open.result.close();
            resolve(String(read.result));
          };
        };
      }),
  );
}

/** How many pages what is on the page goes on, on A4 with the margins of a usual printer. */
async function pagesOf(page: Page): Promise<number> {
  const pdf = await page.pdf({ format: 'A4', margin: { top: '15mm', bottom: '15mm', left: '15mm', right: '15mm' } });
  return pdf.toString('latin1').match(/\/Type \/Page\b(?!s)/g)?.length ?? 0;
}

test('a mark changed with a reason, and comments, are kept, filed, opened again elsewhere, and stand in the CSV and on the sheet', async ({
  page,
  browser,
  baseURL,
}) => {
  const [throughNeck] = roll.misreadings.filter(({ id }) => id === 'through-neck-point');
  if (!throughNeck) throw new Error('The misreading is gone.');
  const lines = [line('Ilse', roll.reference), line('Bo', misread(roll.reference, throughNeck))];
  await openDesk(page);
  await tray(page).setInputFiles([file('week-2.set.json', writeSet(set)), file('class.ndjson', lines.join('\n'))]);
  await bo(page).click();
  const note = page.locator('.piece-note[data-target="roll-line"]');

  // Without a reason it is refused; with one it counts, and the grader's stays beside it.
  await act(page, 'change-mark').last().click();
  await page.getByLabel('Marks, of 4').fill('3');
  await page.keyboard.press('Enter');
  await expect(note.getByRole('alert')).toHaveText('Give a reason: the student reads it beside the mark.');
  await expect(bo(page)).toHaveAttribute('data-by-hand', 'false');
  await expect(page.getByLabel('Reason')).toBeFocused();
  await page.getByLabel('Reason').fill('Ruled on paper, as we said in class.');
  await act(page, 'give-mark').click();
  await expect(note).toContainText('The grader: 0 of 4');
  await expect(note).toContainText('Yours: 3 of 4. Ruled on paper');
  await expect(act(page, 'change-mark').last()).toBeFocused();
  await expect(page.locator('.own-total')).toHaveText(
    'Changed by hand: 46.4 of 50 marks count, where the grader gave 35.7.',
  );
  await expect(bo(page)).toHaveAttribute('data-by-hand', 'true');
  await expect(bo(page)).not.toHaveCSS('border-top-width', '0px');
  await expect(ilse(page)).toHaveCSS('border-top-width', '0px');
  await page.getByLabel('Your comment on this work').fill('Look again at the stand.');
  await page.getByLabel('Your comment to Bo').fill('<img src=x onerror=alert(1)>');
  await axe(page);
  await expect.poll(() => kept(page)).toContain('onerror');

  // What was written in the very moment before the page is left is kept too. The page opened again offers to go on.
  await page.getByLabel('Your comment on this work').pressSequentially(' It is high.', { delay: 0 });
  await page.reload();
  await awakeAll(page);
  await expect(page.locator('[data-keeping="offered"]')).toContainText(
    'Work on “Week 2” lies in this browser: 2 pieces',
  );
  await axe(page);
  await act(page, 'kept-go-on').click();
  await expect(bo(page)).toHaveText('46.4');
  await expect(page.locator('#mark-book')).toBeFocused();

  // From one student to the next; closed, each goes back to its own place.
  await bo(page).click();
  await act(page, 'next-piece').click();
  await expect(page.locator('#piece-title')).toHaveText('Ilse: The roll line, whole');
  await expect(page.locator('#piece-title')).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(ilse(page)).toBeFocused();

  // From an open piece to its student's sheet and back.
  await ilse(page).click();
  await act(page, 'piece-sheet').click();
  await expect(page.locator('#sheets-title')).toBeFocused();
  await expect(page.locator('.feedback h3')).toHaveText('Ilse');
  await act(page, 'close-sheets').click();
  await expect(act(page, 'piece-sheet')).toBeFocused();
  await page.keyboard.press('Escape');

  // Another tab takes it up and changes it: this one says so, puts both together, and shows it where it lies open.
  await ilse(page).click();
  await expect(page.getByLabel('Your comment on this work')).toHaveValue('');
  const other = await page.context().newPage();
  await openDesk(other);
  await act(other, 'kept-go-on').click();
  await ilse(other).click();
  await other.getByLabel('Your comment on this work').fill('A clean draft.');
  await expect.poll(() => kept(other)).toContain('A clean draft');
  await expect(page.locator('[data-keeping="elsewhere"]')).toBeVisible();
  await other.close();
  await act(page, 'kept-together').click();
  await expect(page.locator('[data-keeping]')).toHaveCount(0);
  await expect(page.getByLabel('Your comment on this work')).toHaveValue('A clean draft.');
  await bo(page).click();
  await expect(page.getByLabel('Your comment on this work')).toHaveValue('Look again at the stand. It is high.');

  const [csv] = await Promise.all([page.waitForEvent('download'), act(page, 'csv').click()]);
  expect(readFileSync(await csv.path(), 'utf8')).toMatch(
    /changed by hand\r\nBo,,46\.42\d*,46\.42\d*,50,,roll-line: the grader gave 35\.71/,
  );
  const [saved] = await Promise.all([page.waitForEvent('download'), act(page, 'save-marking').click()]);
  expect(saved.suggestedFilename()).toBe('week-2.marking.json');

  // On another machine: the same work, graded again, the sheets, and the mark taken back.
  const machine = await browser.newContext({ baseURL: baseURL ?? '' });
  const faults = await watch(machine, new URL(baseURL ?? '').hostname);
  const away = await machine.newPage();
  await openDesk(away);
  await tray(away).setInputFiles(file('week-2.marking.json', readFileSync(await saved.path(), 'utf8')));
  await expect(bo(away)).toHaveText('46.4');
  await act(away, 'sheets').click();
  await expect(away.locator('.feedback')).toHaveCount(2);
  const sheet = away.locator('.feedback').filter({ hasText: /^Bo/ });
  await expect(sheet).toContainText('Right: overlap edge, break point and stand point.');
  await expect(sheet).toContainText('Your teacher gives 3 of 4: Ruled on paper, as we said in class.');
  await expect(sheet).toContainText('Your teacher writes: <img src=x onerror=alert(1)>');
  await expect(sheet.locator('.drawing .ink--red')).not.toHaveCount(0);
  await axe(away);
  expect(await pagesOf(away)).toBe(2);
  await away.getByLabel('Whose sheet').selectOption('Bo');
  await expect(away.locator('.feedback')).toHaveCount(1);
  expect(await pagesOf(away)).toBe(1);
  await act(away, 'close-sheets').click();
  await bo(away).click();
  await act(away, 'take-back').click();
  await expect(bo(away)).toHaveText('35.7');

  expect(faults).toEqual([]);
  await machine.close();
});

test('a class list says who has nothing in and who has another name; it outlasts the work and the page, and is cleared by itself', async ({
  page,
}) => {
  await openDesk(page);
  await tray(page).setInputFiles([
    file('week-2.set.json', writeSet(set)),
    file('class.ndjson', line('Bo', roll.reference)),
  ]);
  await expect(bo(page)).toBeVisible();
  // By a class list it is known who has handed in nothing, and who hands in under another name.
  await page.locator('.class-list summary').click();
  await page.locator('textarea[name="class-list"]').fill('Bob\nKofi\t12');
  await expect(page.locator('.class-absent')).toHaveText('Nothing handed in yet (2): Bob and Kofi (12).');
  await expect(page.locator('[data-line="#12"]')).toContainText('nothing handed in');
  await expect(page.locator('[data-line="bo"]')).toContainText('not on the class list');
  await expect.poll(() => kept(page)).toContain('Kofi 12');

  // The list outlasts the work and the page, and has a clearing of its own.
  for (const _ of [1, 2]) await act(page, 'clear').click();
  await expect(page.locator('.book')).toHaveCount(0);
  await expect(act(page, 'choose')).toBeFocused();
  await expect.poll(() => kept(page)).not.toContain('hand-in');
  await page.reload();
  await awakeAll(page);
  await page.locator('.class-list summary').click();
  await expect(page.locator('textarea[name="class-list"]')).toHaveValue('Bob\nKofi 12');
  await expect(page.locator('[data-keeping]')).toHaveCount(0);
  await axe(page);
  for (const _ of [1, 2]) await act(page, 'clear-list').click();
  await expect(page.locator('textarea[name="class-list"]')).toHaveValue('');
  await expect.poll(() => kept(page)).not.toContain('Kofi');
});
